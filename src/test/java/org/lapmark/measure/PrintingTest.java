package org.lapmark.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.print.NumberWords;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintForm.Units;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.SizeList;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.wording.Wording;

class PrintingTest {
  private static final Variant MEDIUM = Variant.ofSize("M");
  private static final PrintForm METRIC = PrintForm.DEFAULT.with(Units.METRIC);

  private static String print(String text, PrintForm form) {
    return print(text, form, new ExampleScope());
  }

  private static String print(String text, PrintForm form, Scope scope) {
    Findings findings = new Findings();
    TemplateText parsed = TemplateText.parse(ExampleScope.text(text), findings);
    assertEquals(List.of(), findings.sorted());
    StringBuilder all = new StringBuilder();
    for (Object part : parsed.print(scope, MEDIUM, form)) {
      all.append(part instanceof PrintedValue value ? value.text() : part);
    }
    return all.toString();
  }

  /** No-break spaces are shown as ~. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "338 mm | 338~mm (13~1/4~in)",
        "338 mm as cm | 33.8~cm",
        "338 mm as cm 0.5 | 34~cm",
        "338 mm as m | 0.338~m",
        "338 mm as m 0.1 | 0.34~m",
        "338 mm as mm 5 | 340~mm",
        "337.5 mm as mm | 337.5~mm",
        "337 mm + 0.5 mm as mm | 338~mm",
        "-337.5 mm as mm | −338~mm",
        "337.5 mm as mm 0.1 | 337.5~mm",
        "338 mm as in | 13~1/4~in",
        "338 mm as in 1/16 | 13~5/16~in",
        "338 mm as inches 1/16 | 13~5/16~in",
        "338 mm as both 1/16 | 338~mm (13~5/16~in)",
        "338 mm as metric | 338~mm",
        "338 mm as number | 338",
        "3/8 in as in | 3/8~in",
        "-3/8 in as in | −3/8~in",
        "5/16 in as in 1/16 | 5/16~in",
        "1/16 in as in | 1/16~in",
        "2 in as in | 2~in",
        "3/16 in | 5~mm (3/16~in)",
        "2 3/16 in | 56~mm (2~3/16~in)",
        "5/32 in as in | 5/32~in",
        "12.5 mm as mm | 12.5~mm",
        "25 mm / 2 as mm | 13~mm",
        "8 mm | 8~mm (5/16~in)",
        "10 mm | 10~mm (3/8~in)",
        "7 mm | 7~mm",
        "2 mm as inches | 2~mm",
        "3.3 mm | 3.3~mm (1/8~in)",
        "10 mm as in 1/4 | 3/8~in",
        "8 mm as at most | 8~mm (5/16~in)",
        "9.9 mm as at most | 9.9~mm (3/8~in)",
        "13.4 mm as mm 5 at most | 13~mm",
        "30 mm as at least | 30~mm (1~1/4~in)",
        "30 mm as at most | 30~mm (1~1/8~in)",
        "31 mm as in 1/16 at most | 1~3/16~in",
        "20 ft as ft | 20~ft",
        "40 in as ft | 3~3/8~ft",
        "45 in as yd 1/4 | 1~1/4~yd",
        "0 mm | 0~mm (0~in)",
        "seam - 10 mm | 0~mm (0~in)",
        "0.1 mm + 0.2 mm - 0.3 mm as mm | 0~mm",
        "12.4999999999999 mm as mm | 13~mm",
        "25 mm (1 in) | 25~mm (1~in)",
        "1 in (25 mm) | 25~mm (1~in)",
        "32 mm (1 1/4 in) | 32~mm (1~1/4~in)",
        "8 mm (5/16 in) | 8~mm (5/16~in)",
        "13 cm (5 1/16 in) | 13~cm (5~1/16~in)",
        "2.5 cm (1in) | 2.5~cm (1~in)",
        "25 mm (1 in) as metric | 25~mm",
        "25 mm (1 in) as inches | 1~in",
        "25 mm (1 in) as cm | 2.5~cm",
        "25 mm (1 in) as in | 1~in",
        "25 mm (1 in) as number | 25",
        "25 mm (1 in) * 2 | 50~mm (2~in)",
        "zip.stock | 20~cm (8~in), 18~cm (7~in)",
        "zip.stock as inches | 8~in, 7~in",
        "end_area | 150~cm² (23~in²)",
        "end_area as inches | 23~in²",
        "angle | 22.5°",
        "45 deg as number | 45",
        "straps | 2",
        "straps * 3 as number | 6",
        "2 / 3 | 0.667",
        "58 cm / pi / 1 in as number 1/8 | 7~1/4",
        "1 / 2 as number 1/16 | 1/2",
        "7 as number 1/8 | 7",
        "1200000 | 1200000",
        "flag | ✓",
        "not_flag | –"
      })
  void eachValueIsPrinted(String expression, String expected) {
    String printed = print("{" + expression + "}", PrintForm.DEFAULT);
    assertEquals(expected, printed.replace('\u00a0', '~'));
  }

  @Test
  void computedLengthsNeverVanish() {
    PrintForm inches = PrintForm.DEFAULT.with(Units.INCHES);
    assertEquals("10\u00a0mm (3/8\u00a0in)", PrintForm.DEFAULT.print(Quantity.length(10)));
    assertEquals("1\u00a0mm", PrintForm.DEFAULT.print(Quantity.length(1)));
    // Shorter than half of a ruler's finest step.
    assertEquals("0.2\u00a0mm", PrintForm.DEFAULT.print(Quantity.length(0.2)));
    assertEquals("0.2\u00a0mm", inches.print(Quantity.length(0.2)));
    assertEquals("−0.04\u00a0mm", METRIC.print(Quantity.length(-0.04)));
    assertEquals("0\u00a0mm (0\u00a0in)", PrintForm.DEFAULT.print(Quantity.length(0)));
    assertEquals("0\u00a0mm (0\u00a0in)", PrintForm.DEFAULT.print(Quantity.length(1e-7)));
  }

  @Test
  void theDocumentChoosesUnits() {
    assertEquals("338\u00a0mm", print("{338 mm}", METRIC));
    assertEquals("13\u00a01/4\u00a0in", print("{338 mm}", PrintForm.DEFAULT.with(Units.INCHES)));
    assertEquals(
        "13\u00a01/4\u00a0in (338\u00a0mm)",
        print("{338 mm}", PrintForm.DEFAULT.with(Units.INCHES_FIRST)));
    assertEquals(
        "1\u00a0in (25\u00a0mm)",
        print("{25 mm (1 in)}", PrintForm.DEFAULT.with(Units.INCHES_FIRST)));
    assertEquals(
        "13\u00a01/4", print("{338 mm as number}", PrintForm.DEFAULT.with(Units.INCHES_FIRST)));
    assertEquals("340\u00a0mm", print("{338 mm}", new PrintForm(Units.METRIC, 5, 8)));
    assertEquals("13\u00a05/16\u00a0in", print("{338 mm}", new PrintForm(Units.INCHES, 1, 16)));
    // An author's form is the author's, whatever the document's units.
    assertEquals("33.8\u00a0cm", print("{338 mm as cm}", PrintForm.DEFAULT.with(Units.INCHES)));
  }

  @Test
  void aUnitThatIsNotPrintedCannotRoundToZero() {
    assertEquals("1\u00a0mm", print("{1 mm}", METRIC));
    assertEquals("1\u00a0mm", print("{1 mm}", PrintForm.DEFAULT));
    assertEquals("1\u00a0cm²", print("{10 mm * 10 mm}", METRIC));
    assertThrows(FindingException.class, () -> print("{10 mm * 10 mm}", PrintForm.DEFAULT));
  }

  @Test
  void wordsComeFromTheDocumentsLanguage() {
    Map<String, String> words = new TreeMap<>();
    words.put("unit.in", "Zoll");
    words.put("truth.yes", "ja");
    PrintForm german = PrintForm.DEFAULT.with(NumberWords.of(new Wording(Locale.GERMANY, words)));
    assertEquals("33,8\u00a0cm", print("{338 mm as cm}", german));
    assertEquals("2,5\u00a0cm (1\u00a0Zoll)", print("{2.5 cm (1 in)}", german));
    assertEquals("ja", print("{flag}", german));
    assertEquals("–", print("{not_flag}", german));
  }

  @Test
  void textAroundPlaceholdersStays() {
    assertEquals("a {b} 10\u00a0mm\\c {}", print("a \\{b\\} {seam}\\c \\{\\}", METRIC));
    assertEquals("10\u00a0mm5\u00a0mm", print("{seam}{ cord + 0.5 mm }", METRIC));
    assertEquals("", print("", METRIC));
  }

  @Test
  void printedValuesKeepWhatTheyCameFrom() {
    TemplateText text = TemplateText.parse(ExampleScope.text("cut {seam*2 as cm}"), new Findings());
    PrintedValue value = (PrintedValue) text.print(new ExampleScope(), MEDIUM, METRIC).get(1);
    assertEquals("seam*2", value.expression());
    assertEquals(MEDIUM, value.variant());
    assertEquals(Quantity.length(20), value.exact());
    assertEquals("2\u00a0cm", value.text());
    assertEquals(6, value.position().column());
    assertEquals(6, value.position().length());
  }

  @Test
  void oneBrokenPlaceholderLeavesTheOthers() {
    Findings findings = new Findings();
    TemplateText text =
        TemplateText.parse(ExampleScope.text("{1 +} and {seam} and {x as y}"), findings);
    assertEquals(2, findings.sorted().size());
    assertEquals(3, text.parts().size());
  }

  @Test
  void aListBySizeIsLedByNames() {
    Findings findings = new Findings();
    TemplateText text = TemplateText.parse(ExampleScope.text("{depth}"), findings);
    List<PrintedValue> values = new ArrayList<>();
    String[] sizes = {"S", "M", "L"};
    for (int i = 0; i < sizes.length; i++) {
      Scope scope = new ExampleScope().with("depth", Quantity.length(200 + 40 * i));
      values.add((PrintedValue) text.print(scope, Variant.ofSize(sizes[i]), METRIC).get(0));
    }
    assertEquals("S 200\u00a0mm, M 240\u00a0mm, L 280\u00a0mm", SizeList.text(values, " ", ", "));
    assertEquals("240\u00a0mm", SizeList.text(List.of(values.get(1), values.get(1)), " ", ", "));
    assertEquals(
        "S 200\u00a0mm, M 240\u00a0mm",
        SizeList.text(List.of(values.get(0), values.get(1), values.get(1)), " ", ", "));
    assertEquals("", SizeList.text(List.of(), " ", ", "));
  }

  @Property(tries = 300)
  void inchesAreWithinHalfAStep(@ForAll @DoubleRange(min = 3, max = 5000) double millimetres) {
    for (int denominator : new int[] {1, 2, 8, 16, 32}) {
      if (millimetres < 25.4 / denominator / 2) {
        continue;
      }
      PrintForm form = new PrintForm(Units.INCHES, 1, denominator);
      assertClose(millimetres, print("{x}", form, scope(millimetres)), 25.4 / denominator / 2);
    }
  }

  @Property(tries = 300)
  void metricIsWithinHalfAStep(@ForAll @DoubleRange(min = -5000, max = 5000) double millimetres) {
    if (Math.abs(millimetres) < 2.5) {
      return;
    }
    for (double step : new double[] {0.1, 0.5, 1, 5}) {
      PrintForm form = new PrintForm(Units.METRIC, step, 8);
      assertClose(millimetres, print("{x}", form, scope(millimetres)), step / 2);
      assertClose(millimetres, print("{x as cm}", form, scope(millimetres)), step / 2);
      assertClose(millimetres, print("{x as m}", form, scope(millimetres)), step / 2);
    }
  }

  private static Scope scope(double millimetres) {
    return new ExampleScope().with("x", Quantity.length(millimetres));
  }

  private static void assertClose(double millimetres, String printed, double margin) {
    double read =
        Formula.parse(ExampleScope.text(printed)).amount(new ExampleScope(), Dimension.LENGTH);
    assertEquals(millimetres, read, margin * (1 + 1e-6), printed);
  }

  @Test
  void theDocumentsFontHasEverySign() throws IOException {
    String font = "/fonts/ttf/SourceSansPro/SourceSansPro-Regular.ttf";
    try (InputStream stream = PrintingTest.class.getResourceAsStream(font);
        TrueTypeFont parsed = new TTFParser().parse(new RandomAccessReadBuffer(stream))) {
      CmapLookup glyphs = parsed.getUnicodeCmapLookup();
      "½¼¾⅛⅜⅝⅞\u00a0\u2212°²✓–…"
          .codePoints()
          .forEach(sign -> assertTrue(glyphs.getGlyphId(sign) > 0, Character.toString(sign)));
    }
  }
}
