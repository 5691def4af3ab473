package org.lapmark.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.text.markdown.StepsReader;

class FaultsTest {
  private static final Pattern REPEATED = Pattern.compile("«(.+?)×(\\d+)»");
  private static final Pattern NUMBERED = Pattern.compile("\\\\u([0-9a-f]{4})");

  record Case(String heading, String text) {
    String expected() {
      return heading.replace(" steps", "");
    }

    boolean fine() {
      return heading.startsWith("fine ");
    }
  }

  static List<Case> cases() throws IOException {
    List<Case> cases = new ArrayList<>();
    try (InputStream stream = FaultsTest.class.getResourceAsStream("text-faults.txt")) {
      String all = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      for (String section : all.split("(?m)^== ")) {
        if (!section.startsWith("#")) {
          String[] parts = section.split("\n", 2);
          Matcher repeated = REPEATED.matcher(parts[1]);
          String text =
              repeated.replaceAll(
                  match ->
                      Matcher.quoteReplacement(
                          match.group(1).repeat(Integer.parseInt(match.group(2)))));
          text =
              NUMBERED
                  .matcher(text)
                  .replaceAll(match -> String.valueOf((char) Integer.parseInt(match.group(1), 16)));
          cases.add(new Case(parts[0], text));
        }
      }
    }
    return cases;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void findsWhatIsWrongAndNothingElse(Case sample) {
    Findings findings = new Findings();
    if (sample.heading().contains(" steps")) {
      StepsReader.read(Samples.steps(sample.text()), Samples.TARGETS, findings);
    } else {
      Samples.read(sample.text(), findings);
    }
    List<String> found = findings.sorted().stream().map(FaultsTest::described).toList();
    assertEquals(sample.fine() ? List.of() : List.of(sample.expected()), found);
    for (Finding finding : findings.sorted()) {
      assertFalse(FindingText.message(finding).matches(".*[{}].*"), FindingText.message(finding));
      assertFalse(FindingText.hint(finding).isBlank());
    }
  }

  private static String described(Finding finding) {
    return finding.code().id()
        + " "
        + finding.position().line()
        + ":"
        + finding.position().column()
        + "+"
        + finding.position().length();
  }

  @Test
  void everyCodeHasBothAFaultAndANearMiss() throws IOException {
    Set<String> missing = new LinkedHashSet<>();
    for (TextCode code : TextCode.values()) {
      missing.add(code.id());
      missing.add("fine " + code.id());
    }
    for (Case sample : cases()) {
      missing.removeIf(
          id -> Stream.of("", " steps").anyMatch(s -> sample.heading().equals(id + s)));
      missing.remove(sample.heading().split(" ")[0]);
    }
    assertEquals(Set.of(), missing);
  }
}
