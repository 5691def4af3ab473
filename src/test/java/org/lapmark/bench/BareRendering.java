package org.lapmark.bench;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.lapmark.document.pdf.FontFiles;
import org.lapmark.document.pdf.Glyphs;
import org.lapmark.document.pdf.Imprint;
import org.lapmark.document.pdf.PdfBook;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.publish.RecordedPublication;
import org.w3c.dom.Element;

/**
 * What a publication's libraries need when they are used by themselves: the HTML of every document
 * set once, and the operators of every drawing written and packed.
 *
 * @param books the documents
 * @param files the operators of each document's drawings
 */
record BareRendering(
    List<RecordedPublication.Book> books,
    List<List<List<Object>>> files,
    FontFiles fonts,
    StyleSheet styles) {
  /** Reads the operators of what was drawn: pages without text, and pictures on pages with it. */
  static BareRendering of(RecordedPublication recorded) throws IOException {
    List<List<List<Object>>> files = new ArrayList<>();
    BareRendering bare =
        new BareRendering(recorded.books(), files, FontFiles.load(), recorded.styles());
    for (RecordedPublication.Book book : recorded.books()) {
      int texts = bare.set(book);
      files.add(drawings(book, texts));
    }
    return bare;
  }

  private static List<List<Object>> drawings(RecordedPublication.Book book, int texts)
      throws IOException {
    List<List<Object>> drawings = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(book.file())) {
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        PDPage page = document.getPage(i);
        boolean inserted = i >= 1 && i <= book.inserted();
        if (inserted || i >= texts + book.inserted()) {
          drawings.add(new PDFStreamParser(page).parse());
          continue;
        }
        for (COSName name : page.getResources().getXObjectNames()) {
          if (page.getResources().getXObject(name) instanceof PDFormXObject form) {
            drawings.add(new PDFStreamParser(form).parse());
          }
        }
      }
    }
    return drawings;
  }

  /** How many drawings there are. */
  int drawings() {
    return files.stream().mapToInt(List::size).sum();
  }

  /** Sets the HTML of all documents. */
  void set() throws IOException {
    for (RecordedPublication.Book book : books) {
      set(book);
    }
  }

  /** How many pages it makes. */
  private int set(RecordedPublication.Book recorded) throws IOException {
    XRLog.setLoggingEnabled(false);
    // For its fonts: documents share them, and so does the bare renderer.
    try (PdfBook book =
        new PdfBook(
            new Imprint("", "", "", recorded.language(), null, ""),
            styles,
            fonts,
            new Glyphs(fonts))) {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.usePDDocument(book.document());
      builder.usePdfUaAccessibility(true);
      builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
      builder.useObjectDrawerFactory(new EmptyPlaces());
      builder.withHtmlContent(recorded.html(), "");
      book.fonts().register(builder);
      try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
        renderer.createPDFWithoutClosing();
      }
      book.document().save(OutputStream.nullOutputStream());
      return book.pageCount();
    }
  }

  /** Writes all drawings, each document's into a file. */
  void draw() throws IOException {
    for (List<List<Object>> file : files) {
      try (PDDocument document = new PDDocument()) {
        for (List<Object> drawing : file) {
          PDPage page = new PDPage();
          PDStream stream = new PDStream(document);
          try (OutputStream packed = stream.createOutputStream(COSName.FLATE_DECODE)) {
            new ContentStreamWriter(packed).writeTokens(drawing);
          }
          page.setContents(stream);
          document.addPage(page);
        }
        document.save(OutputStream.nullOutputStream());
      }
    }
  }

  /** Leaves the places of drawings empty. */
  private static final class EmptyPlaces implements FSObjectDrawerFactory {
    @Override
    public FSObjectDrawer createDrawer(Element element) {
      return (e, x, y, width, height, device, context, dotsPerPixel) -> null;
    }

    @Override
    public boolean isReplacedObject(Element element) {
      return "lapmark/drawing".equals(element.getAttribute("type"));
    }
  }
}
