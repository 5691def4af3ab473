package org.lapmark.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.cutting.CuttingLine;
import org.lapmark.panel.cutting.PieceShape;

/**
 * Fifty patterns on which arranging is measured, always the same. Pattern {@code i} has 5 to 60
 * pieces, evenly spread over the fifty.
 *
 * <p>Sizes, by share of the pieces, evenly spread inside each range (narrow by long side, in
 * millimetres):
 *
 * <ul>
 *   <li>30 %: tabs, 15 to 70 by 20 to 110;
 *   <li>25 %: small pieces, 70 to 150 by 80 to 200;
 *   <li>15 %: about a page, 110 to 175 by 160 to 260;
 *   <li>20 %: larger than a page, 200 to 420 by 280 to 620;
 *   <li>10 %: strips, 35 to 90 by 300 to 900.
 * </ul>
 *
 * <p>Shapes, whatever the size but for strips: 30 % rectangles, 15 % trapezia, 15 % ovals, 10 %
 * rounded at one end, and, concave, 10 % angles, 10 % channels, 10 % crescents. Strips are
 * rectangles and shallow crescents, half each.
 */
final class GeneratedPatterns {
  static final int COUNT = 50;
  static final long SEED = 20_260_131L;

  private static final int FEWEST = 5;
  private static final int MOST = 60;

  private GeneratedPatterns() {}

  static List<EvaluatedPattern> all() {
    List<EvaluatedPattern> patterns = new ArrayList<>();
    for (int i = 0; i < COUNT; i++) {
      patterns.add(pattern(i));
    }
    return patterns;
  }

  /** One of the fifty, which doesn't depend on the others. */
  static EvaluatedPattern pattern(int index) {
    int pieces = FEWEST + (int) Math.round((double) (MOST - FEWEST) * index / (COUNT - 1));
    return pattern(index, pieces);
  }

  /** A pattern of as many pieces as wanted, by the same distribution. */
  static EvaluatedPattern pattern(int index, int pieces) {
    SplittableRandom random = new SplittableRandom(SEED + index);
    List<Piece> list = new ArrayList<>();
    for (int number = 1; number <= pieces; number++) {
      list.add(piece(number, random));
    }
    return SamplePatterns.pattern("M", list);
  }

  private static Piece piece(int number, SplittableRandom random) {
    double share = random.nextDouble();
    if (share < 0.30) {
      return shaped(number, "Tab", between(random, 15, 70), between(random, 20, 110), random);
    }
    if (share < 0.55) {
      return shaped(number, "Pocket", between(random, 70, 150), between(random, 80, 200), random);
    }
    if (share < 0.70) {
      return shaped(number, "Side", between(random, 110, 175), between(random, 160, 260), random);
    }
    if (share < 0.90) {
      return shaped(number, "Body", between(random, 200, 420), between(random, 280, 620), random);
    }
    double width = between(random, 35, 90);
    double length = between(random, 300, 900);
    List<Curve> strip =
        random.nextBoolean() ? rectangle(width, length) : crescent(width, length, 0.35);
    return made(number, "Strip", strip, length);
  }

  private static double between(SplittableRandom random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private static Piece shaped(
      int number, String name, double a, double b, SplittableRandom random) {
    double w = Math.min(a, b);
    double h = Math.max(a, b);
    int kind = random.nextInt(20);
    List<Curve> curves =
        kind < 6
            ? rectangle(w, h)
            : kind < 9
                ? trapezium(w, h, between(random, 0.5, 0.9))
                : kind < 12
                    ? oval(w, h)
                    : kind < 14
                        ? roundEnd(w, h)
                        : kind < 16
                            ? angle(w, h, between(random, 0.3, 0.6))
                            : kind < 18
                                ? channel(w, h, between(random, 0.2, 0.33))
                                : crescent(w, h, between(random, 0.3, 0.6));
    return made(number, name, curves, h);
  }

  private static List<Curve> polygon(double... xy) {
    List<Curve> curves = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      int next = (i + 2) % xy.length;
      curves.add(new Line(new Point(xy[i], xy[i + 1]), new Point(xy[next], xy[next + 1])));
    }
    return curves;
  }

  private static List<Curve> rectangle(double w, double h) {
    return polygon(0, 0, w, 0, w, h, 0, h);
  }

  private static List<Curve> trapezium(double w, double h, double top) {
    double inset = w * (1 - top) / 2;
    return polygon(inset, 0, w - inset, 0, w, h, 0, h);
  }

  private static List<Curve> angle(double w, double h, double bar) {
    return polygon(0, 0, w * bar, 0, w * bar, h - w * bar, w, h - w * bar, w, h, 0, h);
  }

  private static List<Curve> channel(double w, double h, double bar) {
    double b = w * bar;
    return polygon(0, 0, b, 0, b, h - b, w - b, h - b, w - b, 0, w, 0, w, h, 0, h);
  }

  private static Cubic cubic(double... xy) {
    return new Cubic(
        new Point(xy[0], xy[1]),
        new Point(xy[2], xy[3]),
        new Point(xy[4], xy[5]),
        new Point(xy[6], xy[7]));
  }

  private static List<Curve> oval(double w, double h) {
    double k = 0.5523;
    double x = w / 2;
    double y = h / 2;
    return List.of(
        cubic(x, 0, x + k * x, 0, w, y - k * y, w, y),
        cubic(w, y, w, y + k * y, x + k * x, h, x, h),
        cubic(x, h, x - k * x, h, 0, y + k * y, 0, y),
        cubic(0, y, 0, y - k * y, x - k * x, 0, x, 0));
  }

  private static List<Curve> roundEnd(double w, double h) {
    double flat = h - w / 2;
    return List.of(
        new Line(new Point(0, flat), new Point(0, 0)),
        new Line(new Point(0, 0), new Point(w, 0)),
        new Line(new Point(w, 0), new Point(w, flat)),
        cubic(w, flat, w, flat + 0.66 * w, 0, flat + 0.66 * w, 0, flat));
  }

  /** A band that bulges to the right, as hat brims and waistbands do. */
  private static List<Curve> crescent(double w, double h, double hollow) {
    double deep = w * hollow;
    return List.of(
        cubic(0, 0, 1.333 * w, 0.3 * h, 1.333 * w, 0.7 * h, 0, h),
        cubic(0, h, 1.333 * deep, 0.7 * h, 1.333 * deep, 0.3 * h, 0, 0));
  }

  private static Piece made(int number, String name, List<Curve> curves, double length) {
    Path line = new Path(curves);
    Point middle = line.bounds().centre();
    return new Piece(
        number,
        name,
        new PieceShape(
            new Panel(
                "panel" + number,
                List.of(new Edge("all", "a", "a", line)),
                Map.of(),
                List.of(
                    new Mark.Grainline(
                        new Point(middle.x(), middle.y() - 0.2 * length),
                        new Point(middle.x(), middle.y() + 0.2 * length)))),
            Map.of("all", 0.0),
            new CuttingLine(List.of(new CuttingLine.Span("all", line))),
            List.of()),
        List.of(new Cut("main", "cotton canvas, 400 g/m²", 1, 0)),
        Optional.empty());
  }
}
