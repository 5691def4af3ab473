package org.lapmark.publish.product;

import java.util.Optional;
import org.lapmark.document.Document;
import org.lapmark.document.book.Plates;
import org.lapmark.document.manual.Manual;
import org.lapmark.grade.GradedPattern;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.request.Extra;

/** What is read, of one variant, on pages that can be read. */
abstract class ReadProduct extends SheetProduct {
  ReadProduct(String kind, String ending) {
    super(kind, ending);
  }

  ReadProduct(String kind, String ending, Extra extra) {
    super(kind, ending, extra);
  }

  @Override
  final boolean isOn(Paper paper) {
    return paper.readable();
  }

  /** The one that it shows; nothing where that wasn't made. */
  abstract Optional<Manual> manual(Manuals manuals);

  abstract Document document(Manual manual, SheetPlan plan, Plates plates);

  @Override
  final Optional<Document> document(Bench bench, Run run, GradedPattern pattern, SheetPlan plan) {
    return Optional.ofNullable(run.manuals().get(pattern.variant()))
        .flatMap(this::manual)
        .map(manual -> document(manual, plan, Plates.of(bench.desk().planner(manual.look()))));
  }
}
