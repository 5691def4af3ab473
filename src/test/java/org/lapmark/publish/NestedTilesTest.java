package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.book.NestedTilesDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.print.NestedPlan;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.Tile;
import org.lapmark.publish.request.Papers;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The tiles of all sizes stacked, read back from the PDF's own numbers and layers. */
class NestedTilesTest {
  private static final double TOLERANCE = 0.002;
  private static final double MILLIMETRE = 72 / 25.4;

  /** The width of a size's own cutting line, in millimetres; a shared one is wider. */
  private static final double OWN_LINE = 0.5;

  private static final double SHARED_LINE = 0.6;

  /** No name is longer, and no gap between dashes, in millimetres. */
  private static final double LONGEST_GAP = 16;

  private record Made(NestedPlan plan, byte[] file, List<GradedPattern> patterns) {}

  private static Made made(String folder, Paper paper) throws IOException {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(java.nio.file.Path.of(folder), findings);
    List<GradedPattern> patterns =
        source.sizes().sizes().stream()
            .map(size -> Grader.grade(source, Variant.ofSize(size), findings))
            .toList();
    assertEquals(List.of(), findings.sorted());
    DocumentWriter writer = new DocumentWriter(TemplateFolder.bundled());
    SheetPlanner planner =
        new SheetPlanner(writer.wording(Locale.UK), writer.styles(), writer.lettering());
    NestedPlan plan = planner.nested(patterns, paper);
    return new Made(
        plan,
        writer.write(
            new NestedTilesDocument(patterns.get(0), plan, Plates.of(planner)), new Findings()),
        patterns);
  }

  @ParameterizedTest
  @CsvSource({
    "content/towpath-handlebar-bag, a4",
    "src/test/resources/org/lapmark/publish/smock, letter",
    "src/test/resources/org/lapmark/publish/smock, roll36"
  })
  void eachSizeAloneIsWhereItBelongs(String folder, String paperName) throws IOException {
    Paper paper =
        Papers.ALL.stream().filter(each -> each.id().equals(paperName)).findFirst().orElseThrow();
    Made made = made(folder, paper);
    List<List<Stroke>> pages = strokes(made);
    List<String> sizes = made.patterns().stream().map(one -> one.variant().size()).toList();
    for (String size : sizes) {
      Set<String> on = Set.of("Size " + size);
      List<Stroke> seen = new ArrayList<>();
      for (List<Stroke> page : pages) {
        page.stream().filter(stroke -> stroke.isSeen(on)).forEach(seen::add);
      }
      List<Path> lines = new ArrayList<>();
      for (PlacedPiece placed : made.plan().pieces().get(size)) {
        Path line =
            placed
                .piece()
                .half()
                .map(half -> half.cuttingLine())
                .orElse(placed.piece().shape().cuttingLine().path())
                .transformed(placed.placement());
        lines.add(line);
        covered(line, seen, size + " " + placed.piece().name());
      }
      // And nothing that is drawn as a size's line lies anywhere else.
      int own = 0;
      for (Stroke stroke : seen) {
        if (Math.abs(stroke.width() - OWN_LINE) < 1e-3 && !stroke.layers().isEmpty()) {
          own++;
          for (double at : new double[] {0, 0.31, 0.5, 0.82, 1}) {
            Point point = stroke.path().atLength(at * stroke.path().length());
            double least = lines.stream().mapToDouble(line -> line.distance(point)).min().orElse(9);
            assertTrue(least <= TOLERANCE, size + " " + point + " is " + least + " off");
          }
        }
      }
      assertTrue(own > 3, own + " lines of size " + size);
    }
  }

  /** Every point of a line is drawn but for the gaps of its names. */
  private static void covered(Path line, List<Stroke> seen, String what) {
    List<Stroke> cutting =
        seen.stream()
            .filter(
                stroke ->
                    Math.abs(stroke.width() - OWN_LINE) < 1e-3
                        || Math.abs(stroke.width() - SHARED_LINE) < 1e-3)
            .filter(stroke -> stroke.path().bounds().overlaps(line.bounds().expanded(1)))
            .toList();
    double gap = 0;
    double missing = 0;
    double step = 0.7;
    for (double at = 0; at < line.length(); at += step) {
      Point point = line.atLength(at);
      boolean drawn =
          cutting.stream()
              .filter(stroke -> stroke.path().bounds().expanded(0.01).contains(point))
              .anyMatch(stroke -> stroke.path().distance(point) <= TOLERANCE);
      gap = drawn ? 0 : gap + step;
      missing += drawn ? 0 : step;
      assertTrue(gap <= LONGEST_GAP, what + " isn't drawn at " + point);
    }
    assertTrue(missing < 0.2 * line.length(), what + ": " + missing + " mm are missing");
  }

  @Test
  void layersAreInOrderAndStitchingIsOff() throws IOException {
    Made made = made("content/towpath-handlebar-bag", Paper.A4);
    try (PDDocument document = Loader.loadPDF(made.file())) {
      PDOptionalContentProperties layers = document.getDocumentCatalog().getOCProperties();
      List<String> names = List.of("Size S", "Size M", "Size L", "Stitching lines");
      assertEquals(names, List.of(layers.getGroupNames()));
      COSArray order = layers.getCOSObject().getCOSDictionary(COSName.D).getCOSArray(COSName.ORDER);
      assertEquals(4, order.size());
      assertEquals(
          List.of(true, true, true, false), names.stream().map(layers::isGroupEnabled).toList());
      PDFTextStripper text = new PDFTextStripper();
      String page = text.getText(document);
      assertTrue(page.contains("Size S") && page.contains("Sizes S, M, L · Edition 1"), page);
      assertTrue(page.contains("Solid: cut here in the sizes named"), page);
      // No events switch layers on their own; PDF/A doesn't allow it.
      COSDictionary all = layers.getCOSObject();
      assertNull(all.getCOSDictionary(COSName.D).getDictionaryObject(COSName.AS));
    }
  }

  @Test
  void switchingASizeOffTakesItsInkAndNoOther() throws IOException {
    Made made = made("content/towpath-handlebar-bag", Paper.A4);
    BufferedImage all = render(made.file(), List.of());
    BufferedImage without = render(made.file(), List.of("Size M"));
    BufferedImage none = render(made.file(), List.of("Size S", "Size M", "Size L"));
    Tile tile = made.plan().sheet().tiles().get(0);
    Point back =
        new Point(
            tile.window().minX() - Paper.A4.window().minX(),
            tile.window().minY() - Paper.A4.window().minY());
    Map<String, List<Path>> lines = new LinkedHashMap<>();
    made.plan()
        .pieces()
        .forEach(
            (size, pieces) ->
                lines.put(
                    size,
                    pieces.stream()
                        .map(
                            one ->
                                one.piece()
                                    .shape()
                                    .cuttingLine()
                                    .path()
                                    .transformed(one.placement()))
                        .toList()));
    int gone = 0;
    int kept = 0;
    for (int x = 0; x < all.getWidth(); x++) {
      for (int y = 0; y < all.getHeight(); y++) {
        boolean inked = dark(all, x, y);
        assertTrue(inked || !dark(without, x, y), "new ink at " + x + " " + y);
        if (inked && !dark(without, x, y)) {
          gone++;
          Point point = new Point((x + 0.5) / 4, (y + 0.5) / 4).plus(back);
          // A notch reaches in for 5 mm, and its name stands at the end of it.
          double least =
              lines.get("M").stream().mapToDouble(line -> line.distance(point)).min().orElse(99);
          assertTrue(least < 9, "ink far from size M at " + point);
        } else if (inked && !dark(none, x, y)) {
          kept++;
        }
      }
    }
    assertTrue(gone > 500, gone + " dots of size M");
    assertTrue(kept > 1000, kept + " dots of the other sizes");
  }

  private static boolean dark(BufferedImage image, int x, int y) {
    return (image.getRGB(x, y) & 0xff) < 128;
  }

  /** The first page at 4 dots a millimetre with some layers off. */
  private static BufferedImage render(byte[] file, List<String> off) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      PDOptionalContentProperties layers = document.getDocumentCatalog().getOCProperties();
      off.forEach(name -> layers.setGroupEnabled(name, false));
      return new PDFRenderer(document).renderImage(0, (float) (4 / MILLIMETRE));
    }
  }

  /** A stroked curve in sheet coordinates: seen when each of its sets has a layer that is on. */
  private record Stroke(Path path, double width, List<Set<String>> layers) {
    boolean isSeen(Set<String> on) {
      return layers.stream().allMatch(any -> any.stream().anyMatch(on::contains));
    }
  }

  private static List<List<Stroke>> strokes(Made made) throws IOException {
    List<List<Stroke>> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(made.file())) {
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        Tile tile = made.plan().sheet().tiles().get(i);
        Paper paper = made.plan().sheet().paper();
        Point shift =
            new Point(
                tile.window().minX() - paper.window().minX(),
                tile.window().minY() - paper.window().minY());
        pages.add(new Tracer(document.getPage(i), shift).strokes());
      }
    }
    return pages;
  }

  private static final class Tracer extends TileTracer {
    private final List<Stroke> found = new ArrayList<>();
    private final List<Curve> pending = new ArrayList<>();
    private final Deque<Set<String>> marked = new ArrayDeque<>();

    Tracer(PDPage page, Point shift) {
      super(page, shift);
    }

    List<Stroke> strokes() throws IOException {
      processPage(getPage());
      return found;
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
      Set<String> names = new LinkedHashSet<>();
      if (COSName.OC.equals(tag)) {
        COSBase groups = properties.getDictionaryObject(COSName.OCGS);
        if (groups instanceof COSArray several) {
          assertEquals(COSName.ANY_ON, properties.getCOSName(COSName.P));
          for (int i = 0; i < several.size(); i++) {
            names.add(((COSDictionary) several.getObject(i)).getString(COSName.NAME));
          }
        } else {
          names.add(properties.getString(COSName.NAME));
        }
      }
      marked.push(names);
    }

    @Override
    public void endMarkedContentSequence() {
      marked.pop();
    }

    @Override
    void constructed(Curve curve) {
      pending.add(curve);
    }

    @Override
    public void strokePath() {
      double width = getGraphicsState().getLineWidth() / MILLIMETRE;
      List<Set<String>> layers = marked.stream().filter(names -> !names.isEmpty()).toList();
      pending.forEach(curve -> found.add(new Stroke(new Path(List.of(curve)), width, layers)));
      pending.clear();
    }

    @Override
    public void endPath() {
      pending.clear();
    }

    @Override
    public void fillPath(int windingRule) {
      pending.clear();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
      pending.clear();
    }
  }
}
