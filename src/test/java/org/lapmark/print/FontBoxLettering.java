package org.lapmark.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;

/** Measures lettering in the typeface of the documents. */
final class FontBoxLettering implements LetteringMeasure {
  private static final String FONTS = "/fonts/ttf/SourceSansPro/SourceSansPro-";

  private final Face regular = Face.of(font("Regular"));
  private final Face bold = Face.of(font("Bold"));

  private record Face(TrueTypeFont font, CmapLookup map) {
    static Face of(TrueTypeFont font) {
      try {
        return new Face(font, font.getUnicodeCmapLookup());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static TrueTypeFont font(String face) {
    try (InputStream in = FontBoxLettering.class.getResourceAsStream(FONTS + face + ".ttf")) {
      return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double millimetres(double units, Style style) {
    return units / 1000 * style.fontSize() * 25.4 / 72;
  }

  @Override
  public double width(String text, Style style) {
    Face face = style.bold() ? bold : regular;
    try {
      double units = 0;
      for (int codePoint : text.codePoints().toArray()) {
        units += face.font().getAdvanceWidth(face.map().getGlyphId(codePoint));
      }
      return millimetres(units, style);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public double ascent(Style style) {
    return millimetres(984, style);
  }

  @Override
  public double descent(Style style) {
    return millimetres(273, style);
  }
}
