package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Mark;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.Request;
import org.lapmark.source.StepSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * Every pattern on the shelf is published whole: each is small and of another construction. What
 * check says of one beyond nothing stands in its {@code expected.txt}: a code and how often, a
 * line.
 */
class ShelfTest {
  private static final Path SHELF = Path.of("src", "test", "resources", "org", "lapmark", "shelf");

  /** What no reader may see: braces of a placeholder, and words of the program. */
  private static final Pattern UNRESOLVED =
      Pattern.compile(
          "[{}]|\\$\\{|\\?\\?|\\b(null|NaN|Infinity|undefined)\\b|�|\\]\\((piece|step):");

  private static Publisher publisher;

  @TempDir Path home;

  @BeforeAll
  static void templates() throws IOException {
    publisher = new Publisher(TemplateFolder.bundled());
  }

  static List<Path> patterns() throws IOException {
    try (Stream<Path> folders = Files.list(SHELF)) {
      return folders.filter(Files::isDirectory).sorted().toList();
    }
  }

  private static Findings checked(Path folder) {
    Outcome outcome = publisher.check(List.of(folder), new Listener() {}).get(0);
    assertEquals(Optional.empty(), outcome.failure());
    return outcome.result().findings();
  }

  @ParameterizedTest
  @MethodSource("patterns")
  void eachPatternIsPublishedWhole(Path folder) throws Exception {
    Map<String, Integer> stated = stated(folder);
    assertEquals(stated, counted(checked(folder)));
    Outcome outcome =
        publisher
            .publish(List.of(folder), new Request(List.of(), List.of(), home), new Listener() {})
            .get(0);
    assertTrue(outcome.failure().isEmpty(), () -> outcome.failure().toString());
    assertEquals(stated, counted(outcome.result().findings()));

    List<EvaluatedPattern> sizes =
        publisher.grade(List.of(folder), List.of(), Collections.emptySortedMap()).get(0).patterns();
    List<Path> written = outcome.result().written();
    String name = folder.getFileName().toString();
    for (EvaluatedPattern size : sizes) {
      everyPieceIsUsed(size, folder);
      for (String paper : List.of("a4", "letter", "shared")) {
        String stem = "-" + size.variant().size() + "-" + paper;
        Path complete = only(written, name, stem + ".pdf");
        int pages = pages(complete);
        int instructions = pages(only(written, name, stem + "-instructions.pdf"));
        int tiles = pages(only(written, name, stem + "-tiles.pdf"));
        assertTrue(tiles > 0);
        assertEquals(instructions + tiles, pages, complete.toString());
        // Of text pages alone: slanted lettering on tiles is read in pieces.
        String text = lines(only(written, name, stem + "-instructions.pdf"));
        Matcher closing = Pattern.compile("(?m)^.*\\R *[.,:;!?] .*$").matcher(text);
        assertFalse(closing.find(), () -> complete + ": " + closing.group());
        if (paper.equals("a4")) {
          everythingIsSaid(size, spaced(lines(complete)));
        }
      }
      everyPieceIsCut(size, written);
    }
    List<Path> companions = ending(written, ".html");
    assertFalse(companions.isEmpty());
    for (Path companion : companions) {
      Document page = xml(Files.readString(companion));
      assertEquals("html", page.getDocumentElement().getTagName());
      for (String tag : List.of("style", "script")) {
        NodeList nodes = page.getElementsByTagName(tag);
        for (int i = nodes.getLength() - 1; i >= 0; i--) {
          nodes.item(i).getParentNode().removeChild(nodes.item(i));
        }
      }
      resolved(companion, page.getDocumentElement().getTextContent());
    }
    for (Path every : ending(written, "-instructions.pdf")) {
      if (every.getFileName().toString().contains("sizes")) {
        assertTrue(pages(every) > 0);
      }
    }
  }

  @Test
  void whatMostEdgesLackIsNotCalledUsual() throws Exception {
    String text = instructions("halewood-brush-roll");
    assertTrue(
        text.contains(
            "Included on these edges; the others need none: " + "2 Rear pocket, pocket top: 20 mm"),
        text);
    assertFalse(text.contains("on every edge"), text);
    text = instructions("larkspur-flap-pouch");
    assertTrue(text.contains("on every edge, except: none on 2 Body interfacing"), text);
  }

  @Test
  void whatIsAsWideAsItsTapeIsCalledWhatTheShopCallsIt() throws Exception {
    String text = instructions("halewood-brush-roll");
    assertFalse(text.contains("9/16"), text);
    assertEquals(2, text.split(Pattern.quote("15 mm (5/8 in) × 900 mm")).length - 1, text);
    Path companion = home.resolve("halewood-brush-roll").resolve("halewood-brush-roll-1.html");
    String page = xml(Files.readString(companion)).getDocumentElement().getTextContent();
    // Only what the oils’ strip overlaps by is told from its 42 mm in sixteenths.
    String others = page.replaceAll("\\p{Z}", " ").replace("40 mm (1 9/16 in)40 mm1 9/16 in", "");
    assertFalse(others.contains("9/16"), others);
    // A piece that is cut narrower than its cloth is wide is measured.
    assertTrue(text.contains("32 mm (1 1/4 in) × 533 mm"), text);
  }

  @Test
  void placementLinesAndUnlikeAllowancesAreNamedOnTiles() throws Exception {
    String text = tiles("saltmarsh-tote");
    assertTrue(text.contains("Placement line “pocket”"), text);
    text = tiles("pleated-skirt");
    assertTrue(text.contains("bottom edge: 50 mm"), text);
  }

  @Test
  void clothWithADirectionHasArrowsWithOneHead() throws Exception {
    EvaluatedPattern cushion = graded("weirside-cushion");
    assertTrue(
        grainlines(cushion, "main").allMatch(Mark.Grainline::oneWay), "each points to the top");
    EvaluatedPattern mitten = graded("lined-mitten");
    assertTrue(grainlines(mitten, "main").noneMatch(Mark.Grainline::oneWay));
  }

  private static EvaluatedPattern graded(String pattern) throws IOException {
    return publisher
        .grade(List.of(SHELF.resolve(pattern)), List.of(), Collections.emptySortedMap())
        .get(0)
        .patterns()
        .get(0);
  }

  private static Stream<Mark.Grainline> grainlines(EvaluatedPattern pattern, String material) {
    List<Mark.Grainline> lines =
        pattern.pieces().stream()
            .filter(piece -> piece.cuts().stream().anyMatch(cut -> cut.material().equals(material)))
            .flatMap(piece -> piece.shape().panel().marks().stream())
            .filter(Mark.Grainline.class::isInstance)
            .map(Mark.Grainline.class::cast)
            .toList();
    assertFalse(lines.isEmpty());
    return lines.stream();
  }

  /** The text of the last size's tiles. */
  private String tiles(String pattern) throws IOException {
    Outcome outcome =
        publisher
            .publish(
                List.of(SHELF.resolve(pattern)),
                new Request(List.of(), List.of(Paper.A4), home),
                new Listener() {})
            .get(0);
    Path last =
        outcome.result().written().stream()
            .filter(path -> path.toString().endsWith("-a4-tiles.pdf"))
            .reduce((one, next) -> next)
            .orElseThrow();
    return spaced(lines(last));
  }

  /** The text of the last size's instructions, bullets left out. */
  private String instructions(String pattern) throws IOException {
    Outcome outcome =
        publisher
            .publish(
                List.of(SHELF.resolve(pattern)),
                new Request(List.of(), List.of(Paper.A4), home),
                new Listener() {})
            .get(0);
    Path last =
        outcome.result().written().stream()
            .filter(path -> path.toString().endsWith("-a4-instructions.pdf"))
            .filter(path -> !path.toString().contains("sizes"))
            .reduce((one, next) -> next)
            .orElseThrow();
    return spaced(lines(last).replace("•", ""));
  }

  private static Map<String, Integer> stated(Path folder) throws IOException {
    Map<String, Integer> stated = new TreeMap<>();
    Path file = folder.resolve("expected.txt");
    if (Files.exists(file)) {
      for (String line : Files.readAllLines(file)) {
        if (!line.isBlank() && !line.startsWith("#")) {
          String[] words = line.strip().split("\\s+");
          stated.put(words[0], Integer.parseInt(words[1]));
        }
      }
    }
    return stated;
  }

  private static Map<String, Integer> counted(Findings findings) {
    Map<String, Integer> counted = new TreeMap<>();
    for (Finding finding : findings.sorted()) {
      counted.merge(finding.code().id(), 1, Integer::sum);
    }
    return counted;
  }

  /** A piece that no step names or shows is cut in vain. */
  private static void everyPieceIsUsed(EvaluatedPattern size, Path folder) throws IOException {
    StringBuilder steps = new StringBuilder();
    try (Stream<Path> files = Files.list(folder.resolve("steps"))) {
      for (Path file : files.sorted().toList()) {
        steps.append(Files.readString(file));
      }
    }
    for (Piece piece : size.pieces()) {
      Matcher used = Pattern.compile("piece: ?" + piece.number() + "\\b").matcher(steps);
      assertTrue(used.find(), "no step uses piece " + piece.number() + " of " + folder);
    }
  }

  private static void everythingIsSaid(EvaluatedPattern size, String text) {
    String place = size.source().folder() + " " + size.variant();
    resolved(Path.of(place), text);
    assertTrue(text.contains(size.source().masthead().title().text()), place);
    for (StepSource step : size.source().steps()) {
      String title = step.title().text();
      assertTrue(title.contains("{") || text.contains(title), place + " lacks " + title);
    }
    for (Piece piece : size.pieces()) {
      assertTrue(text.contains(piece.name()), place + " lacks " + piece.name());
    }
  }

  private static void resolved(Path place, String text) {
    Matcher matcher = UNRESOLVED.matcher(text);
    assertFalse(
        matcher.find(),
        () ->
            place
                + ": "
                + text.substring(
                    Math.max(0, matcher.start() - 60),
                    Math.min(text.length(), matcher.end() + 60)));
  }

  private static void everyPieceIsCut(EvaluatedPattern size, List<Path> written) throws Exception {
    List<Path> files =
        written.stream()
            .filter(path -> path.toString().endsWith("-" + size.variant().size() + ".svg"))
            .toList();
    assertEquals(size.pieces().size(), files.size(), files.toString());
    for (Path file : files) {
      Document drawing = xml(Files.readString(file));
      Element root = drawing.getDocumentElement();
      double width = Double.parseDouble(root.getAttribute("width").replace("mm", ""));
      double height = Double.parseDouble(root.getAttribute("height").replace("mm", ""));
      assertTrue(width > 0 && height > 0, file.toString());
      assertEquals(
          "0 0 "
              + root.getAttribute("width").replace("mm", "")
              + " "
              + root.getAttribute("height").replace("mm", ""),
          root.getAttribute("viewBox"));
      NodeList groups = drawing.getElementsByTagName("g");
      Element cutting =
          IntStream.range(0, groups.getLength())
              .mapToObj(i -> (Element) groups.item(i))
              .filter(group -> group.getAttribute("id").equals("cutting-line"))
              .findFirst()
              .orElseThrow(() -> new AssertionError(file + " has no cutting line"));
      assertTrue(cutting.getElementsByTagName("path").getLength() > 0, file.toString());
      resolved(file, root.getTextContent());
    }
  }

  private static Path only(List<Path> written, String pattern, String ending) {
    List<Path> found =
        ending(written, ending).stream()
            .filter(path -> path.getFileName().toString().startsWith(pattern))
            .toList();
    assertEquals(1, found.size(), pattern + " " + ending + ": " + written);
    return found.get(0);
  }

  private static List<Path> ending(List<Path> written, String ending) {
    return written.stream().filter(path -> path.toString().endsWith(ending)).toList();
  }

  private static int pages(Path file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      return pdf.getNumberOfPages();
    }
  }

  private static String lines(Path file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(pdf);
    }
  }

  private static String spaced(String lines) {
    return lines.replaceAll("[\\s\u00a0]+", " ");
  }

  private static Document xml(String text) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(text.strip())));
  }
}
