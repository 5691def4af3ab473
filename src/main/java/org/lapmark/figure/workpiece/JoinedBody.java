package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A piece with others that are joined to it and reach beyond it.
 *
 * @param base the piece, in whose coordinates all is
 * @param outline round all of it
 * @param cuts lines beyond which nothing of it is seen
 */
public record JoinedBody(Body base, Path outline, List<Cut> cuts) implements Body {
  /**
   * A piece and others.
   *
   * @param joined their outlines where they lie
   * @param cropped a line beyond which all is left out, wherever it ends
   */
  public static JoinedBody of(Body base, List<Path> joined, Optional<Cut> cropped) {
    List<Cut> lines = new ArrayList<>(base.cuts());
    if (lines.isEmpty()) {
      cropped.ifPresent(lines::add);
    }
    List<Path> kept = new ArrayList<>(joined);
    kept.add(0, base.outline());
    List<Cut> cuts = new ArrayList<>();
    for (Cut line : lines) {
      List<Point> ends = new ArrayList<>(base.cuts().isEmpty() ? List.of() : ends(line));
      for (int i = kept.size() - 1; i >= 0; i--) {
        Lines.Cropped rest = Lines.crop(kept.get(i), line.from(), line.away());
        if (rest.from() != null) {
          kept.set(i, rest.path());
          ends.addAll(List.of(rest.from(), rest.to()));
        } else if (i > 0
            && kept.get(i).flattened(FlatInk.FLATNESS).stream().allMatch(line::hides)) {
          kept.remove(i);
        }
      }
      if (!ends.isEmpty()) {
        cuts.add(across(line, ends));
      }
    }
    Path round = Lines.joined(kept.get(0), kept.subList(1, kept.size()));
    return new JoinedBody(base, round, cuts);
  }

  private static List<Point> ends(Cut line) {
    return List.of(line.from(), line.to());
  }

  /** From the first to the last of some points on a line. */
  private static Cut across(Cut line, List<Point> ends) {
    Point along = line.away().quarterTurn();
    Comparator<Point> order = Comparator.comparingDouble(point -> point.dot(along));
    return new Cut(
        line.key(),
        ends.stream().min(order).orElseThrow(),
        ends.stream().max(order).orElseThrow(),
        line.away());
  }

  @Override
  public Path whole() {
    return outline;
  }

  @Override
  public List<List<Point>> covers() {
    return base.covers();
  }

  @Override
  public List<Flap> flaps() {
    return base.flaps();
  }

  @Override
  public boolean liesUnder() {
    return base.liesUnder();
  }

  @Override
  public double covered() {
    return base.covered();
  }

  @Override
  public boolean isPeeled() {
    return base.isPeeled();
  }

  @Override
  public void draw(PlacedBody laid, FlatInk ink) {
    base.draw(laid.as(base), ink);
  }

  @Override
  public void drawFolded(PlacedBody laid, Marks marks, FlatInk ink) {
    base.drawFolded(laid.as(base), marks, ink);
  }

  @Override
  public Side seen(Side up) {
    return base.seen(up);
  }
}
