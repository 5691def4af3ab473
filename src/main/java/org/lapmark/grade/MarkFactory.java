package org.lapmark.grade;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Darts;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchSet;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.derivation.InnerLine;
import org.lapmark.source.MarkKind;
import org.lapmark.source.MarkSource;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PanelSource.NotchPlace;
import org.lapmark.source.PanelSource.NotchSource;
import org.lapmark.source.drawing.PanelDrawing;

/** Makes the marks of one panel in one variant. Places are measured on the line as drawn. */
final class MarkFactory {
  /** No row needs more marks than this. */
  private static final int MOST = 200;

  private final PatternScope scope;
  private final Variant variant;
  private final PanelFactory panels;

  MarkFactory(PatternScope scope, Variant variant, PanelFactory panels) {
    this.scope = scope;
    this.variant = variant;
    this.panels = panels;
  }

  /**
   * Adds the marks of a drawing.
   *
   * @param panel the panel with the marks that need no edges
   * @param source what is stated of it
   * @param shapes the drawing
   * @param scaling from the drawing to the panel
   * @return the panel with notches, darts, pleats, buttonholes and match points
   */
  Panel drawn(Panel panel, PanelSource source, PanelDrawing.Shapes shapes, Affine scaling) {
    List<Mark> marks = new ArrayList<>(panel.marks());
    shapes
        .notches()
        .forEach(
            (name, at) -> {
              double along = panel.outline().nearestLength(scaling.apply(at));
              marks.add(onOutline(panel, along, set(source, name)));
            });
    shapes
        .buttonholes()
        .forEach(
            (name, path) ->
                marks.add(
                    new PointMark.Buttonhole(
                        name, scaling.apply(path.start()), scaling.apply(path.end()))));
    shapes
        .matchPoints()
        .forEach((name, at) -> marks.add(new PointMark.MatchPoint(name, scaling.apply(at))));
    shapes.darts().forEach((name, path) -> marks.add(dart(panel, source, name, path, scaling)));
    for (MarkSource mark : source.marks()) {
      Path line = shapes.pleats().get(mark.name().text());
      if (mark.kind() == MarkKind.PLEAT && mark.isDrawn() && line != null) {
        marks.add(pleat(panel, mark, line, scaling));
      }
    }
    return new Panel(panel.name(), panel.edges(), panel.chains(), marks);
  }

  private static Mark.Notch onOutline(Panel panel, double along, NotchSet set) {
    double at = along;
    for (Edge edge : panel.edges()) {
      double length = edge.path().length();
      if (at <= length) {
        return new Mark.Notch(edge.name(), at, set);
      }
      at -= length;
    }
    Edge last = panel.edges().get(panel.edges().size() - 1);
    return new Mark.Notch(last.name(), last.path().length(), set);
  }

  private NotchSet set(PanelSource source, String name) {
    for (NotchSource notch : source.notches()) {
      if (notch.place() instanceof NotchPlace.Drawn drawn && drawn.name().text().equals(name)) {
        return set(scope, source.name().text(), notch);
      }
    }
    return NotchSet.of(1);
  }

  /** The notches of a statement, in order along the edge. */
  static NotchSet set(PatternScope scope, String panel, NotchSource source) {
    if (source.gaps().isEmpty()) {
      return NotchSet.of(source.count()).cut(source.cut());
    }
    List<Double> gaps = new ArrayList<>();
    for (Formula formula : source.gaps()) {
      double gap = scope.length(formula);
      if (!(gap >= NotchSet.LEAST_GAP)) {
        throw new FindingException(
            Finding.of(
                PanelCode.NOTCH_GAP,
                formula.text().position(),
                "panel",
                panel,
                "edge",
                source.edge().text(),
                "gap",
                gap,
                "least",
                NotchSet.LEAST_GAP,
                "size",
                scope.size()));
      }
      gaps.add(gap);
    }
    return new NotchSet(gaps.size() + 1, gaps, source.cut());
  }

  private Mark dart(Panel panel, PanelSource source, String name, Path path, Affine scaling) {
    Point one = scaling.apply(path.start());
    Point apex = scaling.apply(path.curves().get(0).end());
    Point other = scaling.apply(path.end());
    for (MarkSource mark : source.marks()) {
      if (mark.kind() == MarkKind.DART && mark.isDrawn() && mark.name().text().equals(name)) {
        Intake.Dart plain = Darts.drawn(panel, name, one, apex, other, Intake.Press.NONE);
        Intake.Press press = press(panel, mark, plain.edge());
        return new Intake.Dart(name, plain.edge(), plain.from(), plain.to(), plain.apex(), press);
      }
    }
    return Darts.drawn(panel, name, one, apex, other, Intake.Press.NONE);
  }

  /** A pleat whose line is drawn: its place, its direction inwards and its length. */
  private Mark pleat(Panel panel, MarkSource mark, Path drawn, Affine scaling) {
    Point one = scaling.apply(drawn.start());
    Point other = scaling.apply(drawn.end());
    Path outline = panel.outline();
    boolean turned = outline.distance(other) < outline.distance(one);
    Mark.Notch foot = Darts.onOutline(panel, mark.name().text(), turned ? other : one);
    return Darts.pleat(
        panel,
        mark.name().text(),
        foot.edge(),
        foot.at(),
        scope.positiveLength(mark.formulas().get("take_up")),
        one.distance(other),
        mark.pleat(),
        onwards(panel, mark, foot.edge()));
  }

  /**
   * Adds the marks that are stated beside a panel's shape and on which its geometry depends.
   *
   * @param panel the panel with its drawn marks
   * @param source what is stated of it
   * @return the panel with them
   * @throws FindingException when one can't be made
   */
  Panel stated(Panel panel, PanelSource source) {
    return stated(panel, source, true);
  }

  /**
   * Adds those on which nothing depends.
   *
   * @param panel the panel with all other marks
   * @param source what is stated of it
   * @return the panel with them
   * @throws FindingException when one can't be made
   */
  Panel placed(Panel panel, PanelSource source) {
    return stated(panel, source, false);
  }

  private Panel stated(Panel panel, PanelSource source, boolean geometry) {
    List<Mark> marks = new ArrayList<>(panel.marks());
    for (MarkSource mark : source.marks()) {
      if (!mark.isDrawn() && mark.kind().isGeometry() == geometry) {
        Panel sofar = new Panel(panel.name(), panel.edges(), panel.chains(), marks);
        List<Mark> made = new ArrayList<>();
        placed(
            mark,
            () -> {
              made.addAll(make(sofar, mark));
              return null;
            });
        marks.addAll(made);
      }
    }
    Panel all = new Panel(panel.name(), panel.edges(), panel.chains(), marks);
    Darts.check(all);
    return all;
  }

  private interface Making {
    Mark make();
  }

  /** Says where a mark is stated that can't be made. */
  private Mark placed(MarkSource mark, Making making) {
    try {
      return making.make();
    } catch (PanelException e) {
      throw panels.inVariant(e, mark.name());
    }
  }

  private List<Mark> make(Panel panel, MarkSource mark) {
    return switch (mark.kind()) {
      case DART -> List.of(dart(panel, mark));
      case PLEAT -> List.of(pleat(panel, mark));
      case PLACEMENT -> List.of(new LineMark.Placement(mark.name().text(), line(panel, mark)));
      case FOLD -> List.of(new LineMark.FoldLine(mark.name().text(), line(panel, mark)));
      case BUTTONHOLE, DRILL -> row(panel, mark);
      case MATCH -> List.of(new PointMark.MatchPoint(mark.name().text(), point(panel, mark)));
    };
  }

  private Mark dart(Panel panel, MarkSource mark) {
    SourceText edge = mark.names().get("edge");
    Path line = PatternScope.edge(panel, edge);
    return Darts.stated(
        panel,
        mark.name().text(),
        edge.text(),
        along(mark, "at", edge, line),
        scope.positiveLength(mark.formulas().get("width")),
        scope.positiveLength(mark.formulas().get("length")),
        press(panel, mark, edge.text()));
  }

  private Mark pleat(Panel panel, MarkSource mark) {
    SourceText edge = mark.names().get("edge");
    Path line = PatternScope.edge(panel, edge);
    return Darts.pleat(
        panel,
        mark.name().text(),
        edge.text(),
        along(mark, "at", edge, line),
        scope.positiveLength(mark.formulas().get("take_up")),
        scope.positiveLength(mark.formulas().get("length")),
        mark.pleat(),
        onwards(panel, mark, edge.text()));
  }

  private Intake.Press press(Panel panel, MarkSource mark, String line) {
    SourceText corner = mark.names().get("press");
    if (corner == null) {
      return Intake.Press.NONE;
    }
    return isAtEnd(panel, corner, line) ? Intake.Press.ONWARDS : Intake.Press.BACK;
  }

  private boolean onwards(Panel panel, MarkSource mark, String line) {
    SourceText corner = mark.names().get("towards");
    return corner == null || isAtEnd(panel, corner, line);
  }

  /** Whether a corner is where a line ends, and not where it begins; it has to be one of them. */
  private boolean isAtEnd(Panel panel, SourceText corner, String line) {
    List<String> members = panel.chains().getOrDefault(line, List.of(line));
    String start = null;
    String end = null;
    for (String member : members) {
      for (Edge edge : panel.edges()) {
        if (edge.name().equals(member)) {
          start = start == null ? edge.from() : start;
          end = edge.to();
        }
      }
    }
    boolean atEnd = corner.text().equals(end);
    if (atEnd == corner.text().equals(start)) {
      throw new FindingException(
          Finding.of(
              GradeCode.MARK_TOWARDS,
              corner.position(),
              "corner",
              corner.text(),
              "edge",
              line,
              "start",
              start,
              "end",
              end));
    }
    return atEnd;
  }

  private Path line(Panel panel, MarkSource mark) {
    Map<String, SourceText> names = mark.names();
    if (names.containsKey("from_edge")) {
      Point from = on(panel, mark, "from_edge", "from");
      Point to = on(panel, mark, "to_edge", "to");
      if (from.distance(to) <= Path.JOIN_TOLERANCE) {
        throw withoutLength(panel, mark);
      }
      return new Path(List.of(new Line(from, to)));
    }
    SourceText edge = names.get("edge");
    Path line = PatternScope.edge(panel, edge);
    double from = mark.formulas().containsKey("from") ? along(mark, "from", edge, line) : 0;
    double to = mark.formulas().containsKey("to") ? along(mark, "to", edge, line) : line.length();
    if (to < from && mark.formulas().containsKey("to")) {
      throw new FindingException(
          Finding.of(
              GradeCode.MARK_BACKWARDS,
              mark.formulas().get("to").text().position(),
              "name",
              mark.name().text(),
              "edge",
              edge.text(),
              "from",
              Rounded.hundredth(from),
              "to",
              Rounded.hundredth(to),
              "size",
              variant.size()));
    }
    if (to - from <= Path.JOIN_TOLERANCE) {
      throw withoutLength(panel, mark);
    }
    Formula stated = mark.formulas().get("inset");
    double inset = scope.length(stated);
    if (inset < 0) {
      double middle = (from + to) / 2;
      Point inwards = line.tangentAtLength(middle).quarterTurn();
      throw outside(panel, mark, line.atLength(middle).plus(inwards.times(inset)));
    }
    Path inner = InnerLine.of(panel, line, from, to, inset);
    if (inner == null) {
      throw new FindingException(
          Finding.of(
              GradeCode.MARK_TOO_DEEP,
              stated.text().position(),
              "mark",
              mark.name().text(),
              "inset",
              Rounded.hundredth(inset),
              "edge",
              edge.text(),
              "panel",
              panel.name(),
              "size",
              variant.size()));
    }
    return inner;
  }

  private Point on(Panel panel, MarkSource mark, String edgeKey, String placeKey) {
    SourceText edge = mark.names().get(edgeKey);
    Path line = PatternScope.edge(panel, edge);
    return line.atLength(along(mark, placeKey, edge, line));
  }

  private Point point(Panel panel, MarkSource mark) {
    SourceText corner = mark.names().get("corner");
    return corner == null ? on(panel, mark, "edge", "at") : PatternScope.corner(panel, corner);
  }

  private FindingException withoutLength(Panel panel, MarkSource mark) {
    return new FindingException(
        Finding.of(
            GradeCode.MARK_WITHOUT_LENGTH,
            mark.name().position(),
            "mark",
            mark.name().text(),
            "panel",
            panel.name(),
            "size",
            variant.size()));
  }

  private static PanelException outside(Panel panel, MarkSource mark, Point at) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    arguments.put("panel", panel.name());
    arguments.put("mark", mark.name().text());
    arguments.put("x", at.x());
    arguments.put("y", at.y());
    return new PanelException(PanelCode.MARK_OUTSIDE, arguments);
  }

  private List<Mark> row(Panel panel, MarkSource mark) {
    boolean onLine = mark.names().containsKey("line");
    SourceText name = mark.names().get(onLine ? "line" : "edge");
    Path line = onLine ? inner(panel, name) : PatternScope.edge(panel, name);
    double inset =
        mark.formulas().containsKey("inset") ? scope.length(mark.formulas().get("inset")) : 0;
    double length =
        mark.kind() == MarkKind.BUTTONHOLE
            ? scope.positiveLength(mark.formulas().get("length"))
            : 0;
    Path outline = panel.outline();
    List<Mark> row = new ArrayList<>();
    for (double place : places(mark, name, line)) {
      Point along = line.tangentAtLength(place);
      Point inwards = along.quarterTurn();
      Point middle = line.atLength(place).plus(inwards.times(inset));
      Point half = (mark.across() ? inwards : along).times(length / 2);
      for (Point end : List.of(middle.minus(half), middle.plus(half))) {
        if (!outline.encloses(end) && outline.distance(end) > Darts.OFF_OUTLINE) {
          throw outside(panel, mark, end);
        }
      }
      row.add(
          length > 0
              ? new PointMark.Buttonhole(mark.name().text(), middle.minus(half), middle.plus(half))
              : new PointMark.DrillPoint(mark.name().text(), middle));
    }
    return row;
  }

  /** A drawn or stated placement or fold line. */
  private static Path inner(Panel panel, SourceText name) {
    Set<String> known = new LinkedHashSet<>();
    for (LineMark mark : panel.marks(LineMark.class)) {
      if (mark.isDrawn() && mark.name().equals(name.text())) {
        return mark.path();
      }
      if (mark.isDrawn()) {
        known.add(mark.name());
      }
    }
    throw PatternScope.fault(
        GradeCode.MARK_LINE_UNKNOWN,
        name.position(),
        name.text(),
        known,
        "panel",
        panel.name(),
        "line",
        name.text());
  }

  private List<Double> places(MarkSource mark, SourceText name, Path line) {
    if (mark.formulas().containsKey("at")) {
      return List.of(along(mark, "at", name, line));
    }
    int count = count(mark.formulas().get("count"));
    double from = along(mark, "from", name, line);
    double spacing;
    if (mark.formulas().containsKey("spacing")) {
      spacing = scope.positiveLength(mark.formulas().get("spacing"));
      check(mark.formulas().get("spacing"), from + (count - 1) * spacing, name, line);
    } else {
      double to = along(mark, "to", name, line);
      spacing = count > 1 ? (to - from) / (count - 1) : 0;
    }
    List<Double> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      places.add(Math.max(0, Math.min(line.length(), from + i * spacing)));
    }
    return places;
  }

  private int count(Formula formula) {
    Value value = formula.evaluate(scope);
    boolean number =
        value instanceof Value.Quantity quantity
            && (quantity.dimension() == Dimension.PLAIN || quantity.dimension() == Dimension.COUNT);
    double amount = number ? ((Value.Quantity) value).amount() : 0;
    long whole = Math.round(amount);
    if (Math.abs(amount - whole) > 1e-9 || whole < 1 || whole > MOST) {
      throw new FindingException(
          Finding.of(
              GradeCode.MARK_COUNT,
              formula.text().position(),
              "value",
              number ? Rounded.hundredth(amount) : PatternScope.kind(value),
              "limit",
              MOST,
              "size",
              variant.size()));
    }
    return (int) whole;
  }

  private double along(MarkSource mark, String key, SourceText edge, Path line) {
    Formula formula = mark.formulas().get(key);
    double at = scope.along(formula, line.length());
    check(formula, at, edge, line);
    return Math.max(0, Math.min(line.length(), at));
  }

  private void check(Formula formula, double at, SourceText edge, Path line) {
    if (!(at >= -Path.JOIN_TOLERANCE && at <= line.length() + Path.JOIN_TOLERANCE)) {
      throw new FindingException(
          Finding.of(
              GradeCode.MARK_BEYOND_EDGE,
              formula.text().position(),
              "at",
              Rounded.hundredth(at),
              "edge",
              edge.text(),
              "length",
              Rounded.hundredth(line.length()),
              "size",
              variant.size()));
    }
  }
}
