package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.book.Plates;
import org.lapmark.document.book.TilesDocument;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.lapmark.publish.request.Papers;
import org.lapmark.source.read.PatternReader;

/**
 * The tiles as a printer draws them, put together, show what the whole sheet shows: rendered at 10
 * pixels a millimetre, every dark pixel has a partner within one pixel, both ways, beyond the joins
 * too as far as both tiles show.
 */
class RasterTruthTest {
  private static final double PIXELS = 10;
  private static final String PROGRAM = "pdftocairo";

  /** A moved tile is told from a true one from here on; rounding takes half a pixel. */
  private static final int MOVED = 3;

  /** The overlap, and what of it is compared: its rim has caption and outermost pixels. */
  private static final double OVERLAP = 12;

  private static final double RIM = 0.3;

  private static final double MARGIN = 20;

  private static final Set<String> LINES =
      new TreeSet<>(
          List.of(
              "cutting-line",
              "stitching-line",
              "notch",
              "grainline",
              "fold-line",
              "placement-line",
              "drill-point"));

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "content/towpath-handlebar-bag, M, shared",
    "src/test/resources/org/lapmark/publish/large, one, a4"
  })
  void tilesPutTogetherShowTheSheet(String pattern, String size, String paperName)
      throws IOException, InterruptedException {
    boolean present = present();
    if (System.getenv("CI") != null) {
      assertTrue(present, PROGRAM + " is missing");
    }
    assumeTrue(present, PROGRAM + " is missing");
    Paper paper =
        Papers.USUAL.stream().filter(each -> each.id().equals(paperName)).findFirst().get();
    GradedPattern graded = graded(Path.of(pattern), size);
    DocumentWriter writer = new DocumentWriter(TemplateFolder.bundled());
    SheetPlanner planner =
        new SheetPlanner(writer.wording(Locale.UK), writer.styles(), writer.lettering());
    SheetPlan plan = planner.plan(graded, paper);
    Drawing whole = planner.sheet(plan);
    Point origin = corner(plan);
    Path tiles = folder.resolve("tiles.pdf");
    Path sheet = folder.resolve("sheet.pdf");
    Files.write(
        tiles,
        writer.write(
            new TilesDocument(graded, linesOnly(plan), Plates.of(planner)), new Findings()));
    Files.write(
        sheet,
        writer.write(
            new TilesDocument(graded, asOneTile(plan, whole), Plates.of(planner)), new Findings()));
    int dark = 0;
    for (int i = 0; i < plan.tiles().size(); i++) {
      Tile tile = plan.tiles().get(i);
      Box region = region(tile, plan);
      Point toPage =
          new Point(
              paper.window().minX() - tile.window().minX(),
              paper.window().minY() - tile.window().minY());
      Picture onTile = render(tiles, i + 1, region.moved(toPage), 0);
      Picture onSheet = render(sheet, 1, region.moved(new Point(-origin.x(), -origin.y())), 0);
      String where = tile.code() + " of " + pattern;
      assertEquals(0, onTile.withoutPartner(onSheet), where + ": ink that isn't on the sheet");
      assertEquals(0, onSheet.withoutPartner(onTile), where + ": ink that is on no tile");
      dark += onTile.dark();
      if (onTile.dark() > 500) {
        Picture moved = render(tiles, i + 1, region.moved(toPage), MOVED);
        assertTrue(moved.withoutPartner(onSheet) > 0, where + " moved");
      }
    }
    assertTrue(dark > 10_000, "only " + dark + " dark pixels");
  }

  private static GradedPattern graded(Path pattern, String size) throws IOException {
    Findings findings = new Findings();
    return Grader.grade(PatternReader.read(pattern, findings), Variant.ofSize(size), findings);
  }

  private static Point corner(SheetPlan plan) {
    Box all = plan.tiles().stream().map(Tile::window).reduce(Box::union).orElseThrow();
    return new Point(all.minX(), all.minY());
  }

  /** What is compared: a tile's own part, and beyond its joins what it shows of its neighbours. */
  private static Box region(Tile tile, SheetPlan plan) {
    Box core = tile.core();
    double left = core.minX();
    double top = core.minY();
    double right = core.maxX();
    double bottom = core.maxY();
    for (Tile other : plan.tiles()) {
      if (tile.joined().contains(other.code())) {
        double more = OVERLAP / 2 - RIM;
        left -= other.column() < tile.column() ? more : 0;
        right += other.column() > tile.column() ? more : 0;
        top -= other.row() < tile.row() ? more : 0;
        bottom += other.row() > tile.row() ? more : 0;
      }
    }
    return new Box(left, top, right, bottom);
  }

  private static SheetPlan linesOnly(SheetPlan plan) {
    List<Tile> tiles = new ArrayList<>();
    for (Tile tile : plan.tiles()) {
      List<Item> lines =
          tile.page().items().stream()
              .filter(item -> item instanceof Item.Shape shape && LINES.contains(shape.role()))
              .toList();
      tiles.add(
          new Tile(
              tile.code(),
              tile.column(),
              tile.row(),
              tile.window(),
              new Drawing(tile.page().width(), tile.page().height(), lines),
              tile.pieces(),
              tile.alternative()));
    }
    return new SheetPlan(plan.paper(), plan.columns(), plan.rows(), plan.pieces(), tiles);
  }

  private static SheetPlan asOneTile(SheetPlan plan, Drawing whole) {
    Box box = Box.at(0, 0, whole.width(), whole.height());
    // The page's number stands below what is compared.
    double height = whole.height() + MARGIN;
    Paper paper = new Paper("sheet", whole.width(), height, box);
    Drawing page = new Drawing(whole.width(), height, whole.items());
    Tile tile = new Tile("A1", 0, 0, box, page, List.of(), "the sheet");
    return new SheetPlan(paper, 1, 1, plan.pieces(), List.of(tile));
  }

  private static boolean present() throws InterruptedException {
    try {
      Process process = new ProcessBuilder(PROGRAM, "-v").redirectErrorStream(true).start();
      process.getInputStream().readAllBytes();
      return process.waitFor(10, TimeUnit.SECONDS);
    } catch (IOException e) {
      return false;
    }
  }

  /** A strip of a page, moved to the right by some pixels. */
  private Picture render(Path pdf, int page, Box box, int moved)
      throws IOException, InterruptedException {
    int x = (int) Math.round(box.minX() * PIXELS) - moved;
    int y = (int) Math.round(box.minY() * PIXELS);
    int width = (int) Math.floor(box.width() * PIXELS);
    int height = (int) Math.floor(box.height() * PIXELS);
    Path name = folder.resolve("strip");
    Process process =
        new ProcessBuilder(
                PROGRAM,
                "-png",
                "-gray",
                "-singlefile",
                "-r",
                "254",
                "-f",
                "" + page,
                "-l",
                "" + page,
                "-x",
                "" + x,
                "-y",
                "" + y,
                "-W",
                "" + width,
                "-H",
                "" + height,
                pdf.toString(),
                name.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes());
    assertEquals(0, process.waitFor(), said);
    BufferedImage image = ImageIO.read(folder.resolve("strip.png").toFile());
    assertNotNull(image);
    assertEquals(1, image.getRaster().getNumBands());
    byte[] grey = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    boolean[] dark = new boolean[grey.length];
    for (int i = 0; i < grey.length; i++) {
      dark[i] = (grey[i] & 0xff) < 128;
    }
    return new Picture(image.getWidth(), image.getHeight(), dark);
  }

  /** Which pixels are dark. */
  private record Picture(int width, int height, boolean[] pixels) {
    int dark() {
      int count = 0;
      for (boolean pixel : pixels) {
        count += pixel ? 1 : 0;
      }
      return count;
    }

    /** The dark pixels that have none of the other's within one pixel; the rim isn't counted. */
    int withoutPartner(Picture other) {
      assertEquals(width, other.width);
      assertEquals(height, other.height);
      int count = 0;
      for (int y = 1; y + 1 < height; y++) {
        for (int x = 1; x + 1 < width; x++) {
          if (pixels[y * width + x] && !other.near(x, y)) {
            count++;
          }
        }
      }
      return count;
    }

    private boolean near(int x, int y) {
      for (int dy = -1; dy <= 1; dy++) {
        for (int dx = -1; dx <= 1; dx++) {
          if (pixels[(y + dy) * width + x + dx]) {
            return true;
          }
        }
      }
      return false;
    }
  }
}
