package org.lapmark.check.pattern;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PrintedTexts;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.ShownAmount;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.YesNoProperty;
import org.lapmark.lay.PropertyFault;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.TrimSource;

/** Every property of materials and hardware can be computed, and is as much as it can be. */
public record PropertyCheck(EvaluatedPattern pattern, Findings findings) {
  public static final Rule<Evaluated> RULE =
      new Rule<>(PropertyCheck::run, CheckCode.PROPERTY_NEGATIVE, CheckCode.QUANTITY_WITHOUT_UNIT);

  private static final List<String> TRUTHS =
      List.of("nap", "no_grain", "no_fray", "no_iron", "both_sides_alike", "fusible");

  /** Shares of a whole, such as ten per cent. */
  private static final List<String> SHARES = List.of("margin", "shrinkage");

  /** More packs of a trim than anybody buys for one article. */
  private static final double MANY = 20;

  /** What may be nothing at all. */
  private static final List<String> FROM_ZERO =
      List.of("quantity", "margin", "selvedge_margin", "shrinkage", "repeat", "thickness");

  static void run(Evaluated evaluated, Findings findings) {
    EvaluatedPattern pattern = evaluated.pattern();
    PropertyCheck check = new PropertyCheck(pattern, findings);
    PrintedTexts.things(pattern.source()).forEach(check::thing);
    PrintedTexts.things(pattern.source()).forEach(check::bought);
    pattern
        .source()
        .making()
        .stitches()
        .forEach(
            (name, length) ->
                check
                    .value(length)
                    .ifPresent(value -> check.amount("stitch", "", name, length, value)));
  }

  private void thing(ThingSource thing) {
    for (Map.Entry<String, Formula> property : thing.properties().entrySet()) {
      if (property.getValue() == null) {
        continue;
      }
      String name = property.getKey();
      if (TRUTHS.contains(name)) {
        truth(thing, name, property.getValue());
        continue;
      }
      value(property.getValue())
          .ifPresent(
              value -> {
                if (isOfKind(value, expected(name))) {
                  amount("thing", thing.id().text(), name, property.getValue(), value);
                } else {
                  kind(thing, name, value, expected(name));
                }
              });
    }
  }

  /** What is sewn along edges and comes in no lengths is bought by the length, or by few packs. */
  private void bought(ThingSource thing) {
    Formula quantity = thing.properties().get("quantity");
    if (quantity == null
        || thing.properties().containsKey("length")
        || thing.properties().containsKey("stock_lengths")) {
      return;
    }
    Optional<TrimSource> trim =
        pattern.source().fastenings().trims().stream()
            .filter(one -> one.thing().text().equals(thing.id().text()))
            .findFirst();
    Optional<Value.Quantity> amount = value(quantity).flatMap(Value::quantity);
    if (trim.isPresent()
        && amount.isPresent()
        && amount.get().dimension() == Dimension.PLAIN
        && amount.get().amount() >= MANY) {
      findings.add(
          CheckCode.QUANTITY_WITHOUT_UNIT,
          quantity.text().position(),
          "value",
          quantity.text().text(),
          "thing",
          thing.id().text(),
          "trim",
          trim.get().name().text());
    }
  }

  /** Formulas have no words for yes and no; as a property they stand alone. */
  private void truth(ThingSource thing, String property, Formula formula) {
    if (YesNoProperty.isStated(formula)) {
      return;
    }
    value(formula)
        .filter(value -> !value.kind().equals("truth"))
        .ifPresent(value -> kind(thing, property, value, "truth"));
  }

  private void kind(ThingSource thing, String property, Value value, String expected) {
    findings.add(PropertyFault.of(thing, property, value, expected, pattern.scope()));
  }

  /** What a property has to be: a share, a length, or as a quantity either a number or a length. */
  private static String expected(String property) {
    if (SHARES.contains(property)) {
      return "plain";
    }
    return property.equals("quantity") ? "amount" : "length";
  }

  private static boolean isOfKind(Value value, String expected) {
    if (!(value instanceof Value.Quantity quantity)) {
      return value instanceof Value.StockSizes
          || value instanceof Value.NominalPair && !expected.equals("plain");
    }
    return switch (quantity.dimension()) {
      case LENGTH -> !expected.equals("plain");
      case COUNT, PLAIN -> !expected.equals("length");
      case ZERO -> true;
      default -> false;
    };
  }

  private void amount(String kind, String thing, String property, Formula formula, Value value) {
    if (value.quantity().isEmpty()) {
      return;
    }
    Value.Quantity quantity = value.quantity().get();
    double least = value.lengths().map(Value.Lengths::least).orElse(quantity.amount());
    ShownAmount shown = new ShownAmount(least, quantity.dimension());
    double amount = shown.amount();
    boolean fromZero = FROM_ZERO.contains(property);
    // Widths of cloth and shares are held to their ranges where cloth is laid out.
    boolean elsewhere =
        property.equals("usable_width")
            || property.equals("other_width")
            || property.equals("margin")
            || property.equals("shrinkage");
    if (!elsewhere && (amount < 0 || amount == 0 && !fromZero)) {
      findings.add(
          CheckCode.PROPERTY_NEGATIVE,
          formula.text().position(),
          "kind",
          kind,
          "property",
          property,
          "thing",
          thing,
          "value",
          shown.value(),
          "unit",
          shown.unit(),
          "least",
          fromZero ? "zero" : "more",
          "size",
          pattern.variant().size());
    }
  }

  /** What a property comes to; what can't be computed is reported, unless it has been. */
  private Optional<Value> value(Formula formula) {
    return pattern.value(formula, findings);
  }
}
