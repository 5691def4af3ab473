package org.lapmark.check.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.piece.CornerAngle;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.seam.NotchMatching;
import org.lapmark.seam.SeamMark;
import org.lapmark.seam.SeamPart;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;

/**
 * Finds seams in which a left piece can be sewn where its right copy belongs.
 *
 * <p>Laid right sides together on a partner, a mirrored copy meets it with its ends exchanged. So
 * the exchange goes unnoticed where the notches of the seam read the same from both ends. Nothing
 * is said where it does no harm or shows by itself: unless both sides are of panels that are cut as
 * pairs and aren't symmetrical, have notches at all, and have much the same corners at both ends.
 */
final class SwappedSides {
  /** How far a symmetrical panel may be from its mirror image, in millimetres. */
  private static final double SYMMETRY = 1;

  /** Corners that differ by more than this, in degrees, can be told apart by eye. */
  private static final double SEEN = 30;

  private static final double CHORD = 0.5;

  private final Map<String, Panel> paired = new LinkedHashMap<>();

  SwappedSides(List<Piece> pieces) {
    for (Piece piece : pieces) {
      boolean pair =
          piece.cuts().stream().anyMatch(cut -> cut.reversed() > 0 && cut.reversed() < cut.count());
      if (pair) {
        paired.put(piece.shape().panel().name(), piece.shape().panel());
      }
    }
  }

  /** Whether the first side and another can be sewn with a wrong copy. */
  boolean isSwappable(WalkedSeam seam, int side) {
    SeamSide one = seam.sides().get(0);
    SeamSide other = seam.sides().get(side);
    if (!isPair(one, seam.closed()) || !isPair(other, seam.closed()) || share(one, other)) {
      return false;
    }
    return readsBothWays(one, seam.closed()) && readsBothWays(other, seam.closed());
  }

  private static boolean share(SeamSide one, SeamSide other) {
    return one.parts().stream()
        .anyMatch(
            part -> other.parts().stream().anyMatch(second -> second.panel().equals(part.panel())));
  }

  private boolean isPair(SeamSide side, boolean closed) {
    for (SeamPart part : side.parts()) {
      Panel panel = paired.get(part.panel());
      if (panel == null || part.path().isEmpty() || isSymmetrical(panel, part.path().get())) {
        return false;
      }
    }
    return closed || Math.abs(angle(side, false) - angle(side, true)) <= SEEN;
  }

  /** The panel's corner at an end of a side; flat where the side ends within an edge. */
  private double angle(SeamSide side, boolean last) {
    SeamPart part = side.parts().get(last ? side.parts().size() - 1 : 0);
    Path path = part.path().orElseThrow();
    Point end = last ? path.end() : path.start();
    List<Edge> ring = paired.get(part.panel()).edges();
    for (int i = 0; i < ring.size(); i++) {
      if (ring.get(i).path().start().distance(end) <= SYMMETRY) {
        return CornerAngle.innerAngle(ring.get((i + ring.size() - 1) % ring.size()), ring.get(i));
      }
    }
    return 180;
  }

  private static boolean isSymmetrical(Panel panel, Path seam) {
    Point chord = seam.end().minus(seam.start());
    if (chord.norm() <= SYMMETRY) {
      return false;
    }
    Point n = chord.unit();
    Point m = seam.start().towards(seam.end(), 0.5);
    double d = 2 * m.dot(n);
    Affine mirror =
        new Affine(
            1 - 2 * n.x() * n.x(),
            -2 * n.x() * n.y(),
            -2 * n.x() * n.y(),
            1 - 2 * n.y() * n.y(),
            d * n.x(),
            d * n.y());
    Path outline = panel.outline();
    return outline.flattened(CHORD).stream()
        .allMatch(point -> outline.distance(mirror.apply(point)) <= SYMMETRY);
  }

  private static boolean readsBothWays(SeamSide side, boolean closed) {
    double whole = side.length();
    List<SeamMark> notches = new ArrayList<>();
    for (SeamMark mark : side.marks(closed)) {
      if (mark.kind() == SeamMark.Kind.NOTCH) {
        notches.add(mark);
      }
    }
    return !notches.isEmpty()
        && notches.stream()
            .allMatch(
                mark ->
                    notches.stream()
                        .anyMatch(
                            other ->
                                mark.set().agrees(other.set().reversed())
                                    && meets(whole - mark.at(), other.at(), whole, closed)));
  }

  private static boolean meets(double one, double other, double whole, boolean closed) {
    double apart = Math.abs(one - other);
    if (closed && whole > 0) {
      apart -= whole * Math.floor(apart / whole);
      apart = Math.min(apart, whole - apart);
    }
    return apart <= NotchMatching.COINCIDE;
  }
}
