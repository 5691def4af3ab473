package org.lapmark.figure.stitching;

import java.util.List;
import java.util.Locale;
import org.lapmark.geometry.Path;

/**
 * A kind of stitch, as it is drawn along a line. The inside of the piece is on the line's right.
 */
public enum StitchKind {
  /** A seam. */
  SEW,
  /** Long stitches that hold for a while. */
  BASTE,
  /** Seen on the finished article. */
  TOPSTITCH,
  /** By machine, from side to side. */
  ZIGZAG {
    @Override
    public List<Path> strokes(Path line) {
      return Strokes.zigzag(line, 0.7, 0.9);
    }
  },
  /** Long stitches whose threads are drawn up. */
  GATHER {
    @Override
    public List<Path> strokes(Path line) {
      return Strokes.tailed(line, 5);
    }
  },
  /** By hand, in and out. */
  RUNNING,
  /** By hand, hidden in a fold, with a little caught of what lies beside it. */
  SLIP {
    @Override
    public List<Path> strokes(Path line) {
      return Strokes.hooked(line, 3, 2, 0.8);
    }

    @Override
    boolean isHanded() {
      return true;
    }
  },
  /** By hand, slanting over an edge. */
  WHIP {
    @Override
    public List<Path> strokes(Path line) {
      return Strokes.slanted(line, 1.7, 1, 0.8);
    }

    @Override
    boolean isHanded() {
      return true;
    }
  },
  /** By hand, rungs that draw two folds together. */
  LADDER {
    @Override
    public List<Path> strokes(Path line) {
      return Strokes.rungs(line, 1.9, 0.9);
    }
  },
  /** By hand, single stitches far apart. */
  TACKS {
    @Override
    public List<Path> strokes(Path line) {
      return Strokes.crosses(line, 8, 0.7);
    }
  };

  /** How long a run of backstitches is on paper. */
  static final double BACK = 5;

  /** How far it is drawn from the line that it secures. */
  static final double APART = 0.9;

  /** Its name in keys, styles and words. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The role of its strokes.
   *
   * @param now whether the step that is shown does it
   */
  public String role(boolean now) {
    return "figure-" + word() + (now ? "-now" : "");
  }

  /** Whether it reaches over an edge that it is sewn at. */
  boolean isAcross() {
    return this == SLIP || this == WHIP || this == LADDER;
  }

  /** Whether it looks another way from the other side of its line. */
  boolean isHanded() {
    return false;
  }

  /**
   * What is drawn along a line.
   *
   * @param line where it runs, on paper
   */
  public List<Path> strokes(Path line) {
    return List.of(line);
  }

  /**
   * A second run of stitches beside a line, which secures it.
   *
   * @param line where it runs, on paper
   * @param atEnd whether it is that of its end, or of its beginning
   */
  public static Path backstitch(Path line, boolean atEnd) {
    return Strokes.doubled(line, atEnd, BACK, APART);
  }
}
