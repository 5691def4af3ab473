package org.lapmark.check.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.panel.DrawnPlaces;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PointMark;
import org.lapmark.source.PanelSource;
import org.lapmark.source.mark.MarkKinds;
import org.lapmark.source.mark.MarkSource;

/**
 * Whether what is marked on a piece lies on its cloth. Points and lines may reach into the
 * allowance, as the fold line of a facing does; beyond the cutting line there is nothing to mark.
 */
public final class MarksInside {
  public static final Rule<Evaluated> RULE = new Rule<>(MarksInside::run, PanelCode.MARK_OUTSIDE);

  /** How far beyond the cutting line a mark may reach, in millimetres. */
  private static final double BEYOND = 0.5;

  /** Lines are looked at so often, in millimetres, but in no more places than the most. */
  private static final double STEP = 2;

  private static final int MOST_STEPS = 1000;

  private final Evaluated evaluated;
  private final Findings findings;
  private final Set<String> told = new TreeSet<>();

  private MarksInside(Evaluated evaluated, Findings findings) {
    this.evaluated = evaluated;
    this.findings = findings;
  }

  static void run(Evaluated evaluated, Findings findings) {
    MarksInside check = new MarksInside(evaluated, findings);
    evaluated.pattern().pieces().forEach(check::check);
  }

  private void check(Piece piece) {
    Panel panel = piece.shape().panel();
    Path cut = piece.shape().cuttingLine().path();
    Held held = new Held();
    for (Mark mark : panel.marks()) {
      mark.place(held)
          .ifPresent(
              drawn ->
                  drawn.points().stream()
                      .filter(point -> !cut.encloses(point) && cut.distance(point) > BEYOND)
                      .findFirst()
                      .ifPresent(point -> tell(panel, drawn.id(), drawn.name(), point)));
    }
  }

  private void tell(Panel panel, String id, String name, Point at) {
    if (!told.add(panel.name() + " " + id)) {
      return;
    }
    findings.add(
        Finding.of(
            PanelCode.MARK_OUTSIDE,
            place(panel.name(), id, name),
            "mark",
            name,
            "panel",
            panel.name(),
            "x",
            at.x(),
            "y",
            at.y(),
            "size",
            evaluated.size()));
  }

  /** Where a mark is drawn or stated: on its panel, or on one that the panel is derived from. */
  private Position place(String panel, String id, String name) {
    List<String> open = new ArrayList<>(List.of(panel));
    Map<String, PanelSource> seen = new LinkedHashMap<>();
    while (!open.isEmpty()) {
      String next = open.remove(0);
      PanelSource source = evaluated.statements().panel(next);
      if (source == null || seen.putIfAbsent(next, source) != null) {
        continue;
      }
      Optional<Position> place = DrawnPlaces.of(source, evaluated.size(), id);
      place =
          place.or(
              () ->
                  source.marks().stream()
                      .map(MarkSource::name)
                      .filter(one -> one.text().equals(name))
                      .findFirst()
                      .map(SourceText::position));
      if (place.isPresent()) {
        return place.get();
      }
      source.derivation().stream()
          .flatMap(how -> how.originals().stream())
          .forEach(original -> open.add(original.text()));
    }
    return evaluated.statements().panel(panel).name().position();
  }

  private static List<Point> along(Path line) {
    double length = line.length();
    int steps = (int) Math.max(1, Math.min(MOST_STEPS, Math.ceil(length / STEP)));
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      points.add(line.atLength(length * i / steps));
    }
    return points;
  }

  /** A mark that is looked at: what it is called in a drawing, and the points it consists of. */
  private record Drawn(String id, List<Point> points) {
    static Optional<Drawn> of(Mark mark, List<Point> points) {
      return Optional.of(new Drawn(MarkKinds.id(mark), points));
    }

    String name() {
      return id.substring(id.indexOf('.') + 1);
    }
  }

  /** What has to lie on the cloth; darts and pleats are held to their panel where they are made. */
  private static final class Held implements Mark.Placing<Optional<Drawn>> {
    @Override
    public Optional<Drawn> notch(Mark.Notch notch) {
      return Optional.empty();
    }

    @Override
    public Optional<Drawn> intake(Intake intake) {
      return Optional.empty();
    }

    @Override
    public Optional<Drawn> grainline(Mark.Grainline grain) {
      return Optional.empty();
    }

    @Override
    public Optional<Drawn> point(PointMark mark) {
      List<Point> points = mark.points();
      Line line = new Line(points.get(0), points.get(points.size() - 1));
      return Drawn.of(mark, points.size() == 1 ? points : along(new Path(List.of(line))));
    }

    @Override
    public Optional<Drawn> line(LineMark line) {
      return line.isDrawn() ? Drawn.of(line, along(line.path())) : Optional.empty();
    }
  }
}
