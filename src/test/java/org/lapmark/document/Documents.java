package org.lapmark.document;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.lapmark.document.book.CompleteDocument;
import org.lapmark.document.book.TilesDocument;
import org.lapmark.document.manual.Look;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.print.paper.Paper;

/** Documents of the specimen, and what can be read back from them. */
public final class Documents {
  private Documents() {}

  static byte[] complete(Paper paper, Locale language) {
    Specimen specimen = new Specimen(paper, language);
    return complete(specimen, specimen.pattern(), language);
  }

  static byte[] complete(Specimen specimen, EvaluatedPattern pattern, Locale language) {
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    return writer.write(
        new CompleteDocument(
            writer.manual(pattern, Look.STANDARD, new Findings()), specimen.plan(), specimen),
        new Findings());
  }

  static byte[] tiles(Paper paper, Locale language) {
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    Specimen specimen = new Specimen(paper, language);
    return writer.write(
        new TilesDocument(specimen.pattern(), specimen.plan(), specimen), new Findings());
  }

  /** The text of each page, lines joined by spaces. */
  public static List<String> texts(byte[] file) throws IOException {
    List<String> texts = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(file)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        texts.add(stripper.getText(document).replace('\u00a0', ' ').replaceAll("\\s+", " "));
      }
    }
    return texts;
  }
}
