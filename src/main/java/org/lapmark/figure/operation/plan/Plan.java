package org.lapmark.figure.operation.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stitching.StitchKind;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** A plan as it is put together, from the bottom up. It grows only. */
public final class Plan {
  /** How far on paper a layer stands out from under another. */
  public static final Point OUT = new Point(2, -2);

  private static final Point LEVEL = new Point(0, 0);

  private final List<Part> parts = new ArrayList<>();

  /** A place. */
  public static Point at(double x, double y) {
    return new Point(x, y);
  }

  /** A line from place to place. */
  public static Path line(Point... points) {
    return Path.polyline(Arrays.asList(points));
  }

  /** A line through places. */
  public static Path line(double... coordinates) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(at(coordinates[i], coordinates[i + 1]));
    }
    return Path.polyline(points);
  }

  /** Points round a centre from an angle to another, in degrees clockwise from the right. */
  public static List<Point> arc(Point centre, double radius, double from, double to) {
    List<Point> points = new ArrayList<>();
    int steps = (int) Math.max(2, Math.ceil(Math.abs(to - from) / 2));
    for (int i = 0; i <= steps; i++) {
      points.add(round(centre, radius, from + (to - from) * i / steps));
    }
    return points;
  }

  /** A point at an angle. */
  public static Point round(Point centre, double radius, double angle) {
    double radians = StrictMath.toRadians(angle);
    return centre.plus(at(radius * StrictMath.cos(radians), radius * StrictMath.sin(radians)));
  }

  /** A sheet with its name. */
  public Plan sheet(Material cloth, Side up, Rim rim) {
    return sheet(cloth, up, rim, LEVEL, cloth.name());
  }

  /** A sheet that is named elsewhere. */
  public Plan more(Material cloth, Side up, Rim rim) {
    return sheet(cloth, up, rim, LEVEL, "");
  }

  /** A sheet that stands out on paper from under what lies over it. */
  public Plan sheet(Material cloth, Side up, Rim rim, Point aside, String name) {
    parts.add(new Sheet(cloth.seen(), up, rim, aside, name));
    return this;
  }

  /** A zip with its teeth from here to there. */
  public Plan zip(Box tape, double from, double to, String name) {
    parts.add(new ZipFace(tape, from, to, name));
    return this;
  }

  /** Stitches of this step. */
  public Plan sewn(Path line, String words) {
    return sewn(StitchKind.SEW, line, true, words);
  }

  /** Stitches of an earlier step. */
  public Plan before(Path line) {
    return sewn(StitchKind.SEW, line, false, "");
  }

  /** Stitches of a kind. */
  public Plan sewn(StitchKind kind, Path line, boolean now, String words) {
    parts.add(new Sewing(kind, line, now, false, false, words));
    return this;
  }

  /** Stitches of this step, backstitched where they begin, where they end, or both. */
  public Plan secured(Path line, boolean begun, boolean ended, String words) {
    parts.add(new Sewing(StitchKind.SEW, line, true, begun, ended, words));
    return this;
  }

  /** A cut of this step. */
  public Plan cut(Path line, String words) {
    return stroke(line, "figure-edge-now", words);
  }

  /** An edge that is covered. */
  public Plan under(Path line, String words) {
    return stroke(line, "figure-under", words);
  }

  /** An edge or a fold within a sheet. */
  public Plan edge(Path line, String words) {
    return stroke(line, "figure-outline", words);
  }

  /** A mark, or what is cut off. */
  public Plan mark(Path line, String words) {
    return stroke(line, "figure-mark-dashed", words);
  }

  /** A crease, or a thread. */
  public Plan thin(Path line, String words) {
    return stroke(line, "figure-mark", words);
  }

  private Plan stroke(Path line, String role, String words) {
    parts.add(new Stroke(line, role, words));
    return this;
  }

  /** A movement of cloth. */
  public Plan arrow(Path way) {
    parts.add(new Arrow(way));
    return this;
  }

  /** A dimension. */
  public Plan dimension(Point from, Point to, Beside beside, String length) {
    parts.add(new Span(from, to, beside, length));
    return this;
  }

  /** A label of the first place that can be named. */
  public Plan label(String words, Point... places) {
    parts.add(new Note(words, Arrays.asList(places)));
    return this;
  }

  /** The number of a place that sewing comes to, in a ring so far from it on paper. */
  public Plan turn(int number, Point place, Point aside) {
    parts.add(new Turn(number, place, aside));
    return this;
  }

  /** What has been put together. */
  public Scene scene() {
    return new PlanScene(parts);
  }
}
