package org.lapmark.figure.operation.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.section.SectionScene;
import org.lapmark.figure.section.Solid;
import org.lapmark.figure.section.Thread;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A section, and below it the same from above: what of each layer is open to view, covered edges,
 * stitches that come out on top. One description gives both.
 *
 * @param section the section
 */
public record Seen(SectionScene section) implements Scene {
  private static final double GAP = 9;
  private static final double HIGH = 15;

  /** Columns are looked at so far apart, on paper. */
  private static final double STEP = 0.1;

  /** Two columns of a layer further apart along it are not next to each other. */
  private static final double JUMP = 6;

  /** Folds nearer to each other than this meet. */
  private static final double CLOSE = 2.6;

  /** Edges nearer to each other are drawn as one. */
  private static final double SAME = 1.5;

  @Override
  public void draw(Canvas canvas, double scale) {
    section.draw(canvas, scale);
    Box box = canvas.bounds();
    double top = box.maxY() + GAP;
    List<Run> runs = runs(scale);
    List<Double> edges = new ArrayList<>();
    for (Run run : runs) {
      List<Point> upper = wave(run.from, run.to, top);
      List<Point> lower = wave(run.to, run.from, top + HIGH);
      List<Point> ring = new ArrayList<>(upper);
      ring.addAll(lower);
      ring.add(upper.get(0));
      Path shape = Path.polyline(ring);
      if (run.layer.texture().isPresent()) {
        canvas.cloth(shape, run.layer.texture().get(), run.side, 0);
      } else {
        canvas.shape(shape, "figure-tape");
      }
      canvas.line(Path.polyline(upper), "figure-break");
      canvas.line(Path.polyline(lower), "figure-break");
      if (run.begins) {
        edges.add(run.from);
      } else {
        canvas.line(across(run.from, top), "figure-break");
      }
      if (run.ends) {
        edges.add(run.to);
      } else {
        canvas.line(across(run.to, top), "figure-break");
      }
    }
    List<Double> drawn = new ArrayList<>();
    for (double edge : edges) {
      if (drawn.stream().noneMatch(one -> Math.abs(one - edge) < 0.2)) {
        drawn.add(edge);
        canvas.line(across(edge, top), "figure-outline");
      }
    }
    for (double edge : covered(scale, drawn)) {
      halo(canvas, runs, edge, top);
      canvas.line(across(edge, top), "figure-under");
    }
    solids(canvas, scale, top);
    threads(canvas, scale, top, runs);
  }

  /** Where cloth goes on, torn off in a wave that goes on from stretch to stretch. */
  private static List<Point> wave(double from, double to, double level) {
    int steps = (int) Math.max(2, Math.ceil(Math.abs(to - from) / 0.6));
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double x = from + (to - from) * i / steps;
      points.add(new Point(x, level + 0.45 * StrictMath.sin(2 * StrictMath.PI * x / 9)));
    }
    return points;
  }

  /** A line on dark cloth has paper white beside it. */
  private static void halo(Canvas canvas, List<Run> runs, double x, double top) {
    if (runs.stream().anyMatch(run -> run.isDark() && run.from < x && x < run.to)) {
      canvas.shape(across(x, top), "figure-line-halo");
    }
  }

  private static Path across(double x, double top) {
    return Path.polyline(List.of(new Point(x, top), new Point(x, top + HIGH)));
  }

  /** A stretch of a layer that is open to view. */
  private record Run(
      SectionScene.Layer layer, Side side, double from, double to, boolean begins, boolean ends) {
    boolean isDark() {
      return side == Side.RIGHT && layer.texture().equals(Optional.of(Texture.BINDING));
    }
  }

  /** What is on top in a column. */
  private record Top(int layer, Side side, double along, double height) {}

  private static Optional<Top> top(List<Line> lines, double x) {
    return lines.stream()
        .flatMap(line -> line.top(x).stream())
        .min(Comparator.comparingDouble(Top::height));
  }

  private List<Run> runs(double scale) {
    List<Line> lines = lines(scale);
    double from = lines.stream().mapToDouble(line -> line.box.minX()).min().orElse(0);
    double to = lines.stream().mapToDouble(line -> line.box.maxX()).max().orElse(0);
    List<Run> runs = new ArrayList<>();
    Optional<Top> last = Optional.empty();
    double begun = from;
    boolean begins = false;
    int columns = (int) Math.ceil((to - from) / STEP);
    for (int i = 0; i <= columns; i++) {
      double x = from + i * STEP;
      Optional<Top> now = i == columns ? Optional.empty() : top(lines, x + STEP / 2);
      boolean next =
          last.isPresent()
              && now.isPresent()
              && last.get().layer == now.get().layer
              && last.get().side == now.get().side
              && Math.abs(last.get().along - now.get().along) < JUMP;
      if (!next) {
        if (last.isPresent()) {
          Line line = lines.get(last.get().layer);
          boolean ends = !(line.goesOn(x) && now.isEmpty());
          runs.add(
              new Run(section.layers().get(line.index), last.get().side, begun, x, begins, ends));
        }
        begun = x;
        begins = now.isPresent() && !(lines.get(now.get().layer).goesOn(x) && last.isEmpty());
      }
      last = now;
    }
    return meeting(runs);
  }

  /** Two folds beside each other meet. */
  private static List<Run> meeting(List<Run> runs) {
    List<Run> all = new ArrayList<>();
    for (Run run : runs) {
      Run last = all.isEmpty() ? null : all.get(all.size() - 1);
      double gap = last == null ? 0 : run.from - last.to;
      if (gap > 0 && gap < CLOSE) {
        double middle = (run.from + last.to) / 2;
        all.set(
            all.size() - 1,
            new Run(last.layer, last.side, last.from, middle, last.begins, last.ends));
        all.add(new Run(run.layer, run.side, middle, run.to, run.begins, run.ends));
      } else {
        all.add(run);
      }
    }
    return all;
  }

  /** Where covered layers end or turn. */
  private List<Double> covered(double scale, List<Double> seen) {
    List<Double> all = new ArrayList<>(seen);
    List<Double> covered = new ArrayList<>();
    for (Line line : lines(scale)) {
      for (double x : line.turns()) {
        if (all.stream().noneMatch(one -> Math.abs(one - x) < SAME)) {
          all.add(x);
          covered.add(x);
        }
      }
    }
    return covered;
  }

  private void solids(Canvas canvas, double scale, double top) {
    List<Line> lines = lines(scale);
    for (SectionScene.Inlay inlay : section.inlays()) {
      if (inlay instanceof Solid solid) {
        Point at = solid.at().on(scale);
        Box box = Path.polyline(solid.ring()).bounds().moved(at);
        boolean open = top(lines, at.x()).map(one -> one.height > box.centre().y()).orElse(true);
        List<Path> sides = List.of(across(box.minX(), top), across(box.maxX(), top));
        if (!open) {
          canvas.lines(sides, "figure-under");
          continue;
        }
        Path shape = Path.rectangle(new Box(box.minX(), top, box.maxX(), top + HIGH));
        if (solid.texture().isPresent()) {
          canvas.cloth(shape, solid.texture().get(), Side.RIGHT, 0);
        } else {
          canvas.shape(shape, "figure-tape");
          canvas.line(across(at.x(), top), "figure-coil");
        }
        canvas.lines(sides, "figure-outline");
      }
    }
  }

  /** Stitches that come out on top are seen as such, others as what is covered. */
  private void threads(Canvas canvas, double scale, double top, List<Run> runs) {
    List<Line> lines = lines(scale);
    for (SectionScene.Inlay inlay : section.inlays()) {
      if (inlay instanceof Thread thread) {
        Point from = thread.from().on(scale);
        Point to = thread.to().on(scale);
        if (Math.abs(from.x() - to.x()) > 0.5) {
          continue;
        }
        double upper = Math.min(from.y(), to.y());
        boolean open = top(lines, from.x()).map(one -> upper < one.height + 1).orElse(true);
        halo(canvas, runs, from.x(), top);
        Path line = across(from.x(), top);
        if (open) {
          canvas.line(line, thread.now() ? "figure-sew-now" : "figure-stitching");
        } else {
          canvas.line(line, "figure-under");
        }
      }
    }
  }

  private List<Line> lines(double scale) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < section.layers().size(); i++) {
      SectionScene.Layer layer = section.layers().get(i);
      List<Point> points = layer.centre(scale);
      lines.add(
          new Line(i, layer.up(), points, Path.polyline(points).bounds(), layer.line(), scale));
    }
    return lines;
  }

  /** A layer’s line on paper. */
  private record Line(
      int index,
      Side up,
      List<Point> points,
      Box box,
      List<SectionScene.Spot> stated,
      double scale) {

    /** The topmost of it in a column. */
    Optional<Top> top(double x) {
      if (x < box.minX() || x > box.maxX()) {
        return Optional.empty();
      }
      boolean onwards = points.get(1).x() >= points.get(0).x();
      Top top = null;
      double along = 0;
      for (int i = 1; i < points.size(); i++) {
        Point a = points.get(i - 1);
        Point b = points.get(i);
        if (a.x() != b.x() && x >= Math.min(a.x(), b.x()) && x <= Math.max(a.x(), b.x())) {
          double share = (x - a.x()) / (b.x() - a.x());
          double height = a.y() + (b.y() - a.y()) * share;
          if (top == null || height < top.height) {
            boolean alike = b.x() >= a.x() == onwards;
            Side side = alike ? up : up == Side.RIGHT ? Side.WRONG : Side.RIGHT;
            top = new Top(index, side, along + a.distance(b) * share, height);
          }
        }
        along += a.distance(b);
      }
      return Optional.ofNullable(top);
    }

    /** Whether cloth goes on beyond a place, which is where it begins or ends far from the rest. */
    boolean goesOn(double x) {
      return ends().stream()
          .anyMatch(end -> Math.abs(end.on(scale).x() - x) < 0.2 && Math.abs(end.aside()) > 4);
    }

    private List<SectionScene.Spot> ends() {
      return List.of(stated.get(0), stated.get(stated.size() - 1));
    }

    /** Where it ends as a raw edge or turns back. */
    List<Double> turns() {
      List<Double> turns = new ArrayList<>();
      for (SectionScene.Spot end : ends()) {
        if (Math.abs(end.aside()) <= 4) {
          turns.add(end.on(scale).x());
        }
      }
      for (int i = 1; i < points.size() - 1; i++) {
        double in = points.get(i).x() - points.get(i - 1).x();
        double out = points.get(i + 1).x() - points.get(i).x();
        if (in * out < 0) {
          turns.add(points.get(i).x());
        }
      }
      return turns;
    }
  }

  @Override
  public List<String> inWords(Words words) {
    return section.inWords(words);
  }
}
