package org.lapmark.document.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.junit.jupiter.api.Test;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.Specimen;
import org.lapmark.drawing.Style;

class GlyphsTest {
  private static FontFiles files;
  private static Glyphs glyphs;

  @BeforeContainer
  @org.junit.jupiter.api.BeforeAll
  static void load() {
    files = FontFiles.load();
    glyphs = new Glyphs(files);
  }

  @Test
  void listsWhatTheFontsLack() {
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    assertEquals(List.of("✂", "龍"), writer.missingGlyphs("cut ✂ 龍 and 龍 again"));
    assertEquals(List.of(), writer.missingGlyphs("½ in × 3⅛ — “Größe” ☐ naïve\n\tœuvre"));
    assertEquals(List.of("😀"), writer.missingGlyphs("😀"));
  }

  @Test
  void replacesWhatTheFontsLackAndDropsControls() {
    assertEquals("a☐b c", glyphs.printable("a龍b\u0000\u0007\u202E\nc"));
    assertEquals("lone half: ", glyphs.printable("lone half: \uD83D"));
  }

  @Property(tries = 300)
  void anyTextCanBeMeasuredAndHoldsNothingMissing(@ForAll String text) {
    String printable = glyphs.printable(text);
    assertTrue(glyphs.missing(printable).isEmpty());
    assertEquals(printable, glyphs.printable(printable));
  }

  @Test
  void measuresByTheFontsOwnAdvances() {
    FontLettering lettering = new FontLettering(files, glyphs);
    Style regular = new Style(0, List.of(), 0, -1, 10, false, 0);
    Style bold = new Style(0, List.of(), 0, -1, 10, true, 0);
    // The figures of this face are all 0.497 em wide.
    assertEquals(5 * 0.497 * 10 * 25.4 / 72, lettering.width("12345", regular), 1e-9);
    assertTrue(lettering.width("Grainline", bold) > lettering.width("Grainline", regular));
    assertTrue(lettering.ascent(regular) > 2.3 && lettering.ascent(regular) < 4);
    assertTrue(lettering.descent(regular) > 0.6 && lettering.descent(regular) < 1.5);
    assertEquals(
        2 * lettering.ascent(regular),
        lettering.ascent(new Style(0, List.of(), 0, -1, 20, false, 0)),
        1e-9);
  }
}
