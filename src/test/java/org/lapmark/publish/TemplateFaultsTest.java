package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.template.TemplateCode;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Position;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.Request;

/** What is wrong in templates of a user's own is told with file and line, by a check already. */
class TemplateFaultsTest {
  private static final Path FAULTS =
      Path.of("src/test/resources/org/lapmark/publish/template-faults.txt");

  /** As little as a pattern can be. */
  private static final Map<String, String> PATTERN =
      new TreeMap<>(
          Map.of(
              "pattern.yaml",
              """
              format: 1
              title: Coaster
              studio: Reed & Co
              language: en-GB
              edition: {name: "1", date: 2026-05-04}
              tools:
                shears: {name: shears, kind: shears}
              materials:
                felt: {name: felt, usable_width: 45 cm (18 in), thickness: 3 mm, no_grain: true}
              panels:
                round: {circle: {diameter: across}}
              pieces:
                - {number: 1, name: Round, panel: round, allowance: 0 mm,
                   cut: [{material: felt, count: 1}]}
              """,
              "sizes.csv",
              "measure,unit,S,M\nacross,mm,90,100\n",
              "steps/010-cut.md",
              "---\nid: cut\ntitle: Cut\nstage: Cutting\nuses: [shears]\n---\nCut it out.\n"));

  @TempDir Path home;
  private Path pattern;

  @BeforeEach
  void writePattern() throws IOException {
    pattern = home.resolve("coaster");
    for (Map.Entry<String, String> file : PATTERN.entrySet()) {
      Path path = pattern.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }

  private record Fault(String name, List<String> changes, List<String> expected) {}

  private static List<Fault> faults() throws IOException {
    List<Fault> faults = new ArrayList<>();
    for (String line : Files.readAllLines(FAULTS)) {
      if (line.startsWith("== ")) {
        faults.add(new Fault(line.substring(3), new ArrayList<>(), new ArrayList<>()));
      } else if (line.startsWith("> ")) {
        faults.get(faults.size() - 1).expected().add(line.substring(2));
      } else if (!line.startsWith("#")) {
        faults.get(faults.size() - 1).changes().add(line);
      }
    }
    return faults;
  }

  @TestFactory
  Stream<DynamicTest> everyFaultIsToldWhereItIs() throws IOException {
    return faults().stream()
        .map(fault -> DynamicTest.dynamicTest(fault.name(), () -> check(fault)));
  }

  @Test
  void nearMissesAreFine() throws IOException {
    List<String> changes = new ArrayList<>();
    faults().stream()
        .filter(fault -> fault.name().startsWith("near "))
        .forEach(fault -> changes.addAll(fault.changes()));
    check(new Fault("near misses", changes, List.of()));
  }

  @Test
  void everyKindHasAFaultAndANearMiss() throws IOException {
    Set<String> codes = new TreeSet<>();
    Set<String> near = new TreeSet<>();
    for (Fault fault : faults()) {
      fault.expected().forEach(expected -> codes.add(expected.split(" ")[0]));
      if (fault.name().startsWith("near ")) {
        near.add(fault.name().split("[ :]")[1]);
        assertEquals(List.of(), fault.expected(), fault.name());
      } else {
        assertFalse(fault.expected().isEmpty(), fault.name());
      }
    }
    for (TemplateCode code : TemplateCode.values()) {
      assertTrue(codes.contains(code.id()), code.id());
      assertTrue(near.contains(code.id()), code.id());
    }
  }

  private void check(Fault fault) throws IOException {
    Path templates = Files.createTempDirectory(home, "t").resolve("mine");
    change(templates, fault.changes());
    List<Outcome> outcomes = outcomes(templates);
    outcomes.forEach(outcome -> assertEquals(Optional.empty(), outcome.failure()));
    List<Finding> found = new ArrayList<>();
    for (Outcome outcome : outcomes) {
      if (outcome.folder().equals(templates)) {
        found.addAll(outcome.result().findings().sorted());
      } else {
        assertEquals(List.of(), outcome.result().findings().sorted());
      }
    }
    assertEquals(
        fault.expected(), found.stream().map(TemplateFaultsTest::written).distinct().toList());
    for (Finding finding : found) {
      assertFalse(FindingText.hint(finding).isBlank());
      assertTrue(FindingText.message(finding).length() < 400, FindingText.message(finding));
    }
  }

  private List<Outcome> outcomes(Path templates) throws IOException {
    return new Publisher(TemplateFolder.replacing(templates), Optional.of(templates))
        .check(List.of(pattern), new Listener() {});
  }

  private static String written(Finding finding) {
    Position position = finding.position();
    String file = position.file().replaceFirst("^mine/?", "");
    if (position.line() == 0) {
      return (finding.code().id() + " " + file).strip();
    }
    int[] points = position.lineText().codePoints().toArray();
    String text =
        new String(
            points,
            position.column() - 1,
            Math.min(position.length(), points.length - position.column() + 1));
    // Of a style stated twice, it depends on the files' order which place is named.
    String shown =
        finding.code() == TemplateCode.STYLE_TWICE ? "*" : text.replaceAll("[\\p{Cf}\ufffd]", "?");
    return (finding.code().id() + " " + file + " " + shown).strip();
  }

  private static void change(Path templates, List<String> changes) throws IOException {
    for (Map.Entry<String, byte[]> file : TemplateFolder.bundled().files().entrySet()) {
      Path target = templates.resolve(file.getKey());
      Files.createDirectories(target.getParent());
      Files.write(target, file.getValue());
    }
    Path file = null;
    String old = null;
    for (String change : changes) {
      String text = change.substring(change.indexOf(' ') + 1).replace("\\n", "\n");
      switch (change.substring(0, change.indexOf(' '))) {
        case "@" -> file = templates.resolve(text);
        case "-" -> old = text;
        case "+" -> {
          String content = Files.readString(file);
          assertTrue(content.contains(old), old);
          int at = content.indexOf(old);
          Files.writeString(
              file, content.substring(0, at) + text + content.substring(at + old.length()));
        }
        case "++" -> {
          ByteArrayOutputStream all = new ByteArrayOutputStream();
          all.writeBytes(Files.readAllBytes(file));
          all.write('\n');
          if (text.contains("\\x00e4")) {
            all.writeBytes(new byte[] {'x', ' ', '=', ' ', (byte) 0xe4});
          } else {
            String meant = text.replace("\\\\u", "\u0000").replace("\\u202e", "\u202e");
            all.writeBytes(meant.replace("\u0000", "\\u").getBytes(StandardCharsets.UTF_8));
          }
          all.write('\n');
          Files.write(file, all.toByteArray());
        }
        case "!" -> {
          if (text.equals("delete")) {
            Files.delete(file);
          } else {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text + "\n");
          }
        }
        default -> throw new IllegalArgumentException(change);
      }
    }
  }

  @Test
  void eachPatternIsSpared() throws IOException {
    Path templates = home.resolve("mine");
    change(templates, List.of("@ document/sections/cover.ftlh", "++ <p>${titel}</p>"));
    Path output = home.resolve("out");
    List<Outcome> outcomes =
        new Publisher(TemplateFolder.replacing(templates), Optional.of(templates))
            .publish(
                List.of(pattern),
                new Request(List.of("M"), List.of(Paper.A4), output),
                new Listener() {});
    assertEquals(
        List.of("coaster", "mine"),
        outcomes.stream().map(outcome -> outcome.folder().getFileName().toString()).toList());
    assertEquals(List.of(), outcomes.get(0).result().written());
    assertEquals(
        List.of("template-value document/sections/cover.ftlh titel"),
        outcomes.get(1).result().findings().sorted().stream()
            .map(TemplateFaultsTest::written)
            .toList());
    assertTrue(Files.notExists(output.resolve("coaster")));
  }
}
