package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.lapmark.document.companion.Companion;
import org.lapmark.document.manual.SizeWords;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** What a size doesn't have isn't named in its texts, beyond the option that it hangs on. */
class AbsentThingsTest {
  private static final Path SHELF = Path.of("src", "test", "resources", "org", "lapmark", "shelf");

  private final DocumentWriter writer = new DocumentWriter(Specimen.templates());

  @Test
  void noSizeNamesWhatItDoesNotHave() throws IOException {
    int absences = 0;
    for (Path folder : folders()) {
      PatternSource source = PatternReader.read(folder, new Findings());
      for (String size : source.sizes().sizes()) {
        EvaluatedPattern pattern = Grader.grade(source, Variant.ofSize(size), new Findings());
        Set<String> absent = names(source);
        absent.removeAll(names(pattern.source()));
        if (!absent.isEmpty()) {
          absences++;
          String text = withoutOptions(pattern, text(pattern));
          for (String name : absent) {
            Matcher named =
                Pattern.compile(".{0,30}(?<!\\p{L})" + Pattern.quote(name) + "(?!\\p{L}).{0,30}")
                    .matcher(text);
            assertFalse(
                named.find(), () -> folder.getFileName() + ", " + size + ": " + named.group());
          }
          for (String name : names(pattern.source())) {
            assertTrue(text.contains(name), folder.getFileName() + ", " + size + ": " + name);
          }
        }
      }
    }
    assertTrue(absences > 2, "only " + absences + " sizes lack something");
  }

  private static List<Path> folders() throws IOException {
    List<Path> folders = new ArrayList<>();
    folders.add(SHELF.resolveSibling("publish").resolve("by-size"));
    for (Path home : List.of(Path.of("content"), SHELF)) {
      try (Stream<Path> inside = Files.list(home)) {
        inside.filter(Files::isDirectory).sorted().forEach(folders::add);
      }
    }
    return folders;
  }

  /** What has one name in every size; materials and tools that are used by nothing have none. */
  private static Set<String> names(PatternSource source) {
    Set<String> names = new TreeSet<>();
    source.hardware().forEach(thing -> names.add(plain(thing.name().source().text())));
    source.pieces().forEach(piece -> names.add(plain(piece.name().source().text())));
    source.steps().forEach(step -> names.add(plain(step.title().text())));
    names.removeIf(name -> name.contains("{"));
    return names;
  }

  /** What options are called, and why something can't be chosen, is said all the same. */
  private static String withoutOptions(EvaluatedPattern pattern, String text) {
    String left = text;
    for (var refusal : pattern.refusals()) {
      PrintForm form = pattern.source().masthead().form();
      String reason = plain(SizeWords.plain(pattern.reason(refusal, form)));
      assertTrue(left.contains(reason), reason);
      left = left.replace(reason, " ");
    }
    for (var option : pattern.source().options().options()) {
      left = left.replace(plain(option.label().text()), " ");
    }
    return left;
  }

  private String text(EvaluatedPattern pattern) {
    Findings findings = new Findings();
    byte[] page = writer.write(new Companion(List.of(pattern)), findings);
    assertEquals(List.of(), findings.sorted());
    String html = new String(page, StandardCharsets.UTF_8);
    return plain(
        html.substring(html.indexOf("<main>"))
            // Cautions have their own words for what an iron hangs on.
            .replaceAll("(?s)<section id=\"cautions\".*?</section>", " ")
            .replaceAll("(?s)<(script|svg).*?</\\1>", " ")
            .replaceAll("<[^>]*>", "")
            .replace("&amp;", "&"));
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ").strip().toLowerCase(Locale.ROOT);
  }
}
