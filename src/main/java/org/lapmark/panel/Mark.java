package org.lapmark.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Something marked on a panel besides its outline. */
public sealed interface Mark {
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
   * A notch, or several cut beside each other, stated by arc length along the stitching line.
   *
   * @param edge the edge's name
   * @param at where the middle of the set stands, in millimetres from the edge's start along the
   *     stitching line as drawn, darts and pleats open
   * @param set how many, with which gaps, cut how
   */
  record Notch(String edge, double at, NotchSet set) implements Mark {
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
  }

  /**
   * A point to be marked through the cloth.
   *
   * @param name what it is for
   * @param point the point
   */
  record DrillPoint(String name, Point point) implements Mark {
    @Override
    public DrillPoint transformed(Affine map, ToDoubleFunction<String> lengths) {
      return new DrillPoint(name, map.apply(point));
    }
  }

  /**
   * A point that comes to lie on the points of the same name on other panels.
   *
   * @param name the sign by which the points are known as the same
   * @param point the point
   */
  record MatchPoint(String name, Point point) implements Mark {
    @Override
    public MatchPoint transformed(Affine map, ToDoubleFunction<String> lengths) {
      return new MatchPoint(name, map.apply(point));
    }
  }

  /**
   * A line that shows where something is placed.
   *
   * @param name what is placed
   * @param path the line
   */
  record Placement(String name, Path path) implements Mark {
    @Override
    public Placement transformed(Affine map, ToDoubleFunction<String> lengths) {
      return new Placement(name, path.transformed(map));
    }
  }

  /**
   * A line along which cloth is folded, inside the panel.
   *
   * @param name what is folded
   * @param path the line
   */
  record FoldLine(String name, Path path) implements Mark {
    @Override
    public FoldLine transformed(Affine map, ToDoubleFunction<String> lengths) {
      return new FoldLine(name, path.transformed(map));
    }
  }

  /**
   * A buttonhole.
   *
   * @param name what it belongs to; the same for all of a row
   * @param from one end of the cut
   * @param to the other end
   */
  record Buttonhole(String name, Point from, Point to) implements Mark {
    @Override
    public Buttonhole transformed(Affine map, ToDoubleFunction<String> lengths) {
      return new Buttonhole(name, map.apply(from), map.apply(to));
    }
  }

  /** A mark that takes up a stretch of an edge: the edge is sewn without it. */
  sealed interface Intake extends Mark {
    /**
     * What it is called.
     *
     * @return its name
     */
    String name();

    /**
     * The edge.
     *
     * @return its name
     */
    String edge();

    /**
     * Where the stretch begins.
     *
     * @return millimetres from the edge's start along the stitching line as drawn
     */
    double from();

    /**
     * Where it ends.
     *
     * @return millimetres from the edge's start
     */
    double to();

    /**
     * How much of the edge is taken up.
     *
     * @return millimetres
     */
    default double width() {
      return to() - from();
    }

    /**
     * The same mark at another place of an edge.
     *
     * @param name the edge's name
     * @param shift how much farther from the edge's start, in millimetres
     * @return the mark
     */
    Intake on(String name, double shift);

    /**
     * The map that brings the stretch's end to its beginning, and what lies beyond with it.
     *
     * @param first where the stretch begins
     * @param last where it ends
     * @return the map, which keeps lengths
     */
    Affine closing(Point first, Point last);
  }

  /** To which side a dart is pressed. */
  enum Press {
    /** Towards the end of its edge, clockwise on paper. */
    ONWARDS,
    /** Towards the beginning of its edge. */
    BACK,
    /** Neither: its allowance is trimmed or pressed open. */
    NONE
  }

  /**
   * A dart: two legs of the same length from an edge to its apex, sewn to each other.
   *
   * @param name what it is called
   * @param edge the edge's name
   * @param from where its first leg stands on the edge, clockwise
   * @param to where its second leg stands
   * @param apex where it ends
   * @param press to which side it is pressed
   */
  record Dart(String name, String edge, double from, double to, Point apex, Press press)
      implements Intake {
    @Override
    public Affine closing(Point first, Point last) {
      return Darts.turn(apex, last, first);
    }

    @Override
    public Dart on(String other, double shift) {
      return new Dart(name, other, from + shift, to + shift, apex, press);
    }

    @Override
    public Dart transformed(Affine map, ToDoubleFunction<String> lengths) {
      if (map.determinant() > 0) {
        return new Dart(name, edge, from, to, map.apply(apex), press);
      }
      double whole = lengths.applyAsDouble(edge);
      Press other =
          switch (press) {
            case ONWARDS -> Press.BACK;
            case BACK -> Press.ONWARDS;
            case NONE -> Press.NONE;
          };
      return new Dart(name, edge, whole - to, whole - from, map.apply(apex), other);
    }
  }

  /** How a pleat is folded. */
  enum PleatKind {
    /** One fold, to one side. */
    KNIFE,
    /** Two folds away from each other, over the middle. */
    BOX,
    /** Two folds that meet on the middle. */
    INVERTED
  }

  /**
   * A pleat: cloth folded onto itself along lines that run from an edge.
   *
   * @param name what it is called
   * @param edge the edge's name
   * @param from where its first line stands on the edge, clockwise
   * @param to where its last line stands
   * @param kind how it is folded
   * @param onwards whether a knife pleat's fold is laid towards the edge's end
   * @param lines its lines from the edge inwards, in order along the edge: of a knife pleat the
   *     fold and the line onto which it is laid (the other way round when it is laid back), of the
   *     others a fold, the middle and a fold
   */
  record Pleat(
      String name,
      String edge,
      double from,
      double to,
      PleatKind kind,
      boolean onwards,
      List<Line> lines)
      implements Intake {
    /** Copies the list. */
    public Pleat {
      lines = List.copyOf(lines);
    }

    @Override
    public Pleat on(String other, double shift) {
      return new Pleat(name, other, from + shift, to + shift, kind, onwards, lines);
    }

    @Override
    public Affine closing(Point first, Point last) {
      return Affine.translation(first.x() - last.x(), first.y() - last.y());
    }

    @Override
    public Pleat transformed(Affine map, ToDoubleFunction<String> lengths) {
      List<Line> images = new ArrayList<>();
      for (Line line : lines) {
        images.add(new Line(map.apply(line.start()), map.apply(line.end())));
      }
      if (map.determinant() > 0) {
        return new Pleat(name, edge, from, to, kind, onwards, images);
      }
      double whole = lengths.applyAsDouble(edge);
      java.util.Collections.reverse(images);
      return new Pleat(name, edge, whole - to, whole - from, kind, !onwards, images);
    }
  }

  /**
   * A line along which the panel can be split into others. It isn't drawn.
   *
   * @param name its name
   * @param path the line
   */
  record StyleLine(String name, Path path) implements Mark {
    @Override
    public StyleLine transformed(Affine map, ToDoubleFunction<String> lengths) {
      return new StyleLine(name, path.transformed(map));
    }
  }
}
