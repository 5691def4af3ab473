package org.lapmark.grade;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.grade.panel.FastenedThings;
import org.lapmark.grade.panel.PartOfLine;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Formula;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Panel;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.TrimSource;

/** Measures what is sewn along edges in one variant, and compares it with them. */
final class TrimFactory {
  /** How far widths and stretches may be beyond each other, in millimetres. */
  private static final double ROOM = 0.5;

  private final PatternEvaluator evaluator;
  private final PatternScope scope;
  private final FastenedThings fastened;
  private final Findings findings;
  private final List<Piece> pieces;

  TrimFactory(PatternEvaluator evaluator, List<Piece> pieces, Findings findings) {
    this.pieces = pieces;
    this.evaluator = evaluator;
    this.scope = evaluator.scope();
    this.fastened = evaluator.fastened();
    this.findings = findings;
  }

  /**
   * Measures a trim and reports where it doesn't fit.
   *
   * @throws FindingException when it can't be measured
   */
  Trim build(TrimSource source) {
    ThingSource thing = fastened.thing(source.thing());
    double edge = length(source.along());
    double tolerance = scope.tolerance(source.tolerance(), findings);
    if (!source.facing().isEmpty()) {
      facing(source, edge, length(source.facing()), tolerance);
    }
    again(source);
    notNegative(source, "overlap", source.overlap());
    notNegative(source, "visible", source.visibleWidth());
    double more = length(source.overlap()) + length(source.ease());
    double needed = edge - 2 * length(source.ends()) + more;
    if (!(needed > 0)) {
      throw fault(
          GradeCode.TRIM_WITHOUT_ROOM,
          source.name().position(),
          source,
          "edge",
          Rounded.hundredth(edge),
          "left",
          Rounded.hundredth(needed));
    }
    double length = needed;
    if (source.length() != null) {
      length = scope.positiveLength(source.length());
      compare(source, length, needed, tolerance);
    }
    OptionalDouble width = fastened.width(thing);
    stitches(source, width);
    casing(source, width);
    Optional<Formula> visible = fastened.stated(source);
    return new Trim(
        source.name().text(),
        thing.id().text(),
        names(source.along()),
        names(source.facing()),
        edge,
        length,
        (edge + more - length) / 2,
        visible.isPresent()
            ? OptionalDouble.of(scope.length(visible.get()))
            : OptionalDouble.empty());
  }

  private double length(Formula formula) {
    return formula == null ? 0 : scope.length(formula);
  }

  private static List<String> names(List<TrimSource.Stretch> lines) {
    return lines.stream().map(stretch -> stretch.line().text()).toList();
  }

  private double length(List<TrimSource.Stretch> lines) {
    double sum = 0;
    for (TrimSource.Stretch part : lines) {
      PartOfLine range =
          PartOfLine.of(scope, part.from(), part.to(), length(part.line()), part.line());
      sum += range.to() - range.from();
    }
    return sum;
  }

  /** The length of an edge or a chain as sewn, or else of a line on the panel. */
  private double length(SourceText reference) {
    int dot = reference.text().indexOf('.');
    SourceText owner = reference.part(0, dot);
    SourceText name = reference.part(dot + 1, reference.text().length());
    Panel shape = evaluator.shapes().shape(owner);
    Set<String> known = new LinkedHashSet<>(shape.chains().keySet());
    shape.edges().forEach(edge -> known.add(edge.name()));
    if (known.contains(name.text())) {
      return PatternScope.closed(shape, name).length();
    }
    List<LineMark> lines =
        evaluator.marks().panel(owner).marks(LineMark.class).stream()
            .filter(LineMark::isDrawn)
            .toList();
    for (LineMark line : lines) {
      if (line.name().equals(name.text())) {
        return line.path().length();
      }
    }
    lines.forEach(line -> known.add(line.name()));
    throw PatternScope.fault(
        GradeCode.REFERENCE_EDGE_UNKNOWN,
        name.position(),
        name.text(),
        known,
        "panel",
        owner.text(),
        "edge",
        name.text());
  }

  private void facing(TrimSource source, double edge, double other, double tolerance) {
    if (Math.abs(edge - other) > tolerance) {
      report(
          GradeCode.TRIM_SIDES_DIFFER,
          source.facing().get(0).line().position(),
          source,
          "edge",
          Rounded.hundredth(edge),
          "other",
          Rounded.hundredth(other),
          "tolerance",
          Rounded.hundredth(tolerance));
    }
  }

  private void compare(TrimSource source, double length, double needed, double tolerance) {
    double longer = length - needed;
    if (longer > tolerance || longer < -tolerance && !source.centred()) {
      report(
          GradeCode.TRIM_LENGTH_DIFFERS,
          source.length().text().position(),
          source,
          "length",
          Rounded.hundredth(length),
          "needed",
          Rounded.hundredth(needed),
          "centred",
          source.centred() ? "yes" : "no",
          "difference",
          Rounded.hundredth(Math.abs(longer)),
          "way",
          longer > 0 ? "longer" : "shorter");
    }
  }

  private void notNegative(TrimSource source, String key, Formula formula) {
    double value = length(formula);
    if (value < 0) {
      throw fault(
          GradeCode.TRIM_LENGTH_NEGATIVE,
          formula.text().position(),
          source,
          "key",
          key,
          "value",
          Rounded.hundredth(value));
    }
  }

  /** A stretch of a line that a trim is sewn to. */
  private record Sewn(SourceText line, PartOfLine range) {
    boolean overlaps(Sewn other) {
      return line.text().equals(other.line.text())
          && Math.min(range.to(), other.range.to()) - Math.max(range.from(), other.range.from())
              > ROOM;
    }
  }

  /** What is sewn twice to one line needs two copies of it, as left and right have. */
  private void again(TrimSource source) {
    List<Sewn> before = new ArrayList<>();
    for (List<TrimSource.Stretch> side : List.of(source.along(), source.facing())) {
      for (TrimSource.Stretch part : side) {
        SourceText line = part.line();
        Sewn sewn =
            new Sewn(line, PartOfLine.of(scope, part.from(), part.to(), length(line), line));
        if (before.stream().anyMatch(sewn::overlaps) && isCutOnce(line)) {
          report(GradeCode.TRIM_ALONG_AGAIN, line.position(), source, "line", line.text());
          return;
        }
        before.add(sewn);
      }
    }
  }

  /** Whether a line's panel is one piece, cut once from one layer of cloth. */
  private boolean isCutOnce(SourceText line) {
    String panel = line.text().substring(0, line.text().indexOf('.'));
    List<Piece> cut =
        pieces.stream().filter(piece -> piece.shape().panel().name().equals(panel)).toList();
    return cut.size() == 1
        && cut.get(0).cuts().stream().mapToInt(Cut::count).sum() == 1
        && !cut.get(0).isFolded();
  }

  /** Stitches that don't go through the trim hold nothing. */
  private void stitches(TrimSource source, OptionalDouble width) {
    if (source.distance() == null) {
      return;
    }
    double distance = scope.length(source.distance());
    if (distance < 0 || width.isPresent() && distance >= width.getAsDouble()) {
      report(
          GradeCode.TRIM_STITCHES_MISS,
          source.distance().text().position(),
          source,
          "distance",
          Rounded.hundredth(distance),
          "width",
          width.isPresent() ? Rounded.hundredth(width.getAsDouble()) : "none");
    }
  }

  private void casing(TrimSource source, OptionalDouble width) {
    if (source.casing() == null) {
      return;
    }
    double casing = scope.positiveLength(source.casing());
    if (width.isPresent() && width.getAsDouble() > casing) {
      report(
          GradeCode.CASING_TOO_NARROW,
          source.casing().text().position(),
          source,
          "casing",
          Rounded.hundredth(casing),
          "width",
          Rounded.hundredth(width.getAsDouble()));
    }
  }

  private void report(GradeCode code, Position place, TrimSource source, Object... arguments) {
    findings.add(fault(code, place, source, arguments).finding());
  }

  private FindingException fault(
      GradeCode code, Position place, TrimSource source, Object... arguments) {
    List<Object> all = new ArrayList<>(List.of(arguments));
    all.addAll(List.of("name", source.name().text(), "size", scope.size()));
    return new FindingException(Finding.of(code, place, all.toArray()));
  }
}
