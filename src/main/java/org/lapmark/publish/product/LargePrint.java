package org.lapmark.publish.product;

import java.util.List;
import java.util.Optional;
import org.lapmark.document.Document;
import org.lapmark.document.book.InstructionsDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.manual.Manual;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.Request;

/** The instructions in large print. */
public final class LargePrint extends ReadProduct {
  /** Asks for it. */
  public static final Extra EXTRA =
      new Extra(
          "--large-print", "The instructions in large print as well, as files of their own.") {
        @Override
        public void refuseUnfit(Request request, List<Paper> papers) {
          refuseUnread(request, papers);
        }
      };

  LargePrint() {
    super("large-print", "-large-print.pdf", EXTRA);
  }

  @Override
  Optional<Manual> manual(Manuals manuals) {
    return manuals.large();
  }

  @Override
  Document document(Manual manual, SheetPlan plan, Plates plates) {
    return new InstructionsDocument(manual, plan, plates);
  }
}
