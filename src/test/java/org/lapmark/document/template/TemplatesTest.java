package org.lapmark.document.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.Specimen;
import org.lapmark.document.pdf.FontFiles;
import org.lapmark.document.pdf.Glyphs;
import org.lapmark.document.pdf.Imprint;
import org.lapmark.document.pdf.PdfBook;
import org.lapmark.document.setting.HtmlPages;
import org.lapmark.document.setting.RecordModel;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.wording.Wording;

/** Words, styles and templates, and what a template can't do. */
class TemplatesTest {
  private static Templates templates(String... pathsAndTexts) {
    Map<String, byte[]> files = new TreeMap<>();
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      files.put(pathsAndTexts[i], pathsAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return new Templates(files);
  }

  @Test
  void layWordsOfARegionOverThoseOfItsLanguage() {
    Templates templates =
        templates(
            "words/en.properties", "fastener = zip\nedge = selvedge",
            "words/en-US.properties", "fastener = zipper",
            "words/paper/en.properties", "tile = Tile {code}",
            "words/paper/en-US.properties", "tile = Sheet {code}",
            "words/nl.properties", "edge = zelfkant");
    Wording british = Words.of(templates, Locale.UK);
    assertEquals("zip", british.text("fastener"));
    assertEquals("Tile A1", british.text("tile", Map.of("code", "A1")));
    Wording american = Words.of(templates, Locale.forLanguageTag("en-US"));
    assertEquals("zipper", american.text("fastener"));
    assertEquals("selvedge", american.text("edge"));
    assertEquals("Sheet A1", american.text("tile", Map.of("code", "A1")));
    Wording dutch = Words.of(templates, Locale.forLanguageTag("nl-NL"));
    assertEquals("zelfkant", dutch.text("edge"));
    assertEquals("zip", dutch.text("fastener"));
  }

  @Test
  void everyWordOfARegionExistsInTheBase() {
    Templates templates = Specimen.templates();
    Map<String, String> base = Words.of(templates, Locale.ENGLISH).messages();
    templates.files().keySet().stream()
        .filter(path -> path.startsWith("words/") && path.contains("en-"))
        .forEach(
            path ->
                PropertyFile.read(templates.text(path))
                    .keySet()
                    .forEach(key -> assertTrue(base.containsKey(key), path + ": " + key)));
  }

  @Test
  void readStylesOfAllFolders() {
    StyleSheet styles =
        Styles.of(
            templates(
                "drawing/styles.properties",
                "cutting.stroke = 0.6\ncutting.dash = 4 1.5\ncutting.grey = 0.2",
                "document/styles.properties",
                "page-number.size = 9\npage-number.bold = true"));
    assertEquals(new Style(0.6, List.of(4.0, 1.5), 0.2, -1, 0, false, 0), styles.style("cutting"));
    assertEquals(new Style(0, List.of(), 0, -1, 9, true, 0), styles.style("page-number"));
    assertThrows(
        IllegalArgumentException.class,
        () -> Styles.of(templates("drawing/styles.properties", "cutting.colour = red")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
        "${\"freemarker.template.utility.ObjectConstructor\"?new()(\"java.lang.Object\")}",
        "${name?api.getClass()}",
        "${name.class}",
        "<#include \"/etc/passwd\">",
        "<#include \"../../pom.xml\">",
        "${say(\"no-such-word\")}",
        "${missing}",
      })
  void reachNothingButTheirValues(String template) {
    TemplateEngine engine = new TemplateEngine(templates("a.ftlh", template));
    Wording none = new Wording(Locale.UK, Map.of());
    assertThrows(
        IllegalStateException.class, () -> engine.fill("a.ftlh", Map.of("name", "x"), none));
  }

  @Test
  void escapeWhatTheyAreGiven() {
    TemplateEngine engine =
        new TemplateEngine(
            templates("a.ftlh", "<p title=\"${name}\">${say(\"hello\", {\"name\": name})}</p>"));
    Wording words = new Wording(Locale.UK, Map.of("hello", "Hello {name}"));
    assertEquals(
        "<p title=\"&lt;b&gt; &amp; &quot;\">Hello &lt;b&gt; &amp; &quot;</p>",
        engine.fill("a.ftlh", Map.of("name", "<b> & \""), words));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<img src='file:///etc/passwd' alt='x'/>",
        "<img src='http://localhost:1/a.png' alt='x'/>",
        "<img src='data:image/png;base64,AAAA' alt='x'/>",
        "<object type='lapmark/drawing' data='nothing' alt='x' style='width:5mm;height:5mm'/>",
        "<link rel='stylesheet' href='file:///etc/passwd'/>",
        "<p style='background-image: url(jar:file:///a.jar!/b.png)'>x</p>",
        "<p style='no-such-property: 1'>x</p>",
      })
  void neverFetchAndNeverPassAWarning(String addition) throws Exception {
    String html =
        "<html lang='en'><head><title>t</title><meta name='subject' content='s'/>"
            + "<meta name='description' content='s'/>"
            + "<style>html { font-family: 'Source Sans Pro' }</style>";
    boolean inHead = addition.startsWith("<link");
    String hostile =
        html + (inHead ? addition : "") + "</head><body><p>a</p>" + (inHead ? "" : addition);
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    Imprint imprint = new Imprint("t", "a", "s", "en", LocalDate.of(2027, 1, 1), "p");
    FontFiles files = FontFiles.load();
    try (PdfBook book = new PdfBook(imprint, writer.styles(), files, new Glyphs(files))) {
      HtmlPages.render(book, html + "</head><body><p>a</p></body></html>", Map.of(), 0);
      assertEquals(1, book.pageCount());
    }
    try (PdfBook book = new PdfBook(imprint, writer.styles(), files, new Glyphs(files))) {
      assertThrows(
          IllegalStateException.class,
          () -> HtmlPages.render(book, hostile + "</body></html>", Map.of(), 0));
    }
  }

  /** A record of each kind of component. */
  private record Sample(
      String text, int number, Optional<Inner> inner, Optional<Inner> none, List<Object> runs) {}

  private record Inner(boolean so) {}

  @Test
  void seeRecordsAsMaps() {
    RecordModel model = new RecordModel(new Glyphs(FontFiles.load()));
    Map<String, Object> map =
        model.map(
            new Sample(
                "a\u0001龍", 3, Optional.of(new Inner(true)), Optional.empty(), List.of("x")));
    Map<String, Object> wanted = new LinkedHashMap<>();
    wanted.put("text", "a☐");
    wanted.put("number", 3);
    wanted.put("inner", Map.of("so", true));
    wanted.put("runs", List.of("x"));
    assertEquals(wanted, map);
    assertEquals(List.copyOf(wanted.keySet()), List.copyOf(map.keySet()));
    assertFalse(map.containsKey("none"));
  }
}
