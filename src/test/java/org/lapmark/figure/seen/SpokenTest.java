package org.lapmark.figure.seen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is said of a figure are whole sentences, which leave nothing out that is lettered in it. */
class SpokenTest {
  /** What no reader may hear: names with an underscore, placeholders, and words in quotes alone. */
  private static final Pattern RAW =
      Pattern.compile(
          "[\\p{L}\\d]_[\\p{L}\\d]|[{}]|\\$|‘|’(?!\\p{L})|\\bnull\\b|<|>"
              + "|“(top|bottom|left|right|outer|inner|upper|lower|start|end|rim|all)”");

  private static final Pattern MEASURE = Pattern.compile("\\d (mm|cm|in)\\b");

  private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?])\\s+(?=\\S)");

  static List<Path> folders() throws IOException {
    return Shown.folders();
  }

  @ParameterizedTest
  @MethodSource("folders")
  void allThatIsLetteredIsSaid(Path folder) throws IOException {
    List<String> found = new ArrayList<>();
    for (Shown.One one : new Shown(folder).all(List.of(Shown.Cut.SCREEN))) {
      SeenFigure figure = SeenFigure.read(one.svg());
      faults(figure).forEach(fault -> found.add(one.name() + ": " + fault));
    }
    assertEquals("", String.join("\n", found));
  }

  @Test
  void allThatIsLetteredInOperationsIsSaid() throws IOException {
    List<String> found = new ArrayList<>();
    for (Shown.One one : Shown.operations()) {
      SeenFigure figure = SeenFigure.read(one.svg());
      faults(figure).forEach(fault -> found.add(one.name() + ": " + fault));
    }
    assertEquals("", String.join("\n", found));
  }

  private static List<String> faults(SeenFigure figure) {
    String said = spaced(figure.words());
    List<String> faults = new ArrayList<>(faults(said));
    Set<String> words = words(said);
    for (SeenFigure.Text text : figure.texts()) {
      String line = spaced(text.words());
      boolean whole = said.toLowerCase().contains(line.toLowerCase());
      boolean measured = MEASURE.matcher(line).find();
      if (!whole && (measured || !words.containsAll(words(line)))) {
        faults.add("“" + line + "” isn’t said in: " + said);
      }
    }
    return faults;
  }

  private static List<String> faults(String said) {
    List<String> faults = new ArrayList<>();
    if (said.isBlank()) {
      return List.of("nothing is said");
    }
    if (!said.matches("(?s).*[.!?]”?$")) {
      faults.add("no full stop: " + said);
    }
    if (RAW.matcher(said).find()) {
      faults.add("raw: " + said);
    }
    for (String sentence : SENTENCE_END.split(said)) {
      int first = sentence.codePointAt(0);
      if (!Character.isUpperCase(first) && !Character.isDigit(first) && !sentence.startsWith("“")) {
        faults.add("no sentence: " + sentence);
      }
    }
    return faults;
  }

  private static Set<String> words(String text) {
    return Arrays.stream(text.toLowerCase().split("[^\\p{L}\\d/]+"))
        .filter(word -> !word.isEmpty())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String spaced(String text) {
    return text.replaceAll("[\\s\u00a0\u202f]+", " ").strip();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A strip, 20 mm wide. On it: a zip.|0",
        "A strip, 20 mm wide|1",
        "a strip, 20 mm wide.|1",
        "A strip along end_seam.|1",
        "A strip along {width}.|1",
        "A strip. and a zip.|1",
      })
  void whatIsNoSentenceIsFound(String said, int count) {
    assertEquals(count, faults(said).size());
  }
}
