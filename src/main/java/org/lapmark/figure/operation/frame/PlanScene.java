package org.lapmark.figure.operation.frame;

import java.util.List;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Cloth seen from above, in millimetres of cloth.
 *
 * @param areas shapes filled with a material, each over those before it
 * @param lines lines over them
 * @param labels labels of places
 * @param distances dimensions
 */
public record PlanScene(
    List<Area> areas, List<Line> lines, List<Label> labels, List<Distance> distances)
    implements Scene {
  private static final double HEAD = 2.4;
  private static final double HALF_HEAD = 0.9;

  /** Copies the lists. */
  public PlanScene {
    areas = List.copyOf(areas);
    lines = List.copyOf(lines);
    labels = List.copyOf(labels);
    distances = List.copyOf(distances);
  }

  /**
   * A shape of cloth.
   *
   * @param outline its corners, the first again at the end
   * @param texture its material
   * @param side the side that faces the reader
   * @param name its name; empty where it is named elsewhere
   * @param places where it may be named
   */
  public record Area(
      List<Point> outline, Texture texture, Side side, String name, List<Point> places) {
    /** Copies the lists. */
    public Area {
      outline = List.copyOf(outline);
      places = List.copyOf(places);
    }
  }

  /**
   * A line.
   *
   * @param points where it runs
   * @param role how it is drawn
   * @param words its label; empty for none
   * @param arrow whether it ends in a head, as a movement of cloth does
   */
  public record Line(List<Point> points, String role, String words, boolean arrow) {
    /** Copies the list. */
    public Line {
      points = List.copyOf(points);
    }
  }

  /** A label of a place. */
  public record Label(String words, Point at) {}

  /**
   * A dimension.
   *
   * @param from one end
   * @param to the other
   * @param beside on which side of everything it stands
   * @param text its lettering
   */
  public record Distance(Point from, Point to, Beside beside, String text) {}

  private static List<Point> scaled(List<Point> points, double scale) {
    return points.stream().map(point -> point.times(scale)).toList();
  }

  @Override
  public void draw(Canvas canvas, double scale) {
    for (Area area : areas) {
      Path outline = Path.polyline(scaled(area.outline, scale));
      canvas.cloth(outline, area.texture, area.side, 0);
      canvas.line(outline, "figure-outline");
    }
    for (Line line : lines) {
      List<Point> points = scaled(line.points, scale);
      canvas.line(Path.polyline(points), line.role);
      if (line.arrow) {
        head(points, canvas);
      }
      if (!line.words.isEmpty()) {
        Path path = Path.polyline(points);
        canvas.wish(
            line.words,
            List.of(
                path.atLength(path.length() / 2),
                path.atLength(path.length() / 4),
                path.atLength(path.length() * 3 / 4),
                path.atLength(path.length() / 8),
                path.atLength(path.length() * 7 / 8)),
            null);
      }
    }
    for (Area area : areas) {
      if (!area.name.isEmpty()) {
        canvas.wish(area.name, scaled(area.places, scale), null);
      }
    }
    labels.forEach(label -> canvas.wish(label.words, List.of(label.at.times(scale)), null));
    Box shape = canvas.bounds();
    for (Distance one : distances) {
      canvas.dimension(one.from.times(scale), one.to.times(scale), one.beside, one.text, shape);
    }
  }

  private static void head(List<Point> points, Canvas canvas) {
    Point tip = points.get(points.size() - 1);
    Point back = points.get(points.size() - 2).minus(tip).unit().times(HEAD);
    Point side = back.unit().quarterTurn().times(HALF_HEAD);
    canvas.shape(
        Path.polyline(List.of(tip, tip.plus(back).plus(side), tip.plus(back).minus(side), tip)),
        "figure-arrow");
  }

  @Override
  public List<String> inWords(Words words) {
    return List.of();
  }
}
