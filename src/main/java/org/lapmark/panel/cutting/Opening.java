package org.lapmark.panel.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Opens out what is cut on folded cloth, fold after fold. */
final class Opening {
  /** A fold that bends by more than this, in millimetres, can't be opened flat. */
  private static final double STRAIGHT = 0.05;

  /** Folds that stray less than this from one line, in millimetres, are one fold. */
  private static final double SAME = 0.1;

  /** Cloth is folded once or in four. */
  private static final int MOST_FOLDS = 2;

  private Opening() {}

  /** A closed line of a piece opened out at the edges that are stated to lie on a fold. */
  static Path of(PieceShape shape, List<CuttingLine.Span> line) {
    List<CuttingLine.Span> spans = line;
    for (int i = 0; i < MOST_FOLDS; i++) {
      Optional<List<CuttingLine.Span>> opened = opened(shape, spans);
      if (opened.isEmpty()) {
        break;
      }
      spans = opened.get();
    }
    return new CuttingLine(spans).path();
  }

  /** The mirror images by which the halves, and then the quarters, are laid beside a piece. */
  static List<Affine> mirrors(PieceShape shape) {
    List<Affine> mirrors = new ArrayList<>();
    List<Path> lines = new ArrayList<>();
    for (Path fold : shape.folds()) {
      boolean known = lines.stream().anyMatch(line -> isOn(line, fold));
      if (mirrors.size() < MOST_FOLDS && isStraight(fold) && !known) {
        lines.add(fold);
        mirrors.add(Affine.mirror(fold.start(), fold.end().minus(fold.start())));
      }
    }
    return mirrors;
  }

  private static Optional<List<CuttingLine.Span>> opened(
      PieceShape shape, List<CuttingLine.Span> spans) {
    List<CuttingLine.Span> turned = new ArrayList<>(spans);
    for (int i = 0; i < spans.size(); i++) {
      CuttingLine.Span first = turned.get(0);
      boolean begins = !goesOn(shape, turned.get(turned.size() - 1), first);
      if (begins && shape.isFold(first.edge())) {
        int end = 1;
        while (end < turned.size() && goesOn(shape, first, turned.get(end))) {
          end++;
        }
        Path fold = new CuttingLine(turned.subList(0, end)).path();
        if (end < turned.size() && isStraight(fold)) {
          return Optional.of(mirrored(turned.subList(end, turned.size()), fold));
        }
      }
      Collections.rotate(turned, -1);
    }
    return Optional.empty();
  }

  /** Whether a span is of the same edge as another, or of an edge on the same fold. */
  private static boolean goesOn(PieceShape shape, CuttingLine.Span one, CuttingLine.Span other) {
    return one.edge().equals(other.edge())
        || shape.isFold(one.edge()) && shape.isFold(other.edge()) && isOn(one.path(), other.path());
  }

  /** Whether the ends of one line lie on the straight line that another is a part of. */
  private static boolean isOn(Path line, Path other) {
    Point along = line.end().minus(line.start()).unit();
    return Math.abs(along.cross(other.start().minus(line.start()))) < SAME
        && Math.abs(along.cross(other.end().minus(line.start()))) < SAME;
  }

  private static boolean isStraight(Path fold) {
    return fold.length() - fold.start().distance(fold.end()) < STRAIGHT;
  }

  /** The rest of the line, and back along its image. */
  private static List<CuttingLine.Span> mirrored(List<CuttingLine.Span> rest, Path fold) {
    Affine mirror = Affine.mirror(fold.start(), fold.end().minus(fold.start()));
    List<CuttingLine.Span> whole = new ArrayList<>(rest);
    for (int i = rest.size() - 1; i >= 0; i--) {
      Path image = rest.get(i).path().transformed(mirror).reversed();
      whole.add(new CuttingLine.Span(rest.get(i).edge(), image));
    }
    return whole;
  }
}
