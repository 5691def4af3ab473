package org.lapmark.document.template;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.MessageFormat;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.Specimen;
import org.lapmark.document.section.Sections;
import org.lapmark.wording.Wording;

/** The words of the templates, British and American. */
class WordsTest {
  private static final Pattern BRITISH =
      Pattern.compile(
          "\\b(zips?|selvedges?|centre|colou?rs?|labours?|fibres?|\\w*metres?|offcuts?)\\b");

  private final DocumentWriter writer = new DocumentWriter(Specimen.templates());

  @Test
  void americanWordsHaveNothingBritish() {
    Map<String, String> wrong = new TreeMap<>();
    writer
        .wording(Locale.US)
        .messages()
        .forEach(
            (key, words) -> {
              // What is looked for in the author's text isn't printed.
              String printed = words.replaceAll("\\{[^{}]*\\}", "");
              if (!key.endsWith(".sought") && BRITISH.matcher(printed).find()) {
                wrong.put(key, words);
              }
            });
    assertEquals(Map.of(), wrong);
  }

  @Test
  void americanWordsOnlyLieOverBritishOnes() {
    assertEquals(
        writer.wording(Locale.UK).messages().keySet(),
        writer.wording(Locale.US).messages().keySet());
  }

  @Test
  void saysWhichWordsALanguageHasInEnglishOnly() throws IOException {
    // All that there is in French.
    Properties sought = new Properties();
    try (Reader reader = Files.newBufferedReader(Path.of("templates/words/kinds/fr.properties"))) {
      sought.load(reader);
    }
    assertEquals(List.of(), writer.lackingWords(Locale.UK));
    assertEquals(List.of(), writer.lackingWords(Locale.forLanguageTag("en-NZ")));
    assertEquals(
        writer.wording(Locale.ENGLISH).messages().keySet().stream()
            .filter(key -> !sought.containsKey(key))
            .sorted()
            .toList(),
        writer.lackingWords(Locale.FRENCH));
    assertEquals(
        writer.wording(Locale.FRENCH).messages().keySet().stream()
            .filter(key -> !key.endsWith(".sought"))
            .sorted()
            .toList(),
        writer.wording(Locale.ENGLISH).messages().keySet().stream()
            .filter(key -> !key.endsWith(".sought"))
            .sorted()
            .toList());
    Map<String, byte[]> files = new TreeMap<>(Specimen.templates().files());
    files.put("words/fr.properties", "page.number = Page {page}".getBytes(UTF_8));
    files.put("words/walk/fr-CA.properties", "walk.title = Coutures".getBytes(UTF_8));
    DocumentWriter french = new DocumentWriter(new Templates(files));
    assertFalse(french.lackingWords(Locale.FRANCE).contains("page.number"));
    assertTrue(french.lackingWords(Locale.FRANCE).contains("walk.title"));
    assertFalse(french.lackingWords(Locale.CANADA_FRENCH).contains("walk.title"));
    assertTrue(french.lackingWords(Locale.CANADA_FRENCH).contains("walk.lead"));
  }

  @Test
  void whatIsLookedForInATextIsInItsOwnLanguage() {
    String seam = "stitch.seam.sought";
    assertTrue(writer.wording(Locale.US).messages().containsKey(seam));
    assertFalse(writer.wording(Locale.GERMAN).messages().containsKey(seam));
    Map<String, byte[]> files = new TreeMap<>(Specimen.templates().files());
    files.put("words/de.properties", (seam + " = naht").getBytes(UTF_8));
    files.put("words/de-AT.properties", "page.number = Seite {page}".getBytes(UTF_8));
    DocumentWriter german = new DocumentWriter(new Templates(files));
    assertEquals("naht", german.wording(Locale.forLanguageTag("de-AT")).messages().get(seam));
  }

  @Test
  void everyWordIsAMessage() {
    for (Locale language : List.of(Locale.UK, Locale.US)) {
      writer
          .wording(language)
          .messages()
          .forEach(
              (key, words) -> {
                MessageFormat format = new MessageFormat(words, language);
                assertTrue(format.getArgumentNames().isEmpty() || format.usesNamedArguments(), key);
              });
    }
  }

  @Test
  void everyHazardHasATitleALineAndAText() {
    Wording words = writer.wording(Locale.UK);
    List<String> hazards = writer.hazards(Locale.UK);
    assertTrue(hazards.containsAll(List.of("blades", "iron", "melting", "load", "cycling")));
    List<String> missing = new ArrayList<>();
    for (String hazard : hazards) {
      for (String part : List.of("title", "short", "text")) {
        String key = "caution." + hazard + "." + part;
        if (!words.messages().containsKey(key)) {
          missing.add(key);
        }
      }
    }
    assertEquals(List.of(), missing);
    assertFalse(
        words.text("caution.load.text", Map.of("limit", "none")).contains("none"), "no limit");
    assertTrue(words.text("caution.load.short", Map.of("limit", "2 kg")).contains("2 kg"));
  }

  @Test
  void everySectionHasATitle() {
    Wording words = writer.wording(Locale.UK);
    Sections.pages().forEach(page -> assertFalse(words.text(page + ".title").isBlank(), page));
  }
}
