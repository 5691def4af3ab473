package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.manual.SizeWords;
import org.lapmark.source.PatternSource;

/** What to buy. */
final class MaterialsSection implements Section {
  /** What to buy for one size. */
  record Values(ShoppingPage.Shopping shopping) {}

  /** What to buy for several, with what is said of thread. */
  record BySize(List<Material> materials, List<Part> parts, List<Object> thread) {}

  /** A material with the amount of each width. */
  record Material(
      String name,
      List<String> details,
      List<Width> widths,
      List<Object> buying,
      List<Object> substitute) {}

  /** A width and its amount in each size. */
  record Width(String width, List<String> amounts) {}

  /** A part that is bought by the piece or by length, with its quantity in each size. */
  record Part(
      String name,
      List<String> details,
      List<String> quantities,
      List<Object> buying,
      List<Object> substitute) {}

  @Override
  public String id() {
    return "materials";
  }

  @Override
  public boolean isIn(Content content) {
    return content.manual().map(MaterialsSection::isNeeded).orElse(true);
  }

  @Override
  public Record values(Setting setting) {
    return new Values(new ShoppingPage(setting.manual(), setting.wording()).build());
  }

  @Override
  public Record bySize(Sizes sizes) {
    List<ShoppingPage.Shopping> shopping =
        sizes.each(manual -> new ShoppingPage(manual, sizes.wording()).build());
    SizeWords words = sizes.words();
    return new BySize(
        materials(shopping, words),
        parts(shopping, words),
        words.runs(Sizes.each(shopping, ShoppingPage.Shopping::thread)));
  }

  private static boolean isNeeded(Manual manual) {
    PatternSource source = manual.pattern().source();
    return !source.hardware().isEmpty()
        || manual.cloths().stream()
            .anyMatch(
                plan ->
                    source.materials().stream()
                        .anyMatch(thing -> thing.id().text().equals(plan.cloth().id())));
  }

  private static List<Material> materials(List<ShoppingPage.Shopping> shopping, SizeWords words) {
    Map<String, List<ShoppingPage.Material>> byName = new LinkedHashMap<>();
    Map<String, Map<String, List<String>>> widths = new LinkedHashMap<>();
    for (int i = 0; i < shopping.size(); i++) {
      for (ShoppingPage.Material material : shopping.get(i).materials()) {
        byName.computeIfAbsent(material.name(), key -> new ArrayList<>()).add(material);
        Map<String, List<String>> rows =
            widths.computeIfAbsent(material.name(), key -> new LinkedHashMap<>());
        for (ShoppingPage.Amount amount : material.amounts()) {
          rows.computeIfAbsent(
                  amount.width(),
                  key -> new ArrayList<>(Collections.nCopies(shopping.size(), Sizes.NOTHING)))
              .set(i, amount.amount());
        }
      }
    }
    List<Material> materials = new ArrayList<>();
    byName.forEach(
        (name, bySize) -> {
          List<Width> rows = new ArrayList<>();
          widths.get(name).forEach((width, amounts) -> rows.add(new Width(width, amounts)));
          // One that not every size needs says the same in those that do.
          boolean everywhere = bySize.size() == shopping.size();
          ShoppingPage.Material first = bySize.get(0);
          materials.add(
              new Material(
                  name,
                  everywhere
                      ? words.lists(Sizes.each(bySize, ShoppingPage.Material::details))
                      : first.details(),
                  rows,
                  everywhere
                      ? words.runs(Sizes.each(bySize, ShoppingPage.Material::buying))
                      : first.buying(),
                  everywhere
                      ? words.runs(Sizes.each(bySize, ShoppingPage.Material::substitute))
                      : first.substitute()));
        });
    return materials;
  }

  private static List<Part> parts(List<ShoppingPage.Shopping> shopping, SizeWords words) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < shopping.get(0).parts().size(); i++) {
      int at = i;
      List<ShoppingPage.Part> bySize = Sizes.each(shopping, one -> one.parts().get(at));
      parts.add(
          new Part(
              words.text(Sizes.each(bySize, ShoppingPage.Part::name)),
              words.lists(Sizes.each(bySize, ShoppingPage.Part::details)),
              Sizes.each(bySize, part -> part.quantity().orElse(Sizes.NOTHING)),
              words.runs(Sizes.each(bySize, ShoppingPage.Part::buying)),
              words.runs(Sizes.each(bySize, ShoppingPage.Part::substitute))));
    }
    return parts;
  }
}
