package org.lapmark.lay;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.YesNoProperty;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.source.ThingSource;

/** Evaluates the properties of a material. */
final class ClothReader {
  static final String USABLE_WIDTH = "usable_width";
  static final String OTHER_WIDTH = "other_width";

  private static final double WIDEST = 10_000;
  private static final double MOST_MARGIN = 2;
  private static final double MOST_SHRINKAGE = 0.5;

  private final EvaluatedPattern pattern;
  private final ThingSource source;
  private final Findings findings;

  ClothReader(EvaluatedPattern pattern, ThingSource source, Findings findings) {
    this.pattern = pattern;
    this.source = source;
    this.findings = findings;
  }

  /** The cloth under a name; without widths where none is stated or usable. */
  Cloth read(String name) {
    double selvedge = lengthOrZero("selvedge_margin");
    List<ClothWidth> widths = new ArrayList<>();
    for (String property : List.of(USABLE_WIDTH, OTHER_WIDTH)) {
      width(property, selvedge, widths);
    }
    return new Cloth(
        source.id().text(),
        name,
        widths,
        truth("nap"),
        truth("no_grain"),
        selvedge,
        share("margin", MOST_MARGIN),
        source.properties().containsKey("margin"),
        share("shrinkage", MOST_SHRINKAGE));
  }

  Position place(String property) {
    Formula formula = source.properties().get(property);
    return formula == null ? source.id().position() : formula.text().position();
  }

  private void width(String property, double selvedge, List<ClothWidth> widths) {
    Value value = value(property);
    if (value == null) {
      return;
    }
    if (value.lengths().isEmpty()) {
      kind(property, value, "length");
      return;
    }
    double usable = value.lengths().get().least();
    double left = usable - 2 * selvedge;
    if (!(left > 0 && usable <= WIDEST)) {
      findings.add(
          LayCode.LAY_WIDTH_RANGE,
          place(property),
          "property",
          property,
          "material",
          source.id().text(),
          "width",
          tenth(left));
      return;
    }
    widths.add(new ClothWidth(property, value, usable));
  }

  private double lengthOrZero(String property) {
    Value value = value(property);
    if (value == null) {
      return 0;
    }
    if (value.lengths().isEmpty()) {
      kind(property, value, "length");
      return 0;
    }
    return Math.max(0, value.lengths().get().most());
  }

  /** Formulas have no words for yes and no; as a property they stand alone. */
  private boolean truth(String property) {
    Formula formula = source.properties().get(property);
    if (formula != null && YesNoProperty.isYes(formula)) {
      return true;
    }
    if (formula == null || YesNoProperty.isNo(formula)) {
      return false;
    }
    Value value = value(property);
    if (value == null) {
      return false;
    }
    if (value instanceof Value.Truth truth) {
      return truth.holds();
    }
    kind(property, value, "truth");
    return false;
  }

  private double share(String property, double most) {
    Value value = value(property);
    if (value == null) {
      return 0;
    }
    if (value instanceof Value.Quantity quantity && quantity.dimension().isNumber()) {
      double share = quantity.amount();
      if (share >= 0 && share <= most) {
        return share;
      }
      findings.add(
          LayCode.LAY_SHARE_RANGE,
          place(property),
          "property",
          property,
          "material",
          source.id().text(),
          "value",
          decimal(share, 4),
          "most",
          decimal(most, 4),
          "size",
          pattern.variant().size());
      return 0;
    }
    kind(property, value, "plain");
    return 0;
  }

  private void kind(String property, Value value, String expected) {
    findings.add(PropertyFault.of(source, property, value, expected, pattern.scope()));
  }

  private Value value(String property) {
    Formula formula = source.properties().get(property);
    if (formula == null) {
      return null;
    }
    try {
      return formula.evaluate(pattern.scope());
    } catch (FindingException e) {
      findings.add(e.finding());
      return null;
    }
  }

  static String tenth(double value) {
    return decimal(value, 1);
  }

  private static String decimal(double value, int places) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value)
            .setScale(places, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        : Double.toString(value);
  }
}
