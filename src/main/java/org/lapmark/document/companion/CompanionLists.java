package org.lapmark.document.companion;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.text.BreakIterator;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.manual.AgeWords;
import org.lapmark.document.manual.ChosenOption;
import org.lapmark.document.manual.ComputedValues;
import org.lapmark.document.manual.ThingDetails;
import org.lapmark.document.section.BeginPage;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Piece;
import org.lapmark.lay.ClothPlan;
import org.lapmark.lay.ClothWidth;
import org.lapmark.lay.Lay;
import org.lapmark.lay.LayWords;
import org.lapmark.lay.Purchase;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.source.FinishedSource;
import org.lapmark.source.MakingSource;
import org.lapmark.source.ThingSource;
import org.lapmark.text.Markup;
import org.lapmark.wording.Wording;

/** What a companion lists before its steps: what to know, what to buy, what to cut. */
final class CompanionLists {
  private final CompanionSizes sizes;
  private final DocumentWriter documents;
  private final Wording wording;
  private final EvaluatedPattern first;

  CompanionLists(CompanionSizes sizes, DocumentWriter documents) {
    this.documents = documents;
    this.sizes = sizes;
    this.wording = sizes.wording();
    this.first = sizes.patterns().get(0);
  }

  /** Puts the lists into a template's values. */
  void describe(Map<String, Object> model) {
    model.put("before", before());
    model.put("tools", tools());
    model.put("finished", finished());
    model.put("materials", materials());
    model.put("hardware", hardware());
    new CompanionPieces(sizes).describe(model);
  }

  private List<Map<String, Object>> before() {
    List<Map<String, Object>> facts = new ArrayList<>();
    for (ChosenOption chosen : ChosenOption.in(sizes.patterns(), wording)) {
      Markup choice = new Markup();
      choice.text(
          UCharacter.toTitleCase(
              wording.locale(),
              chosen.choice(),
              BreakIterator.getSentenceInstance(wording.locale()),
              UCharacter.TITLECASE_NO_LOWERCASE));
      String known = chosen.text() == null ? "" : ". " + sizes.html(chosen.text());
      StringBuilder reasons = new StringBuilder();
      for (ChosenOption.Refused refused : chosen.refused()) {
        SizedText reason = sizes.sized((pattern, form) -> refused.in(pattern, form).orElse(null));
        reasons.append(reasons.length() + known.length() == 0 ? ". " : " ");
        reasons.append(sizes.html(reason));
      }
      facts.add(fact(chosen.label(), choice + known + reasons));
    }
    SizedText ages = sizes.sized((pattern, form) -> AgeWords.of(pattern, wording).orElse(null));
    String who = sizes.html(ages);
    if (!who.isEmpty()) {
      facts.add(fact(wording.text("companion.before.ages"), who));
    }
    facts.add(fact(wording.text("companion.before.allowances"), allowances()));
    MakingSource making = sizes.source().making();
    making
        .texts()
        .forEach(
            (key, text) ->
                facts.add(fact(wording.text("companion.before." + key), sizes.html(text))));
    making
        .stitches()
        .forEach(
            (name, length) -> {
              String key = "companion.stitch." + name;
              String label =
                  wording.messages().containsKey(key)
                      ? wording.text(key)
                      : wording.text("companion.stitch", Map.of("name", name));
              facts.add(fact(label, sizes.html(stitch(length))));
            });
    return facts;
  }

  /** One sentence for all pieces; where they differ, the cutting list states each. */
  private String allowances() {
    TreeSet<Double> stated = new TreeSet<>();
    for (Piece piece : first.pieces()) {
      stated.addAll(piece.shape().allowances().values());
    }
    if (stated.isEmpty() || stated.last() == 0) {
      return wording.text("companion.allowances.none");
    }
    boolean bare = stated.first() == 0;
    boolean one = stated.size() == (bare ? 2 : 1);
    return sizes.html(
            sizes.sized(
                (pattern, form) ->
                    wording.text(
                        one ? "companion.allowances.one" : "companion.allowances.several",
                        Map.of("allowance", CompanionPieces.length(greatest(pattern), form)))))
        + (bare ? " " + wording.text("companion.allowances.bare") : "");
  }

  private static double greatest(EvaluatedPattern pattern) {
    return pattern.pieces().stream()
        .flatMap(piece -> piece.shape().allowances().values().stream())
        .mapToDouble(Double::doubleValue)
        .max()
        .orElse(0);
  }

  private List<String> tools() {
    return sizes.hazards().toolsUsed().stream().map(tool -> sizes.html(tool.name())).toList();
  }

  private List<Map<String, Object>> finished() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (FinishedSource row : sizes.source().finished()) {
      rows.add(row(sizes.html(row.label()), sizes.sized(row.value())));
    }
    return rows;
  }

  private List<Map<String, Object>> materials() {
    List<List<ClothPlan>> plans =
        sizes.patterns().stream()
            .map(pattern -> documents.cloths(pattern, sizes.findings()))
            .toList();
    List<Map<String, Object>> materials = new ArrayList<>();
    for (ThingSource material : sizes.source().materials()) {
      Map<String, Object> thing = thing(material);
      List<Map<String, Object>> rows = new ArrayList<>();
      plans.stream()
          .map(all -> plan(all, material))
          .flatMap(Optional::stream)
          .findFirst()
          .ifPresent(
              plan -> {
                for (ClothWidth width : plan.cloth().widths()) {
                  widthRow(plans, material, width).ifPresent(rows::add);
                }
              });
      thing.put("rows", rows);
      thing.put(
          "care",
          told(
              (pattern, form) ->
                  plan(plans.get(sizes.patterns().indexOf(pattern)), material)
                      .map(
                          plan -> new ThingDetails(pattern, form, wording).material(material, plan))
                      .orElse(Map.of())));
      if (isCut(material)) {
        materials.add(thing);
      }
    }
    return materials;
  }

  private Optional<Map<String, Object>> widthRow(
      List<List<ClothPlan>> plans, ThingSource material, ClothWidth width) {
    SizedText amount =
        sizes.sized(
            (pattern, form) ->
                plan(plans.get(sizes.patterns().indexOf(pattern)), material)
                    .flatMap(plan -> purchase(plan, width))
                    .map(purchase -> new LayWords(wording, form).amount(purchase))
                    .orElse(null));
    if (amount.texts().isEmpty()) {
      return Optional.empty();
    }
    SizedText label =
        sizes.sized(
            (pattern, form) ->
                wording.text(
                    "companion.width", Map.of("width", new LayWords(wording, form).width(width))));
    return Optional.of(row(sizes.html(label), amount));
  }

  private static Optional<ClothPlan> plan(List<ClothPlan> plans, ThingSource material) {
    return plans.stream()
        .filter(plan -> plan.cloth().id().equals(material.id().text()))
        .findFirst();
  }

  private static Optional<Purchase> purchase(ClothPlan plan, ClothWidth width) {
    if (plan.goods().isPresent()) {
      return plan.goods().map(goods -> goods.purchase());
    }
    return plan.lays().stream()
        .filter(lay -> lay.width().property().equals(width.property()))
        .map(Lay::purchase)
        .findFirst();
  }

  private boolean isCut(ThingSource material) {
    return sizes.patterns().stream()
        .flatMap(pattern -> pattern.pieces().stream())
        .flatMap(piece -> piece.cuts().stream())
        .anyMatch(cut -> cut.material().equals(material.id().text()));
  }

  private List<Map<String, Object>> hardware() {
    List<Map<String, Object>> things = new ArrayList<>();
    for (ThingSource hardware : sizes.source().hardware()) {
      Map<String, Object> thing = thing(hardware);
      List<Map<String, Object>> rows = new ArrayList<>();
      if (hardware.properties().containsKey("quantity")) {
        SizedText quantity = quantity(hardware);
        if (!quantity.texts().isEmpty()) {
          rows.add(row(wording.text("companion.hardware.quantity"), quantity));
        }
      }
      thing.put("rows", rows);
      thing.put(
          "care", told((pattern, form) -> new ThingDetails(pattern, form, wording).part(hardware)));
      things.add(thing);
    }
    return things;
  }

  private Map<String, Object> thing(ThingSource source) {
    Map<String, Object> thing = new LinkedHashMap<>();
    thing.put("name", sizes.html(source.name()));
    source.texts().forEach((key, text) -> thing.put(key, sizes.html(text)));
    return thing;
  }

  /** A count, or a length to buy, rounded up as shops cut it. */
  private SizedText quantity(ThingSource thing) {
    Formula formula = thing.properties().get("quantity");
    return sizes.sized(
        (pattern, form) ->
            new ThingDetails(pattern, form, wording)
                .purchase(thing)
                .map(new LayWords(wording, form)::amount)
                .orElseGet(() -> ComputedValues.printed(formula, pattern, form)));
  }

  /** What there is to tell in some size, each once, as markup. */
  private List<String> told(BiFunction<EvaluatedPattern, PrintForm, Map<String, String>> details) {
    Set<String> keys = new LinkedHashSet<>();
    for (EvaluatedPattern pattern : sizes.patterns()) {
      keys.addAll(details.apply(pattern, pattern.source().masthead().form()).keySet());
    }
    return keys.stream()
        .map(
            key ->
                sizes.html(sizes.sized((pattern, form) -> details.apply(pattern, form).get(key))))
        .toList();
  }

  /** The same words as in print: machines state millimetres, older ones the count of an inch. */
  private SizedText stitch(Formula length) {
    return sizes.sized(
        (pattern, form) ->
            new ComputedValues(pattern, form)
                .amount(length, Dimension.LENGTH)
                .map(amount -> BeginPage.stitchLength(amount, wording))
                .orElse(null));
  }

  private Map<String, Object> row(String label, SizedText value) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("label", label);
    row.put("alike", value.isAlike(sizes.names().size()));
    row.put("value", sizes.html(value));
    row.put("cells", sizes.cells(value));
    return row;
  }

  private static Map<String, Object> fact(String label, String text) {
    Map<String, Object> fact = new LinkedHashMap<>();
    fact.put("label", label);
    fact.put("text", text);
    return fact;
  }
}
