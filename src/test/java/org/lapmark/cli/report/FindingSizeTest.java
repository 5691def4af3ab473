package org.lapmark.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.MessagePattern;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.cli.Samples;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Position;

/** However much stands in one place, a finding about it stays short in every form of report. */
class FindingSizeTest {
  private static final List<String> LETTERS =
      List.of(
          "a",
          "ä",
          "布",
          "\ud83e\uddf5",
          "e\u0301",
          "\u202e",
          "\u0007",
          "\t",
          "\"",
          "\\",
          "{'}",
          ", ");

  private final Random random = new Random(5);

  @Test
  void everyKindOfFindingIsShortInEveryForm() throws Exception {
    List<FindingCode> codes = codes();
    assertTrue(codes.size() > 300, codes.size() + " codes");
    for (FindingCode code : codes) {
      for (int i = 0; i < 3; i++) {
        Finding finding = finding(code);
        FolderReport checked =
            new FolderReport("x", "x", i == 0 ? "" : text(200), List.of(finding), 0, null);
        int text = bytes(TextReport.of(checked));
        assertTrue(text <= BriefFinding.MOST_BYTES, TextReport.of(checked));
        int json = difference(JsonReport.of(List.of(checked)), JsonReport.of(List.of(none())));
        assertTrue(json <= BriefFinding.MOST_BYTES, code.id() + " has " + json + " bytes as JSON");
        // The second finding of a code adds no rule.
        FolderReport twice =
            new FolderReport(
                "x", "x", checked.prefix(), List.of(finding, finding), 0, checked.failure());
        int sarif = difference(SarifReport.of(List.of(twice)), SarifReport.of(List.of(checked)));
        assertTrue(
            sarif <= BriefFinding.MOST_BYTES, code.id() + " has " + sarif + " bytes as SARIF");
      }
    }
  }

  @Test
  void whatIsCutShowsIt() {
    String list = "measure, ".repeat(200) + "last";
    Finding finding =
        Finding.of(
            Samples.Code.ODD_NAME,
            new Position("tote/a.yaml", 3, 5001, 5, "x".repeat(5000) + "wrong" + "y".repeat(5000)),
            "name",
            list);
    String message = FindingText.message(finding);
    assertTrue(message.contains("measure, measure, and 135 more"), message);
    BriefFinding told = BriefFinding.of(finding, "tote/a.yaml", new FindingText());
    assertTrue(told.excerpt().matches("…x+wrongy+…"), told.excerpt());
    assertTrue(told.message().endsWith("…"), told.message());
    assertTrue(told.arguments().get("name").toString().matches("measure, .*…"));
    Finding word = Finding.of(Samples.Code.ODD_NAME, Position.ofFile("a"), "name", "w".repeat(900));
    assertTrue(FindingText.message(word).matches(".*w{180}…w{40}.*"), FindingText.message(word));
  }

  @Test
  void whatIsShortIsWhole() {
    Finding finding =
        Finding.of(
            Samples.Code.ODD_NAME,
            new Position("tote/a.yaml", 3, 4, 5, "   wrong \"line\""),
            "name",
            "one, two");
    BriefFinding told = BriefFinding.of(finding, "tote/a.yaml", new FindingText());
    assertEquals("   wrong \"line\"", told.excerpt());
    assertEquals(Map.of("name", "one, two"), told.arguments());
    assertEquals(FindingText.message(finding), told.message());
    assertEquals(FindingText.hint(finding), told.hint());
  }

  private static FolderReport none() {
    return new FolderReport("x", "x", "", List.of(), 0, null);
  }

  private static int difference(String larger, String smaller) {
    return bytes(larger) - bytes(smaller);
  }

  private static int bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }

  /** A finding with arguments and a line of any length, made of whatever is written longest. */
  private Finding finding(FindingCode code) throws IOException {
    Map<String, Object> arguments = new LinkedHashMap<>();
    for (String name : names(code)) {
      arguments.put(name, text(3000));
    }
    String line = text(20_000);
    int length = line.codePointCount(0, line.length());
    int column = 1 + random.nextInt(length + 1);
    Position position =
        random.nextInt(8) == 0
            ? Position.ofFile(text(400))
            : new Position(text(400), 123_456, column, 1 + random.nextInt(length), line);
    Finding finding = new Finding(code, position, arguments);
    // Where a number is needed no text will do.
    for (String name : List.copyOf(arguments.keySet())) {
      try {
        FindingText.message(finding);
        FindingText.hint(finding);
      } catch (IllegalArgumentException e) {
        arguments.put(name, Integer.MAX_VALUE);
        finding = new Finding(code, position, arguments);
      }
    }
    return finding;
  }

  private String text(int most) {
    String letter = LETTERS.get(random.nextInt(LETTERS.size()));
    boolean mixed = random.nextBoolean();
    StringBuilder text = new StringBuilder();
    int length = 1 + random.nextInt(most);
    while (text.length() < length) {
      text.append(mixed ? LETTERS.get(random.nextInt(LETTERS.size())) : letter);
    }
    return text.toString();
  }

  private static Set<String> names(FindingCode code) throws IOException {
    Set<String> names = new TreeSet<>();
    Properties words = new Properties();
    try (InputStream stream = code.getClass().getResourceAsStream("findings.properties")) {
      words.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    }
    for (String part : List.of("message", "hint")) {
      String pattern = words.getProperty(code.id() + "." + part);
      // Those that stand in a branch of another are there, too.
      MessagePattern parts = new MessagePattern(pattern);
      for (int i = 0; i < parts.countParts(); i++) {
        if (parts.getPartType(i) == MessagePattern.Part.Type.ARG_NAME) {
          names.add(parts.getSubstring(parts.getPart(i)));
        }
      }
    }
    return names;
  }

  private static List<FindingCode> codes() throws ClassNotFoundException {
    List<FindingCode> codes = new ArrayList<>();
    for (JavaClass type :
        new ClassFileImporter()
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages("org.lapmark")) {
      if (type.isEnum() && type.isAssignableTo(FindingCode.class)) {
        for (Object constant : Class.forName(type.getName()).getEnumConstants()) {
          codes.add((FindingCode) constant);
        }
      }
    }
    return codes;
  }
}
