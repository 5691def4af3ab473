package org.lapmark.grade.scope;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Rounded;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.source.MeasureSource;

/** Finds the value of a measure that makes its condition true. */
final class Solving {
  /** How far a condition's sides may be apart: mm, mm² or degrees. */
  static final double TOLERANCE = 0.01;

  /** How far two plain numbers may be apart. */
  static final double PLAIN_TOLERANCE = 1e-6;

  /** As many decimal places has {@link #PLAIN_TOLERANCE}. */
  private static final int PLAIN_PLACES = 6;

  private static final MathContext FOUR_FIGURES = new MathContext(4, RoundingMode.HALF_UP);

  private final PatternScope scope;
  private final Trials trials;
  private final Findings findings;
  private final MeasureSource measure;
  private final String name;
  private final DemandGraph.Kept kept = new DemandGraph.Kept();
  private Dimension dimension;
  private Dimension sides;
  private Findings firstProblems;

  /** What is wrong with the condition itself, which says more than what is wrong elsewhere. */
  private Findings inCondition;

  /** Gives what names stand for while a value is tried for one of them. */
  public interface Trials {
    /**
     * The same names with a value tried for one of them.
     *
     * @param name the measure
     * @param value the value
     * @param sink where problems go
     * @param kept what doesn't depend on the value, from one trial to the next
     * @return the scope of the trial
     */
    Scope trial(String name, Value value, Findings sink, DemandGraph.Kept kept);
  }

  Solving(PatternScope scope, Trials trials, Findings findings, MeasureSource measure) {
    this.scope = scope;
    this.trials = trials;
    this.findings = findings;
    this.measure = measure;
    this.name = measure.name().text();
  }

  /**
   * The value.
   *
   * @return the least value between the bounds that makes the condition true
   * @throws FindingException when there is none, or the bounds make no sense
   * @throws DemandGraph.Unavailable when the condition can't be computed anywhere, which is
   *     reported
   */
  Value solve() {
    Quantity from = measure.solving().from().quantity(scope);
    Quantity to = measure.solving().to().quantity(scope);
    dimension = from.dimension() == Dimension.ZERO ? to.dimension() : from.dimension();
    requireUnit(measure.solving().from(), from.dimension(), to.dimension());
    requireUnit(measure.solving().to(), to.dimension(), from.dimension());
    if (!from.dimension().isLike(to.dimension()) || !(from.amount() < to.amount())) {
      throw fault(
          GradeCode.SOLVE_RANGE,
          measure.solving().to(),
          "like",
          from.dimension().isLike(to.dimension()) ? "yes" : "no",
          "from",
          number(from.amount(), from.dimension()),
          "fromUnit",
          unit(from.dimension()),
          "to",
          number(to.amount(), to.dimension()),
          "unit",
          unit(to.dimension()));
    }
    Formula stated = measure.solving().tolerance();
    Quantity tolerance = stated == null ? null : stated.quantity(scope);
    double allowed = tolerance == null ? Double.NaN : tolerance.amount();
    // The kind of the condition's sides is known once they have a value; until then any will do.
    RootSearch root = root(from, to, tolerance == null ? TOLERANCE : allowed);
    if (!root.anywhere()) {
      requireUnits(from, to);
      findings.addAll(inCondition == null ? firstProblems : inCondition);
      throw new DemandGraph.Unavailable();
    }
    if (tolerance != null) {
      requireUnit(stated, tolerance.dimension(), sides);
    }
    if (tolerance != null && (!sides.isLike(tolerance.dimension()) || !(allowed > 0))) {
      throw fault(
          GradeCode.SOLVE_TOLERANCE,
          stated,
          "value",
          number(allowed, tolerance.dimension()),
          "unit",
          unit(tolerance.dimension()));
    }
    if (tolerance == null && sides.isNumber()) {
      root = root(from, to, PLAIN_TOLERANCE);
    }
    if (!root.found()) {
      throw inRange(
          GradeCode.SOLVE_NO_SOLUTION,
          from,
          to,
          root,
          "remaining",
          number(Math.abs(root.remaining()), sides),
          "apartUnit",
          unit(sides));
    }
    if (root.several()) {
      findings.add(inRange(GradeCode.SOLVE_SEVERAL, from, to, root).finding());
    }
    return new Quantity(root.at(), dimension);
  }

  /** A plain number beside what has a unit misses its own. */
  private void requireUnit(Formula formula, Dimension own, Dimension other) {
    if (own == Dimension.PLAIN && !other.isNumber()) {
      throw unitMissing(formula, other);
    }
  }

  private FindingException unitMissing(Formula formula, Dimension needed) {
    return formula.withoutUnit(scope, needed).orElseGet(() -> formula.unitMissing(needed));
  }

  /**
   * Where nothing could be computed because bounds are numbers and a length or an angle is sought,
   * their units are missing.
   */
  private void requireUnits(Quantity from, Quantity to) {
    if (dimension != Dimension.PLAIN) {
      return;
    }
    for (Dimension other : List.of(Dimension.LENGTH, Dimension.ANGLE)) {
      dimension = other;
      if (root(from, to, TOLERANCE).anywhere()) {
        List<FindingException> missing =
            Stream.of(measure.solving().from(), measure.solving().to())
                .filter(bound -> bound.quantity(scope).dimension() == Dimension.PLAIN)
                .map(bound -> unitMissing(bound, other))
                .toList();
        missing.forEach(one -> findings.add(one.finding()));
        throw new DemandGraph.Unavailable();
      }
    }
  }

  private RootSearch root(Quantity from, Quantity to, double tolerance) {
    return RootSearch.of(this::imbalance, from.amount(), to.amount(), tolerance);
  }

  /** How far the condition is from true at a value; NaN where it can't be computed. */
  private double imbalance(double at) {
    Findings problems = new Findings();
    Scope trial = trials.trial(name, new Quantity(at, dimension), problems, kept);
    try {
      Quantity imbalance = measure.formula().imbalance(trial);
      sides = imbalance.dimension();
      return imbalance.amount();
    } catch (FindingException e) {
      problems.add(e.finding());
      inCondition = Optional.ofNullable(inCondition).orElse(problems);
    } catch (DemandGraph.Unavailable e) {
      // The problems say why.
    }
    firstProblems = Optional.ofNullable(firstProblems).orElse(problems);
    return Double.NaN;
  }

  /** What is said of what was sought between the bounds. */
  private FindingException inRange(
      GradeCode code, Quantity from, Quantity to, RootSearch root, Object... more) {
    List<Object> all =
        new ArrayList<>(
            List.of(
                "from",
                number(from.amount(), dimension),
                "to",
                number(to.amount(), dimension),
                "value",
                number(root.at(), dimension),
                "unit",
                unit(dimension)));
    all.addAll(List.of(more));
    return fault(code, measure.formula(), all.toArray());
  }

  private FindingException fault(GradeCode code, Formula place, Object... arguments) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("name", name);
    for (int i = 0; i < arguments.length; i += 2) {
      all.put((String) arguments[i], arguments[i + 1]);
    }
    all.put("size", scope.size());
    return new FindingException(new Finding(code, place.text().position(), all));
  }

  /**
   * An amount for a message: of what is measured to the hundredth, of numbers so many figures as
   * tell it from others, but none beyond what is sought.
   */
  private static String number(double amount, Dimension dimension) {
    if (!dimension.isNumber()) {
      return Rounded.hundredth(amount);
    }
    BigDecimal figures = new BigDecimal(amount, FOUR_FIGURES);
    BigDecimal shown =
        figures.scale() > PLAIN_PLACES
            ? figures.setScale(PLAIN_PLACES, RoundingMode.HALF_UP)
            : figures;
    return shown.stripTrailingZeros().toPlainString();
  }

  private static String unit(Dimension dimension) {
    return switch (dimension) {
      case LENGTH -> " mm";
      case AREA -> " mm²";
      case ANGLE -> "°";
      default -> "";
    };
  }
}
