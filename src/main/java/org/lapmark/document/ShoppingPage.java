package org.lapmark.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Findings;
import org.lapmark.grade.Printed;
import org.lapmark.lay.ClothPlan;
import org.lapmark.lay.ClothWidth;
import org.lapmark.lay.LayWords;
import org.lapmark.lay.Purchase;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;
import org.lapmark.measure.Value;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.ThingSource;
import org.lapmark.wording.Wording;

/** Works out what to buy. */
final class ShoppingPage {
  private static final String DETAIL = "materials.detail.";

  /** What a maker must know of a material before she heats it, in the order in which it is told. */
  static final List<String> CARE = List.of("no_iron", "fusible");

  /** Thinner cloths are asked for by weight. */
  private static final double WORTH_MENTIONING = 2;

  private final Manual manual;
  private final Wording wording;
  private final Computed computed;
  private final LayWords layWords;

  ShoppingPage(Manual manual, Wording wording) {
    this.manual = manual;
    this.wording = wording;
    this.computed = new Computed(manual.pattern(), manual.form());
    this.layWords = new LayWords(wording, manual.form());
  }

  ManualPages.Shopping build() {
    List<ManualPages.Material> materials = new ArrayList<>();
    for (ClothPlan plan : manual.cloths()) {
      manual.pattern().source().materials().stream()
          .filter(thing -> thing.id().text().equals(plan.cloth().id()))
          .findFirst()
          .ifPresent(thing -> materials.add(material(thing, plan)));
    }
    return new ManualPages.Shopping(
        materials,
        manual.pattern().source().hardware().stream().map(this::part).toList(),
        printed(manual.pattern().source().making().texts().get("thread")));
  }

  private ManualPages.Material material(ThingSource thing, ClothPlan plan) {
    List<ManualPages.Amount> amounts = new ArrayList<>();
    plan.goods()
        .ifPresent(goods -> amounts.add(amount(plan.cloth().widths().get(0), goods.purchase())));
    plan.lays().forEach(lay -> amounts.add(amount(lay.width(), lay.purchase())));
    List<String> details = new ArrayList<>();
    if (plan.cloth().oneWay()) {
      details.add(wording.text(DETAIL + "nap"));
    }
    if (plan.cloth().shrinkage() > 0) {
      details.add(wording.text(DETAIL + "shrinkage", Map.of("share", plan.cloth().shrinkage())));
    }
    margin(plan, wording).ifPresent(details::add);
    for (String property : CARE) {
      if (manual.pattern().is(thing, property)) {
        details.add(wording.text(DETAIL + property));
      }
    }
    Formula thickness = thing.properties().get("thickness");
    if (thickness != null
        && computed.amount(thickness, Dimension.LENGTH).orElse(0.0) >= WORTH_MENTIONING) {
      detail("thickness", thickness).ifPresent(details::add);
    }
    return new ManualPages.Material(
        plan.cloth().name(),
        details,
        amounts,
        printed(thing.texts().get("buying")),
        printed(thing.texts().get("substitute")));
  }

  private ManualPages.Amount amount(ClothWidth width, Purchase purchase) {
    return new ManualPages.Amount(layWords.width(width), layWords.amount(purchase));
  }

  private ManualPages.Part part(ThingSource thing) {
    List<String> details = new ArrayList<>();
    length(thing)
        .ifPresent(length -> details.add(wording.text(DETAIL + "length", Map.of("value", length))));
    thing
        .properties()
        .forEach(
            (name, formula) -> {
              if (!name.equals("length")) {
                detail(name, formula).ifPresent(details::add);
              }
            });
    forEnds(thing, wording, computed).ifPresent(details::add);
    return new ManualPages.Part(
        Printed.of(thing.name(), manual.pattern(), manual.form(), new Findings())
            .map(Printed::text)
            .orElse(thing.id().text()),
        details,
        quantity(thing),
        printed(thing.texts().get("buying")),
        printed(thing.texts().get("substitute")));
  }

  private Optional<String> detail(String name, Formula formula) {
    return wording.messages().containsKey(DETAIL + name)
        ? computed.text(formula).map(value -> wording.text(DETAIL + name, Map.of("value", value)))
        : Optional.empty();
  }

  /** The length stated, or else the stock length that a measure chooses. */
  private Optional<String> length(ThingSource thing) {
    Formula stated = thing.properties().get("length");
    if (stated != null) {
      return computed.text(stated);
    }
    String stock = thing.id().text() + ".stock_lengths";
    for (MeasureSource measure : manual.pattern().source().measures()) {
      String name = measure.name().text();
      if (measure.formula().text().text().contains(stock)
          && manual.pattern().measures().get(name) instanceof Value.NominalPair) {
        return computed.text(name);
      }
    }
    return Optional.empty();
  }

  private Optional<String> quantity(ThingSource thing) {
    Formula formula = thing.properties().get("quantity");
    if (formula == null) {
      return Optional.empty();
    }
    return purchase(thing, computed).map(layWords::amount).or(() -> computed.text(formula));
  }

  /** What to buy of hardware that is sold by length; nothing of other. */
  static Optional<Purchase> purchase(ThingSource thing, Computed computed) {
    Formula share = thing.properties().get("margin");
    double margin =
        share == null
            ? Purchase.FOR_ENDS
            : computed.amount(share, Dimension.PLAIN, Dimension.COUNT).orElse(0.0);
    return Optional.ofNullable(thing.properties().get("quantity"))
        .flatMap(quantity -> computed.amount(quantity, Dimension.LENGTH))
        .map(length -> Purchase.of(length, margin, 0));
  }

  /** What is added to a cord or tape whose author states no margin. */
  static Optional<String> forEnds(ThingSource thing, Wording wording, Computed computed) {
    return thing.properties().containsKey("margin") || purchase(thing, computed).isEmpty()
        ? Optional.empty()
        : Optional.of(wording.text(DETAIL + "ends", Map.of("share", Purchase.FOR_ENDS)));
  }

  /** What is added to a material whose author states no margin, or that nothing is. */
  static Optional<String> margin(ClothPlan plan, Wording wording) {
    if (plan.cloth().marginStated() || (plan.lays().isEmpty() && plan.goods().isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(
        plan.goods().isPresent()
            ? wording.text(DETAIL + "ends", Map.of("share", Purchase.FOR_ENDS))
            : wording.text(DETAIL + "no-margin"));
  }

  private List<Object> printed(TemplateText text) {
    return text == null
        ? List.of()
        : Printed.of(text, manual.pattern(), manual.form(), new Findings())
            .map(Printed::parts)
            .orElse(List.of());
  }
}
