package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.document.manual.ComputedValues;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.manual.ThingDetails;
import org.lapmark.finding.Findings;
import org.lapmark.grade.PrintedText;
import org.lapmark.lay.ClothPlan;
import org.lapmark.lay.ClothWidth;
import org.lapmark.lay.LayWords;
import org.lapmark.lay.Purchase;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.ThingSource;
import org.lapmark.wording.Wording;

/** Works out what to buy. */
public final class ShoppingPage {
  /** What to buy: cloths, parts, thread. */
  public record Shopping(List<Material> materials, List<Part> parts, List<Object> thread) {}

  /** A material with the amount of each width. */
  public record Material(
      String name,
      List<String> details,
      List<Amount> amounts,
      List<Object> buying,
      List<Object> substitute) {}

  /** How much of a width. */
  public record Amount(String width, String amount) {}

  /** A part that is bought by the piece or by length. */
  public record Part(
      String name,
      List<String> details,
      Optional<String> quantity,
      List<Object> buying,
      List<Object> substitute) {}

  private final Manual manual;
  private final ComputedValues computed;
  private final LayWords layWords;
  private final ThingDetails details;

  public ShoppingPage(Manual manual, Wording wording) {
    this.manual = manual;
    this.computed = new ComputedValues(manual.pattern(), manual.form());
    this.layWords = new LayWords(wording, manual.form());
    this.details = new ThingDetails(manual.pattern(), manual.form(), wording);
  }

  public Shopping build() {
    List<Material> materials = new ArrayList<>();
    for (ClothPlan plan : manual.cloths()) {
      manual.pattern().source().materials().stream()
          .filter(thing -> thing.id().text().equals(plan.cloth().id()))
          .findFirst()
          .ifPresent(thing -> materials.add(material(thing, plan)));
    }
    return new Shopping(
        materials,
        manual.pattern().source().hardware().stream().map(this::part).toList(),
        printed(manual.pattern().source().making().texts().get("thread")));
  }

  private Material material(ThingSource thing, ClothPlan plan) {
    List<Amount> amounts = new ArrayList<>();
    plan.goods()
        .ifPresent(goods -> amounts.add(amount(plan.cloth().widths().get(0), goods.purchase())));
    plan.lays().forEach(lay -> amounts.add(amount(lay.width(), lay.purchase())));
    return new Material(
        plan.cloth().name(),
        List.copyOf(details.material(thing, plan).values()),
        amounts,
        printed(thing.texts().get("buying")),
        printed(thing.texts().get("substitute")));
  }

  private Amount amount(ClothWidth width, Purchase purchase) {
    return new Amount(layWords.width(width), layWords.amount(purchase));
  }

  private Part part(ThingSource thing) {
    return new Part(
        PrintedText.of(thing.name(), manual.pattern(), manual.form(), new Findings())
            .map(PrintedText::text)
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
        : PrintedText.of(text, manual.pattern(), manual.form(), new Findings())
            .map(PrintedText::parts)
            .orElse(List.of());
  }
}
