package org.lapmark.grade.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Known;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Formula;
import org.lapmark.panel.ClosedLine;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchSet;
import org.lapmark.panel.Panel;
import org.lapmark.seam.SeamPart;
import org.lapmark.seam.SeamSide;
import org.lapmark.source.SeamSource;
import org.lapmark.source.SeamSource.Member;
import org.lapmark.source.fastening.TrimSource;

/** Puts the sides of a seam together in one variant, each in the order of sewing. */
public final class SeamAssembler {
  private final PatternScope scope;
  private final PanelShapes shapes;
  private final FastenedThings fastened;
  private final BiFunction<Panel, List<String>, List<Mark.Notch>> notches;
  private final SeamAllowances allowances;
  private final CaughtTabs caught;

  /**
   * Prepares the work.
   *
   * @param notches gives the notches on some edges of a panel
   * @param allowances those of the pieces
   */
  public SeamAssembler(
      PatternScope scope,
      PanelShapes shapes,
      FastenedThings fastened,
      BiFunction<Panel, List<String>, List<Mark.Notch>> notches,
      SeamAllowances allowances) {
    this.scope = scope;
    this.shapes = shapes;
    this.fastened = fastened;
    this.notches = notches;
    this.allowances = allowances;
    this.caught = new CaughtTabs(scope, fastened, this);
  }

  /** What is caught in seams. */
  public CaughtTabs caught() {
    return caught;
  }

  /**
   * A stretch of a panel's edge or chain, as a member names it.
   *
   * @param panel the panel without its stated notches
   * @param line the edge's or chain's name
   * @param from millimetres from its beginning, clockwise
   * @param to millimetres from its beginning
   * @param clockwise whether it is travelled that way
   */
  public record Stretch(Panel panel, String line, double from, double to, boolean clockwise) {
    /** The edges of the line in order. */
    public List<String> edges() {
      return panel.chains().getOrDefault(line, List.of(line));
    }

    double length() {
      return to - from;
    }

    /** Millimetres from the line's beginning of a place on the stretch as sewn. */
    double onLine(double sewn) {
      return clockwise ? from + sewn : to - sewn;
    }
  }

  /** One side, with what the author's words for it stand for. */
  public SeamSide side(SeamSource seam, int index) {
    SeamSource.Side source = seam.sides().get(index);
    boolean against = isAgainst(seam, index);
    List<SeamPart> parts = parts(source, against);
    double whole = parts.stream().mapToDouble(SeamPart::length).sum();
    List<SeamSide.Tab> tabs = new ArrayList<>();
    for (SeamSource.Tab tab : source.tabs()) {
      tabs.add(caught.tab(seam, index, tab, whole));
    }
    List<SeamSide> basted = new ArrayList<>();
    for (SeamSource.Side layer : source.basted()) {
      basted.add(SeamSide.of(parts(layer, against)));
    }
    double ease = 0;
    if (source.ease() != null) {
      ease = scope.length(source.ease());
    } else if (index == 0 && seam.ease() != null) {
      ease = scope.length(seam.ease());
    }
    return new SeamSide(
            source.name() == null ? "" : source.name().text(), parts, tabs, ease, basted)
        .startingAt(start(seam, index, whole));
  }

  /**
   * How far from the beginning of its first member a side is sewn, in millimetres; below zero it is
   * counted back from its end.
   *
   * @throws FindingException when it is more than once round
   */
  public double start(SeamSource seam, int index, double whole) {
    Formula start = seam.sides().get(index).start();
    if (start == null || !seam.closed()) {
      return 0;
    }
    double at = scope.aroundFrom(start, whole);
    if (!(Math.abs(at) <= whole + Path.JOIN_TOLERANCE)) {
      throw new FindingException(
          Finding.of(
              GradeCode.SEAM_START_BEYOND,
              start.text().position(),
              "side",
              index + 1,
              "seam",
              seam.name().text(),
              "at",
              Rounded.hundredth(at),
              "length",
              Rounded.hundredth(whole),
              "size",
              scope.size()));
    }
    return at;
  }

  /** The lengths of a side's members, in millimetres, in the order stated. */
  public List<Double> lengths(SeamSource seam, int index) {
    List<Double> lengths = new ArrayList<>();
    for (Member member : seam.sides().get(index).members()) {
      lengths.add(length(member));
    }
    return lengths;
  }

  /**
   * Whether a side's edges are travelled against the clock. Two pieces that lie right sides
   * together run opposite ways, so the first side goes clockwise and the others don't, except for
   * copies and layers of the first side's own panel, which lie on it as its mirror image does.
   */
  private boolean isAgainst(SeamSource seam, int index) {
    SeamSource.Side side = seam.sides().get(index);
    boolean against = index > 0 && !sameLines(seam.sides().get(0), side);
    return against != side.reversed();
  }

  private static boolean sameLines(SeamSource.Side one, SeamSource.Side other) {
    List<String> first = one.members().stream().map(member -> member.text().text()).toList();
    return first.equals(other.members().stream().map(member -> member.text().text()).toList());
  }

  private List<SeamPart> parts(SeamSource.Side side, boolean against) {
    List<SeamPart> parts = new ArrayList<>();
    for (Member member : side.members()) {
      Optional<Stretch> stretch = stretch(member, against);
      if (stretch.isEmpty() && shapes.has(member.text().text())) {
        throw panelAlone(member.text());
      }
      parts.add(
          stretch.isPresent()
              ? part(member, stretch.get())
              : SeamPart.ofLength(called(member), fixed(member), member.notch()));
    }
    if (parts.isEmpty()) {
      // The reader has said what is wrong with this side.
      throw new DemandGraph.Unavailable();
    }
    return parts;
  }

  private FindingException panelAlone(SourceText panel) {
    List<String> edges =
        shapes.shape(panel).edges().stream().map(edge -> panel.text() + '.' + edge.name()).toList();
    return new FindingException(
        Finding.of(
            GradeCode.SEAM_PANEL_ALONE,
            panel.position(),
            "panel",
            panel.text(),
            "edges",
            Known.listed(edges)));
  }

  /** A panel before it is marked. */
  Panel shape(SourceText name) {
    return shapes.shape(name);
  }

  /** How long a member is, in millimetres. */
  double length(Member member) {
    return stretch(member, false).map(Stretch::length).orElseGet(() -> fixed(member));
  }

  private double fixed(Member member) {
    requireKnown(member);
    Formula formula =
        fastened
            .trim(member.text().text())
            .map(trim -> fastened.visibleWidth(trim, member.text()))
            .orElse(member.formula());
    double length = scope.length(formula);
    if (length < 0) {
      throw new FindingException(
          Finding.of(
              GradeCode.LENGTH_NOT_POSITIVE,
              formula.text().position(),
              "value",
              Rounded.hundredth(length),
              "cause",
              PatternScope.cause(formula),
              "size",
              scope.size()));
    }
    return length;
  }

  /** A name that is neither a trim's nor a value's may be a trim's that is mistyped. */
  private void requireKnown(Member member) {
    SourceText text = member.text();
    fastened.requireRead(text.text());
    Optional<SourceText> name = member.formula().soleName();
    Set<String> known = fastened.sewn();
    if (name.isPresent() && name.get().text().indexOf('.') < 0 && !known.contains(text.text())) {
      throw PatternScope.fault(
          GradeCode.NAME_UNKNOWN,
          text.position(),
          text.text(),
          known,
          "kind",
          "sewn",
          "name",
          text.text());
    }
  }

  /** What a part that is no edge is called. */
  private String called(Member member) {
    String text = member.text().text();
    return fastened.trim(text).map(TrimSource::called).orElse(text);
  }

  /** The members of a side that are edges, in the order of sewing; lengths are empty. */
  public List<Optional<Stretch>> stretches(SeamSource seam, int index) {
    return stretches(seam.sides().get(index), isAgainst(seam, index));
  }

  /** The members of a layer basted to a side that are edges, as {@link #stretches} of the side. */
  List<Optional<Stretch>> layer(SeamSource seam, int index, SeamSource.Side layer) {
    return stretches(layer, isAgainst(seam, index));
  }

  private List<Optional<Stretch>> stretches(SeamSource.Side side, boolean against) {
    return side.members().stream().map(member -> stretch(member, against)).toList();
  }

  private Optional<Stretch> stretch(Member member, boolean against) {
    SourceText text = member.text();
    int dot = text.text().indexOf('.');
    if (dot <= 0 || !shapes.has(text.text().substring(0, dot))) {
      return Optional.empty();
    }
    Panel panel = shapes.shape(text.part(0, dot));
    SourceText edge = text.part(dot + 1, text.text().length());
    double whole = PatternScope.closed(panel, edge).length();
    PartOfLine range = PartOfLine.of(scope, member.from(), member.to(), whole, text);
    return Optional.of(
        new Stretch(panel, edge.text(), range.from(), range.to(), against == member.reversed()));
  }

  private SeamPart part(Member member, Stretch stretch) {
    ClosedLine closed = ClosedLine.of(stretch.panel(), stretch.line());
    Path line = closed.path();
    boolean whole = stretch.from() == 0 && stretch.to() == closed.length();
    Path path = whole ? line : line.part(stretch.from(), stretch.to());
    List<SeamPart.Notch> sewn = new ArrayList<>();
    List<String> edges = stretch.edges();
    for (Mark.Notch notch : notches.apply(stretch.panel(), edges)) {
      double at = closed.closed(before(stretch.panel(), edges, notch.edge()) + notch.at());
      if (at >= stretch.from() && at <= stretch.to()) {
        double along = stretch.clockwise() ? at - stretch.from() : stretch.to() - at;
        NotchSet set = stretch.clockwise() ? notch.set() : notch.set().reversed();
        sewn.add(new SeamPart.Notch(along, set));
      }
    }
    sewn.sort(java.util.Comparator.comparingDouble(SeamPart.Notch::at));
    List<Double> all =
        edges.stream()
            .flatMap(edge -> allowances.of(stretch.panel().name(), edge).stream())
            .distinct()
            .sorted()
            .toList();
    return new SeamPart(
        stretch.panel().name(),
        member.text().text(),
        Optional.of(stretch.clockwise() ? path : path.reversed()),
        stretch.clockwise(),
        stretch.length(),
        all,
        sewn,
        member.notch(),
        folds(stretch, closed),
        margins(stretch, closed));
  }

  /** How narrow the allowances of its edges get, in the order of sewing. */
  private List<SeamPart.Margin> margins(Stretch stretch, ClosedLine closed) {
    String panel = stretch.panel().name();
    if (!allowances.isCut(panel)) {
      return List.of();
    }
    List<SeamPart.Margin> margins = new ArrayList<>();
    List<String> edges = stretch.edges();
    for (int i = 0; i < edges.size(); i++) {
      String edge = edges.get(stretch.clockwise() ? i : edges.size() - 1 - i);
      double begin = closed.closed(before(stretch.panel(), edges, edge));
      double end =
          closed.closed(before(stretch.panel(), edges, edge) + length(stretch.panel(), edge));
      double to = stretch.clockwise() ? end - stretch.from() : stretch.to() - begin;
      margins.add(new SeamPart.Margin(to, allowances.least(panel, edge)));
    }
    return margins.stream().filter(margin -> margin.to() > 0).toList();
  }

  /** The darts and pleats of a stretch, in the order of sewing. */
  private static Optional<SeamPart.Folds> folds(Stretch stretch, ClosedLine closed) {
    List<Double> at =
        closed.closings().stream()
            .filter(one -> one >= stretch.from() && one <= stretch.to())
            .map(one -> stretch.clockwise() ? one - stretch.from() : stretch.to() - one)
            .sorted()
            .toList();
    if (closed.closings().isEmpty()) {
      return Optional.empty();
    }
    Path drawn = stretch.panel().line(stretch.line());
    Optional<Point> first = stretch.from() == 0 ? Optional.of(drawn.start()) : Optional.empty();
    Optional<Point> last =
        stretch.to() >= closed.length() - Path.JOIN_TOLERANCE
            ? Optional.of(drawn.end())
            : Optional.empty();
    return Optional.of(
        stretch.clockwise()
            ? new SeamPart.Folds(at, first, last)
            : new SeamPart.Folds(at, last, first));
  }

  /** The length of a line's edges before one of them. */
  static double before(Panel panel, List<String> edges, String name) {
    double sum = 0;
    for (String edge : edges) {
      if (edge.equals(name)) {
        break;
      }
      sum += length(panel, edge);
    }
    return sum;
  }

  private static double length(Panel panel, String name) {
    for (Edge edge : panel.edges()) {
      if (edge.name().equals(name)) {
        return edge.path().length();
      }
    }
    return 0;
  }
}
