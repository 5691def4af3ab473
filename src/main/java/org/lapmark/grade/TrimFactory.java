package org.lapmark.grade;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.grade.panel.FastenedThings;
import org.lapmark.grade.panel.PartOfLine;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Formula;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Panel;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.TrimSource;

/** Measures what is sewn along edges in one variant. */
final class TrimFactory {
  private final PatternEvaluator evaluator;
  private final PatternScope scope;
  private final FastenedThings fastened;

  TrimFactory(PatternEvaluator evaluator) {
    this.evaluator = evaluator;
    this.scope = evaluator.scope();
    this.fastened = evaluator.fastened();
  }

  /**
   * Measures a trim.
   *
   * @throws FindingException when it can't be measured
   */
  Trim build(TrimSource source) {
    ThingSource thing = fastened.thing(source.thing());
    List<Trim.Stretch> along = stretches(source.along());
    List<Trim.Stretch> facing = stretches(source.facing());
    double edge = Trim.length(along);
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
    double length = source.length() == null ? needed : scope.positiveLength(source.length());
    Optional<Formula> visible = fastened.stated(source);
    return new Trim(
        source.name().text(),
        thing.id().text(),
        along,
        facing,
        needed,
        length,
        (edge + more - length) / 2,
        fastened.width(thing),
        visible.isPresent()
            ? OptionalDouble.of(scope.length(visible.get()))
            : OptionalDouble.empty());
  }

  private double length(Formula formula) {
    return formula == null ? 0 : scope.length(formula);
  }

  private List<Trim.Stretch> stretches(List<TrimSource.Stretch> lines) {
    List<Trim.Stretch> measured = new ArrayList<>();
    for (TrimSource.Stretch part : lines) {
      PartOfLine range =
          PartOfLine.of(scope, part.from(), part.to(), length(part.line()), part.line());
      measured.add(new Trim.Stretch(part.line().text(), range.from(), range.to()));
    }
    return measured;
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

  private FindingException fault(
      GradeCode code, Position place, TrimSource source, Object... arguments) {
    List<Object> all = new ArrayList<>(List.of(arguments));
    all.addAll(List.of("name", source.name().text(), "size", scope.size()));
    return new FindingException(Finding.of(code, place, all.toArray()));
  }
}
