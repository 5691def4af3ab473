package org.lapmark.figure.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.scene.PrintedLength;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A section: distances along it are true, thickness and the room between layers are not. The right
 * side of cloth is the stronger of a layer's two lines.
 *
 * @param cords cords in folds, each by the middle of its fold
 * @param layers the layers
 * @param stitches where it is sewn
 * @param labels further labels
 * @param distances dimensions along it
 * @param inlays what else lies in it, over the layers
 * @param note what in it is not true to scale; empty where that stands elsewhere
 */
public record SectionScene(
    List<Label> cords,
    List<Layer> layers,
    List<Stitch> stitches,
    List<Label> labels,
    List<Distance> distances,
    List<Inlay> inlays,
    String note)
    implements Scene {
  /** Copies the lists. */
  public SectionScene {
    cords = List.copyOf(cords);
    layers = List.copyOf(layers);
    stitches = List.copyOf(stitches);
    labels = List.copyOf(labels);
    distances = List.copyOf(distances);
    inlays = List.copyOf(inlays);
  }

  /** How far from a layer's line something may stand, on paper. */
  static final double BESIDE = 2.5;

  /** From one level to the next, on paper. */
  public static final double LEVEL = 3.4;

  private static final double NOTE = 9;

  /** From the lowest dimension to the middle of the note. */
  private static final double BELOW = 3;

  private static final double BEND = 3.4;

  /**
   * A place.
   *
   * @param along the distance along the section in millimetres of cloth
   * @param level the level, 0 at the top
   * @param aside how far to the right of that distance, in millimetres on paper
   */
  public record Spot(double along, double level, double aside) {
    /** A place at a distance and a level. */
    public Spot(double along, double level) {
      this(along, level, 0);
    }

    /** On paper. */
    public Point on(double scale) {
      return new Point(along * scale + aside, level * LEVEL);
    }
  }

  /** Something that lies in a section besides its layers. */
  public interface Inlay {
    /**
     * Draws it.
     *
     * @param canvas the canvas
     * @param scale millimetres on paper for one of cloth
     */
    void draw(Canvas canvas, double scale);
  }

  /** A label of a place. */
  public record Label(String words, Spot at) {}

  /**
   * A dimension.
   *
   * @param from where it begins
   * @param to where it ends
   * @param above whether it stands above
   * @param length its lettering
   */
  public record Distance(double from, double to, boolean above, PrintedLength length) {
    private void draw(Canvas canvas, double scale, Box shape) {
      double y = above ? shape.minY() : shape.maxY();
      canvas.dimension(
          new Point(from * scale, y),
          new Point(to * scale, y),
          above ? Beside.ABOVE : Beside.BELOW,
          length.text(),
          shape);
    }
  }

  /** The layers' lines on paper. */
  static List<Path> lines(List<Layer> layers, double scale) {
    return layers.stream().map(layer -> Path.polyline(layer.centre(scale))).toList();
  }

  @Override
  public void draw(Canvas canvas, double scale) {
    cords.forEach(cord -> cord(cord, canvas, scale));
    layers.forEach(layer -> layer.draw(canvas, scale));
    stitches.forEach(stitch -> stitch.draw(canvas, scale));
    inlays.forEach(inlay -> inlay.draw(canvas, scale));
    labels.forEach(label -> canvas.wish(label.words, List.of(label.at.on(scale)), null));
    Box shape = canvas.bounds();
    distances.forEach(distance -> distance.draw(canvas, scale, shape));
    if (!note.isEmpty()) {
      // Below all dimensions, whose lines would run through it.
      boolean clear = distances.stream().allMatch(Distance::above);
      double y = clear ? shape.maxY() + NOTE : canvas.bounds().maxY() + BELOW;
      canvas.fixed(note, new Point(shape.centre().x(), y));
    }
  }

  /** A cord that lies in a fold fills it. */
  private static void cord(Label cord, Canvas canvas, double scale) {
    Point bend = cord.at.on(scale);
    Point centre = new Point(bend.x() - LEVEL, bend.y());
    double radius = LEVEL - Layer.thickness(Texture.BINDING) / 2 - 0.1;
    Path circle = Path.circle(centre, radius);
    canvas.cloth(circle, Texture.INTERFACING, Side.RIGHT, 0);
    canvas.line(circle, "figure-outline");
    canvas.wish(cord.words, List.of(centre), null);
  }

  @Override
  public List<String> inWords(Words words) {
    List<String> sentences = new ArrayList<>();
    String names = String.join("; ", layers.stream().map(Layer::name).toList());
    sentences.add(words.word("alt.section", "layers", names));
    stitches.forEach(
        stitch ->
            stitch.words.ifPresent(what -> sentences.add(words.word("alt.stitch", "what", what))));
    return sentences;
  }

  /**
   * A layer.
   *
   * @param texture how its material is shown; nothing for a zip's tape
   * @param up which side faces up at its beginning
   * @param line where it runs
   * @param name its name; empty where it is named elsewhere
   */
  public record Layer(Optional<Texture> texture, Side up, List<Spot> line, String name) {
    private static final double TAPE = 1.1;

    /** Copies the list. */
    public Layer {
      line = List.copyOf(line);
    }

    /** How thick it is on paper. */
    public double thickness() {
      return texture.map(Layer::thickness).orElse(TAPE);
    }

    private static double thickness(Texture texture) {
      return switch (texture) {
        case MAIN, WEBBING, OTHER -> 1.7;
        case BACKING -> 3.6;
        case LINING, BINDING -> 1.2;
        case INTERFACING -> 1.0;
      };
    }

    private void draw(Canvas canvas, double scale) {
      List<Point> centre = centre(scale);
      double half = thickness() / 2;
      List<Point> left = beside(centre, -half);
      List<Point> right = beside(centre, half);
      List<Point> ring = new ArrayList<>(left);
      for (int i = right.size() - 1; i >= 0; i--) {
        ring.add(right.get(i));
      }
      ring.add(left.get(0));
      Path shape = Path.polyline(ring);
      if (texture.isPresent()) {
        canvas.cloth(shape, texture.get(), Side.RIGHT, 0);
      } else {
        canvas.shape(shape, "figure-tape");
      }
      canvas.line(shape, "figure-layer");
      if (texture.map(Texture::sided).orElse(true)) {
        boolean upIsLeft = centre.get(1).x() >= centre.get(0).x();
        boolean rightSideLeft = (up == Side.RIGHT) == upIsLeft;
        canvas.line(Path.polyline(rightSideLeft ? left : right), "figure-face");
      }
      if (name.isEmpty()) {
        return;
      }
      List<Point> anchors = new ArrayList<>();
      Path middle = Path.polyline(centre);
      for (int i = 1; i < 16; i++) {
        anchors.add(middle.atLength(middle.length() * i / 16));
      }
      canvas.wish(name, anchors, null);
    }

    /** The line on paper with its corners rounded, as points no two of which are the same. */
    public List<Point> centre(double scale) {
      List<Point> corners = line.stream().map(spot -> spot.on(scale)).toList();
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
          Point arm = Affine.rotation(angle).applyVector(toCentre.times(-1));
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
  }

  /**
   * Stitches.
   *
   * @param at where, in millimetres of cloth
   * @param from the upper level
   * @param to the lower level
   * @param now whether this step sews them
   * @param words a label
   */
  public record Stitch(double at, double from, double to, boolean now, Optional<String> words) {
    private static final double BEYOND = 1.6;
    private static final double HALF = 1.1;

    private Point end(double scale, boolean upper) {
      return new Point(at * scale, upper ? from * LEVEL - BEYOND : to * LEVEL + BEYOND);
    }

    /** Whether they go through one of some lines on paper, or near it. */
    boolean meets(List<Path> lines, double scale) {
      Point upper = end(scale, true);
      Point lower = end(scale, false);
      Box reach =
          new Box(
              upper.x() - BESIDE,
              Math.min(upper.y(), lower.y()) - BESIDE,
              upper.x() + BESIDE,
              Math.max(upper.y(), lower.y()) + BESIDE);
      return lines.stream()
          .flatMap(line -> line.curves().stream())
          .anyMatch(one -> Polygons.crosses(reach, one.start(), one.end()));
    }

    private void draw(Canvas canvas, double scale) {
      String role = now ? "figure-stitch-now" : "figure-stitch";
      Point upper = end(scale, true);
      Point lower = end(scale, false);
      canvas.line(Path.polyline(List.of(upper, lower)), role);
      for (Point end : List.of(upper, lower)) {
        Point left = new Point(end.x() - HALF, end.y());
        canvas.line(Path.polyline(List.of(left, new Point(end.x() + HALF, end.y()))), role);
      }
      words.ifPresent(text -> canvas.wish(text, List.of(upper, lower), null));
    }
  }
}
