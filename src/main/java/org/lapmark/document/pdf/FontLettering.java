package org.lapmark.document.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;

/** Measures lettering by the advance widths of the embedded fonts. For use by one thread. */
public final class FontLettering implements LetteringMeasure {
  private static final double MM_PER_POINT = 25.4 / 72;

  private final Map<Typeface, Metrics> faces = new EnumMap<>(Typeface.class);
  private final Glyphs glyphs;

  public FontLettering(FontFiles files, Glyphs glyphs) {
    this.glyphs = glyphs;
    for (Typeface face : Typeface.TEXT) {
      faces.put(face, Metrics.of(files.parse(face)));
    }
  }

  @Override
  public double width(String text, Style style) {
    Metrics metrics = faces.get(Typeface.of(style.bold()));
    double units =
        glyphs
            .printable(text)
            .codePoints()
            .mapToDouble(codePoint -> metrics.advance(codePoint))
            .sum();
    return units * style.fontSize() * MM_PER_POINT;
  }

  @Override
  public double ascent(Style style) {
    return faces.get(Typeface.of(style.bold())).ascent * style.fontSize() * MM_PER_POINT;
  }

  @Override
  public double descent(Style style) {
    return faces.get(Typeface.of(style.bold())).descent * style.fontSize() * MM_PER_POINT;
  }

  /** In ems. */
  private record Metrics(TrueTypeFont font, CmapLookup map, double ascent, double descent) {
    static Metrics of(TrueTypeFont font) {
      try {
        double em = font.getUnitsPerEm();
        return new Metrics(
            font,
            font.getUnicodeCmapLookup(),
            font.getHorizontalHeader().getAscender() / em,
            -font.getHorizontalHeader().getDescender() / em);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    double advance(int codePoint) {
      try {
        return (double) font.getAdvanceWidth(map.getGlyphId(codePoint)) / font.getUnitsPerEm();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
