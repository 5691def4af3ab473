package org.lapmark.figure.stage;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.scene.PrintedLength;
import org.lapmark.figure.scene.Words;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.TemplateText;

/**
 * What the texts and formulas of one figure come to in one variant, and what is wrong with them.
 */
public final class Staging {
  private final EvaluatedPattern pattern;
  private final PrintForm form;
  private final Words words;
  private final FigureLengths lengths = new FigureLengths();
  private final Set<Finding> notices = new LinkedHashSet<>();
  private final Set<Finding> faults = new LinkedHashSet<>();
  private boolean missing;
  private int counted;

  /**
   * The staging of one figure.
   *
   * @param pattern the pattern in the variant
   * @param form how lengths are printed
   * @param words the words of figures
   */
  public Staging(EvaluatedPattern pattern, PrintForm form, Words words) {
    this.pattern = pattern;
    this.form = form;
    this.words = words;
  }

  /** The pattern in the variant. */
  public EvaluatedPattern pattern() {
    return pattern;
  }

  PrintForm form() {
    return form;
  }

  /** The words of figures. */
  public Words words() {
    return words;
  }

  /** What names stand for. */
  public PatternNames names() {
    return new PatternNames(pattern);
  }

  /** How materials are called and shown. */
  public Cloths cloths() {
    return new Cloths(this);
  }

  /** What is drawn all the same and should be known. */
  public Set<Finding> notices() {
    return notices;
  }

  /** What can't be drawn. */
  public Set<Finding> faults() {
    return faults;
  }

  /** What can be had of something; else nothing, and what is wrong with it is kept. */
  public <T> Optional<T> attempt(Supplier<T> wanted) {
    try {
      return Optional.of(wanted.get());
    } catch (FindingException e) {
      faults.add(e.finding());
      return Optional.empty();
    } catch (DemandGraph.Unavailable e) {
      missing = true; // Reported where it went wrong.
      return Optional.empty();
    }
  }

  /** Whether something could not be staged. */
  public boolean isAmiss() {
    return missing || !faults.isEmpty();
  }

  /** What ends a figure that something is amiss with: the first fault, if it has one of its own. */
  public RuntimeException fault() {
    return faults.isEmpty()
        ? new DemandGraph.Unavailable()
        : new FindingException(faults.iterator().next());
  }

  /** Does something, unless something is wrong with it, which is kept. */
  public void run(Runnable wanted) {
    attempt(
        () -> {
          wanted.run();
          return true;
        });
  }

  /** What is drawn all the same and should be known; said once, however often it is drawn. */
  public void notice(Position position, FigureCode code, Object... arguments) {
    notices.add(Finding.of(code, position, arguments));
  }

  /** Ends a figure that shows more of something than can be drawn. */
  public void count(Position position, String what, int most) {
    counted++;
    if (counted > most) {
      throw Faults.of(position, FigureCode.FIGURE_TOO_MANY, "limit", most, "what", what);
    }
  }

  /** The variant's size. */
  public String size() {
    return pattern.variant().size();
  }

  /** A length in millimetres. */
  public double length(Formula formula) {
    return formula.amount(pattern.scope(), Dimension.LENGTH);
  }

  /** A length within limits. */
  public double length(Formula formula, double least, double most) {
    double length = length(formula);
    requireWithin(formula.text().position(), length, least, most);
    return length;
  }

  /** Throws a finding where a length is beyond limits. */
  public void requireWithin(Position place, double length, double least, double most) {
    if (!(length >= least - 1e-6 && length <= most + 1e-6)) {
      throw Faults.of(
          place,
          FigureCode.FIGURE_DISTANCE_BEYOND,
          "value",
          hundredth(length),
          "size",
          size(),
          "least",
          hundredth(least),
          "most",
          hundredth(most));
    }
  }

  /** What ends where it begins, by its end. */
  public FindingException empty(Formula end, String name) {
    return Faults.of(
        end.text().position(), FigureCode.FIGURE_STRETCH_EMPTY, "name", name, "size", size());
  }

  /** A length from an edge's start, or a fraction of the edge. */
  public double along(Formula formula, double whole, double otherwise) {
    if (formula == null) {
      return otherwise;
    }
    OptionalDouble share = formula.evaluate(pattern.scope()).amount(Dimension.PLAIN);
    if (share.isPresent()) {
      return share(formula, share.getAsDouble(), "yes") * whole;
    }
    return length(formula, 0, whole);
  }

  /** A share of something that has no length. */
  public double share(Formula formula, String key) {
    return share(formula, plain(formula, key, "a share: a plain number from 0 to 1"), "no");
  }

  private double share(Formula formula, double share, String lengths) {
    if (!(share >= -1e-9 && share <= 1 + 1e-9)) {
      throw Faults.of(
          formula.text().position(),
          FigureCode.FIGURE_SHARE_BEYOND,
          "value",
          hundredth(share),
          "size",
          size(),
          "lengths",
          lengths);
    }
    return Math.max(0, Math.min(1, share));
  }

  /** A plain number. */
  public double number(Formula formula, String key) {
    return plain(formula, key, "a plain number");
  }

  private double plain(Formula formula, String key, String needed) {
    return formula
        .evaluate(pattern.scope())
        .amount(Dimension.PLAIN)
        .orElseThrow(() -> Faults.kind(formula.text().position(), key, needed));
  }

  /** A number for a message. */
  public static String hundredth(double value) {
    return BigDecimal.valueOf(Math.rint(value * 100) / 100).stripTrailingZeros().toPlainString();
  }

  /** An author's text with its values printed. */
  public String text(TemplateText text) {
    lengths.text(text);
    return text.print(pattern.scope(), pattern.variant(), form).stream()
        .map(part -> part instanceof PrintedValue value ? value.text() : part.toString())
        .collect(Collectors.joining());
  }

  /** A length as a reader sees it. */
  public String printed(double millimetres) {
    return FigureLengths.print(millimetres, form);
  }

  /** A dimension as a reader sees it, which is held against the figure's other lengths. */
  public PrintedLength dimension(Position place, double millimetres) {
    return new PrintedLength(lengths.dimension(place, millimetres), printed(millimetres));
  }

  /** Says that a dimension has no length as seen from where it stands. */
  public void flat(int dimension) {
    faults.add(Finding.of(FigureCode.FIGURE_DIMENSION_FLAT, lengths.place(dimension)));
  }

  /** Says of dimensions that differ from other lengths when readers see no difference. */
  public void compareLengths() {
    lengths.compare(this);
  }
}
