package org.lapmark.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.ibm.icu.text.MessagePattern;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.lapmark.FindingWordsTest;
import org.lapmark.check.rule.Rule;
import org.lapmark.document.template.TemplateCode;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Position;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.lay.LayCode;
import org.lapmark.measure.MeasureCode;
import org.lapmark.panel.PanelCode;
import org.lapmark.source.Kept;
import org.lapmark.source.SourceCode;
import org.lapmark.source.derived.DerivedCode;
import org.lapmark.source.drawing.DrawingCode;
import org.lapmark.source.drawing.xml.XmlCode;
import org.lapmark.source.folder.FolderCode;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.mark.MarkCode;
import org.lapmark.source.outside.OutsideCode;
import org.lapmark.source.sizes.SizesCode;
import org.lapmark.source.yaml.YamlCode;
import org.lapmark.text.TextCode;

/** The page of the reference that lists every kind of finding, as its words make it. */
class FindingsPageTest {
  private static final String PAGE = "findings.md";

  /** Where a message needs a number. */
  private static final int SEVERAL = 2;

  private static Map<String, List<FindingCode>> sections() {
    Map<String, List<FindingCode>> sections = new LinkedHashMap<>();
    sections.put("Folders and files", List.of(FolderCode.values()));
    sections.put("YAML, whatever its keys", List.of(YamlCode.values()));
    sections.put("Keys and their values", List.of(KeyCode.values()));
    sections.put("What the files state", List.of(SourceCode.values()));
    sections.put("Panels derived from others", List.of(DerivedCode.values()));
    sections.put("Marks on panels", List.of(MarkCode.values()));
    sections.put("The table of sizes", List.of(SizesCode.values()));
    sections.put("Drawings as XML", List.of(XmlCode.values()));
    sections.put("Drawings of panels", List.of(DrawingCode.values()));
    sections.put("Pictures and films from outside", List.of(OutsideCode.values()));
    sections.put("Formulas and placeholders", List.of(MeasureCode.values()));
    sections.put("Steps, notes and other texts", List.of(TextCode.values()));
    sections.put("Figures", List.of(FigureCode.values()));
    sections.put("Panels", List.of(PanelCode.values()));
    sections.put("Pieces, seams and options, in a size", List.of(GradeCode.values()));
    sections.put("Laying on cloth", List.of(LayCode.values()));
    sections.put("Rules over a pattern as written", codes(Rules.AS_WRITTEN));
    sections.put("Rules over each variant", codes(Rules.IN_A_VARIANT));
    sections.put("Rules from size to size", codes(Rules.ACROSS_SIZES));
    sections.put("Templates of one’s own", List.of(TemplateCode.values()));
    return sections;
  }

  /** What the floors below can find as well stands with them. */
  private static List<FindingCode> codes(List<? extends Rule<?>> rules) {
    return rules.stream()
        .flatMap(rule -> rule.codes().stream())
        .filter(RulesTest::isOfRules)
        .toList();
  }

  @Test
  void everyKindIsOnThePageOnce() throws ClassNotFoundException {
    assertEquals(
        FindingWordsTest.codes().stream().map(FindingCode::id).sorted().toList(),
        sections().values().stream().flatMap(List::stream).map(FindingCode::id).sorted().toList());
  }

  @Test
  void thePageIsThatOfTheWords() throws IOException {
    StringBuilder page =
        new StringBuilder(
            Files.readString(
                Path.of("src/test/resources/org/lapmark/source/reference/pages", PAGE)));
    for (Map.Entry<String, List<FindingCode>> section : sections().entrySet()) {
      page.append("\n## ").append(section.getKey());
      page.append("\n\n| Code | Weight | What it says | What to do |\n| --- | --- | --- | --- |\n");
      for (FindingCode code : section.getValue()) {
        page.append(row(code));
      }
    }
    Kept.hold("src/readme/reference/" + PAGE, page.toString());
  }

  private static String row(FindingCode code) throws IOException {
    Finding sample = sample(code);
    String message = cell(FindingText.message(sample));
    String hint = cell(FindingText.hint(sample));
    assertFalse(message.isEmpty() || hint.isEmpty(), code.id());
    return Stream.of(
                "`" + code.id() + "`",
                code.severity().name().toLowerCase(Locale.ROOT),
                message,
                hint)
            .reduce("|", (row, cell) -> row + " " + cell + " |")
        + "\n";
  }

  private static String cell(String text) {
    return text.strip()
        .replaceAll("\\s+", " ")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace("[", "\\[")
        .replace("|", "\\|")
        .replace("*", "\\*")
        .replace("`", "\\`");
  }

  /** A finding whose arguments are their own names; where a number is needed, several. */
  private static Finding sample(FindingCode code) throws IOException {
    Properties words = FindingWordsTest.words(code.getClass());
    Set<String> names = new LinkedHashSet<>();
    for (String part : List.of("message", "hint")) {
      // Arguments stand within the forms of others as well.
      MessagePattern pattern = new MessagePattern(words.getProperty(code.id() + "." + part));
      for (int i = 0; i < pattern.countParts(); i++) {
        if (pattern.getPartType(i) == MessagePattern.Part.Type.ARG_NAME) {
          names.add(pattern.getSubstring(pattern.getPart(i)));
        }
      }
    }
    Map<String, Object> arguments = new LinkedHashMap<>();
    names.forEach(name -> arguments.put(name, "‹" + name.replace('_', ' ') + "›"));
    for (String name : names) {
      if (isNumber(words, code, name)) {
        arguments.put(name, SEVERAL);
      }
    }
    return new Finding(code, Position.ofFile("pattern.yaml"), arguments);
  }

  private static boolean isNumber(Properties words, FindingCode code, String name) {
    Pattern asNumber = Pattern.compile("\\{\\s*" + name + "\\s*,\\s*(?:plural|number)");
    return Stream.of("message", "hint")
        .map(part -> words.getProperty(code.id() + "." + part))
        .anyMatch(pattern -> asNumber.matcher(pattern).find());
  }
}
