package org.lapmark.document.companion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.lapmark.document.Companions;
import org.lapmark.document.Specimen;
import org.lapmark.document.section.Sections;
import org.lapmark.document.template.Words;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Value;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.source.FinishedSource;
import org.lapmark.text.PlainText;
import org.lapmark.text.Printing;
import org.lapmark.text.Steps;
import org.lapmark.text.Targets;
import org.lapmark.text.markdown.StepsReader;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What stands in a companion, read from the file itself. */
class CompanionTest {
  private static List<EvaluatedPattern> patterns;
  private static String page;
  private static Document document;

  @BeforeAll
  static void write() {
    patterns = Companions.demo();
    page = Companions.page(patterns);
    document = Companions.parse(page);
  }

  @Test
  void isTheSameEveryTime() {
    assertEquals(page, Companions.page(Companions.demo()));
  }

  @Test
  void asksForNothing() throws Exception {
    String namespaces = page.replaceAll("xmlns=\"http://www\\.w3\\.org/[a-z0-9/]*\"", "");
    assertFalse(namespaces.contains("http:"), "an address");
    assertFalse(namespaces.contains("https:"), "an address");
    for (Element element : Companions.elements(document)) {
      String tag = element.getTagName();
      assertFalse(
          Set.of("link", "img", "iframe", "object", "embed", "image", "use").contains(tag), tag);
      assertFalse(element.hasAttribute("src"), tag);
      assertFalse(element.hasAttribute("style"), "the policy forbids style attributes");
      String address = element.getAttribute("href");
      assertTrue(address.isEmpty() || address.startsWith("#"), address);
      for (int i = 0; i < element.getAttributes().getLength(); i++) {
        String name = element.getAttributes().item(i).getNodeName();
        assertFalse(name.startsWith("on"), name);
      }
    }
    assertFalse(page.contains("@import"));
    assertFalse(Pattern.compile("url\\((?!#)").matcher(page).find());
  }

  @Test
  void thePolicyAllowsItsOwnStyleAndScriptAndNothingElse() throws Exception {
    String policy =
        Companions.elements(document).stream()
            .filter(e -> e.getAttribute("http-equiv").equals("Content-Security-Policy"))
            .map(e -> e.getAttribute("content"))
            .findFirst()
            .orElseThrow();
    assertTrue(policy.startsWith("default-src 'none'; "), policy);
    assertFalse(policy.contains("unsafe"), policy);
    assertEquals("'" + hash("style") + "'", source(policy, "style-src"));
    assertEquals("'" + hash("script") + "'", source(policy, "script-src"));
  }

  private static String source(String policy, String directive) {
    Matcher matcher = Pattern.compile(directive + " ([^;]+)").matcher(policy);
    assertTrue(matcher.find(), policy);
    return matcher.group(1);
  }

  /** Of what stands between the tags, as a browser computes it. */
  private static String hash(String tag) throws Exception {
    int start = page.indexOf("<" + tag + ">") + tag.length() + 2;
    assertEquals(-1, page.indexOf("<" + tag + ">", start), "more than one " + tag);
    String text = page.substring(start, page.indexOf("</" + tag + ">", start));
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "sha256-" + Base64.getEncoder().encodeToString(digest);
  }

  @Test
  void saysInEverySizeAndUnitWhatTheStepsSay() {
    Steps steps =
        StepsReader.read(
            patterns.get(0).source().steps(),
            Targets.of(patterns.get(0).source(), Sections.pages()),
            new Findings());
    assertEquals(14, steps.all().size());
    int values = 0;
    for (int size = 0; size < patterns.size(); size++) {
      for (CompanionUnits units : CompanionUnits.values()) {
        Printing printing =
            Printing.of(
                steps.values(),
                List.of(patterns.get(size)),
                patterns.get(size).source().masthead().form().with(units(units)),
                new Findings());
        values += printing.all().size();
        PlainText plain =
            new PlainText(
                value -> printing.of(value).get(0).text(),
                reference ->
                    steps
                        .step(reference.target())
                        .map(step -> "step " + step.number())
                        .orElse("piece " + reference.target()));
        for (Steps.Step step : steps.all()) {
          Element article = Companions.byId(document, "step-" + step.id());
          Element body = Companions.byClass(article, "body").get(0);
          String shown =
              Companions.shown(body, size, units).replaceAll("(^| )(Tip|Warning) ", "$1");
          assertEquals(Companions.spaced(plain.text(step.body())), shown, step.id());
        }
      }
    }
    assertTrue(values > 9 * 20, "values: " + values);
  }

  private static PrintForm.Units units(CompanionUnits units) {
    return switch (units) {
      case BOTH -> PrintForm.Units.METRIC_FIRST;
      case METRIC -> PrintForm.Units.METRIC;
      case INCHES -> PrintForm.Units.INCHES;
    };
  }

  @Test
  void listsTheSizesWhereNoneIsChosen() {
    Element step = Companions.byId(document, "step-straps");
    assertTrue(
        Companions.shown(step, -1, CompanionUnits.METRIC)
            .contains("which is S 60 mm, M 70 mm, L 80 mm from the raw edge"),
        Companions.shown(step, -1, CompanionUnits.METRIC));
    assertTrue(
        Companions.shown(step, 2, CompanionUnits.INCHES)
            .contains("which is 3 1/8 in from the raw edge"));
  }

  @Test
  void liesTheFinishedMeasurementsInAColumnASize() {
    Element finished = Companions.byId(document, "finished");
    List<Element> rows =
        Companions.elements(finished).stream().filter(e -> e.getTagName().equals("tr")).toList();
    List<FinishedSource> stated = patterns.get(0).source().finished();
    assertEquals(stated.size() + 1, rows.size());
    for (int i = 0; i < stated.size(); i++) {
      List<Element> cells =
          Companions.elements(rows.get(i + 1)).stream()
              .filter(e -> e.getTagName().equals("td"))
              .toList();
      assertEquals(3, cells.size());
      for (int size = 0; size < 3; size++) {
        EvaluatedPattern pattern = patterns.get(size);
        Object value =
            stated
                .get(i)
                .value()
                .print(
                    pattern.scope(),
                    pattern.variant(),
                    pattern.source().masthead().form().with(PrintForm.Units.METRIC))
                .get(0);
        assertEquals(
            Companions.spaced(((org.lapmark.measure.print.PrintedValue) value).text()),
            Companions.shown(cells.get(size), size, CompanionUnits.METRIC));
      }
    }
  }

  @Test
  void cutsWhatThePatternCuts() {
    for (int size = 0; size < 3; size++) {
      for (Piece piece : patterns.get(size).pieces()) {
        String shown =
            Companions.shown(
                Companions.byId(document, "piece-" + piece.number()), size, CompanionUnits.METRIC);
        assertTrue(shown.startsWith(piece.number() + " " + piece.name()), shown);
        piece
            .cuts()
            .forEach(
                cut -> assertTrue(shown.contains(cut.count() + " × " + cut.materialName()), shown));
        piece
            .statedSize()
            .ifPresent(
                stated ->
                    assertTrue(
                        shown.contains(
                            Companions.spaced(
                                metric(stated.width()) + " × " + metric(stated.height()))),
                        shown));
      }
    }
  }

  private static String metric(double length) {
    return patterns
        .get(0)
        .source()
        .masthead()
        .form()
        .with(PrintForm.Units.METRIC)
        .print(Value.Quantity.length(length));
  }

  @Test
  void warnsAtTheStepAndInOnePlace() {
    assertEquals(1, Companions.byClass(Companions.byId(document, "step-cut"), "caution").size());
    String all = Companions.shown(Companions.byId(document, "cautions"), 0, CompanionUnits.BOTH);
    for (String what :
        List.of(
            "Blades", "Iron and steam", "Melting webbing", "more than 1.5 kg", "On a bicycle")) {
      assertTrue(all.contains(what), what);
    }
    assertFalse(all.contains("Magnets"));
  }

  @Test
  void everyFigureIsThereInEverySizeWithItsWords() {
    List<Element> figures =
        Companions.elements(document).stream()
            .filter(e -> e.getTagName().equals("figure"))
            .toList();
    int blocks =
        StepsReader.read(
                patterns.get(0).source().steps(),
                Targets.of(patterns.get(0).source(), Sections.pages()),
                new Findings())
            .all()
            .stream()
            .mapToInt(step -> step.body().figures().size())
            .sum();
    assertTrue(blocks > 10);
    assertEquals(blocks, figures.size());
    for (Element figure : figures) {
      Map<String, List<String>> sizes = new java.util.TreeMap<>();
      for (Element sheet : Companions.byClass(figure, "sheet")) {
        String look = sheet.getAttribute("class").replace(" typical", "");
        sizes.computeIfAbsent(look, key -> new ArrayList<>()).add(sheet.getAttribute("data-for"));
      }
      sizes
          .values()
          .forEach(
              of ->
                  assertTrue(
                      of.equals(List.of("")) || of.equals(List.of("0", "1", "2")), of.toString()));
    }
    for (Element svg :
        Companions.elements(document).stream().filter(e -> e.getTagName().equals("svg")).toList()) {
      assertEquals("img", svg.getAttribute("role"));
      for (String id : svg.getAttribute("aria-labelledby").split(" ")) {
        assertFalse(Companions.byId(document, id).getTextContent().isBlank(), id);
      }
    }
  }

  @Test
  void idsAreUniqueAndLinksLeadSomewhere() {
    Set<String> ids = new HashSet<>();
    for (Element element : Companions.elements(document)) {
      String id = element.getAttribute("id");
      assertTrue(id.isEmpty() || ids.add(id), "twice: " + id);
    }
    Matcher matcher = Pattern.compile("href=\"#([^\"]*)\"|url\\(#([^)]*)\\)").matcher(page);
    int links = 0;
    while (matcher.find()) {
      String target = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
      assertTrue(ids.contains(target), "nothing at " + target);
      links++;
    }
    assertTrue(links > 20);
  }

  @Test
  void everyControlHasALabel() {
    Set<String> labelled = new HashSet<>();
    for (Element label : Companions.elements(document)) {
      if (label.getTagName().equals("label")) {
        labelled.add(label.getAttribute("for"));
        Companions.elements(label).forEach(inner -> labelled.add(inner.getAttribute("id")));
      }
    }
    int ticks = 0;
    for (Element control : Companions.elements(document)) {
      if (Set.of("input", "select").contains(control.getTagName())) {
        boolean named =
            control.hasAttribute("aria-label") || labelled.contains(control.getAttribute("id"));
        assertTrue(named, control.getAttribute("id"));
        ticks += control.hasAttribute("data-tick") ? 1 : 0;
      }
    }
    assertEquals(14 + 11, ticks);
  }

  @Test
  void headingsDescendOneByOne() {
    int level = 0;
    for (Element heading : Companions.elements(document)) {
      if (heading.getTagName().matches("h[1-6]")) {
        int next = heading.getTagName().charAt(1) - '0';
        assertTrue(next <= level + 1, heading.getTextContent());
        level = next;
      }
    }
    assertEquals("en-GB", document.getDocumentElement().getAttribute("lang"));
  }

  @Test
  void everyPageThatTextsCanReferToHasAName() {
    for (String name : Sections.pages()) {
      assertFalse(
          Words.of(Specimen.templates(), java.util.Locale.UK)
              .text("companion.page." + name)
              .isBlank());
    }
  }

  @Test
  void theScriptHasNoWords() {
    String script = Specimen.templates().text("companion/companion.js");
    Matcher strings = Pattern.compile("\"([^\"]*)\"").matcher(script);
    while (strings.find()) {
      // Names, keys and selectors; a sentence has a capital or ends in a full stop.
      boolean key = strings.group(1).equals("Escape");
      assertFalse(
          !key && strings.group(1).matches("[A-Z][a-z]+( .*)?|.*[a-z]\\."), strings.group(1));
    }
  }
}
