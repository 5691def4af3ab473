package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.manual.AgeWords;
import org.lapmark.document.manual.ChosenOption;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.manual.SizeWords;
import org.lapmark.wording.Wording;

/** What to know before beginning. */
final class BeforeSection implements Section {
  /**
   * What to know before beginning.
   *
   * @param begin facts, allowances, tools and abbreviations
   * @param choices what is chosen in a document with options
   * @param key the key of sides and materials
   */
  record Values(
      BeginPage.Begin begin, List<ChosenOption.Line> choices, Optional<Pictures.Picture> key) {}

  @Override
  public String id() {
    return "before";
  }

  @Override
  public boolean isIn(Content content) {
    return true;
  }

  @Override
  public Record values(Setting setting) {
    Manual manual = setting.manual();
    Wording wording = setting.wording();
    return new Values(
        setting
            .sizes()
            .map(BeforeSection::begin)
            .orElseGet(() -> new BeginPage(manual, wording).build(setting.hazards())),
        ChosenOption.in(manual.sizes(), wording).stream()
            .map(one -> one.printed(manual.sizes(), wording, manual.form()))
            .toList(),
        manual
            .key()
            .map(
                drawing ->
                    setting
                        .pictures()
                        .add("key", drawing, wording.text("steps.key.alternative"), "")));
  }

  /** What to know before beginning, in all sizes. */
  private static BeginPage.Begin begin(Sizes sizes) {
    Wording wording = sizes.wording();
    SizeWords words = sizes.words();
    List<BeginPage.Begin> bySize =
        sizes.each(one -> new BeginPage(one, wording).build(Hazards.of(one, wording)));
    BeginPage.Begin first = bySize.get(0);
    List<BeginPage.Fact> facts = new ArrayList<>();
    for (BeginPage.Fact fact : first.facts()) {
      facts.add(
          new BeginPage.Fact(
              fact.key(), words.runs(Sizes.each(bySize, begin -> text(begin, fact.key())))));
    }
    List<BeginPage.Stitch> stitches = new ArrayList<>();
    for (int i = 0; i < first.stitches().size(); i++) {
      int at = i;
      stitches.add(
          new BeginPage.Stitch(
              first.stitches().get(i).name(),
              words.text(Sizes.each(bySize, begin -> begin.stitches().get(at).length()))));
    }
    List<List<Object>> tools = new ArrayList<>();
    for (int i = 0; i < first.tools().size(); i++) {
      int at = i;
      tools.add(words.runs(Sizes.each(bySize, begin -> begin.tools().get(at))));
    }
    return new BeginPage.Begin(
        AgeWords.of(sizes.each(Manual::pattern), wording),
        facts,
        allowances(sizes, bySize),
        stitches,
        tools,
        first.abbreviations());
  }

  private static List<Object> text(BeginPage.Begin begin, String key) {
    return begin.facts().stream()
        .filter(fact -> fact.key().equals(key))
        .findFirst()
        .map(BeginPage.Fact::text)
        .orElse(List.of());
  }

  /** An edge that is an exception in one size only has the usual allowance in the others. */
  private static Optional<BeginPage.Allowances> allowances(
      Sizes sizes, List<BeginPage.Begin> bySize) {
    if (bySize.stream().anyMatch(begin -> begin.allowances().isEmpty())) {
      return bySize.get(0).allowances();
    }
    List<BeginPage.Allowances> all = Sizes.each(bySize, begin -> begin.allowances().orElseThrow());
    if (all.stream().distinct().count() == 1) {
      return Optional.of(all.get(0));
    }
    SizeWords words = sizes.words();
    String none = sizes.wording().text("before.allowance.nothing");
    List<String> usual = Sizes.each(all, one -> one.usual().orElse(none));
    Map<String, List<String>> exceptions = new LinkedHashMap<>();
    for (int i = 0; i < all.size(); i++) {
      for (BeginPage.Exception one : all.get(i).exceptions()) {
        exceptions
            .computeIfAbsent(one.where(), key -> new ArrayList<>(usual))
            .set(i, one.allowance());
      }
      for (String piece : all.get(i).without()) {
        exceptions.computeIfAbsent(piece, key -> new ArrayList<>(usual)).set(i, none);
      }
    }
    List<BeginPage.Exception> listed = new ArrayList<>();
    exceptions.forEach(
        (where, allowances) -> listed.add(new BeginPage.Exception(where, words.text(allowances))));
    boolean few = all.stream().allMatch(one -> one.usual().isEmpty());
    return Optional.of(
        new BeginPage.Allowances(
            few ? Optional.empty() : Optional.of(words.text(usual)), listed, List.of()));
  }
}
