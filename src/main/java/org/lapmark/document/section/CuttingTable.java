package org.lapmark.document.section;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapmark.document.manual.CutWidth;
import org.lapmark.document.manual.RuledMarks;
import org.lapmark.finding.Position;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.piece.StatedSize;
import org.lapmark.measure.Value;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.source.PieceSource;
import org.lapmark.wording.Wording;

/** The cutting table of one variant: its pieces, and what is to be ruled onto the cloth. */
public final class CuttingTable {
  private final EvaluatedPattern pattern;
  private final Wording wording;
  private final PrintForm form;

  public CuttingTable(EvaluatedPattern pattern, Wording wording) {
    this.pattern = pattern;
    this.wording = wording;
    this.form = Setting.form(pattern, wording);
  }

  /**
   * A piece of the cutting table; a folded one is printed as a half. Of one that is ruled, marks
   * says line by line what is marked on it where.
   */
  public record CutPiece(
      int number,
      String name,
      List<MaterialCut> cuts,
      Optional<CutSize> cutSize,
      List<List<Object>> marks,
      boolean folded) {}

  /** How many of a piece are cut from one material. */
  public record MaterialCut(String material, int count, int reversed, Cut.Mirroring mirrored) {}

  /** The cut size of a piece that is ruled onto the cloth. */
  public record CutSize(PrintedValue across, PrintedValue along, boolean bias) {}

  /**
   * Sums over the cutting table, and of the ruled pieces: whether anything is marked on them, also
   * on mirrored ones, and whether any has a grain.
   */
  public record Totals(
      int pieces,
      int cuts,
      int reversed,
      int materials,
      int ruled,
      boolean marked,
      boolean markedMirrored,
      boolean ruledGrain) {}

  /** A row a piece. */
  public List<CutPiece> pieces() {
    return pattern.pieces().stream().map(this::cutPiece).toList();
  }

  private CutPiece cutPiece(Piece piece) {
    return new CutPiece(
        piece.number(),
        piece.name(),
        piece.cuts().stream()
            .map(
                cut ->
                    new MaterialCut(
                        cut.materialName(), cut.count(), cut.reversed(), cut.mirroring()))
            .toList(),
        piece.statedSize().map(size -> cutSize(piece, size)),
        marks(piece),
        piece.isFolded());
  }

  private Position position(Piece piece) {
    return pattern.source().pieces().stream()
        .filter(stated -> stated.number() == piece.number())
        .map(PieceSource::position)
        .findFirst()
        .orElse(Position.ofFile(pattern.source().folder()));
  }

  /** What is marked on a piece that is ruled, line by line. */
  List<List<Object>> marks(Piece piece) {
    return piece
        .statedSize()
        .map(
            size ->
                new RuledMarks(wording, form.ruled(), pattern.variant(), position(piece))
                    .lines(size))
        .orElse(List.of());
  }

  /** How a cut size is printed. */
  CutSize cutSize(Piece piece, StatedSize size) {
    Position position = position(piece);
    return new CutSize(
        ruled(CutWidth.of(pattern, piece, size), "cut_width", position),
        ruled(Value.Quantity.length(size.height()), "cut_height", position),
        size.bias());
  }

  /** A computed length that stands in no text of the author's. */
  private PrintedValue ruled(Value length, String name, Position position) {
    return new PrintedValue(
        name, pattern.variant(), length, CutWidth.print(length, form.ruled()), position);
  }

  Totals totals() {
    Set<String> materials = new LinkedHashSet<>();
    int cuts = 0;
    int reversed = 0;
    for (Piece piece : pattern.pieces()) {
      for (Cut cut : piece.cuts()) {
        materials.add(cut.material());
        cuts += cut.count();
        reversed += cut.reversed();
      }
    }
    List<Piece> ruled =
        pattern.pieces().stream().filter(piece -> piece.statedSize().isPresent()).toList();
    List<Piece> marked =
        ruled.stream()
            .filter(piece -> !piece.statedSize().orElseThrow().marks().isEmpty())
            .toList();
    return new Totals(
        pattern.pieces().size(),
        cuts,
        reversed,
        materials.size(),
        ruled.size(),
        !marked.isEmpty(),
        marked.stream()
            .anyMatch(piece -> piece.cuts().stream().anyMatch(cut -> cut.reversed() > 0)),
        ruled.stream().anyMatch(Piece::hasGrain));
  }
}
