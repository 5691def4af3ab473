package org.lapmark.figure.seen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.figure.seen.SeenFigure.Mark;

/**
 * Figures are read at 60 % of their size, from a printer of 300 dots to the inch, in black alone.
 */
class LegibilityTest {
  private static final double SMALL = 0.6;
  private static final double DOT = 25.4 / 300;
  private static final Properties STYLES = Looks.stated();

  /** Lines of stitching that are told apart by their dashes. */
  private static final List<String> DASHED =
      List.of("stitching", "sew", "baste", "topstitch", "gather", "running");

  @Test
  void noLineIsThinnerThanADot() {
    for (String key : new TreeSet<>(STYLES.stringPropertyNames())) {
      if (key.endsWith(".stroke")) {
        assertTrue(number(key) >= 0.1, key + " = " + number(key) + "; a dot is " + DOT);
      }
    }
  }

  @Test
  void everyDashAndGapIsTwoDotsAtTheLeast() {
    for (String key : new TreeSet<>(STYLES.stringPropertyNames())) {
      if (key.endsWith(".dash")) {
        for (double part : dashes(key)) {
          assertTrue(SMALL * part >= 2 * DOT, key + " has " + part);
        }
      }
    }
  }

  @Test
  void dashesOfStitchingStandOut() {
    for (String kind : DASHED) {
      for (String role : List.of(kind, kind + "-now")) {
        String key = "figure-" + role;
        if (STYLES.containsKey(key + ".stroke")) {
          double[] dash = dashes(key + ".dash");
          assertTrue(SMALL * dash[0] >= 0.8, key + ": dashes are seen as dashes");
          assertTrue(SMALL * dash[1] >= 0.5, key + ": gaps are seen as gaps");
        }
      }
      double line = number("figure-" + kind + ".stroke");
      for (String texture : new TreeSet<>(STYLES.stringPropertyNames())) {
        if (texture.endsWith("-texture.stroke")) {
          // Dots are wider than lines, and as short as they are wide.
          String dash = texture.replace(".stroke", ".dash");
          boolean dots = STYLES.containsKey(dash) && dashes(dash)[0] <= number(texture);
          assertTrue(dots || line >= 1.25 * number(texture), kind + " over " + texture);
          assertTrue(!dots || dashes("figure-" + kind + ".dash")[0] >= 4 * number(texture), kind);
        }
      }
    }
  }

  @Test
  void whatAStepDoesIsTheHeaviestOfItsKind() {
    for (String key : new TreeSet<>(STYLES.stringPropertyNames())) {
      if (key.endsWith("-now.stroke") && STYLES.containsKey(key.replace("-now", ""))) {
        assertTrue(number(key) >= 1.6 * number(key.replace("-now", "")), key);
      }
    }
  }

  @Test
  void tonesAreLight() {
    for (String key : new TreeSet<>(STYLES.stringPropertyNames())) {
      String cloth = key.replace("figure-", "").replace("-wrong", "").replace(".fill", "");
      if (List.of("main", "lining", "interfacing", "backing", "webbing", "other").contains(cloth)
          && key.endsWith(".fill")) {
        assertTrue(number(key) >= 0.8, key);
      }
    }
  }

  /** As many dots as a texture makes black, of those inside its shape, in all published figures. */
  @ParameterizedTest
  @ValueSource(strings = {"content/towpath-handlebar-bag", "content/slipway-rain-hat"})
  void texturesStayLightInDots(String folder) throws IOException {
    Predicate<Mark> texture = Looks.texture();
    Map<String, Double> full = new LinkedHashMap<>();
    Map<String, Double> small = new LinkedHashMap<>();
    for (Shown.One one : new Shown(Path.of(folder)).all(List.of(Shown.Cut.STEPS))) {
      Map<Shape, List<Mark>> groups = new LinkedHashMap<>();
      for (Mark mark : SeenFigure.read(one.svg()).marks()) {
        if (texture.test(mark)) {
          Shape inner = mark.clips().get(mark.clips().size() - 1);
          groups.computeIfAbsent(inner, shape -> new ArrayList<>()).add(mark);
        }
      }
      groups.forEach(
          (shape, marks) -> {
            Rectangle2D box = shape.getBounds2D();
            if (box.getWidth() > 12 && box.getHeight() > 12) {
              String look = marks.get(0).line() + " " + marks.get(0).dash();
              full.merge(look, black(shape, marks, 1), Math::max);
              small.merge(look, black(shape, marks, SMALL), Math::max);
            }
          });
    }
    assertTrue(!full.isEmpty());
    full.forEach((look, share) -> assertTrue(share > 0 && share <= 0.2, look + ": " + share));
    small.forEach((look, share) -> assertTrue(share <= 0.27, look + ": " + share));
  }

  private static double black(Shape shape, List<Mark> marks, double scale) {
    double perMillimetre = scale / DOT;
    Rectangle2D box = shape.getBounds2D();
    AffineTransform map = AffineTransform.getScaleInstance(perMillimetre, perMillimetre);
    map.translate(-box.getX(), -box.getY());
    int width = (int) Math.ceil(box.getWidth() * perMillimetre);
    int height = (int) Math.ceil(box.getHeight() * perMillimetre);
    BufferedImage dots = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D ink = dots.createGraphics();
    ink.setColor(Color.WHITE);
    ink.fill(map.createTransformedShape(shape));
    int inside = count(dots);
    ink.clip(map.createTransformedShape(shape));
    ink.setColor(Color.BLACK);
    for (Mark mark : marks) {
      // No printer draws a line thinner than a dot.
      float line = (float) Math.max(1, mark.line() * perMillimetre);
      BasicStroke stroke = new BasicStroke(line, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
      if (!mark.dash().isEmpty()) {
        double[] parts =
            Arrays.stream(mark.dash().split(" ")).mapToDouble(Double::parseDouble).toArray();
        float[] dash = new float[parts.length];
        for (int i = 0; i < dash.length; i++) {
          dash[i] = (float) (parts[i] * perMillimetre);
        }
        stroke = new BasicStroke(line, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0);
      }
      ink.setStroke(stroke);
      ink.draw(map.createTransformedShape(new Path2D.Double(mark.shape())));
    }
    int white = count(dots);
    ink.dispose();
    return (double) (inside - white) / inside;
  }

  private static int count(BufferedImage dots) {
    int count = 0;
    for (int value :
        dots.getRaster().getPixels(0, 0, dots.getWidth(), dots.getHeight(), (int[]) null)) {
      count += value > 127 ? 1 : 0;
    }
    return count;
  }

  /** The measure itself: lines one dot wide, ten dots apart, are a tenth black. */
  @Test
  void theMeasureIsTrue() {
    Path2D lines = new Path2D.Double();
    for (int i = 0; i < 20; i++) {
      lines.moveTo(0, (10 * i + 4.5) * DOT);
      lines.lineTo(200 * DOT, (10 * i + 4.5) * DOT);
    }
    Shape square = new Rectangle2D.Double(0, 0, 200 * DOT, 200 * DOT);
    Mark mark = new Mark(0, lines, -1, 0, DOT, "", List.of(square));
    assertEquals(0.1, black(square, List.of(mark), 1), 0.005);
  }

  private static double number(String key) {
    return Double.parseDouble(STYLES.getProperty(key));
  }

  private static double[] dashes(String key) {
    return Arrays.stream(STYLES.getProperty(key).split(" "))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }
}
