package org.lapmark.document.companion;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.lapmark.document.manual.CutWidth;
import org.lapmark.document.manual.RuledMarks;
import org.lapmark.document.manual.SizeWords;
import org.lapmark.finding.Position;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.piece.StatedSize;
import org.lapmark.measure.Value;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.wording.Wording;

/** The pieces that a companion lists. */
final class CompanionPieces {
  private final CompanionSizes sizes;
  private final Wording wording;
  private final EvaluatedPattern first;

  CompanionPieces(CompanionSizes sizes) {
    this.sizes = sizes;
    this.wording = sizes.wording();
    this.first = sizes.patterns().get(0);
  }

  /** Puts the pieces into a template's values. */
  void describe(Map<String, Object> model) {
    model.put("pieces", pieces());
    model.put("cuttingLead", cuttingLead());
  }

  private String cuttingLead() {
    List<Piece> ruled =
        sizes.patterns().stream()
            .flatMap(pattern -> pattern.pieces().stream())
            .filter(piece -> piece.statedSize().isPresent())
            .toList();
    List<Piece> marked =
        ruled.stream()
            .filter(piece -> !piece.statedSize().orElseThrow().marks().isEmpty())
            .toList();
    boolean mirrored =
        marked.stream()
            .anyMatch(piece -> piece.cuts().stream().anyMatch(cut -> cut.reversed() > 0));
    boolean grain = ruled.stream().anyMatch(Piece::hasGrain);
    return wording.text(
            "companion.cutting.lead",
            Map.of("ruled", ruled.isEmpty() ? "no" : "yes", "grain", grain ? "yes" : "no"))
        + (marked.isEmpty()
            ? ""
            : " " + wording.text("ruled.explained", Map.of("mirrored", mirrored ? "yes" : "no")));
  }

  private List<Map<String, Object>> pieces() {
    List<Map<String, Object>> pieces = new ArrayList<>();
    for (Piece piece : first.pieces()) {
      Map<String, Object> map = new LinkedHashMap<>();
      map.put("number", piece.number());
      map.put("name", piece.name());
      List<String> cuts = new ArrayList<>();
      for (Cut cut : piece.cuts()) {
        cuts.add(sizes.html(sizes.sized((pattern, form) -> cut(pattern, piece, cut))));
      }
      map.put("cuts", cuts);
      map.put("size", sizes.html(sizes.sized((pattern, form) -> size(pattern, piece, form))));
      map.put(
          "allowance", sizes.html(sizes.sized((pattern, form) -> allowance(pattern, piece, form))));
      map.put("marks", marks(piece));
      pieces.add(map);
    }
    return pieces;
  }

  /** What is marked on a ruled piece; a size may have more lines than another. */
  private List<String> marks(Piece piece) {
    int most =
        sizes.patterns().stream()
            .mapToInt(
                pattern ->
                    same(pattern, piece).statedSize().map(size -> size.marks().size()).orElse(0))
            .max()
            .orElse(0);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      int at = i;
      lines.add(sizes.html(sizes.sized((pattern, form) -> mark(pattern, piece, form, at))));
    }
    return lines;
  }

  private String mark(EvaluatedPattern pattern, Piece piece, PrintForm form, int line) {
    return same(pattern, piece)
        .statedSize()
        .filter(size -> line < size.marks().size())
        .map(
            size ->
                new RuledMarks(
                        wording,
                        form.ruled(),
                        pattern.variant(),
                        Position.ofFile(pattern.source().folder()))
                    .lines(size))
        .map(lines -> SizeWords.plain(lines.get(line)))
        .orElse(null);
  }

  private String cut(EvaluatedPattern pattern, Piece piece, Cut cut) {
    return same(pattern, piece).cuts().stream()
        .filter(other -> other.material().equals(cut.material()))
        .findFirst()
        .map(found -> wording.text("companion.cut", found.words()))
        .orElse(null);
  }

  private String size(EvaluatedPattern pattern, Piece piece, PrintForm form) {
    Optional<StatedSize> size = same(pattern, piece).statedSize();
    if (size.isEmpty()) {
      return wording.text(
          same(pattern, piece).isFolded() ? "companion.printed-half" : "companion.printed");
    }
    PrintForm fine = form.ruled();
    return wording.text(
        "companion.ruled",
        Map.of(
            "across", CutWidth.print(CutWidth.of(pattern, same(pattern, piece), size.get()), fine),
            "along", length(size.get().height(), fine),
            "bias", size.get().bias() ? "yes" : "no"));
  }

  private String allowance(EvaluatedPattern pattern, Piece piece, PrintForm form) {
    TreeSet<Double> stated = new TreeSet<>(same(pattern, piece).shape().allowances().values());
    if (stated.isEmpty() || stated.last() == 0) {
      return wording.text("companion.allowance.none");
    }
    return wording.text(
        stated.size() == 1 ? "companion.allowance.all" : "companion.allowance.up-to",
        Map.of("allowance", length(stated.last(), form)));
  }

  private static Piece same(EvaluatedPattern pattern, Piece piece) {
    return pattern.pieces().stream()
        .filter(other -> other.number() == piece.number())
        .findFirst()
        .orElse(piece);
  }

  static String length(double millimetres, PrintForm form) {
    return form.print(Value.Quantity.length(millimetres));
  }
}
