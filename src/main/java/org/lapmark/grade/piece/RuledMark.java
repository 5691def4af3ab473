package org.lapmark.grade.piece;

import java.util.List;
import java.util.stream.Stream;
import org.lapmark.panel.NotchSet;

/**
 * A mark of a rectangle as a maker with a ruler finds it: by its distances from the corners and
 * edges of the cut piece, allowances included.
 */
public sealed interface RuledMark {
  /**
   * The distances by which it is found.
   *
   * @return millimetres
   */
  List<Double> distances();

  /** Lets somebody else say what follows from how it is ruled. */
  <R> R read(Reader<R> reader);

  /**
   * What follows from how something is ruled.
   *
   * @param <R> what follows
   */
  interface Reader<R> {
    /** What follows from the notches of an edge. */
    R notches(Notches notches);

    /** What follows from a line parallel to an edge. */
    R parallel(Parallel line);

    /** What follows from a line in any direction. */
    R through(Through line);

    /** What follows from points. */
    R points(Points points);
  }

  /** A side of a rectangle as it lies: its width across, its height up and down. */
  enum Side {
    /** The upper one. */
    TOP,
    /** The one on the right. */
    RIGHT,
    /** The lower one. */
    BOTTOM,
    /** The one on the left. */
    LEFT;

    /** Whether it runs across. */
    boolean isAcross() {
      return this == TOP || this == BOTTOM;
    }

    /** Whether clockwise along it is to the right or down, as it is measured. */
    boolean isForwards() {
      return this == TOP || this == RIGHT;
    }
  }

  /**
   * What a line is called.
   *
   * @param kind the name of its kind of mark, such as {@code fold}
   * @param name what the author calls it
   */
  record Called(String kind, String name) {}

  /**
   * A place in a piece.
   *
   * @param across millimetres from its left edge
   * @param down millimetres from its top edge
   */
  record Spot(double across, double down) {
    private Stream<Double> distances() {
      return Stream.of(across, down);
    }
  }

  /**
   * A notch on an edge.
   *
   * @param at millimetres from the edge's left or upper corner to the middle of the set
   * @param set how many, with their gaps in that direction
   */
  record Notch(double at, NotchSet set) {
    private Stream<Double> distances() {
      return Stream.concat(Stream.of(at), set.offsets().stream().map(offset -> at + offset));
    }
  }

  /**
   * The notches of an edge.
   *
   * @param side the edge
   * @param notches rising
   */
  record Notches(Side side, List<Notch> notches) implements RuledMark {
    /** Copies the list. */
    public Notches {
      notches = List.copyOf(notches);
    }

    @Override
    public List<Double> distances() {
      return notches.stream().flatMap(Notch::distances).toList();
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.notches(this);
    }
  }

  /**
   * A line parallel to an edge.
   *
   * @param called what it is called
   * @param across whether it runs across
   * @param at millimetres from the top edge, or from the left edge if it doesn't run across
   * @param from where it begins, in millimetres from the left edge, or from the top edge
   * @param to where it ends
   * @param whole whether it runs from stitching line to stitching line, or beyond
   */
  record Parallel(Called called, boolean across, double at, double from, double to, boolean whole)
      implements RuledMark {
    @Override
    public List<Double> distances() {
      return whole ? List.of(at) : List.of(at, from, to);
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.parallel(this);
    }
  }

  /**
   * A line of straight stretches in any direction.
   *
   * @param called what it is called
   * @param through its ends and turns in order
   */
  record Through(Called called, List<Spot> through) implements RuledMark {
    /** Copies the list. */
    public Through {
      through = List.copyOf(through);
    }

    @Override
    public List<Double> distances() {
      return through.stream().flatMap(Spot::distances).toList();
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.through(this);
    }
  }

  /**
   * Points to be marked through the cloth.
   *
   * @param name what the author calls them
   * @param spots where they are
   */
  record Points(String name, List<Spot> spots) implements RuledMark {
    /** Copies the list. */
    public Points {
      spots = List.copyOf(spots);
    }

    @Override
    public List<Double> distances() {
      return spots.stream().flatMap(Spot::distances).toList();
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.points(this);
    }
  }
}
