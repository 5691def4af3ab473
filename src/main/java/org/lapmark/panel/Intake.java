package org.lapmark.panel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** A mark that takes up a stretch of an edge: the edge is sewn without it. */
public sealed interface Intake extends Mark.OnEdge {
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

  @Override
  Intake on(String name, double shift);

  /**
   * The map that brings the stretch's end to its beginning, and what lies beyond with it.
   *
   * @param first where the stretch begins
   * @param last where it ends
   * @return the map, which keeps lengths
   */
  Affine closing(Point first, Point last);

  @Override
  Intake transformed(Affine map, ToDoubleFunction<String> lengths);

  /**
   * The lines along which it is sewn or folded.
   *
   * @param line its edge
   * @return lines from the edge inwards, in order along the edge
   */
  List<Line> lines(Path line);

  /**
   * The same mark on another edge, to which its lines have been drawn on or cut off.
   *
   * @param other the edge
   * @param first where its first line stands, in millimetres from the edge's start
   * @param last where its last line stands
   * @param drawn its lines, from the edge inwards
   * @return the mark; a dart's legs are of one length
   */
  Intake standing(Edge other, double first, double last, List<Line> drawn);

  /**
   * The same mark on its edge as that is drawn anew.
   *
   * @param other the edge, of the same name
   * @param first where the stretch that it takes up begins, in millimetres from the edge's start
   * @param last where it ends
   * @param motions how what lies at a point has moved
   * @return the mark; a dart's legs are of one length
   */
  Intake carried(Edge other, double first, double last, Function<Point, Affine> motions);

  @Override
  default <R> R place(Mark.Placing<R> placing) {
    return placing.intake(this);
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
    /**
     * The same dart pressed to another side.
     *
     * @param side to which
     * @return the dart
     */
    public Dart pressed(Press side) {
      return new Dart(name, edge, from, to, apex, side);
    }

    @Override
    public Affine closing(Point first, Point last) {
      return Affine.turn(apex, last, first);
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

    @Override
    public String kindName() {
      return "dart";
    }

    @Override
    public <R> R read(Mark.Reader<R> reader) {
      return reader.dart(this);
    }

    @Override
    public Optional<Point> knownBy(Function<String, Path> edges) {
      return Optional.of(apex);
    }

    @Override
    public List<Line> lines(Path line) {
      return List.of(new Line(line.atLength(from), apex), new Line(line.atLength(to), apex));
    }

    @Override
    public Dart standing(Edge other, double first, double last, List<Line> drawn) {
      return even(other, first, last, drawn.get(0).end());
    }

    @Override
    public Dart carried(Edge other, double first, double last, Function<Point, Affine> motions) {
      return even(other, first, last, motions.apply(apex).apply(apex));
    }

    /** With its apex moved onto the axis, so that the legs are of one length. */
    private Dart even(Edge other, double first, double last, Point near) {
      Point one = other.path().atLength(first);
      Point two = other.path().atLength(last);
      Point middle = one.towards(two, 0.5);
      Point inwards = two.minus(one).unit().quarterTurn();
      Point on = middle.plus(inwards.times(near.minus(middle).dot(inwards)));
      return new Dart(name, other.name(), first, last, on, press);
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
      Collections.reverse(images);
      return new Pleat(name, edge, whole - to, whole - from, kind, !onwards, images);
    }

    @Override
    public String kindName() {
      return "pleat";
    }

    @Override
    public <R> R read(Mark.Reader<R> reader) {
      return reader.pleat(this);
    }

    @Override
    public Optional<Point> knownBy(Function<String, Path> edges) {
      return Optional.of(lines.get(0).end().towards(lines.get(lines.size() - 1).end(), 0.5));
    }

    @Override
    public List<Line> lines(Path line) {
      return lines;
    }

    @Override
    public Pleat standing(Edge other, double first, double last, List<Line> drawn) {
      return new Pleat(name, other.name(), first, last, kind, onwards, drawn);
    }

    @Override
    public Pleat carried(Edge other, double first, double last, Function<Point, Affine> motions) {
      List<Line> moved = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        Line line = lines.get(i);
        Affine motion = motions.apply(line.start().towards(line.end(), 0.5));
        double share = (double) i / (lines.size() - 1);
        Point start = other.path().atLength(first + share * (last - first));
        moved.add(new Line(start, start.plus(motion.applyVector(line.end().minus(line.start())))));
      }
      return standing(other, first, last, moved);
    }
  }
}
