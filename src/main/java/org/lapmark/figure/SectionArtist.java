package org.lapmark.figure;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.FigureSource.Beside;
import org.lapmark.figure.FigureSource.Cord;
import org.lapmark.figure.FigureSource.Section;
import org.lapmark.figure.FigureSource.SectionDimension;
import org.lapmark.figure.FigureSource.SectionLabel;
import org.lapmark.figure.FigureSource.SectionLayer;
import org.lapmark.figure.FigureSource.SectionPoint;
import org.lapmark.figure.FigureSource.Side;
import org.lapmark.figure.FigureSource.Stitch;
import org.lapmark.finding.FindingException;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;

/**
 * Draws a section: distances along it are true, thickness and the room between layers are not. The
 * right side of cloth is the stronger of a layer's two lines.
 */
final class SectionArtist {
  /** From one level to the next, on paper. */
  private static final double LEVEL = 3.4;

  private static final double NOTE = 9;
  private static final double BEND = 3.4;
  private static final double LONGEST = 2_000;

  /** How far from a layer's line something may stand, on paper. */
  private static final double BESIDE = 2.5;

  /** In millimetres of cloth. */
  private static final double NOTHING = 1e-3;

  private final Evaluation evaluation;
  private final double scale;
  private final Canvas canvas;
  private final List<Path> layers = new ArrayList<>();

  SectionArtist(
      Evaluation evaluation, StyleSheet styles, LetteringMeasure lettering, double scale) {
    this.evaluation = evaluation;
    this.scale = scale;
    this.canvas = new Canvas(styles, lettering);
  }

  Canvas draw(Section section) {
    section.cords().forEach(cord -> evaluation.run(() -> cord(cord)));
    section.layers().forEach(layer -> evaluation.run(() -> layer(layer)));
    // Where not all layers could be drawn, something may only seem to lie off them.
    boolean complete = layers.size() == section.layers().size();
    section.stitches().forEach(stitch -> evaluation.run(() -> stitch(stitch, complete)));
    section.labels().forEach(label -> evaluation.run(() -> label(label, complete)));
    Box shape = canvas.bounds();
    note(shape);
    section.dimensions().forEach(one -> evaluation.run(() -> dimension(one, shape, complete)));
    return canvas;
  }

  private void label(SectionLabel label, boolean complete) {
    Point at = point(label.at());
    if (complete) {
      checkReach(label.at().along(), at.x());
    }
    canvas.wish(evaluation.text(label.text()), List.of(at), null);
  }

  private void dimension(SectionDimension dimension, Box shape, boolean complete) {
    double from = evaluation.length(dimension.from(), -LONGEST, LONGEST);
    double to = evaluation.length(dimension.to(), -LONGEST, LONGEST);
    if (Math.abs(to - from) < NOTHING) {
      throw evaluation.empty(dimension.to(), "dimensions");
    }
    if (complete) {
      checkReach(dimension.from(), from * scale);
      checkReach(dimension.to(), to * scale);
    }
    double y = dimension.above() ? shape.minY() : shape.maxY();
    canvas.dimension(
        new Point(from * scale, y),
        new Point(to * scale, y),
        dimension.above() ? Beside.ABOVE : Beside.BELOW,
        evaluation.dimension(dimension.to().text().position(), Math.abs(to - from)),
        shape);
  }

  /** What is stated of a section lies between its layers' ends. */
  private void checkReach(Formula stated, double x) {
    if (x < least() - BESIDE || x > most() + BESIDE) {
      throw off(stated, x);
    }
  }

  private double least() {
    return layers.stream().mapToDouble(line -> line.bounds().minX()).min().orElse(0);
  }

  private double most() {
    return layers.stream().mapToDouble(line -> line.bounds().maxX()).max().orElse(0);
  }

  private FindingException off(Formula stated, double x) {
    return Evaluation.fault(
        stated.text().position(),
        FigureCode.FIGURE_OFF_LAYERS,
        "value",
        Evaluation.hundredth(x / scale),
        "size",
        evaluation.size(),
        "least",
        Evaluation.hundredth(least() / scale),
        "most",
        Evaluation.hundredth(most() / scale));
  }

  /** Says below the section what in it is not true to scale. */
  private void note(Box shape) {
    canvas.fixed(
        evaluation.word("section.note"), new Point(shape.centre().x(), shape.maxY() + NOTE));
  }

  private Point point(SectionPoint point) {
    return new Point(
        evaluation.length(point.along(), -LONGEST, LONGEST) * scale, point.level() * LEVEL);
  }

  private static double thickness(Texture texture) {
    if (texture == null) {
      return 1.1;
    }
    return switch (texture) {
      case MAIN, WEBBING, OTHER -> 1.7;
      case BACKING -> 3.6;
      case LINING, BINDING -> 1.2;
      case INTERFACING -> 1.0;
    };
  }

  /** A cord that lies in a fold fills it. */
  private void cord(Cord cord) {
    Point bend = point(cord.bend());
    Point centre = new Point(bend.x() - LEVEL, bend.y());
    Path circle = Path.circle(centre, LEVEL - thickness(Texture.BINDING) / 2 - 0.1);
    canvas.cloth(circle, Texture.INTERFACING, Side.RIGHT, 0);
    canvas.line(circle, "figure-outline");
    canvas.wish(
        cord.name() == null ? evaluation.word("cord") : evaluation.text(cord.name()),
        List.of(centre),
        null);
  }

  private void layer(SectionLayer layer) {
    Texture texture = layer.zip() ? null : evaluation.texture(evaluation.material(layer.cloth()));
    List<Point> centre = rounded(layer.line().stream().map(this::point).toList());
    if (centre.size() < 2) {
      throw evaluation.empty(layer.line().get(1).along(), "line");
    }
    layers.add(Path.polyline(centre));
    double half = thickness(texture) / 2;
    List<Point> left = beside(centre, -half);
    List<Point> right = beside(centre, half);
    List<Point> ring = new ArrayList<>(left);
    for (int i = right.size() - 1; i >= 0; i--) {
      ring.add(right.get(i));
    }
    ring.add(left.get(0));
    Path shape = Path.polyline(ring);
    if (texture == null) {
      canvas.shape(shape, "figure-tape");
    } else {
      canvas.cloth(shape, texture, Side.RIGHT, 0);
    }
    canvas.line(shape, "figure-layer");
    boolean ahead = centre.get(1).x() >= centre.get(0).x();
    boolean upIsLeft = ahead;
    if (texture != null && texture.sided() || layer.zip()) {
      boolean rightSideLeft = (layer.up() == Side.RIGHT) == upIsLeft;
      canvas.line(Path.polyline(rightSideLeft ? left : right), "figure-face");
    }
    String words =
        layer.name() != null
            ? evaluation.text(layer.name())
            : layer.zip()
                ? evaluation.word("zip.tape")
                : evaluation.clothName(layer.cloth().text());
    List<Point> anchors = new ArrayList<>();
    Path middle = Path.polyline(centre);
    for (int i = 1; i < 16; i++) {
      anchors.add(middle.atLength(middle.length() * i / 16));
    }
    canvas.wish(words, anchors, null);
  }

  private static boolean meets(Path line, Box box) {
    return line.curves().stream().anyMatch(one -> Canvas.crosses(box, one.start(), one.end()));
  }

  /** The line with its corners rounded, as points. */
  private static List<Point> rounded(List<Point> corners) {
    List<Point> points = new ArrayList<>();
    points.add(corners.get(0));
    for (int i = 1; i < corners.size() - 1; i++) {
      Point before = corners.get(i - 1);
      Point at = corners.get(i);
      Point after = corners.get(i + 1);
      Point in = at.minus(before);
      Point out = after.minus(at);
      double room =
          Math.min(
              i == 1 ? in.norm() : in.norm() / 2,
              i == corners.size() - 2 ? out.norm() : out.norm() / 2);
      double turn = StrictMath.atan2(in.cross(out), in.dot(out));
      double tangent = StrictMath.tan(Math.abs(turn) / 2);
      if (Math.abs(turn) < 1e-6 || tangent > 50) {
        points.add(at);
        continue;
      }
      double reach = Math.min(room, BEND * tangent);
      double radius = reach / tangent;
      Point start = at.minus(in.unit().times(reach));
      Point toCentre = in.unit().quarterTurn().times(Math.signum(turn) * radius);
      Point centre = start.plus(toCentre);
      int steps = (int) Math.max(3, Math.ceil(Math.abs(turn) / 0.1));
      for (int k = 0; k <= steps; k++) {
        double angle = StrictMath.toDegrees(turn * k / steps);
        Point arm = org.lapmark.geometry.Affine.rotation(angle).applyVector(toCentre.times(-1));
        points.add(centre.plus(arm));
      }
    }
    points.add(corners.get(corners.size() - 1));
    List<Point> distinct = new ArrayList<>();
    for (Point point : points) {
      if (distinct.isEmpty() || distinct.get(distinct.size() - 1).distance(point) > 1e-6) {
        distinct.add(point);
      }
    }
    return distinct;
  }

  private static List<Point> beside(List<Point> line, double distance) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      Point before = line.get(Math.max(0, i - 1));
      Point after = line.get(Math.min(line.size() - 1, i + 1));
      points.add(line.get(i).plus(after.minus(before).unit().quarterTurn().times(distance)));
    }
    return points;
  }

  private void stitch(Stitch stitch, boolean complete) {
    double x = evaluation.length(stitch.at(), -LONGEST, LONGEST) * scale;
    double top = stitch.from() * LEVEL - 1.6;
    double bottom = stitch.to() * LEVEL + 1.6;
    Box reach =
        new Box(
            x - BESIDE, Math.min(top, bottom) - BESIDE, x + BESIDE, Math.max(top, bottom) + BESIDE);
    if (complete && layers.stream().noneMatch(line -> meets(line, reach))) {
      throw off(stitch.at(), x);
    }
    String role = stitch.now() ? "figure-stitch-now" : "figure-stitch";
    Point upper = new Point(x, top);
    Point lower = new Point(x, bottom);
    canvas.line(Path.polyline(List.of(upper, lower)), role);
    for (Point end : List.of(upper, lower)) {
      canvas.line(
          Path.polyline(
              List.of(new Point(end.x() - 1.1, end.y()), new Point(end.x() + 1.1, end.y()))),
          role);
    }
    if (stitch.text() != null) {
      canvas.wish(evaluation.text(stitch.text()), List.of(upper, lower), null);
    }
  }
}
