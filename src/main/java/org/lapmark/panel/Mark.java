package org.lapmark.panel;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Something marked on a panel besides its outline. */
public sealed interface Mark permits Mark.OnEdge, PointMark, LineMark, Mark.Grainline {
  /**
   * The same mark on the panel's image under a map that keeps lengths: a shift, a turn or a mirror.
   * A mirrored panel's edges are travelled the other way round, so that places on them count from
   * their other ends, and what is pressed towards an edge's end is pressed towards its beginning.
   *
   * @param map the map
   * @param lengths the lengths of the panel's edges by name, in millimetres
   * @return the mark on the image, on edges of the same names
   */
  Mark transformed(Affine map, ToDoubleFunction<String> lengths);

  /**
   * The same mark where edges have other names.
   *
   * @param names an edge's new name by its old one
   * @return the mark; the same where it stands on none
   */
  default Mark renamed(UnaryOperator<String> names) {
    return this;
  }

  /**
   * What kind of mark it is, in one word for keys of messages.
   *
   * @return the kind's name
   */
  String kindName();

  /**
   * What it is called, or for a notch, on which edge it stands.
   *
   * @return the name, empty for a grainline
   */
  String name();

  /**
   * The place by which it is known when one half of a panel is held against the other.
   *
   * @param edges the panel's edges by name, or null for one that it doesn't have
   * @return the place, unless nothing has to lie opposite it
   */
  Optional<Point> knownBy(Function<String, Path> edges);

  /**
   * Whether somebody with a ruler can mark it by its distances from the panel's edges.
   *
   * @return false for curves, and for what is more than a line or a point, or known by its sign
   */
  default boolean isMeasured() {
    return false;
  }

  /**
   * Lets somebody else say what follows from the mark's kind.
   *
   * @param reader what knows all kinds
   * @param <R> what follows
   * @return what the reader says
   */
  <R> R read(Reader<R> reader);

  /**
   * Lets somebody else say what follows from how the mark lies.
   *
   * @param placing what knows all ways to lie
   * @param <R> what follows
   * @return what it says
   */
  <R> R place(Placing<R> placing);

  /**
   * What follows from a mark's kind. A new kind has a method of its own here, so that the compiler
   * names whoever has nothing to say about it.
   *
   * @param <R> what follows
   */
  interface Reader<R> {
    /** What follows from a notch. */
    R notch(Notch notch);

    /** What follows from a grainline. */
    R grainline(Grainline grain);

    /** What follows from a drill point. */
    R drillPoint(PointMark.DrillPoint drill);

    /** What follows from a match point. */
    R matchPoint(PointMark.MatchPoint match);

    /** What follows from a buttonhole. */
    R buttonhole(PointMark.Buttonhole hole);

    /** What follows from a line that is shown, whatever it is for. */
    R line(LineMark line);

    /** What follows from a style line, which isn't shown. */
    R styleLine(LineMark.StyleLine style);

    /** What follows from a dart. */
    R dart(Intake.Dart dart);

    /** What follows from a pleat. */
    R pleat(Intake.Pleat pleat);
  }

  /**
   * What follows from how a mark lies on its panel, whatever it is for: so do most changes of
   * panels.
   *
   * @param <R> what follows
   */
  interface Placing<R> {
    /** What follows from a mark that stands on an edge. */
    R notch(Notch notch);

    /** What follows from a mark that takes up a stretch of an edge. */
    R intake(Intake intake);

    /** What follows from a mark that is whole or isn't there. */
    R point(PointMark point);

    /** What follows from a line, of which a part may be there. */
    R line(LineMark line);

    /** What follows from the grainline, which shows a direction wherever it lies. */
    R grainline(Grainline grain);
  }

  /** A mark whose place is stated along an edge. */
  sealed interface OnEdge extends Mark permits Notch, Intake {
    /**
     * The edge.
     *
     * @return its name
     */
    String edge();

    /**
     * The same mark at another place of an edge.
     *
     * @param name the edge's name
     * @param shift how much farther from the edge's start, in millimetres
     * @return the mark
     */
    OnEdge on(String name, double shift);

    /**
     * Whether a notch comes to lie on it when the notch's edge is laid against its own, start on
     * end.
     *
     * @param other the notch
     * @param length that of the notch's edge, in millimetres
     * @param tolerance how far apart they may lie, in millimetres
     * @return true for a notch at the same place
     */
    boolean meets(Notch other, double length, double tolerance);

    @Override
    default OnEdge renamed(UnaryOperator<String> names) {
      return on(names.apply(edge()), 0);
    }

    @Override
    OnEdge transformed(Affine map, ToDoubleFunction<String> lengths);
  }

  /**
   * A notch, or several cut beside each other, stated by arc length along the stitching line.
   *
   * @param edge the edge's name
   * @param at where the middle of the set stands, in millimetres from the edge's start along the
   *     stitching line as drawn, darts and pleats open
   * @param set how many, with which gaps, cut how
   */
  record Notch(String edge, double at, NotchSet set) implements OnEdge {
    /**
     * Slits with equal gaps.
     *
     * @param edge the edge's name
     * @param at millimetres from the edge's start along the stitching line
     * @param count 1 for a single notch, 2 for a double one, 3 for a triple one
     */
    public Notch(String edge, double at, int count) {
      this(edge, at, NotchSet.of(count));
    }

    /**
     * How many notches stand there.
     *
     * @return their number
     */
    public int count() {
      return set.count();
    }

    @Override
    public Notch transformed(Affine map, ToDoubleFunction<String> lengths) {
      return map.determinant() > 0
          ? this
          : new Notch(edge, lengths.applyAsDouble(edge) - at, set.reversed());
    }

    @Override
    public String kindName() {
      return "notch";
    }

    @Override
    public boolean isMeasured() {
      return true;
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.notch(this);
    }

    @Override
    public String name() {
      return edge;
    }

    @Override
    public Notch on(String other, double shift) {
      return new Notch(other, at + shift, set);
    }

    @Override
    public boolean meets(Notch other, double length, double tolerance) {
      return Math.abs(length - other.at - at) <= tolerance;
    }

    @Override
    public Optional<Point> knownBy(Function<String, Path> edges) {
      return Optional.ofNullable(edges.apply(edge)).map(path -> path.atLength(at));
    }

    @Override
    public <R> R place(Placing<R> placing) {
      return placing.notch(this);
    }
  }

  /**
   * The direction of the warp.
   *
   * @param from one end
   * @param to the other end
   * @param oneWay whether cloth with a nap or a print must lie so that its direction runs from the
   *     first end up to the other
   */
  record Grainline(Point from, Point to, boolean oneWay) implements Mark {
    private static final double LEVEL = 1e-9;

    /**
     * A line whose ends are alike.
     *
     * @param from one end
     * @param to the other end
     */
    public Grainline(Point from, Point to) {
      this(from, to, false);
    }

    /**
     * The direction along the line that is up: the one that is nearer to the top of the panel as
     * drawn; for a level line the one in which it was drawn.
     *
     * @return a direction of length 1
     */
    public Point up() {
      Point way = to.minus(from).unit();
      return !oneWay && way.y() > LEVEL ? way.times(-1) : way;
    }

    /**
     * The same line for cloth that has a direction.
     *
     * @return a line whose second end is up
     */
    public Grainline ofOneWay() {
      return up().dot(to.minus(from)) < 0
          ? new Grainline(to, from, true)
          : new Grainline(from, to, true);
    }

    /**
     * The line between other ends.
     *
     * @param first what takes the first end's place
     * @param second what takes the other's
     * @return a line that is one way if this is
     */
    public Grainline between(Point first, Point second) {
      return new Grainline(first, second, oneWay);
    }

    @Override
    public Grainline transformed(Affine map, ToDoubleFunction<String> lengths) {
      return between(map.apply(from), map.apply(to));
    }

    @Override
    public String kindName() {
      return "grainline";
    }

    @Override
    public boolean isMeasured() {
      return true;
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.grainline(this);
    }

    @Override
    public String name() {
      return "";
    }

    @Override
    public Optional<Point> knownBy(Function<String, Path> edges) {
      return Optional.empty();
    }

    @Override
    public <R> R place(Placing<R> placing) {
      return placing.grainline(this);
    }
  }
}
