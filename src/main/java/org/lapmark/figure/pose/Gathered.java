package org.lapmark.figure.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * An edge that is drawn up to a length, so that the piece spreads from it.
 *
 * @param edge the edge
 * @param to how long it is then
 */
public record Gathered(SourceText edge, Formula to) {
  private static final Key<SourceText> EDGE = Key.required("edge", FigureForms.EDGE);
  private static final Key<Formula> TO = Key.required("to", FigureForms.LENGTH);

  /** As a map. */
  static final Form<Gathered> FORM =
      FigureForms.map(Table.of("gathered", EDGE, TO), Gathered::read);

  /** An edge isn't drawn up to less than this share of itself. */
  private static final double LEAST = 0.1;

  private static final double FLATNESS = 0.05;

  /** How far inwards a chord may run in millimetres, so that straight lines can bend. */
  private static final double STEP = 1.5;

  private static Gathered read(Keys keys) {
    return keys.whole(new Gathered(keys.get(EDGE), keys.get(TO)));
  }

  /**
   * Where places of the panel come to lie: beside the edge all is drawn together, and less and less
   * with the distance from it.
   *
   * @param middle the middle of the edge's chord
   * @param along the chord's direction, of length 1
   * @param deep how far the panel reaches from the edge
   * @param share how much of its breadth is left at the edge
   */
  private record Spread(Point middle, Point along, double deep, double share) {
    Point at(Point place) {
      Point from = place.minus(middle);
      double across = from.dot(along);
      double inside = from.dot(along.quarterTurn());
      return of(across, inside);
    }

    Point of(double across, double inside) {
      double way = Math.max(0, Math.min(1, inside / deep));
      double left = share + (1 - share) * (1 - StrictMath.cos(way * Math.PI)) / 2;
      return middle.plus(along.times(across * left)).plus(along.quarterTurn().times(inside));
    }

    Path of(Path path) {
      List<Point> own = path.flattened(FLATNESS);
      List<Point> moved = new ArrayList<>();
      moved.add(at(own.get(0)));
      for (int i = 1; i < own.size(); i++) {
        Point a = own.get(i - 1);
        Point b = own.get(i);
        double deeper = Math.abs(b.minus(a).dot(along.quarterTurn()));
        int steps = (int) Math.max(1, Math.ceil(deeper / STEP));
        for (int k = 1; k <= steps; k++) {
          Point next = at(a.towards(b, (double) k / steps));
          if (next.distance(moved.get(moved.size() - 1)) > 1e-9) {
            moved.add(next);
          }
        }
      }
      return Path.polyline(moved);
    }
  }

  /** How the edge is drawn up, so that it is as long as stated, also where it is curved. */
  private Spread spread(Staging staging, Panel panel) {
    Path line = staging.names().side(panel, edge);
    double length = staging.length(to, LEAST * line.length(), line.length());
    Point middle = line.start().towards(line.end(), 0.5);
    Point inward = Lines.inward(line);
    double deep = 1;
    for (Point point : panel.outline().flattened(1)) {
      deep = Math.max(deep, point.minus(middle).dot(inward));
    }
    double least = 0;
    double most = 1;
    for (int i = 0; i < 40; i++) {
      double share = (least + most) / 2;
      Spread tried = new Spread(middle, inward.quarterTurn().times(-1), deep, share);
      if (tried.of(line).length() < length) {
        least = share;
      } else {
        most = share;
      }
    }
    return new Spread(middle, inward.quarterTurn().times(-1), deep, most);
  }

  /** The panel as it lies then, with its darts and pleats where they come to lie. */
  Panel reshaped(Staging staging, Panel panel) {
    Spread spread = spread(staging, panel);
    List<Edge> edges = new ArrayList<>();
    for (Edge one : panel.edges()) {
      edges.add(new Edge(one.name(), one.from(), one.to(), spread.of(one.path())));
    }
    Moving moving =
        new Moving(
            panel,
            new Panel(panel.name(), edges, panel.chains(), List.of()),
            spread::of,
            spread::at);
    List<Mark> marks = new ArrayList<>();
    panel.marks().forEach(mark -> mark.place(moving).ifPresent(marks::add));
    return new Panel(panel.name(), edges, panel.chains(), marks);
  }

  /** Where a mark comes to lie; nothing for one that isn't seen any more. */
  private record Moving(
      Panel before, Panel after, UnaryOperator<Path> lines, UnaryOperator<Point> points)
      implements Mark.Placing<Optional<Mark>> {
    @Override
    public Optional<Mark> notch(Mark.Notch notch) {
      return Optional.of(
          new Mark.Notch(notch.edge(), moved(notch.edge(), notch.at()), notch.set()));
    }

    @Override
    public Optional<Mark> intake(Intake intake) {
      return Optional.of(
          intake.carried(
              after.edges().stream()
                  .filter(edge -> edge.name().equals(intake.edge()))
                  .findFirst()
                  .orElseThrow(),
              moved(intake.edge(), intake.from()),
              moved(intake.edge(), intake.to()),
              place -> {
                Point shift = points.apply(place).minus(place);
                return Affine.translation(shift.x(), shift.y());
              }));
    }

    /** Where on an edge a place of it comes to lie. */
    private double moved(String edge, double at) {
      return after.line(edge).nearestLength(points.apply(before.line(edge).atLength(at)));
    }

    @Override
    public Optional<Mark> point(PointMark point) {
      return Optional.of(point.at(point.points().stream().map(points).toList()));
    }

    @Override
    public Optional<Mark> line(LineMark line) {
      return Optional.of(line.along(lines.apply(line.path())));
    }

    @Override
    public Optional<Mark> grainline(Mark.Grainline grain) {
      return Optional.of(grain.between(points.apply(grain.from()), points.apply(grain.to())));
    }
  }

  /** The small folds that run from the edge. */
  Detail lines(Staging staging, Panel flat) {
    Path line = staging.names().side(flat, edge);
    Spread spread = spread(staging, flat);
    double half = line.start().distance(line.end()) / 2;
    String printed = staging.printed(staging.length(to));
    return new Puckers(spread, half, edge.text(), printed);
  }

  /**
   * The small folds as they are drawn, so many as can be told apart on paper.
   *
   * @param half half of the edge's chord before it is drawn up
   * @param length how long the edge is, as printed
   */
  private record Puckers(Spread spread, double half, String edge, String length) implements Detail {
    private static final double APART = 2.6;
    private static final double INSET = 0.8;

    /** How long each is, as a share of the longest, so that they look fallen. */
    private static final double[] SHARES = {1, 0.55, 0.8, 0.4, 0.9, 0.5, 0.7};

    @Override
    public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
      double wide = 2 * half * spread.share * ink.scale();
      int count = (int) Math.max(2, Math.floor(wide / APART));
      double longest = Math.min(0.45 * spread.deep, 22 / ink.scale());
      List<Path> lines = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        double across = half * (2 * (i + 0.5) / count - 1);
        double from = INSET / ink.scale();
        double to = from + longest * SHARES[i % SHARES.length];
        List<Point> points = new ArrayList<>();
        for (int k = 0; k <= 6; k++) {
          points.add(laid.map().apply(spread.of(across, from + (to - from) * k / 6)));
        }
        if (points.stream().noneMatch(laid::hides)) {
          lines.add(Path.polyline(points));
        }
      }
      ink.within(laid.whole(), lines, "figure-pucker");
    }

    @Override
    public Optional<String> inWords(Words words) {
      return Optional.of(words.word("alt.gathered", "edge", words.edge(edge), "length", length));
    }
  }
}
