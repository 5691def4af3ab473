package org.lapmark.geometry.offset;

/**
 * How the moved lines of two neighbouring sides are joined at the corner between them, where it
 * opens. Where it closes, they end where they cross.
 */
public sealed interface Joint {
  /**
   * A corner's mitre may reach as far from the corner as this many times the larger distance. A
   * corner cut blunt passes the line to its mitre at that reach; the two ends of the cut lie within
   * the larger distance of that line, so that nothing lies farther from the outline than {@code
   * sqrt(1 + 2.5 * 2.5)}, some 2.7, times the larger distance.
   */
  double MITRE_LIMIT = 2.5;

  /**
   * How far the tip of a mitre may reach.
   *
   * @return in times the larger distance from the corner
   */
  default double mitreLimit() {
    return MITRE_LIMIT;
  }

  /** An end of the strip beside one of the two sides, which its neighbour's line leads up to. */
  sealed interface Shaped extends Joint {
    /**
     * Whose strip it is.
     *
     * @return whether the side is the one that ends at the corner, else the one that begins
     */
    boolean first();

    /**
     * How often the strip is folded over its side.
     *
     * @return 0 where it ends square, else 1 or 2
     */
    int folds();
  }

  /** Lines that go on as they run until they meet. */
  Joint MET = new Met(10);

  /** What is drawn where nothing is stated: mitred up to {@link #MITRE_LIMIT}. */
  Joint USUAL = new Mitred(MITRE_LIMIT);

  /**
   * Both lines go on until they meet; a tip farther from the corner than the limit is cut off
   * square to the line from corner to tip.
   *
   * @param limit how far the tip may reach, in times the larger distance; 1 or more
   */
  record Mitred(double limit) implements Joint {
    /** Checks the limit. */
    public Mitred {
      if (!(limit >= 1)) {
        throw new IllegalArgumentException("a mitre's limit is 1 or more");
      }
    }

    @Override
    public double mitreLimit() {
      return limit;
    }
  }

  /**
   * Both lines go on as they run, a straight one straight and an arc as an arc, until they meet, or
   * end where they meet, at corners that open and at corners that close. Where they don't meet
   * within the limit, they are joined as usual.
   *
   * @param limit how far from the corner they may meet, in times the larger distance
   */
  record Met(double limit) implements Joint {
    /** Checks the limit. */
    public Met {
      if (!(limit >= 1)) {
        throw new IllegalArgumentException("a limit is 1 or more");
      }
    }
  }

  /**
   * The side's own line (the stitching line) is drawn on until it meets its neighbour's moved line;
   * from there the strip beside the side ends square to it.
   *
   * @param first whether the side is the one that ends at the corner, else the one that begins
   */
  record Square(boolean first) implements Shaped {
    @Override
    public int folds() {
      return 0;
    }
  }

  /**
   * The strip beside the side ends as the mirror image, over the side's own line, of its
   * neighbour's moved line: folded over that line it covers what lies inside it, edge on edge.
   *
   * @param first whether the side is the one that ends at the corner, else the one that begins
   * @param folds 1 where it is folded once; 2 where it is folded by half its distance twice
   */
  record Turned(boolean first, int folds) implements Shaped {
    /** Checks the number of folds. */
    public Turned {
      if (folds < 1 || folds > 2) {
        throw new IllegalArgumentException("a strip is folded once or twice");
      }
    }
  }
}
