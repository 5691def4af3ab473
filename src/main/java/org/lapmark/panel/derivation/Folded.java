package org.lapmark.panel.derivation;

import java.util.List;
import java.util.function.Consumer;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.FoldPlace;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;

/**
 * The half of a symmetrical panel that follows the first place clockwise. Refused when there is no
 * such place, or the halves differ by more than 0.1 mm.
 *
 * @param panel the whole
 * @param first where the fold begins: an edge or chain, which is folded in its middle, or a corner
 * @param last where it ends, alike
 * @param fold the name of the fold edge
 */
public record Folded(Panel panel, String first, String last, String fold) implements Derivation {
  /** How far the halves may differ, in millimetres. */
  private static final double HALVES = 0.1;

  private static final int CHECKS = 200;

  @Override
  public Panel derive(String name, Consumer<PanelException> notices) {
    Point from = FoldPlace.of(panel, first);
    Point to = FoldPlace.of(panel, last);
    if (from.distance(to) < 1) {
      throw PanelCode.FOLD_WITHOUT_LENGTH.exception("panel", panel.name(), "place", last);
    }
    Splitting.Parts parts =
        Splitting.split(panel, Splitting.edge(fold, fold, new Path(List.of(new Line(from, to)))));
    Path half = Ring.outline(parts.first());
    Affine mirror = Affine.mirror(from, to.minus(from));
    Path other = Ring.mirrored(Ring.outline(parts.second()), mirror);
    double apart = Math.max(apart(half, other), apart(other, half));
    if (apart > HALVES) {
      throw PanelCode.FOLD_HALVES_DIFFER.exception("panel", panel.name(), "apart", apart);
    }
    Panel kept = Splitting.part(name, panel, parts.first(), fold, notices);
    Splitting.checkName(panel, parts.first(), fold, notices);
    MarksAlone.of(panel, kept.marks(), parts, fold, mirror)
        .forEach(mark -> notices.accept(LeftOut.of(panel, mark, false)));
    return kept;
  }

  private static double apart(Path one, Path other) {
    double length = one.length();
    double most = 0;
    for (int i = 0; i < CHECKS; i++) {
      most = Math.max(most, other.distance(one.atLength(length * i / CHECKS)));
    }
    return most;
  }
}
