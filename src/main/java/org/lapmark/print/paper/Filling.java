package org.lapmark.print.paper;

/** How papers of a kind are filled with pieces. */
public enum Filling {
  /** Pages for a printer at home, to be joined; ticks show where nothing was cut off. */
  PAGES {
    @Override
    public <T> T read(Reader<T> reader) {
      return reader.pages();
    }
  },

  /** Large sheets in a frame, as few as can be. */
  SHEETS {
    @Override
    public <T> T read(Reader<T> reader) {
      return reader.sheets();
    }
  },

  /** Lengths off a roll in a frame, as long as what lies on them. */
  ROLL {
    @Override
    public <T> T read(Reader<T> reader) {
      return reader.roll();
    }
  },

  /** A picture for a projector: no paper at all, and nothing to join. */
  PICTURE {
    @Override
    public <T> T read(Reader<T> reader) {
      return reader.picture();
    }
  };

  /**
   * Does for each way of filling what is right for it.
   *
   * @param <T> what comes of it
   */
  public interface Reader<T> {
    /** For {@link Filling#PAGES}. */
    T pages();

    /** For {@link Filling#SHEETS}. */
    T sheets();

    /** For {@link Filling#ROLL}. */
    T roll();

    /** For {@link Filling#PICTURE}. */
    T picture();
  }

  /**
   * Has a reader do what is right for this.
   *
   * @param reader the reader
   * @param <T> what comes of it
   * @return what the reader gives
   */
  public abstract <T> T read(Reader<T> reader);

  /** Whether it consists of pages that a printer at home takes, whose number counts. */
  public boolean isPaged() {
    return this == PAGES;
  }

  /** Whether a sheet ends where the lowest piece on it does. */
  public boolean isCutToLength() {
    return this == ROLL;
  }

  /** Whether pieces lie in light instead of on paper. */
  public boolean isProjected() {
    return this == PICTURE;
  }
}
