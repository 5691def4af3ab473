package org.lapmark.figure.operation.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Side;
import org.lapmark.geometry.Point;

/** A plan as it is put together, x right, y down, in millimetres of cloth. It grows only. */
public final class Plan {
  private final List<PlanScene.Area> areas = new ArrayList<>();
  private final List<PlanScene.Line> lines = new ArrayList<>();
  private final List<PlanScene.Label> labels = new ArrayList<>();
  private final List<PlanScene.Distance> distances = new ArrayList<>();

  /** A place. */
  public static Point at(double x, double y) {
    return new Point(x, y);
  }

  /** The corners of a rectangle. */
  public static List<Point> box(double minX, double minY, double maxX, double maxY) {
    return List.of(at(minX, minY), at(maxX, minY), at(maxX, maxY), at(minX, maxY));
  }

  /** Cloth with its name, which points at the first place that is free. */
  public Plan cloth(List<Point> corners, Material cloth, Side side, String name, Point... places) {
    List<Point> ring = new ArrayList<>(corners);
    ring.add(corners.get(0));
    areas.add(new PlanScene.Area(ring, cloth.seen(), side, name, Arrays.asList(places)));
    return this;
  }

  /** Cloth that is named elsewhere. */
  public Plan cloth(List<Point> corners, Material cloth, Side side) {
    return cloth(corners, cloth, side, "");
  }

  /** A line with a label, or an empty one. */
  public Plan line(String role, String words, Point... points) {
    lines.add(new PlanScene.Line(Arrays.asList(points), role, words, false));
    return this;
  }

  /** A line through many points. */
  public Plan line(String role, String words, List<Point> points) {
    lines.add(new PlanScene.Line(points, role, words, false));
    return this;
  }

  /** Stitches of this step. */
  public Plan sewn(String words, Point... points) {
    return line("figure-sew-now", words, points);
  }

  /** An arrow that shows how cloth is moved. */
  public Plan moved(Point... points) {
    lines.add(new PlanScene.Line(Arrays.asList(points), "figure-outline", "", true));
    return this;
  }

  /** A label of a place. */
  public Plan label(String words, Point at) {
    labels.add(new PlanScene.Label(words, at));
    return this;
  }

  /** A dimension. */
  public Plan size(Point from, Point to, Beside beside, String length) {
    distances.add(new PlanScene.Distance(from, to, beside, length));
    return this;
  }

  /** Points of an arc from an angle to another, in degrees clockwise from the right. */
  public static List<Point> arc(Point centre, double radius, double from, double to) {
    List<Point> points = new ArrayList<>();
    int steps = (int) Math.max(6, Math.ceil(Math.abs(to - from) / 5));
    for (int i = 0; i <= steps; i++) {
      double angle = StrictMath.toRadians(from + (to - from) * i / steps);
      points.add(centre.plus(at(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle))));
    }
    return points;
  }

  /** What has been put together. */
  public PlanScene scene() {
    return new PlanScene(areas, lines, labels, distances);
  }
}
