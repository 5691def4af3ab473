package org.lapmark.panel.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;

/** The notches that paper shows of a piece that is cut on folded cloth. */
final class HalfNotches {
  private HalfNotches() {}

  /**
   * The notches of the half.
   *
   * @param shape the whole
   * @param from where the fold begins
   * @param along its direction
   * @param mirror the map that lays the halves on each other
   * @throws PanelException when a notch lies in one half alone
   */
  static List<Path> of(PieceShape shape, Point from, Point along, Affine mirror) {
    List<Path> kept = new ArrayList<>();
    for (Path notch : shape.notches()) {
      Point mirrored = mirror.apply(inner(notch));
      if (shape.notches().stream()
          .noneMatch(other -> inner(other).distance(mirrored) <= 5 * FoldedHalf.TOLERANCE)) {
        throw HalfMarks.alone(
            shape.panel(), "notch", edgeOf(shape.panel(), inner(notch)), notch.start());
      }
      if (HalfMarks.aside(inner(notch), from, along) >= -FoldedHalf.ON_FOLD) {
        kept.add(inHalf(shape, notch, from, along));
      }
    }
    return kept;
  }

  /** A wedge on the fold is cut by it; a slit on it becomes one. */
  private static Path inHalf(PieceShape shape, Path notch, Point from, Point along) {
    if (notch.curves().size() == 1) {
      boolean onFold =
          Math.abs(HalfMarks.aside(notch.start(), from, along)) <= FoldedHalf.ON_FOLD
              && Math.abs(HalfMarks.aside(notch.end(), from, along)) <= FoldedHalf.ON_FOLD;
      Path line = shape.cuttingLine().path();
      boolean inAllowance = line.distance(notch.start()) <= FoldedHalf.ON_FOLD;
      return onFold && inAllowance
          ? Notches.besideFold(line, notch.start(), notch.end(), along.quarterTurn().times(-1))
          : notch;
    }
    boolean first = HalfMarks.aside(notch.start(), from, along) >= -FoldedHalf.ON_FOLD;
    boolean last = HalfMarks.aside(notch.end(), from, along) >= -FoldedHalf.ON_FOLD;
    return first && last ? notch : new Path(List.of(notch.curves().get(first ? 0 : 1)));
  }

  /** The edge on which a notch is. */
  private static String edgeOf(Panel panel, Point notch) {
    return panel.edges().stream()
        .min(Comparator.comparingDouble(edge -> edge.path().distance(notch)))
        .map(Edge::name)
        .orElse("");
  }

  /** The inner end of a slit, the tip of a wedge: the same seen from both sides. */
  private static Point inner(Path notch) {
    return notch.curves().get(0).end();
  }
}
