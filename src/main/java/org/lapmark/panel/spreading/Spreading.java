package org.lapmark.panel.spreading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/**
 * Cuts a panel along slash lines, opens or overlaps them, and redraws its outline.
 *
 * <p>The part on which the middle of the grainline lies stays where it is (without a grainline, the
 * part at which the first edge begins), and the others move away from it; where the middle of the
 * grainline lies on a slash line, both sides of that move by half. Parts move as they are: shifted,
 * or turned about the hinge. An edge that is cut stays one edge.
 *
 * <p>At an opening a cubic with the tangents of both sides replaces a stretch of the edge on either
 * side of the cut, usually as long as the opening is wide and 5 mm more, between a quarter and four
 * times that, or less where a corner, a turn or another cut is nearer. It bends to the side to
 * which the edge bends there, so that a rounded edge stays rounded, and the edge is as long as
 * before and the opening, measured along it, more: exactly where such a curve can be, else within
 * an eighth of what is redrawn times the square of the angle, in radians, by which it turns there.
 * Where the edge is too straight for the slant of the opening it bends to one side and back, which
 * is told. A straight edge whose parts are only shifted stays straight from corner to corner.
 *
 * <p>At a hinge the edge keeps its length within 1e-6 mm. Where it bends to the side to which it
 * turns at the hinge, a cubic of just the length that it replaces makes it smooth; a straight edge,
 * on which there is no such curve, turns at the hinge by the angle of the opening.
 *
 * <p>A mark goes with the part on which it lies. A line that crosses a slash line is redrawn like
 * an edge; a closed one, as of a pocket's place, keeps its shape and goes with its middle.
 */
public final class Spreading {
  private Spreading() {}

  /**
   * Opens slash lines.
   *
   * @param panel the panel
   * @param slashes the lines; those that open by 0 change nothing
   * @param notices told of an edge that can't be redrawn without bending to one side and back
   * @return the panel with the same names, and its marks where they have come to
   * @throws PanelException when a line doesn't lead across the panel, lines cross, an opening is at
   *     a corner or too wide for a smooth line, an overlap is wider than the part beside it, or the
   *     outline folds over itself
   */
  public static Panel spread(Panel panel, List<Slash> slashes, Consumer<PanelException> notices) {
    Cuts cuts = new Cuts(panel, slashes);
    if (cuts.all().isEmpty()) {
      return panel;
    }
    Motions motions = new Motions(panel, cuts);
    List<Redrawing> redrawn = new OutlineRedrawing(panel, cuts, motions, notices).redrawn();
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < panel.edges().size(); i++) {
      Edge edge = panel.edges().get(i);
      edges.add(new Edge(edge.name(), edge.from(), edge.to(), redrawn.get(i).path()));
    }
    cuts.checkOverlaps();
    MarksSpread spread = new MarksSpread(panel, cuts, motions, edges, redrawn);
    List<Mark> marks = new ArrayList<>();
    panel.marks().forEach(mark -> marks.add(mark.place(spread)));
    Panel opened = new Panel(panel.name(), edges, panel.chains(), marks);
    Path outline = opened.outline();
    Optional<Point> crossing = outline.selfCrossing();
    if (crossing.isPresent() || !(outline.signedArea() > 0)) {
      Point at = crossing.orElse(outline.start());
      throw PanelCode.SLASH_FOLDS.exception(
          "panel", panel.name(), "slash", cuts.widest().slash().name(), "x", at.x(), "y", at.y());
    }
    return opened;
  }
}
