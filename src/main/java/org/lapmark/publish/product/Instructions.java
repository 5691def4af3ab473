package org.lapmark.publish.product;

import java.util.Optional;
import org.lapmark.document.Document;
import org.lapmark.document.book.InstructionsDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.manual.Manual;
import org.lapmark.print.sheet.SheetPlan;

/** The complete document without its tiles. */
final class Instructions extends ReadProduct {
  Instructions() {
    super("instructions", "-instructions.pdf");
  }

  @Override
  Optional<Manual> manual(Manuals manuals) {
    return Optional.of(manuals.standard());
  }

  @Override
  Document document(Manual manual, SheetPlan plan, Plates plates) {
    return new InstructionsDocument(manual, plan, plates);
  }
}
