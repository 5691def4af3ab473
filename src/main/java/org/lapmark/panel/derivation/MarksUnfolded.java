package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Inside;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.Ring;

/** The marks of a half panel and their images over its fold. */
final class MarksUnfolded implements Mark.Placing<List<Mark>> {
  /** Marks nearer to the fold than this lie on it, in millimetres. */
  private static final double ON_FOLD = 0.01;

  /** Farther than any line reaches, in millimetres. */
  private static final double REACH = 1e5;

  private final Panel half;
  private final Edge fold;
  private final List<Edge> own;
  private final List<String> images;
  private final Predicate<Edge> isWhole;
  private final Consumer<PanelException> notices;
  private final Affine mirror;

  /**
   * Prepares them.
   *
   * @param half the half panel
   * @param fold its fold edge
   * @param own the other edges, clockwise from the fold's end
   * @param images the names of their images
   * @param isWhole whether an edge and its image are one edge across the fold
   * @param notices told what stands on the fold edge
   */
  MarksUnfolded(
      Panel half,
      Edge fold,
      List<Edge> own,
      List<String> images,
      Predicate<Edge> isWhole,
      Consumer<PanelException> notices) {
    this.half = half;
    this.fold = fold;
    this.own = own;
    this.images = images;
    this.isWhole = isWhole;
    this.notices = notices;
    Point start = fold.path().start();
    this.mirror = Affine.mirror(start, fold.path().end().minus(start));
  }

  @Override
  public List<Mark> notch(Mark.Notch notch) {
    if (notch.edge().equals(fold.name())) {
      Point at = fold.path().atLength(notch.at());
      notices.accept(LeftOut.of(half, notch, true).at(at));
      return List.of();
    }
    List<Mark.OnEdge> both = both(notch);
    double between = Math.abs(((Mark.Notch) both.get(0)).at() - ((Mark.Notch) both.get(1)).at());
    double whole = 2 * Ring.edge(half, notch.edge()).path().length();
    double apart = Math.min(between, own.size() == 1 ? whole - between : between);
    boolean same = both.get(0).edge().equals(both.get(1).edge()) && apart <= 2 * ON_FOLD;
    return same ? List.of(both.get(0)) : List.copyOf(both);
  }

  @Override
  public List<Mark> intake(Intake intake) {
    if (intake.edge().equals(fold.name())) {
      notices.accept(LeftOut.of(half, intake, true));
      return List.of();
    }
    return List.copyOf(both(intake));
  }

  /** A mark on its edge of the whole and its image. */
  private List<Mark.OnEdge> both(Mark.OnEdge mark) {
    int index = 0;
    while (!own.get(index).name().equals(mark.edge())) {
      index++;
    }
    Edge edge = own.get(index);
    double length = edge.path().length();
    boolean whole = isWhole.test(edge);
    boolean imageFirst = index == 0 && whole && own.size() > 1;
    return List.of(
        mark.on(edge.name(), imageFirst ? length : 0),
        mark.transformed(mirror, name -> length)
            .on(images.get(index), whole && !imageFirst ? length : 0));
  }

  @Override
  public List<Mark> point(PointMark mark) {
    Point at = mark.middle();
    return at.distance(mirror.apply(at)) <= 2 * ON_FOLD
        ? List.of(mark)
        : List.of(mark, mark.transformed(mirror, edge -> 0));
  }

  @Override
  public List<Mark> grainline(Mark.Grainline grain) {
    return List.of(grain);
  }

  /** A line as far as it lies on the half's side of the fold, and the image of that. */
  @Override
  public List<Mark> line(LineMark mark) {
    if (isOnFold(mark.path())) {
      return List.of(mark);
    }
    List<Mark> marks = new ArrayList<>();
    for (Inside.Stretch stretch : new Inside(side(), 0).stretches(mark.path())) {
      if (stretch.path().length() > ON_FOLD) {
        marks.addAll(both(mark, stretch.path()));
      }
    }
    return marks;
  }

  /** A square that has the fold in one of its sides and the half in it, and all its lines. */
  private Path side() {
    Point start = fold.path().start();
    Point along = fold.path().end().minus(start).unit().times(REACH);
    Point inwards = along.quarterTurn();
    return Path.polyline(
        List.of(
            start.minus(along),
            start.plus(along),
            start.plus(along).plus(inwards),
            start.minus(along).plus(inwards),
            start.minus(along)));
  }

  /** A line and its image, as one where they meet on the fold. */
  private List<Mark> both(LineMark mark, Path path) {
    Path image = Ring.mirrored(path, mirror);
    if (path.start().distance(mirror.apply(path.start())) <= 2 * ON_FOLD) {
      return List.of(mark.along(image.then(Ring.between(path, image.end(), path.end()))));
    }
    if (path.end().distance(mirror.apply(path.end())) <= 2 * ON_FOLD) {
      return List.of(mark.along(path.then(Ring.between(image, path.end(), image.end()))));
    }
    return List.of(mark.along(path), mark.image(image, Unfolded.ENDING));
  }

  private boolean isOnFold(Path path) {
    return path.flattened(ON_FOLD).stream()
        .allMatch(point -> point.distance(mirror.apply(point)) <= 4 * ON_FOLD);
  }
}
