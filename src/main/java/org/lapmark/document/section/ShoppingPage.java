package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.document.manual.Computed;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.manual.ThingDetails;
import org.lapmark.finding.Findings;
import org.lapmark.grade.Printed;
import org.lapmark.lay.ClothPlan;
import org.lapmark.lay.ClothWidth;
import org.lapmark.lay.LayWords;
import org.lapmark.lay.Purchase;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.ThingSource;
import org.lapmark.wording.Wording;

/** Works out what to buy. */
public final class ShoppingPage {
  private final Manual manual;
  private final Computed computed;
  private final LayWords layWords;
  private final ThingDetails details;

  public ShoppingPage(Manual manual, Wording wording) {
    this.manual = manual;
    this.computed = new Computed(manual.pattern(), manual.form());
    this.layWords = new LayWords(wording, manual.form());
    this.details = new ThingDetails(manual.pattern(), manual.form(), wording);
  }

  public ManualPages.Shopping build() {
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
    return new ManualPages.Material(
        plan.cloth().name(),
        List.copyOf(details.material(thing, plan).values()),
        amounts,
        printed(thing.texts().get("buying")),
        printed(thing.texts().get("substitute")));
  }

  private ManualPages.Amount amount(ClothWidth width, Purchase purchase) {
    return new ManualPages.Amount(layWords.width(width), layWords.amount(purchase));
  }

  private ManualPages.Part part(ThingSource thing) {
    return new ManualPages.Part(
        Printed.of(thing.name(), manual.pattern(), manual.form(), new Findings())
            .map(Printed::text)
            .orElse(thing.id().text()),
        List.copyOf(details.part(thing).values()),
        quantity(thing),
        printed(thing.texts().get("buying")),
        printed(thing.texts().get("substitute")));
  }

  private Optional<String> quantity(ThingSource thing) {
    Formula formula = thing.properties().get("quantity");
    if (formula == null) {
      return Optional.empty();
    }
    return details.purchase(thing).map(layWords::amount).or(() -> computed.text(formula));
  }

  private List<Object> printed(TemplateText text) {
    return text == null
        ? List.of()
        : Printed.of(text, manual.pattern(), manual.form(), new Findings())
            .map(Printed::parts)
            .orElse(List.of());
  }
}
