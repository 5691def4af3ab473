package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.manual.SizeWords;
import org.lapmark.wording.Wording;

/** The cutting table. */
final class CuttingSection implements Section {
  /** The rows and their sums. */
  record Values(List<CuttingTable.CutPiece> pieces, CuttingTable.Totals totals) {}

  /**
   * The cutting table of several sizes.
   *
   * @param sameCuts whether every size has as many cuts
   * @param ruled how many pieces are ruled onto the cloth
   * @param reversed whether any piece is cut reversed
   * @param marked whether anything is marked on ruled pieces
   * @param markedMirrored whether on mirrored ones
   * @param ruledGrain whether any ruled piece has a grain
   * @param pieces the cutting table
   * @param cutSizes the pieces whose cut size differs by size
   */
  record BySize(
      boolean sameCuts,
      int ruled,
      boolean reversed,
      boolean marked,
      boolean markedMirrored,
      boolean ruledGrain,
      List<CutPiece> pieces,
      List<CutSizes> cutSizes) {}

  /**
   * A piece of the cutting table.
   *
   * @param number its number
   * @param name its name
   * @param cuts how many from which material
   * @param printed whether it is printed in every size
   * @param cutSize the size to rule, where it is the same in every size
   * @param marks what is marked on it where it is ruled, in every size
   * @param folded whether it is printed as a half
   */
  record CutPiece(
      int number,
      String name,
      List<MaterialCut> cuts,
      boolean printed,
      Optional<CuttingTable.CutSize> cutSize,
      List<List<Object>> marks,
      boolean folded) {}

  /** How many of a piece are cut from one material. */
  record MaterialCut(String material, String count, String mirrored) {}

  /** The cut size of a piece in each size; absent in one where the piece is printed. */
  record CutSizes(int number, String name, List<Optional<CuttingTable.CutSize>> sizes) {}

  @Override
  public String id() {
    return "cutting";
  }

  @Override
  public boolean isIn(Content content) {
    return true;
  }

  @Override
  public Record values(Setting setting) {
    CuttingTable table = new CuttingTable(setting.manual().pattern(), setting.wording());
    return new Values(table.pieces(), table.totals());
  }

  @Override
  public Record bySize(Sizes sizes) {
    List<CuttingTable> tables =
        sizes.each(manual -> new CuttingTable(manual.pattern(), sizes.wording()));
    List<List<CuttingTable.CutPiece>> rows = Sizes.each(tables, CuttingTable::pieces);
    List<CutPiece> pieces = new ArrayList<>();
    List<CutSizes> cutSizes = new ArrayList<>();
    for (int i = 0; i < rows.get(0).size(); i++) {
      int at = i;
      cut(sizes, Sizes.each(rows, all -> all.get(at)), pieces, cutSizes);
    }
    List<CuttingTable.Totals> totals = Sizes.each(tables, CuttingTable::totals);
    return new BySize(
        totals.stream().map(CuttingTable.Totals::cuts).distinct().count() == 1,
        (int) pieces.stream().filter(piece -> !piece.printed()).count(),
        totals.stream().anyMatch(all -> all.reversed() > 0),
        totals.stream().anyMatch(CuttingTable.Totals::marked),
        totals.stream().anyMatch(CuttingTable.Totals::markedMirrored),
        totals.stream().anyMatch(CuttingTable.Totals::ruledGrain),
        pieces,
        cutSizes);
  }

  private static void cut(
      Sizes sizes,
      List<CuttingTable.CutPiece> bySize,
      List<CutPiece> pieces,
      List<CutSizes> cutSizes) {
    SizeWords words = sizes.words();
    CuttingTable.CutPiece first = bySize.get(0);
    List<MaterialCut> cuts = new ArrayList<>();
    for (int i = 0; i < first.cuts().size(); i++) {
      int at = i;
      cuts.add(
          new MaterialCut(
              first.cuts().get(i).material(),
              words.text(Sizes.each(bySize, piece -> count(piece.cuts().get(at).count()))),
              words.text(
                  Sizes.each(bySize, piece -> mirrored(piece.cuts().get(at), sizes.wording())))));
    }
    List<Optional<CuttingTable.CutSize>> cutSize =
        Sizes.each(bySize, CuttingTable.CutPiece::cutSize);
    boolean same = cutSize.stream().map(CuttingSection::asPrinted).distinct().count() == 1;
    pieces.add(
        new CutPiece(
            first.number(),
            first.name(),
            cuts,
            cutSize.stream().allMatch(Optional::isEmpty),
            same ? cutSize.get(0) : Optional.empty(),
            marks(words, bySize),
            bySize.stream().anyMatch(CuttingTable.CutPiece::folded)));
    if (!same) {
      cutSizes.add(new CutSizes(first.number(), first.name(), cutSize));
    }
  }

  /**
   * Line by line: once where it is the same in every size or differs in one value, else size by
   * size, so that nobody has to pick several values out of lists.
   */
  private static List<List<Object>> marks(SizeWords words, List<CuttingTable.CutPiece> bySize) {
    List<List<List<Object>>> all = Sizes.each(bySize, CuttingTable.CutPiece::marks);
    List<List<Object>> merged = new ArrayList<>();
    if (all.stream().map(List::size).distinct().count() == 1) {
      for (int i = 0; i < all.get(0).size(); i++) {
        int at = i;
        List<List<Object>> line = Sizes.each(all, lines -> lines.get(at));
        if (differing(line) <= 1) {
          merged.add(words.runs(line));
        } else {
          words
              .led(Sizes.each(line, one -> List.of(SizeWords.plain(one))))
              .forEach(one -> merged.add(List.of(one)));
        }
      }
      return merged;
    }
    for (String line : words.lists(Sizes.each(all, lines -> Sizes.each(lines, SizeWords::plain)))) {
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

  private static String mirrored(CuttingTable.MaterialCut cut, Wording wording) {
    return cut.reversed() == 0
        ? Sizes.NOTHING
        : wording.text(
            "cutting.mirrored-count",
            Map.of("mirrored", cut.mirrored().name(), "reversed", cut.reversed()));
  }

  private static String count(int count) {
    return count == 0 ? Sizes.NOTHING : Integer.toString(count);
  }

  /** What a reader sees of a cut size, without the variant that it is of. */
  private static List<Object> asPrinted(Optional<CuttingTable.CutSize> size) {
    return size.<List<Object>>map(
            one -> List.of(one.across().text(), one.along().text(), one.bias()))
        .orElse(List.of());
  }
}
