package org.lapmark.measure;

/**
 * One word, number or sign of a formula.
 *
 * @param kind what it is
 * @param text how it is written; empty at the end
 * @param start index of its first unit in the formula
 * @param end index behind its last
 */
record Token(Kind kind, String text, int start, int end) {
  enum Kind {
    NUMBER,
    /** One of the fractions that have a character of their own. */
    FRACTION,
    NAME,
    /**
     * Something that can't be a name, after a comparison's sign: what a choice is compared with.
     */
    WORD,
    SIGN,
    END
  }

  boolean is(String written) {
    return (kind == Kind.SIGN || kind == Kind.NAME) && text.equals(written);
  }

  boolean whole() {
    return kind == Kind.NUMBER && text.indexOf('.') < 0;
  }
}
