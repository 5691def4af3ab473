package org.lapmark.measure.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Rounding;
import org.lapmark.measure.Unit;
import org.lapmark.measure.Value;

/**
 * What the uses of a pattern's quantities ask for together, so that each is printed in one way
 * wherever it stands: a length at the finest step that any of its uses asks for, an expression
 * rounded to the side that one of its uses states. Lengths are known by their amount.
 *
 * @param inches by length, in thousandths of a millimetre, the denominator of inch fractions
 * @param metric by length the step of metric numbers, in millimetres
 * @param rounding by expression the side to which it is rounded
 * @param metricAlone lengths that a ruler's inches don't tell from others beside them
 */
public record FinestSteps(
    SortedMap<Long, Integer> inches,
    SortedMap<Long, Double> metric,
    SortedMap<String, Rounding> rounding,
    SortedSet<Long> metricAlone) {
  /** Nothing is asked for. */
  public static final FinestSteps NONE =
      new FinestSteps(new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), new TreeSet<>());

  private static final double THOUSANDTHS = 1000;

  /** In millimetres: lengths that differ by this are two to anybody with a ruler. */
  private static final double APART = 1;

  /** In millimetres: the noise of sums. */
  private static final double TOLERANCE = 1e-6;

  /** Copies the maps. */
  public FinestSteps {
    inches = Collections.unmodifiableSortedMap(new TreeMap<>(inches));
    metric = Collections.unmodifiableSortedMap(new TreeMap<>(metric));
    rounding = Collections.unmodifiableSortedMap(new TreeMap<>(rounding));
    metricAlone = Collections.unmodifiableSortedSet(new TreeSet<>(metricAlone));
  }

  /** Whether some use of a length asks for a step. */
  boolean has(double millimetres) {
    return inches.containsKey(key(millimetres)) || metric.containsKey(key(millimetres));
  }

  /** The denominator asked for, or 0. */
  int denominator(double millimetres) {
    return inches.getOrDefault(key(millimetres), 0);
  }

  /** The metric step asked for, or none as the greatest there is. */
  double step(double millimetres) {
    return metric.getOrDefault(key(millimetres), Double.MAX_VALUE);
  }

  /** Whether a length is printed without inches where no text asks for them. */
  boolean isMetricAlone(double millimetres) {
    return metricAlone.contains(key(millimetres));
  }

  /** The side to which an expression is rounded. */
  Rounding rounding(Formula formula) {
    return rounding.getOrDefault(key(formula), Rounding.NEAREST);
  }

  private static long key(double millimetres) {
    return Math.round(Math.abs(millimetres) * THOUSANDTHS);
  }

  private static String key(Formula formula) {
    return formula.text().text().replaceAll("\\s+", "");
  }

  /** Gathers what is asked for. */
  public static final class Gathering {
    private final SortedMap<Long, Integer> inches = new TreeMap<>();
    private final SortedMap<Long, Double> metric = new TreeMap<>();
    private final SortedMap<String, Rounding> rounding = new TreeMap<>();
    private final SortedSet<Long> metricAlone = new TreeSet<>();
    private final List<Printed> printed = new ArrayList<>();

    /**
     * A length that stands in the document's own parts of an inch.
     *
     * @param millimetres the length
     * @param expression what it is printed from; empty for what the program computes
     * @param stated the side to which its place rounds it
     */
    private record Printed(double millimetres, String expression, Rounding stated) {}

    /**
     * Takes a use of a length that needs parts of an inch.
     *
     * @param millimetres the length
     * @param denominator the parts
     */
    public void inches(double millimetres, int denominator) {
      inches.merge(key(millimetres), denominator, Math::max);
    }

    /**
     * Takes a use of a length that needs a metric step.
     *
     * @param millimetres the length
     * @param step the step in millimetres
     */
    public void metric(double millimetres, double step) {
      metric.merge(key(millimetres), step, Math::min);
    }

    /**
     * Takes a use of a length that inches would confuse with another.
     *
     * @param millimetres the length
     */
    public void metricAlone(double millimetres) {
      metricAlone.add(key(millimetres));
    }

    /**
     * Takes a length that the program prints by itself, in the document's own parts of an inch.
     *
     * @param millimetres the length
     */
    public void printed(double millimetres) {
      printed.add(new Printed(millimetres, "", Rounding.NEAREST));
    }

    /**
     * Takes a placeholder.
     *
     * @param placeholder the placeholder
     * @param value what it comes to
     * @param document how values are printed where a placeholder doesn't say
     */
    public void placeholder(TemplateText.Placeholder placeholder, Value value, PrintForm document) {
      Form form = Form.parse(placeholder.form());
      if (form.rounding() != Rounding.NEAREST) {
        // The first one counts: what is stated at two places in two ways goes by each of them.
        rounding.putIfAbsent(key(placeholder.formula()), form.rounding());
      }
      if (value instanceof Value.Quantity quantity && quantity.dimension() == Dimension.LENGTH) {
        boolean inch = form.unit() == null || form.unit() == Unit.IN;
        boolean millimetre = form.unit() == null || form.unit().metric();
        if (inch && form.style() != Form.Style.METRIC) {
          int asked = form.denominator() != 0 ? form.denominator() : document.inchDenominator();
          inches.merge(key(quantity.amount()), asked, Math::max);
          if (form.denominator() == 0) {
            printed.add(
                new Printed(quantity.amount(), key(placeholder.formula()), form.rounding()));
          }
        }
        if (millimetre && form.style() != Form.Style.INCHES) {
          double asked = form.step() != 0 ? form.step() : document.metricStep();
          metric.merge(key(quantity.amount()), asked, Math::min);
        }
      }
    }

    /**
     * Asks for the finest parts that rulers have wherever lengths that a ruler tells apart would
     * come out as the same inches.
     *
     * @param document how values are printed where a placeholder doesn't say
     */
    public void tellApart(PrintForm document) {
      PrintForm form = document.with(PrintForm.Units.METRIC_FIRST).with(all());
      // What comes out alike lies together, least first.
      SortedMap<Long, SortedSet<Double>> alike = new TreeMap<>();
      for (Printed one : printed) {
        Rounding side =
            one.stated() == Rounding.NEAREST
                ? rounding.getOrDefault(one.expression(), Rounding.NEAREST)
                : one.stated();
        Printer.ofComputed(form, side)
            .inches(one.millimetres())
            .ifPresent(
                inch ->
                    alike
                        .computeIfAbsent(key(inch), unused -> new TreeSet<>())
                        .add(Math.abs(one.millimetres())));
      }
      for (SortedSet<Double> lengths : alike.values()) {
        for (double length : lengths) {
          boolean apart =
              length - lengths.first() >= APART - TOLERANCE
                  || lengths.last() - length >= APART - TOLERANCE;
          if (apart) {
            inches(length, PrintForm.RULER);
          }
        }
      }
    }

    /**
     * All that was taken.
     *
     * @return the steps
     */
    public FinestSteps all() {
      return new FinestSteps(inches, metric, rounding, metricAlone);
    }
  }
}
