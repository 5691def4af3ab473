package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.lapmark.document.manual.AgeWords;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.manual.SizeWords;
import org.lapmark.wording.Wording;

/** Puts what documents of one size say beside each other. */
public final class SizePagesBuilder {
  /** So many columns of values are wide enough beside the columns before them. */
  private static final int MOST_COLUMNS = 4;

  private static final String NOTHING = "–";

  private final List<Manual> manuals;
  private final List<TextPages> texts;
  private final List<ManualPages.Shopping> shopping;
  private final SizeWords words;
  private final Wording wording;

  /**
   * A builder.
   *
   * @param manuals the manual of each size
   * @param texts the text pages of each
   */
  public SizePagesBuilder(List<Manual> manuals, List<TextPages> texts, Wording wording) {
    this.manuals = manuals;
    this.texts = texts;
    this.wording = wording;
    this.shopping =
        manuals.stream().map(manual -> new ShoppingPage(manual, wording).build()).toList();
    this.words =
        new SizeWords(
            manuals.stream().map(manual -> manual.pattern().variant().size()).toList(), wording);
  }

  /**
   * All that is in a column a size.
   *
   * @param drawn the size that pictures are drawn in
   */
  public SizePages build(String drawn) {
    List<SizePages.CutPiece> pieces = new ArrayList<>();
    List<SizePages.CutSizes> cutSizes = new ArrayList<>();
    for (int i = 0; i < texts.get(0).pieces().size(); i++) {
      int at = i;
      cut(each(texts, text -> text.pieces().get(at)), pieces, cutSizes);
    }
    return new SizePages(
        words.names(),
        drawn,
        groups(),
        finished(),
        texts.stream().map(text -> text.totals().cuts()).distinct().count() == 1,
        (int) pieces.stream().filter(piece -> !piece.printed()).count(),
        texts.stream().anyMatch(text -> text.totals().reversed() > 0),
        texts.stream().anyMatch(text -> text.totals().marked()),
        texts.stream().anyMatch(text -> text.totals().markedMirrored()),
        texts.stream().anyMatch(text -> text.totals().ruledGrain()),
        pieces,
        cutSizes,
        materials(),
        parts(),
        words.runs(each(shopping, ManualPages.Shopping::thread)));
  }

  /** A text of the title pages. */
  public List<Object> runs(Function<TextPages, List<Object>> text) {
    return words.runs(each(texts, text));
  }

  private static <S, T> List<T> each(List<S> all, Function<S, T> what) {
    return all.stream().map(what).toList();
  }

  /** Tables of about the same number of columns. */
  private List<SizePages.Group> groups() {
    int count = words.names().size();
    int tables = (count + MOST_COLUMNS - 1) / MOST_COLUMNS;
    List<SizePages.Group> groups = new ArrayList<>();
    for (int i = 0; i < tables; i++) {
      int first = i * count / tables;
      int end = (i + 1) * count / tables;
      groups.add(new SizePages.Group(first, words.names().subList(first, end)));
    }
    return groups;
  }

  private List<SizePages.Measured> finished() {
    List<SizePages.Measured> rows = new ArrayList<>();
    for (int i = 0; i < texts.get(0).finished().size(); i++) {
      int at = i;
      rows.add(
          new SizePages.Measured(
              words.runs(each(texts, text -> text.finished().get(at).label())),
              each(texts, text -> text.finished().get(at).value())));
    }
    return rows;
  }

  private void cut(
      List<TextPages.CutPiece> bySize,
      List<SizePages.CutPiece> pieces,
      List<SizePages.CutSizes> cutSizes) {
    TextPages.CutPiece first = bySize.get(0);
    List<SizePages.MaterialCut> cuts = new ArrayList<>();
    for (int i = 0; i < first.cuts().size(); i++) {
      int at = i;
      cuts.add(
          new SizePages.MaterialCut(
              first.cuts().get(i).material(),
              words.text(each(bySize, piece -> count(piece.cuts().get(at).count()))),
              words.text(each(bySize, piece -> mirrored(piece.cuts().get(at))))));
    }
    List<Optional<TextPages.CutSize>> sizes = each(bySize, TextPages.CutPiece::cutSize);
    boolean same = sizes.stream().map(SizePagesBuilder::asPrinted).distinct().count() == 1;
    pieces.add(
        new SizePages.CutPiece(
            first.number(),
            first.name(),
            cuts,
            sizes.stream().allMatch(Optional::isEmpty),
            same ? sizes.get(0) : Optional.empty(),
            marks(bySize),
            bySize.stream().anyMatch(TextPages.CutPiece::folded)));
    if (!same) {
      cutSizes.add(new SizePages.CutSizes(first.number(), first.name(), sizes));
    }
  }

  /**
   * Line by line: once where it is the same in every size or differs in one value, else size by
   * size, so that nobody has to pick several values out of lists.
   */
  private List<List<Object>> marks(List<TextPages.CutPiece> bySize) {
    List<List<List<Object>>> all = each(bySize, TextPages.CutPiece::marks);
    List<List<Object>> merged = new ArrayList<>();
    if (all.stream().map(List::size).distinct().count() == 1) {
      for (int i = 0; i < all.get(0).size(); i++) {
        int at = i;
        List<List<Object>> line = each(all, lines -> lines.get(at));
        if (differing(line) <= 1) {
          merged.add(words.runs(line));
        } else {
          words
              .led(each(line, one -> List.of(SizeWords.plain(one))))
              .forEach(one -> merged.add(List.of(one)));
        }
      }
      return merged;
    }
    for (String line : words.lists(each(all, lines -> each(lines, SizeWords::plain)))) {
      merged.add(List.of(line));
    }
    return merged;
  }

  /** In how many places a line differs from size to size; many if it isn't the same otherwise. */
  private static int differing(List<List<Object>> bySize) {
    int length = bySize.get(0).size();
    if (bySize.stream().anyMatch(line -> line.size() != length)) {
      return Integer.MAX_VALUE;
    }
    int differing = 0;
    for (int i = 0; i < length; i++) {
      int at = i;
      differing +=
          bySize.stream().map(line -> SizeWords.plain(List.of(line.get(at)))).distinct().count() > 1
              ? 1
              : 0;
    }
    return differing;
  }

  private String mirrored(TextPages.MaterialCut cut) {
    return cut.reversed() == 0
        ? NOTHING
        : wording.text(
            "cutting.mirrored-count",
            Map.of("mirrored", cut.mirrored().name(), "reversed", cut.reversed()));
  }

  private static String count(int count) {
    return count == 0 ? NOTHING : Integer.toString(count);
  }

  /** What a reader sees of a cut size, without the variant that it is of. */
  private static List<Object> asPrinted(Optional<TextPages.CutSize> size) {
    return size.<List<Object>>map(
            one -> List.of(one.across().text(), one.along().text(), one.bias()))
        .orElse(List.of());
  }

  private List<SizePages.Material> materials() {
    Map<String, List<ManualPages.Material>> byName = new LinkedHashMap<>();
    Map<String, Map<String, List<String>>> widths = new LinkedHashMap<>();
    for (int i = 0; i < shopping.size(); i++) {
      for (ManualPages.Material material : shopping.get(i).materials()) {
        byName.computeIfAbsent(material.name(), key -> new ArrayList<>()).add(material);
        Map<String, List<String>> rows =
            widths.computeIfAbsent(material.name(), key -> new LinkedHashMap<>());
        for (ManualPages.Amount amount : material.amounts()) {
          rows.computeIfAbsent(
                  amount.width(),
                  key -> new ArrayList<>(Collections.nCopies(shopping.size(), NOTHING)))
              .set(i, amount.amount());
        }
      }
    }
    List<SizePages.Material> materials = new ArrayList<>();
    byName.forEach(
        (name, bySize) -> {
          List<SizePages.Width> rows = new ArrayList<>();
          widths
              .get(name)
              .forEach((width, amounts) -> rows.add(new SizePages.Width(width, amounts)));
          // One that not every size needs says the same in those that do.
          boolean everywhere = bySize.size() == shopping.size();
          ManualPages.Material first = bySize.get(0);
          materials.add(
              new SizePages.Material(
                  name,
                  everywhere
                      ? words.lists(each(bySize, ManualPages.Material::details))
                      : first.details(),
                  rows,
                  everywhere
                      ? words.runs(each(bySize, ManualPages.Material::buying))
                      : first.buying(),
                  everywhere
                      ? words.runs(each(bySize, ManualPages.Material::substitute))
                      : first.substitute()));
        });
    return materials;
  }

  private List<SizePages.Part> parts() {
    List<SizePages.Part> parts = new ArrayList<>();
    for (int i = 0; i < shopping.get(0).parts().size(); i++) {
      int at = i;
      List<ManualPages.Part> bySize = each(shopping, one -> one.parts().get(at));
      parts.add(
          new SizePages.Part(
              words.text(each(bySize, ManualPages.Part::name)),
              words.lists(each(bySize, ManualPages.Part::details)),
              each(bySize, part -> part.quantity().orElse(NOTHING)),
              words.runs(each(bySize, ManualPages.Part::buying)),
              words.runs(each(bySize, ManualPages.Part::substitute))));
    }
    return parts;
  }

  /** What to know before beginning, in all sizes. */
  public ManualPages.Begin begin() {
    List<ManualPages.Begin> bySize =
        each(manuals, one -> new BeginPage(one, wording).build(Hazards.of(one, wording)));
    ManualPages.Begin first = bySize.get(0);
    List<ManualPages.Fact> facts = new ArrayList<>();
    for (ManualPages.Fact fact : first.facts()) {
      facts.add(
          new ManualPages.Fact(
              fact.key(), words.runs(each(bySize, begin -> text(begin, fact.key())))));
    }
    List<ManualPages.Stitch> stitches = new ArrayList<>();
    for (int i = 0; i < first.stitches().size(); i++) {
      int at = i;
      stitches.add(
          new ManualPages.Stitch(
              first.stitches().get(i).name(),
              words.text(each(bySize, begin -> begin.stitches().get(at).length()))));
    }
    List<List<Object>> tools = new ArrayList<>();
    for (int i = 0; i < first.tools().size(); i++) {
      int at = i;
      tools.add(words.runs(each(bySize, begin -> begin.tools().get(at))));
    }
    return new ManualPages.Begin(
        AgeWords.of(each(manuals, Manual::pattern), wording),
        facts,
        allowances(bySize),
        stitches,
        tools,
        first.abbreviations());
  }

  private static List<Object> text(ManualPages.Begin begin, String key) {
    return begin.facts().stream()
        .filter(fact -> fact.key().equals(key))
        .findFirst()
        .map(ManualPages.Fact::text)
        .orElse(List.of());
  }

  /** An edge that is an exception in one size only has the usual allowance in the others. */
  private Optional<ManualPages.Allowances> allowances(List<ManualPages.Begin> bySize) {
    if (bySize.stream().anyMatch(begin -> begin.allowances().isEmpty())) {
      return bySize.get(0).allowances();
    }
    List<ManualPages.Allowances> all = each(bySize, begin -> begin.allowances().orElseThrow());
    if (all.stream().distinct().count() == 1) {
      return Optional.of(all.get(0));
    }
    String none = wording.text("before.allowance.nothing");
    List<String> usual = each(all, one -> one.usual().orElse(none));
    Map<String, List<String>> exceptions = new LinkedHashMap<>();
    for (int i = 0; i < all.size(); i++) {
      for (ManualPages.Exception one : all.get(i).exceptions()) {
        exceptions
            .computeIfAbsent(one.where(), key -> new ArrayList<>(usual))
            .set(i, one.allowance());
      }
      for (String piece : all.get(i).without()) {
        exceptions.computeIfAbsent(piece, key -> new ArrayList<>(usual)).set(i, none);
      }
    }
    List<ManualPages.Exception> listed = new ArrayList<>();
    exceptions.forEach(
        (where, allowances) ->
            listed.add(new ManualPages.Exception(where, words.text(allowances))));
    boolean few = all.stream().allMatch(one -> one.usual().isEmpty());
    return Optional.of(
        new ManualPages.Allowances(
            few ? Optional.empty() : Optional.of(words.text(usual)), listed, List.of()));
  }
}
