package org.lapmark.figure;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;

/** Measures lettering with the font that documents embed. */
final class FontMeasure implements LetteringMeasure {
  static final String FILE = "/fonts/ttf/SourceSansPro/SourceSansPro-Regular.ttf";
  private static final double MM_PER_POINT = 25.4 / 72;
  private final TrueTypeFont font;

  FontMeasure() {
    try (InputStream stream = FontMeasure.class.getResourceAsStream(FILE)) {
      font = new TTFParser().parse(new RandomAccessReadBuffer(stream.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public double width(String text, Style style) {
    try {
      double units = 0;
      for (int point : text.codePoints().toArray()) {
        units += font.getAdvanceWidth(font.getUnicodeCmapLookup().getGlyphId(point));
      }
      return units / font.getUnitsPerEm() * style.fontSize() * MM_PER_POINT;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public double ascent(Style style) {
    return 0.98 * style.fontSize() * MM_PER_POINT;
  }

  @Override
  public double descent(Style style) {
    return 0.27 * style.fontSize() * MM_PER_POINT;
  }
}
