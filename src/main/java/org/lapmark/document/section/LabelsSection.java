package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;

/** Labels of pieces that have no paper, to be cut out and pinned on. */
final class LabelsSection implements Section {
  /** The labels. */
  record Values(List<Label> labels) {}

  /** A label to cut out, with what is to be marked on the piece. */
  record Label(
      int number,
      String name,
      String material,
      int count,
      int reversed,
      Cut.Mirroring mirrored,
      CuttingTable.CutSize size,
      List<List<Object>> marks) {}

  @Override
  public String id() {
    return "labels";
  }

  @Override
  public boolean isIn(Content content) {
    return content
        .ofOneSize()
        .map(manual -> manual.pattern().pieces().stream().anyMatch(LabelsSection::isLabelled))
        .orElse(false);
  }

  @Override
  public Record values(Setting setting) {
    if (setting.manual().isOfSizes()) {
      return new Values(List.of());
    }
    EvaluatedPattern pattern = setting.manual().pattern();
    CuttingTable table = new CuttingTable(pattern, setting.wording());
    List<Label> labels = new ArrayList<>();
    for (Piece piece : pattern.pieces()) {
      if (isLabelled(piece)) {
        for (Cut cut : piece.cuts()) {
          labels.add(
              new Label(
                  piece.number(),
                  piece.name(),
                  cut.materialName(),
                  cut.count(),
                  cut.reversed(),
                  cut.mirroring(),
                  table.cutSize(piece, piece.statedSize().orElseThrow()),
                  table.marks(piece)));
        }
      }
    }
    return new Values(labels);
  }

  private static boolean isLabelled(Piece piece) {
    return piece.statedSize().isPresent() && !piece.cuts().isEmpty();
  }
}
