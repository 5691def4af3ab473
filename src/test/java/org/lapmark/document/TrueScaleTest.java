package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.geometry.Point;
import org.lapmark.print.paper.Paper;

/** Prints true: by the numbers in the file, and by what an independent renderer makes of them. */
class TrueScaleTest {
  private static final double MM = 25.4 / 72;

  @Test
  void writesTheSquareToTheMicrometre() throws Exception {
    Specimen specimen = new Specimen(Paper.A4, Locale.UK);
    List<Point> wanted = Specimen.square().curves().stream().map(curve -> curve.start()).toList();
    for (int page : new int[] {1, 5}) {
      List<Point> square = square(Documents.complete(Paper.A4, Locale.UK), page);
      for (int i = 0; i < 4; i++) {
        Point corner = square.get(i);
        assertEquals(100, corner.distance(square.get((i + 1) % 4)), 0.002);
        Point onPaper = new Point(corner.x(), specimen.plan().paper().height() - corner.y());
        assertTrue(onPaper.distance(wanted.get(i)) < 0.002, () -> "corner at " + onPaper);
      }
    }
  }

  /** The corners of the first path of four straight sides of about 10 cm, in millimetres. */
  private static List<Point> square(byte[] file, int pageIndex) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      List<Double> numbers = new ArrayList<>();
      List<Point> path = new ArrayList<>();
      for (Object token : new PDFStreamParser(document.getPage(pageIndex)).parse()) {
        if (token instanceof COSNumber number) {
          numbers.add((double) number.floatValue());
        } else if (token instanceof Operator operator) {
          switch (operator.getName()) {
            case "m" -> {
              path.clear();
              path.add(new Point(numbers.get(0) * MM, numbers.get(1) * MM));
            }
            case "l" -> path.add(new Point(numbers.get(0) * MM, numbers.get(1) * MM));
            case "S" -> {
              if (path.size() == 5 && Math.abs(path.get(0).distance(path.get(1)) - 100) < 1) {
                return path.subList(0, 4);
              }
            }
            default -> {}
          }
          numbers.clear();
        }
      }
      throw new AssertionError("no square on page " + (pageIndex + 1));
    }
  }

  @Test
  void rendersTheSquareTrue(@TempDir Path folder) throws Exception {
    Path pdf = folder.resolve("tiles.pdf");
    Files.write(pdf, Documents.tiles(Paper.A4, Locale.UK));
    Path image = folder.resolve("tile");
    boolean ran;
    try {
      Process process =
          new ProcessBuilder(
                  "pdftocairo",
                  "-r",
                  "254",
                  "-gray",
                  "-png",
                  "-singlefile",
                  "-f",
                  "1",
                  "-l",
                  "1",
                  pdf.toString(),
                  image.toString())
              .redirectErrorStream(true)
              .redirectOutput(folder.resolve("log").toFile())
              .start();
      ran = process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException e) {
      assertEquals(null, System.getenv("CI"), "poppler has to be there in continuous integration");
      Assumptions.abort("poppler’s pdftocairo isn’t installed: " + e.getMessage());
      return;
    }
    assertTrue(ran, () -> "pdftocairo failed: " + read(folder.resolve("log")));
    java.awt.image.BufferedImage pixels =
        javax.imageio.ImageIO.read(folder.resolve("tile.png").toFile());
    // Rows and columns across the sides, away from the corners and from other lines.
    double left = edge(pixels, 371.23, 600, true);
    double right = edge(pixels, 1371.23, 600, true);
    double top = edge(pixels, 413.37, 600, false);
    double bottom = edge(pixels, 1413.37, 600, false);
    assertEquals(100, (right - left) / 10, 0.05);
    assertEquals(100, (bottom - top) / 10, 0.05);
    assertEquals(37.123, left / 10, 0.05);
    assertEquals(41.337, top / 10, 0.05);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      return e.getMessage();
    }
  }

  /** The centre of darkness of a line near a place, in pixels, across which the scan runs. */
  private static double edge(
      java.awt.image.BufferedImage pixels, double near, int at, boolean across) {
    double weight = 0;
    double sum = 0;
    for (int i = (int) near - 12; i <= near + 12; i++) {
      int grey =
          across ? pixels.getRaster().getSample(i, at, 0) : pixels.getRaster().getSample(at, i, 0);
      weight += 255 - grey;
      sum += (255 - grey) * (i + 0.5);
    }
    assertTrue(weight > 255, "no line near " + near);
    return sum / weight;
  }
}
