package org.lapmark.document.manual;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.lay.ClothPlan;
import org.lapmark.lay.Purchase;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.ThingSource;
import org.lapmark.wording.Wording;

/**
 * What a maker has to know of a material or a part when she buys it, besides its name and how much:
 * the same in every kind of document.
 */
public final class ThingDetails {
  private static final String DETAIL = "materials.detail.";
  private static final String LENGTH = "length";
  private static final String THICKNESS = "thickness";

  /** What must be known of a material before it is heated, in the order in which it is told. */
  private static final List<String> CARE = List.of("no_iron", "fusible");

  /** Thinner cloths are asked for by weight. */
  private static final double WORTH_MENTIONING = 2;

  private final EvaluatedPattern pattern;
  private final ComputedValues computed;
  private final Wording wording;

  public ThingDetails(EvaluatedPattern pattern, PrintForm form, Wording wording) {
    this.pattern = pattern;
    this.computed = new ComputedValues(pattern, form);
    this.wording = wording;
  }

  /** Sentences about a material by what they tell, in the order in which they are told. */
  public Map<String, String> material(ThingSource thing, ClothPlan plan) {
    Map<String, String> details = new LinkedHashMap<>();
    if (plan.cloth().oneWay()) {
      details.put("nap", wording.text(DETAIL + "nap"));
    }
    if (plan.cloth().shrinkage() > 0) {
      details.put(
          "shrinkage",
          wording.text(DETAIL + "shrinkage", Map.of("share", plan.cloth().shrinkage())));
    }
    margin(plan).ifPresent(text -> details.put("margin", text));
    for (String property : CARE) {
      if (pattern.is(thing, property)) {
        details.put(property, wording.text(DETAIL + property));
      }
    }
    Formula thickness = thing.properties().get(THICKNESS);
    if (thickness != null
        && computed.amount(thickness, Dimension.LENGTH).orElse(0.0) >= WORTH_MENTIONING) {
      detail(THICKNESS, thickness).ifPresent(text -> details.put(THICKNESS, text));
    }
    return details;
  }

  /** Sentences about a part by what they tell, in the order in which they are told. */
  public Map<String, String> part(ThingSource thing) {
    Map<String, String> details = new LinkedHashMap<>();
    length(thing)
        .ifPresent(
            length -> details.put(LENGTH, wording.text(DETAIL + LENGTH, Map.of("value", length))));
    thing
        .properties()
        .forEach(
            (name, formula) -> {
              if (!name.equals(LENGTH)) {
                detail(name, formula).ifPresent(text -> details.put(name, text));
              }
            });
    if (!thing.properties().containsKey("margin") && purchase(thing).isPresent()) {
      details.put("ends", ends());
    }
    return details;
  }

  private Optional<String> detail(String name, Formula formula) {
    return wording.messages().containsKey(DETAIL + name)
        ? computed.text(formula).map(value -> wording.text(DETAIL + name, Map.of("value", value)))
        : Optional.empty();
  }

  /** The length stated, or else the stock length that a measure chooses. */
  private Optional<String> length(ThingSource thing) {
    Formula stated = thing.properties().get(LENGTH);
    if (stated != null) {
      return computed.text(stated);
    }
    String stock = thing.id().text() + ".stock_lengths";
    for (MeasureSource measure : pattern.source().measures()) {
      String name = measure.name().text();
      if (measure.formula().text().text().contains(stock)
          && pattern.measures().get(name) instanceof Value.NominalPair) {
        return computed.text(name);
      }
    }
    return Optional.empty();
  }

  /** What to buy of a part that is sold by length; nothing of others. */
  public Optional<Purchase> purchase(ThingSource thing) {
    Formula share = thing.properties().get("margin");
    double margin =
        share == null
            ? Purchase.FOR_ENDS
            : computed.amount(share, Dimension.PLAIN, Dimension.COUNT).orElse(0.0);
    return Optional.ofNullable(thing.properties().get("quantity"))
        .flatMap(quantity -> computed.amount(quantity, Dimension.LENGTH))
        .map(length -> Purchase.of(length, margin, 0));
  }

  /** What is added to a material whose author states no margin, or that nothing is. */
  private Optional<String> margin(ClothPlan plan) {
    if (plan.cloth().marginStated() || (plan.lays().isEmpty() && plan.goods().isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(plan.goods().isPresent() ? ends() : wording.text(DETAIL + "no-margin"));
  }

  private String ends() {
    return wording.text(DETAIL + "ends", Map.of("share", Purchase.FOR_ENDS));
  }
}
