package org.lapmark;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.lapmark.document.pdf.FontFiles;
import org.lapmark.document.pdf.Glyphs;
import org.lapmark.document.pdf.Imprint;
import org.lapmark.document.pdf.PdfBook;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.Specimen;
import org.lapmark.figure.SpecimenPage;

/** Makes the pictures of the specimen sheet that the reference shows. */
final class SpecimenPictures {
  private static final float DPI = 100;

  private SpecimenPictures() {}

  static void make() throws IOException {
    Files.createDirectories(SpecimenPage.PICTURES);
    List<String> before = SpecimenPage.kept();
    List<Specimen> sheet = Specimen.sheet();
    List<String> names = sheet.stream().map(SpecimenPage::picture).toList();
    for (String name : before) {
      if (!names.contains(name)) {
        Files.delete(SpecimenPage.PICTURES.resolve(name));
      }
    }
    try (PDDocument document = Loader.loadPDF(book(sheet))) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int i = 0; i < names.size(); i++) {
        if (!before.contains(names.get(i))) {
          Path file = SpecimenPage.PICTURES.resolve(names.get(i));
          GreyPicture.write(file, renderer.renderImageWithDPI(i, DPI, ImageType.GRAY));
        }
      }
    }
  }

  private static byte[] book(List<Specimen> sheet) throws IOException {
    FontFiles fonts = FontFiles.load();
    Imprint imprint =
        new Imprint("Specimens", "", "What figures draw.", "en-GB", LocalDate.of(2026, 3, 1), "");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PdfBook book = new PdfBook(imprint, DemoFigures.styles(), fonts, new Glyphs(fonts))) {
      for (Specimen specimen : sheet) {
        book.append(specimen.figure().drawing(), specimen.figure().alternative());
      }
      book.document().save(out);
    }
    return out.toByteArray();
  }
}
