package org.lapmark.panel;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** A mark inside a panel that is whole or isn't there. */
public sealed interface PointMark extends Mark {
  /**
   * The points that have to lie on the panel.
   *
   * @return one, or both ends
   */
  List<Point> points();

  /**
   * The same mark elsewhere.
   *
   * @param points as many as it has
   * @return the mark
   */
  PointMark at(List<Point> points);

  @Override
  default PointMark transformed(Affine map, ToDoubleFunction<String> lengths) {
    return at(points().stream().map(map::apply).toList());
  }

  /**
   * By what it is told from others that look alike.
   *
   * @return its kind, and its name where that is marked
   */
  default String sign() {
    return kindName();
  }

  /**
   * Its middle.
   *
   * @return a point
   */
  default Point middle() {
    return points().get(0).towards(points().get(points().size() - 1), 0.5);
  }

  @Override
  default Optional<Point> knownBy(Function<String, Path> edges) {
    return Optional.of(middle());
  }

  @Override
  default <R> R place(Mark.Placing<R> placing) {
    return placing.point(this);
  }

  /**
   * A point to be marked through the cloth.
   *
   * @param name what it is for
   * @param point the point
   */
  record DrillPoint(String name, Point point) implements PointMark {
    @Override
    public DrillPoint at(List<Point> points) {
      return new DrillPoint(name, points.get(0));
    }

    @Override
    public String kindName() {
      return "drill";
    }

    @Override
    public boolean isMeasured() {
      return true;
    }

    @Override
    public <R> R read(Mark.Reader<R> reader) {
      return reader.drillPoint(this);
    }

    @Override
    public List<Point> points() {
      return List.of(point);
    }
  }

  /**
   * A point that comes to lie on the points of the same name on other panels.
   *
   * @param name the sign by which the points are known as the same
   * @param point the point
   */
  record MatchPoint(String name, Point point) implements PointMark {
    @Override
    public MatchPoint at(List<Point> points) {
      return new MatchPoint(name, points.get(0));
    }

    @Override
    public String kindName() {
      return "match";
    }

    @Override
    public String sign() {
      return kindName() + " " + name;
    }

    @Override
    public <R> R read(Mark.Reader<R> reader) {
      return reader.matchPoint(this);
    }

    @Override
    public List<Point> points() {
      return List.of(point);
    }
  }

  /**
   * A buttonhole.
   *
   * @param name what it belongs to; the same for all of a row
   * @param from one end of the cut
   * @param to the other end
   */
  record Buttonhole(String name, Point from, Point to) implements PointMark {
    @Override
    public Buttonhole at(List<Point> points) {
      return new Buttonhole(name, points.get(0), points.get(1));
    }

    @Override
    public String kindName() {
      return "buttonhole";
    }

    @Override
    public <R> R read(Mark.Reader<R> reader) {
      return reader.buttonhole(this);
    }

    @Override
    public List<Point> points() {
      return List.of(from, to);
    }
  }
}
