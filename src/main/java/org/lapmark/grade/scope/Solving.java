package org.lapmark.grade.scope;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
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
    dimension = from.dimension();
    if (!like(dimension, to.dimension()) || !(from.amount() < to.amount())) {
      throw fault(
          GradeCode.SOLVE_RANGE,
          measure.solving().to(),
          "like",
          like(dimension, to.dimension()) ? "yes" : "no",
          "from",
          written(from),
          "to",
          written(to));
    }
    Formula stated = measure.solving().tolerance();
    Quantity tolerance = stated == null ? null : stated.quantity(scope);
    double allowed = tolerance == null ? Double.NaN : tolerance.amount();
    // The kind of the condition's sides is known once they have a value; until then any will do.
    RootSearch root = root(from, to, tolerance == null ? TOLERANCE : allowed);
    if (!root.anywhere()) {
      findings.addAll(firstProblems);
      throw new DemandGraph.Unavailable();
    }
    if (tolerance != null && (!like(sides, tolerance.dimension()) || !(allowed > 0))) {
      throw fault(GradeCode.SOLVE_TOLERANCE, stated, "value", written(tolerance));
    }
    if (tolerance == null && number(sides)) {
      root = root(from, to, PLAIN_TOLERANCE);
    }
    String value = written(new Quantity(root.at(), dimension));
    if (!root.found()) {
      throw fault(
          GradeCode.SOLVE_NO_SOLUTION,
          measure.formula(),
          "from",
          written(from),
          "to",
          written(to),
          "value",
          value,
          "remaining",
          written(new Quantity(Math.abs(root.remaining()), sides)));
    }
    if (root.several()) {
      findings.add(
          fault(
                  GradeCode.SOLVE_SEVERAL,
                  measure.formula(),
                  "from",
                  written(from),
                  "to",
                  written(to),
                  "value",
                  value)
              .finding());
    }
    return new Quantity(root.at(), dimension);
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
    } catch (DemandGraph.Unavailable e) {
      // The problems say why.
    }
    firstProblems = Optional.ofNullable(firstProblems).orElse(problems);
    return Double.NaN;
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

  private static boolean like(Dimension one, Dimension other) {
    return one == other || number(one) && number(other);
  }

  private static boolean number(Dimension dimension) {
    return dimension == Dimension.PLAIN || dimension == Dimension.COUNT;
  }

  private static String written(Quantity quantity) {
    String number =
        new BigDecimal(quantity.amount(), FOUR_FIGURES).stripTrailingZeros().toPlainString();
    return switch (quantity.dimension()) {
      case LENGTH -> number + " mm";
      case AREA -> number + " mm²";
      case ANGLE -> number + "°";
      default -> number;
    };
  }
}
