package org.lapmark.grade;

import java.util.List;
import org.lapmark.panel.NotchSet;

/**
 * A mark of a rectangle as a maker with a ruler finds it: by its distances from the corners and
 * edges of the cut piece, allowances included.
 */
public sealed interface RuledMark {
  /**
   * Says what it is to somebody who treats each kind in a way of its own.
   *
   * @param reader who asks
   * @param <R> what the reader makes of it
   * @return what was made
   */
  <R> R read(Reader<R> reader);

  /**
   * What is made of each kind.
   *
   * @param <R> what is made
   */
  interface Reader<R> {
    /** Takes the notches of an edge. */
    R notches(Notches notches);

    /** Takes a line parallel to an edge. */
    R parallel(Parallel line);

    /** Takes a line of straight stretches. */
    R through(Through line);

    /** Takes points. */
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

  /** What a line is for. */
  enum Use {
    /** The cloth is folded along it. */
    FOLD,
    /** Something is placed on it. */
    PLACEMENT
  }

  /**
   * A place in a piece.
   *
   * @param across millimetres from its left edge
   * @param down millimetres from its top edge
   */
  record Spot(double across, double down) {}

  /**
   * A notch on an edge.
   *
   * @param at millimetres from the edge's left or upper corner to the middle of the set
   * @param set how many, with their gaps in that direction
   */
  record Notch(double at, NotchSet set) {}

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
    public <R> R read(Reader<R> reader) {
      return reader.notches(this);
    }
  }

  /**
   * A line parallel to an edge.
   *
   * @param use what it is for
   * @param name what the author calls it
   * @param across whether it runs across
   * @param at millimetres from the top edge, or from the left edge if it doesn't run across
   * @param from where it begins, in millimetres from the left edge, or from the top edge
   * @param to where it ends
   * @param whole whether it runs from stitching line to stitching line, or beyond
   */
  record Parallel(
      Use use, String name, boolean across, double at, double from, double to, boolean whole)
      implements RuledMark {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.parallel(this);
    }
  }

  /**
   * A line of straight stretches in any direction.
   *
   * @param use what it is for
   * @param name what the author calls it
   * @param through its ends and turns in order
   */
  record Through(Use use, String name, List<Spot> through) implements RuledMark {
    /** Copies the list. */
    public Through {
      through = List.copyOf(through);
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
    public <R> R read(Reader<R> reader) {
      return reader.points(this);
    }
  }
}
