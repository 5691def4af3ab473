package org.lapmark.publish.product;

import java.util.List;
import java.util.Optional;
import org.lapmark.document.Document;
import org.lapmark.document.book.CompleteDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.manual.Manual;
import org.lapmark.print.sheet.SheetPlan;

/** Instructions and tiles in one file. */
final class CompleteDocuments extends ReadProduct {
  CompleteDocuments() {
    super("complete", ".pdf");
  }

  @Override
  public List<Job> rehearsal(Run run) {
    return List.of(); // The instructions and the tiles have all of it.
  }

  @Override
  Optional<Manual> manual(Manuals manuals) {
    return Optional.of(manuals.standard());
  }

  @Override
  Document document(Manual manual, SheetPlan plan, Plates plates) {
    return new CompleteDocument(manual, plan, plates);
  }
}
