package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.document.svg.CutFile;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Severity;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Variant;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.print.SheetPlanner;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ShapeSource;
import org.lapmark.source.drawing.PanelDrawing;
import org.lapmark.source.read.PatternReader;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** What is read back from cut files is the piece as it was graded. */
class CutFilesTest {
  private static final String DEMO = "content/towpath-handlebar-bag";
  private static final String CORNERS = "src/test/resources/org/lapmark/grade/corners";
  private static final String SHAPES = "src/test/resources/org/lapmark/document/cutting";

  /** How far what is read back may lie from the piece, in millimetres. */
  private static final double NEAR = 0.001;

  @TempDir Path home;

  private static EvaluatedPattern graded(String folder, String size) throws IOException {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(Path.of(folder), findings);
    EvaluatedPattern pattern = Grader.grade(source, Variant.ofSize(size), findings);
    assertFalse(findings.hasErrors(), findings.sorted().toString());
    return pattern;
  }

  private static Map<Piece, byte[]> files(EvaluatedPattern pattern) {
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    SheetPlanner planner =
        new SheetPlanner(
            writer.wording(pattern.source().masthead().language()),
            writer.styles(),
            writer.lettering());
    Map<Piece, byte[]> all = new LinkedHashMap<>();
    pattern
        .pieces()
        .forEach(
            piece ->
                all.put(piece, writer.write(new CutFile(pattern, piece, planner), new Findings())));
    return all;
  }

  @ParameterizedTest
  @CsvSource({DEMO + ",S", DEMO + ",M", DEMO + ",L", SHAPES + ",S", SHAPES + ",L", CORNERS + ",M"})
  void theProgramsOwnReaderReadsThePieceBack(String folder, String size) throws Exception {
    EvaluatedPattern pattern = graded(folder, size);
    Map<Piece, byte[]> files = files(pattern);
    Map<String, org.lapmark.geometry.Path> read = read(files);
    for (Piece piece : files.keySet()) {
      PieceShape shape = piece.shape();
      org.lapmark.geometry.Path cutting = shape.opened();
      org.lapmark.geometry.Path back = read.get("cut" + piece.number());
      Box meant = cutting.bounds();
      Box got = back.bounds();
      Affine home = Affine.translation(meant.minX() - got.minX(), meant.minY() - got.minY());
      same(piece.name(), cutting, back.transformed(home));
      // The stitching line lies where it lay in the cutting line, too.
      boolean sewnApart = shape.allowances().values().stream().anyMatch(each -> each > 0);
      same(
          piece.name(),
          sewnApart ? shape.openedStitching() : cutting,
          read.get("sewn" + piece.number()).transformed(home));
    }
  }

  /** Outlines by the panels of a pattern that has each cut file twice. */
  private Map<String, org.lapmark.geometry.Path> read(Map<Piece, byte[]> files) throws IOException {
    Path folder = Files.createDirectories(home.resolve("again/panels")).getParent();
    StringBuilder yaml = new StringBuilder("format: 1\npanels:\n");
    for (Map.Entry<Piece, byte[]> file : files.entrySet()) {
      int number = file.getKey().number();
      String svg = new String(file.getValue(), StandardCharsets.UTF_8);
      Files.writeString(folder.resolve("panels/sewn" + number + ".svg"), svg);
      Files.writeString(
          folder.resolve("panels/cut" + number + ".svg"),
          svg.replace("id=\"outline\" ", "")
              .replaceFirst("(id=\"cutting-line\"[^>]*>\\s*<path )", "$1id=\"outline\" "));
      for (String kind : List.of("sewn", "cut")) {
        yaml.append("  ").append(kind).append(number);
        yaml.append(": {drawing: ").append(kind).append(number).append(".svg}\n");
      }
    }
    Files.writeString(folder.resolve("pattern.yaml"), yaml);
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(folder, findings);
    Map<String, org.lapmark.geometry.Path> outlines = new LinkedHashMap<>();
    for (PanelSource panel : source.panels()) {
      PanelDrawing drawing = ((ShapeSource.Drawn) panel.shape()).drawing();
      outlines.put(panel.name().text(), drawing.resolve(formula -> 0.0, findings).outline());
    }
    // The folder lacks pieces and a size table; of its drawings nothing is amiss.
    findings.sorted().stream()
        .filter(finding -> finding.position().file().endsWith(".svg"))
        .forEach(
            finding ->
                assertNotEquals(Severity.ERROR, finding.code().severity(), finding.toString()));
    assertEquals(2 * files.size(), outlines.size());
    return outlines;
  }

  private static void same(
      String name, org.lapmark.geometry.Path meant, org.lapmark.geometry.Path got) {
    assertEquals(meant.length(), got.length(), NEAR, name);
    assertEquals(0, apart(meant, got), NEAR, name);
    assertEquals(0, apart(got, meant), NEAR, name);
    assertEquals(Math.signum(meant.signedArea()), Math.signum(got.signedArea()), name);
    // Curves stay what they are; what has no length is left out.
    for (Class<?> kind :
        List.of(org.lapmark.geometry.Arc.class, org.lapmark.geometry.Cubic.class)) {
      assertEquals(length(meant, kind), length(got, kind), NEAR, name + " " + kind);
    }
  }

  private static double length(org.lapmark.geometry.Path path, Class<?> kind) {
    return path.curves().stream()
        .filter(kind::isInstance)
        .mapToDouble(org.lapmark.geometry.Curve::length)
        .sum();
  }

  private static double apart(org.lapmark.geometry.Path from, org.lapmark.geometry.Path to) {
    double length = from.length();
    return IntStream.range(0, 500)
        .mapToObj(i -> from.atLength(length * i / 500))
        .mapToDouble(to::distance)
        .max()
        .orElseThrow();
  }

  private static Element parsed(byte[] file) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(file)).getDocumentElement();
  }

  private static Map<String, Element> groups(Element root) {
    Map<String, Element> groups = new LinkedHashMap<>();
    for (Node child = root.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element && element.getTagName().equals("g")) {
        groups.put(element.getAttribute("id"), element);
      }
    }
    return groups;
  }

  private static int paths(Element group) {
    return group.getElementsByTagName("path").getLength();
  }

  @Test
  void aFileHasItsSizeItsWordsAndAGroupForEachKindOfLine() throws Exception {
    EvaluatedPattern pattern = graded(SHAPES, "S");
    Map<Piece, byte[]> files = files(pattern);
    List<Piece> pieces = new ArrayList<>(files.keySet());
    Element flap = parsed(files.get(pieces.get(2)));
    // The drawing of half a stadium with an allowance of 8 mm round, and 5 mm of room.
    assertEquals("126mm", flap.getAttribute("width"));
    assertEquals("0 0 126 93", flap.getAttribute("viewBox"));
    assertEquals(
        "3 Flap <front>, size S: Cap & cover",
        flap.getElementsByTagName("title").item(0).getTextContent());
    String words = flap.getElementsByTagName("desc").item(0).getTextContent();
    assertTrue(words.contains("right side up: 116 by 83 mm. Cut 1 in canvas."), words);
    assertTrue(words.contains("Shown whole; on paper it is a half for the fold."), words);
    Map<String, Element> groups = groups(flap);
    assertEquals(
        List.of("text", "marks", "grain", "stitching-line", "notches", "cutting-line"),
        List.copyOf(groups.keySet()));
    assertEquals(1, paths(groups.get("cutting-line")));
    assertEquals(1, paths(groups.get("stitching-line")));
    assertEquals(2, paths(groups.get("notches")));
    assertEquals(3, paths(groups.get("grain")));
    // The placement line, the fold line, and circle and cross of the drill point.
    assertEquals(5, paths(groups.get("marks")));
    NodeList lines = groups.get("text").getElementsByTagName("text");
    assertEquals("3  Flap <front>", lines.item(0).getTextContent());
    assertTrue(groups.get("text").getTextContent().contains("Size S · Edition 1"));
    // A small piece without allowance: one line, which is sewn and cut, and its number at most.
    Map<String, Element> tab = groups(parsed(files.get(pieces.get(3))));
    assertNull(tab.get("stitching-line"));
    Element line = (Element) tab.get("cutting-line").getElementsByTagName("path").item(0);
    assertEquals("outline", line.getAttribute("id"));
    assertEquals("M5 5L17 5L17 11L5 11Z", line.getAttribute("d"));
  }

  /** Another program draws the cutting line where it is, at its size. */
  @ParameterizedTest
  @CsvSource({DEMO + ",M,0", SHAPES + ",L,0", SHAPES + ",L,1", SHAPES + ",S,2"})
  void anotherRendererDrawsItAtItsSize(String folder, String size, int index) throws Exception {
    Map<Piece, byte[]> files = files(graded(folder, size));
    Piece piece = List.copyOf(files.keySet()).get(index);
    List<BufferedImage> drawn = new ArrayList<>();
    ImageTranscoder renderer =
        new ImageTranscoder() {
          @Override
          public BufferedImage createImage(int width, int height) {
            return new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
          }

          @Override
          public void writeImage(BufferedImage image, TranscoderOutput output) {
            drawn.add(image);
          }
        };
    renderer.addTranscodingHint(ImageTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, 0.1f);
    renderer.transcode(new TranscoderInput(new ByteArrayInputStream(files.get(piece))), null);
    BufferedImage image = drawn.get(0);
    Box box = piece.shape().bounds();
    assertEquals(10 * (box.width() + 10), image.getWidth(), 1);
    assertEquals(10 * (box.height() + 10), image.getHeight(), 1);
    Box ink = ink(image);
    assertEquals(50, ink.minX(), 3);
    assertEquals(50, ink.minY(), 3);
    assertEquals(image.getWidth() - 50, ink.maxX(), 3);
    assertEquals(image.getHeight() - 50, ink.maxY(), 3);
  }

  private static Box ink(BufferedImage image) {
    List<Point> dark = new ArrayList<>();
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (image.getRGB(x, y) >>> 24 > 64) {
          dark.add(new Point(x, y));
        }
      }
    }
    return new Box(
        dark.stream().mapToDouble(Point::x).min().orElseThrow(),
        dark.stream().mapToDouble(Point::y).min().orElseThrow(),
        dark.stream().mapToDouble(Point::x).max().orElseThrow(),
        dark.stream().mapToDouble(Point::y).max().orElseThrow());
  }
}
