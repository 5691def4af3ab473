package org.lapmark.document.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.fontbox.ttf.CmapLookup;

/**
 * Which characters can be printed: those that every face of the text family has, which steps in for
 * the face for code. Immutable.
 */
public final class Glyphs {
  /** What is printed in place of a character that the fonts lack. */
  private static final int SUBSTITUTE = '\u2610';

  private final BitSet printable = new BitSet();

  public Glyphs(FontFiles files) {
    List<CmapLookup> maps = new ArrayList<>();
    for (Typeface face : Typeface.TEXT) {
      try {
        maps.add(files.parse(face).getUnicodeCmapLookup());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    for (int codePoint = ' '; codePoint < Character.MIN_SURROGATE; codePoint++) {
      int candidate = codePoint;
      if (!Character.isISOControl(codePoint)
          && maps.stream().allMatch(map -> map.getGlyphId(candidate) != 0)) {
        printable.set(codePoint);
      }
    }
  }

  private boolean canPrint(int codePoint) {
    return printable.get(codePoint);
  }

  /** Whether a character only steers layout, and can be left out without loss. */
  private static boolean isSilent(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL, Character.FORMAT, Character.SURROGATE -> true;
      default -> false;
    };
  }

  private static boolean isSpace(int codePoint) {
    return codePoint == '\t'
        || codePoint == '\n'
        || codePoint == '\r'
        || Character.getType(codePoint) == Character.SPACE_SEPARATOR
        || Character.getType(codePoint) == Character.LINE_SEPARATOR
        || Character.getType(codePoint) == Character.PARAGRAPH_SEPARATOR;
  }

  /** The characters of a text that can't be printed, each once, in code point order. */
  public SortedSet<Integer> missing(String text) {
    SortedSet<Integer> missing = new TreeSet<>();
    text.codePoints()
        .filter(codePoint -> !canPrint(codePoint) && !isSilent(codePoint) && !isSpace(codePoint))
        .forEach(missing::add);
    return missing;
  }

  /** The text with nothing in it that the fonts lack, and without control characters. */
  public String printable(String text) {
    int[] kept =
        text.codePoints()
            .filter(codePoint -> isSpace(codePoint) || !isSilent(codePoint))
            .map(
                codePoint ->
                    canPrint(codePoint)
                        ? codePoint
                        : isSpace(codePoint) ? ' ' : canPrint(SUBSTITUTE) ? SUBSTITUTE : '?')
            .toArray();
    return new String(kept, 0, kept.length);
  }
}
