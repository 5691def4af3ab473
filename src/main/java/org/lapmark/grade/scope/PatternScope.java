package org.lapmark.grade.scope;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.MeasureCode;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.panel.ClosedLine;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.folder.Limits;

/**
 * What the names in a pattern's formulas stand for in one variant, and what formulas come to where
 * a length is needed.
 */
public final class PatternScope implements Scope {
  /** In millimetres, as in drawings: what is longer costs work and memory without end. */
  public static final double LONGEST = Limits.STANDARD.largest();

  /** By so much a share may be beyond what it can be. */
  private static final double SHARE_NOISE = 1e-9;

  private final Scope names;
  private final String size;

  /**
   * A scope.
   *
   * @param names what names stand for
   * @param size the variant's size, which findings name
   */
  public PatternScope(Scope names, String size) {
    this.names = names;
    this.size = size;
  }

  public String size() {
    return size;
  }

  @Override
  public Value value(SourceText name) {
    return names.value(name);
  }

  @Override
  public Value geometry(SourceText function, List<SourceText> references) {
    return names.geometry(function, references);
  }

  @Override
  public Optional<String> kind(SourceText name) {
    return names.kind(name);
  }

  @Override
  public Optional<Position> withoutUnit(SourceText name) {
    return names.withoutUnit(name);
  }

  /** Refuses a name that isn't an edge's or a chain's of a panel. */
  public static void requireEdge(Panel panel, SourceText name) {
    boolean known =
        panel.chains().containsKey(name.text())
            || panel.edges().stream().anyMatch(edge -> edge.name().equals(name.text()));
    if (!known) {
      edge(panel, name);
    }
  }

  /** The one line that a name stands for. */
  public static Path edge(Panel panel, SourceText name) {
    if (!panel.isOneLine(name.text())) {
      throw new FindingException(
          new Finding(
              PanelCode.EDGE_IN_PARTS, name.position(), panel.inParts(name.text()).arguments()));
    }
    Path line = panel.line(name.text());
    if (line == null) {
      Set<String> known = new LinkedHashSet<>(panel.chains().keySet());
      panel.edges().forEach(edge -> known.add(edge.name()));
      throw fault(
          GradeCode.REFERENCE_EDGE_UNKNOWN,
          name.position(),
          name.text(),
          known,
          "panel",
          panel.name(),
          "edge",
          name.text());
    }
    return line;
  }

  /** An edge or chain as it is sewn, its darts and pleats closed. */
  public static ClosedLine closed(Panel panel, SourceText name) {
    edge(panel, name);
    return ClosedLine.of(panel, name.text());
  }

  /** The point of a panel's corner. */
  public static Point corner(Panel panel, SourceText name) {
    Set<String> known = new LinkedHashSet<>();
    for (Edge edge : panel.edges()) {
      known.add(edge.from());
      if (edge.from().equals(name.text())) {
        return edge.path().start();
      }
    }
    throw fault(
        GradeCode.REFERENCE_CORNER_UNKNOWN,
        name.position(),
        name.text(),
        known,
        "panel",
        panel.name(),
        "corner",
        name.text());
  }

  public static FindingException fault(
      GradeCode code, Position position, String word, Set<String> known, Object... arguments) {
    List<Object> all = new ArrayList<>(List.of(arguments));
    all.addAll(List.of("nearest", NearestWord.of(word, known).orElse("none")));
    all.addAll(List.of("known", Known.listed(known)));
    return new FindingException(Finding.of(code, position, all.toArray()));
  }

  /** Something amiss in this variant with what has a name. */
  public FindingException fault(
      GradeCode code, Position position, String name, Object... arguments) {
    List<Object> all = new ArrayList<>(List.of(arguments));
    all.addAll(List.of("name", name, "size", size));
    return new FindingException(Finding.of(code, position, all.toArray()));
  }

  /**
   * A length.
   *
   * @param formula the formula
   * @return millimetres
   * @throws FindingException when it isn't a length, or longer than anything is drawn
   */
  public double length(Formula formula) {
    double length = anyLength(formula);
    checkReach(formula, length, LONGEST);
    return length;
  }

  /**
   * Refuses a length beyond a limit.
   *
   * @throws FindingException when it is
   */
  public void checkReach(Formula formula, double length, double limit) {
    if (!(Math.abs(length) <= limit)) {
      throw new FindingException(
          Finding.of(
              GradeCode.LENGTH_TOO_LARGE,
              formula.text().position(),
              "value",
              Rounded.metres(length),
              "limit",
              Rounded.metres(limit),
              "size",
              size));
    }
  }

  /** The same, for whoever states a limit of its own. */
  public double anyLength(Formula formula) {
    Value value = formula.evaluate(this);
    OptionalDouble length = value.amount(Dimension.LENGTH);
    if (length.isPresent()) {
      return length.getAsDouble();
    }
    throw notALength(formula, value);
  }

  /**
   * How far lengths may differ that are sewn to each other.
   *
   * @param stated the formula, or null for what is usual
   * @param findings told of one that can't be meant; then it is what is usual
   * @return millimetres
   */
  public double tolerance(Formula stated, Findings findings) {
    double tolerance = stated == null ? WalkedSeam.DEFAULT_TOLERANCE : length(stated);
    if (tolerance >= 0) {
      return tolerance;
    }
    findings.add(
        Finding.of(
            GradeCode.SEAM_TOLERANCE_NEGATIVE,
            stated.text().position(),
            "value",
            Rounded.hundredth(tolerance),
            "size",
            size));
    return WalkedSeam.DEFAULT_TOLERANCE;
  }

  /**
   * A length above zero.
   *
   * @param formula the formula
   * @return millimetres
   * @throws FindingException when it isn't one
   */
  public double positiveLength(Formula formula) {
    double length = length(formula);
    if (!(length > 0)) {
      throw new FindingException(
          Finding.of(
              GradeCode.LENGTH_NOT_POSITIVE,
              formula.text().position(),
              "value",
              Rounded.hundredth(length),
              "cause",
              cause(formula),
              "size",
              size));
    }
    return length;
  }

  /**
   * A length, or a plain number as a share of a whole; in millimetres.
   *
   * @throws FindingException when it is a number that is no share, as one without its unit is
   */
  public double along(Formula formula, double whole) {
    return along(formula, whole, 0);
  }

  /** The same where a place may also be counted back from the whole's end, by -1 at the least. */
  public double aroundFrom(Formula formula, double whole) {
    return along(formula, whole, -1);
  }

  private double along(Formula formula, double whole, double least) {
    Value value = formula.evaluate(this);
    OptionalDouble share = value.amount(Dimension.PLAIN);
    if (share.isEmpty()) {
      return length(formula);
    }
    if (!(share.getAsDouble() >= least - SHARE_NOISE && share.getAsDouble() <= 1 + SHARE_NOISE)) {
      throw notA(Dimension.LENGTH, formula, value)
          .orElseGet(
              () ->
                  new FindingException(
                      Finding.of(
                          GradeCode.SHARE_BEYOND,
                          formula.text().position(),
                          "value",
                          Rounded.hundredth(share.getAsDouble()),
                          "least",
                          Rounded.hundredth(least),
                          "size",
                          size)));
    }
    return share.getAsDouble() * whole;
  }

  /**
   * What is wrong with a formula that a length is asked of: a plain number misses its unit, where
   * it is stated or here; anything else is something else.
   *
   * @param formula the formula
   * @param value what it comes to, which is no length
   * @return the exception that says so
   */
  public FindingException notALength(Formula formula, Value value) {
    if (!(value instanceof Value.Quantity quantity && quantity.dimension() == Dimension.PLAIN)) {
      return new FindingException(
          Finding.of(GradeCode.NOT_A_LENGTH, formula.text().position(), "kind", kind(value)));
    }
    return notA(Dimension.LENGTH, formula, value)
        .orElseGet(() -> formula.unitMissing(Dimension.LENGTH));
  }

  /**
   * What is at fault where a formula comes to too little: the same wherever it asks for the same
   * names, and a place of its own where it is but a number.
   */
  public static String cause(Formula formula) {
    Position place = formula.text().position();
    return formula.names().isEmpty()
        ? place.file() + ':' + place.line() + ':' + place.column()
        : formula.text().text();
  }

  /**
   * Why a formula comes to a plain number where something with a unit is needed, if the reason
   * isn't the formula as it stands: a name in it that is stated without a unit, or a decimal comma
   * that parted it from its unit.
   */
  public Optional<FindingException> notA(Dimension needed, Formula formula, Value value) {
    if (value.amount(Dimension.PLAIN).isEmpty()) {
      return Optional.empty();
    }
    SourceText text = formula.text();
    int end = text.offset(text.text().length());
    String content = text.file().content();
    if (formula.isPlainNumber()
        && end + 1 < content.length()
        && content.charAt(end) == ','
        && Character.isDigit(content.charAt(end + 1))) {
      return Optional.of(
          new FindingException(
              Finding.of(MeasureCode.FORMULA_DECIMAL_COMMA, text.file().position(end, end + 1))));
    }
    return formula.withoutUnit(this, needed);
  }

  public static String kind(Value value) {
    if (value instanceof Value.Quantity quantity) {
      return switch (quantity.dimension()) {
        case LENGTH -> "a length";
        case AREA -> "an area";
        case ANGLE -> "an angle";
        case COUNT -> "a count";
        case PLAIN, ZERO -> "a plain number";
      };
    }
    if (value instanceof Value.NominalPair) {
      return "a stock size";
    }
    if (value instanceof Value.Choice) {
      return "a choice";
    }
    return value instanceof Value.Truth ? "a yes or no" : "a list of stock sizes";
  }
}
