package org.lapmark.publish.product;

import java.util.List;
import java.util.Optional;
import org.lapmark.document.Document;
import org.lapmark.document.book.Plates;
import org.lapmark.document.book.TilesDocument;
import org.lapmark.document.manual.Look;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;

/** The tiles of one variant alone; also of chosen pieces. */
final class Tiles extends SheetProduct {
  Tiles() {
    super("tiles", "-tiles.pdf");
  }

  @Override
  boolean isOfPieces() {
    return true;
  }

  @Override
  boolean isOn(Paper paper) {
    return true;
  }

  @Override
  Optional<Document> document(Bench bench, Run run, EvaluatedPattern pattern, SheetPlan plan) {
    return plan.tiles().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new TilesDocument(pattern, plan, Plates.of(bench.desk().planner(Look.STANDARD))));
  }

  /** Where the pieces can be arranged, which is tried on every paper, they can be drawn. */
  @Override
  public List<Job> rehearsal(Run run) {
    return List.of();
  }
}
