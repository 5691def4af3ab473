package org.lapmark.grade.panel;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.piece.CornerAngle;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.panel.ClosedLine;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchSet;
import org.lapmark.panel.Panel;
import org.lapmark.seam.EaseSpread;
import org.lapmark.seam.NotchMatching;
import org.lapmark.seam.SeamMark;
import org.lapmark.seam.SeamSide;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PanelSource.NotchPlace;
import org.lapmark.source.PanelSource.NotchSource;
import org.lapmark.source.SeamSource;

/** Places the notches that are stated for panels. */
final class NotchFactory {
  /** No edge needs more notches than this. */
  private static final int MOST = 200;

  /** Where the outline turns by more than this, in degrees, its corner is a mark by itself. */
  private static final double PLAIN_CORNER = 15;

  private final PatternScope scope;
  private final Function<SourceText, Optional<SeamSource>> seams;
  private final SeamAssembler own;
  private final SeamAssembler all;
  private final Findings findings;

  /**
   * Prepares the work.
   *
   * @param seams a seam where it is named; nothing where the variant doesn't have it
   * @param own puts seams together without notches that come from seams
   * @param all puts them together with all notches
   */
  NotchFactory(
      PatternScope scope,
      Function<SourceText, Optional<SeamSource>> seams,
      SeamAssembler own,
      SeamAssembler all,
      Findings findings) {
    this.scope = scope;
    this.seams = seams;
    this.own = own;
    this.all = all;
    this.findings = findings;
  }

  /**
   * The notches of one statement.
   *
   * @param panel the panel without its stated notches
   * @param source the statement
   * @return the notches, by edge and length
   * @throws FindingException when they can't be placed
   */
  List<Mark.Notch> notches(Panel panel, NotchSource source) {
    if (source.place().drawn().isPresent()) {
      return List.of(); // It is a mark of the drawing.
    }
    ClosedLine line = PatternScope.closed(panel, source.edge());
    NotchSet set = MarkFactory.set(scope, panel.name(), source);
    return source.place().read(new Placing(panel, source, line, set));
  }

  /** The notches of one statement, by how their place is stated. */
  private final class Placing implements PanelSource.NotchReader<List<Mark.Notch>> {
    private final Panel panel;
    private final NotchSource source;
    private final ClosedLine line;
    private final NotchSet set;

    Placing(Panel panel, NotchSource source, ClosedLine line, NotchSet set) {
      this.panel = panel;
      this.source = source;
      this.line = line;
      this.set = set;
    }

    @Override
    public List<Mark.Notch> at(NotchPlace.At place) {
      return List.of(NotchFactory.this.at(panel, source, line, place, set));
    }

    @Override
    public List<Mark.Notch> every(NotchPlace.Every place) {
      return NotchFactory.this.every(source, line.length(), place).stream()
          .map(along -> onEdge(panel, source.edge().text(), along, set))
          .toList();
    }

    @Override
    public List<Mark.Notch> fromSeam(NotchPlace.FromSeam place) {
      return seams
          .apply(place.from())
          .map(seam -> NotchFactory.this.fromSeam(panel, source, place, seam))
          .orElse(List.of());
    }

    @Override
    public List<Mark.Notch> drawn(NotchPlace.Drawn place) {
      return List.of();
    }

    @Override
    public List<Mark.Notch> nearCorner(NotchPlace.NearCorner place) {
      Path drawn = PatternScope.edge(panel, source.edge());
      double along = drawn.nearestLength(PatternScope.corner(panel, place.corner()));
      return List.of(onDrawn(panel, source.edge().text(), along, set));
    }
  }

  private Mark.Notch at(
      Panel panel, NotchSource source, ClosedLine line, NotchPlace.At place, NotchSet set) {
    double at = scope.along(place.at(), line.length());
    if (at < 0 || at > line.length() + Path.JOIN_TOLERANCE) {
      throw new FindingException(
          Finding.of(
              GradeCode.NOTCH_BEYOND_EDGE,
              place.at().text().position(),
              "at",
              Rounded.hundredth(at),
              "edge",
              source.edge().text(),
              "length",
              Rounded.hundredth(line.length()),
              "size",
              scope.size()));
    }
    return onEdge(panel, source.edge().text(), at, set);
  }

  private List<Double> every(NotchSource source, double length, NotchPlace.Every every) {
    double spacing = scope.positiveLength(every.spacing());
    if (length / spacing > MOST) {
      throw new FindingException(
          Finding.of(
              GradeCode.NOTCHES_TOO_MANY,
              every.spacing().text().position(),
              "from",
              "spacing",
              "spacing",
              BigDecimal.valueOf(spacing)
                  .round(new MathContext(3, RoundingMode.HALF_UP))
                  .stripTrailingZeros()
                  .toPlainString(),
              "length",
              Rounded.hundredth(length),
              "limit",
              MOST,
              "size",
              scope.size()));
    }
    double least = Path.JOIN_TOLERANCE;
    double first = spacing;
    if (every.centred()) {
      first = length / 2 - spacing * Math.floor((length / 2 - least) / spacing);
    }
    List<Double> places = new ArrayList<>();
    for (int i = 0; first + i * spacing < length - least; i++) {
      places.add(first + i * spacing);
    }
    if (places.isEmpty()) {
      findings.add(
          GradeCode.NOTCHES_NONE,
          every.spacing().text().position(),
          "spacing",
          Rounded.hundredth(spacing),
          "edge",
          source.edge().text(),
          "length",
          Rounded.hundredth(length),
          "size",
          scope.size());
    }
    return places;
  }

  /** A place on an edge or chain as sewn, as a notch of the edge it falls on. */
  private static Mark.Notch onEdge(Panel panel, String line, double along, NotchSet set) {
    return onDrawn(panel, line, ClosedLine.of(panel, line).open(along), set);
  }

  /** A place on an edge or chain as drawn, as a notch of the edge it falls on. */
  private static Mark.Notch onDrawn(Panel panel, String line, double along, NotchSet set) {
    List<String> edges = panel.chains().getOrDefault(line, List.of(line));
    double at = along;
    for (String name : edges) {
      double length = panel.line(name).length();
      if (at <= length || name.equals(edges.get(edges.size() - 1))) {
        return new Mark.Notch(name, Math.min(at, length), set);
      }
      at -= length;
    }
    throw new IllegalStateException("a chain without edges");
  }

  private List<Mark.Notch> fromSeam(
      Panel panel, NotchSource source, NotchPlace.FromSeam from, SeamSource seam) {
    List<String> edges =
        panel.chains().getOrDefault(source.edge().text(), List.of(source.edge().text()));
    int side = sideOf(own, seam, panel, edges);
    if (side < 0) {
      throw new FindingException(
          Finding.of(
              GradeCode.NOTCH_EDGE_NOT_IN_SEAM,
              from.from().position(),
              "edge",
              source.edge().text(),
              "seam",
              seam.name().text()));
    }
    SeamSide mine = own.side(seam, side);
    List<SeamMark> known = new ArrayList<>(mine.marks(seam.closed()));
    Map<String, Mark.Notch> placed = new LinkedHashMap<>();
    for (int i = 0; i < seam.sides().size(); i++) {
      if (i == side || seam.sides().size() < 2) {
        continue;
      }
      SeamSide theirs = all.side(seam, i);
      NotchMatching matching = NotchMatching.of(theirs, mine, seam.closed());
      EaseSpread spread = new EaseSpread(theirs.length(), mine.length(), matching.pairs());
      for (SeamMark mark : theirs.marks(seam.closed())) {
        double at = spread.of(mark.at());
        if (isMarked(known, at)) {
          continue;
        }
        NotchSet set =
            (mark.kind() == SeamMark.Kind.NOTCH ? mark.set() : NotchSet.of(joinCount(mark, source)))
                .cut(source.cut());
        known.add(new SeamMark(SeamMark.Kind.NOTCH, at, set, source.edge().text()));
        place(own, seam, side, at, panel, edges, set)
            .ifPresent(notch -> placed.put(notch.edge() + " " + notch.at(), notch));
      }
    }
    if (!seam.closed()) {
      // Where the seam begins or ends within an edge, nothing else would show it.
      for (double end : List.of(0.0, mine.length())) {
        if (!isMarked(known, end)) {
          place(own, seam, side, end, panel, edges, NotchSet.of(source.count()).cut(source.cut()))
              .ifPresent(notch -> placed.put(notch.edge() + " " + notch.at(), notch));
        }
      }
    }
    if (placed.size() > MOST) {
      throw new FindingException(
          Finding.of(
              GradeCode.NOTCHES_TOO_MANY,
              from.from().position(),
              "from",
              "seam",
              "spacing",
              "",
              "length",
              Rounded.hundredth(mine.length()),
              "limit",
              MOST,
              "size",
              scope.size()));
    }
    return new ArrayList<>(placed.values());
  }

  private static int joinCount(SeamMark mark, NotchSource source) {
    return Math.max(mark.count(), source.count());
  }

  private static boolean isMarked(List<SeamMark> known, double at) {
    return known.stream().anyMatch(mark -> Math.abs(mark.at() - at) <= NotchMatching.COINCIDE);
  }

  private static int sideOf(
      SeamAssembler assembler, SeamSource seam, Panel panel, List<String> edges) {
    for (int i = 0; i < seam.sides().size(); i++) {
      for (Optional<SeamAssembler.Stretch> stretch : assembler.stretches(seam, i)) {
        if (stretch.isPresent()
            && stretch.get().panel().name().equals(panel.name())
            && stretch.get().edges().stream().anyMatch(edges::contains)) {
          return i;
        }
      }
    }
    return -1;
  }

  /** A place of the seam as a notch of a panel's edges; nothing when it lies elsewhere. */
  private static Optional<Mark.Notch> place(
      SeamAssembler assembler,
      SeamSource seam,
      int side,
      double at,
      Panel panel,
      List<String> edges,
      NotchSet set) {
    List<Double> lengths = assembler.lengths(seam, side);
    double whole = lengths.stream().mapToDouble(Double::doubleValue).sum();
    double left = assembler.start(seam, side, whole) + at;
    if (seam.closed() && whole > 0) {
      left -= whole * Math.floor((left + Path.JOIN_TOLERANCE) / whole);
    }
    List<Optional<SeamAssembler.Stretch>> stretches = assembler.stretches(seam, side);
    for (int i = 0; i < stretches.size(); i++) {
      Optional<SeamAssembler.Stretch> stretch = stretches.get(i);
      double length = lengths.get(i);
      boolean last = i == stretches.size() - 1;
      if (left < length - Path.JOIN_TOLERANCE || last) {
        return stretch.isPresent() && stretch.get().panel().name().equals(panel.name())
            ? onOutline(panel, stretch.get(), left, edges, set)
            : Optional.empty();
      }
      left = Math.max(0, left - length);
    }
    return Optional.empty();
  }

  /**
   * A place on a stretch. At the end of an edge a notch says nothing where the outline has a corner
   * there; where it goes on smoothly, the notch belongs to the edge that begins.
   */
  private static Optional<Mark.Notch> onOutline(
      Panel panel, SeamAssembler.Stretch stretch, double sewn, List<String> edges, NotchSet set) {
    double along = Math.max(0, stretch.onLine(Math.min(sewn, stretch.length())));
    NotchSet clockwise = stretch.clockwise() ? set : set.reversed();
    Mark.Notch notch = onEdge(panel, stretch.line(), along, clockwise);
    List<Edge> ring = panel.edges();
    int index = 0;
    while (!ring.get(index).name().equals(notch.edge())) {
      index++;
    }
    double length = ring.get(index).path().length();
    boolean atStart = notch.at() <= Path.JOIN_TOLERANCE;
    boolean atEnd = notch.at() >= length - Path.JOIN_TOLERANCE;
    if (atStart || atEnd) {
      int next = atStart ? index : (index + 1) % ring.size();
      Edge before = ring.get((next + ring.size() - 1) % ring.size());
      if (Math.abs(180 - CornerAngle.innerAngle(before, ring.get(next))) > PLAIN_CORNER) {
        return Optional.empty();
      }
      notch = new Mark.Notch(ring.get(next).name(), 0, 1);
    }
    return edges.contains(notch.edge()) ? Optional.of(notch) : Optional.empty();
  }

  /** The statements of a panel that place notches on some of its edges. */
  static boolean concerns(Panel panel, NotchSource notch, List<String> edges) {
    String line = notch.edge().text();
    Set<String> own = new LinkedHashSet<>(panel.chains().getOrDefault(line, List.of(line)));
    return own.stream().anyMatch(edges::contains);
  }

  /** Where it is stated how far along its line a notch stands, or from which seam it comes. */
  static Position place(NotchSource source) {
    return source.place().stated().orElse(source.edge()).position();
  }

  /** Whether a statement asks the partners of a seam. */
  static boolean isFromSeam(PanelSource.NotchSource notch) {
    return notch.place().seam().isPresent();
  }
}
