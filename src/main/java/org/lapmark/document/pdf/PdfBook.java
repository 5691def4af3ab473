package org.lapmark.document.pdf;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Calendar;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.StyleSheet;

/**
 * One PDF file in the making: text pages set from HTML and drawn pages, with the same fonts, in one
 * structure tree. For use by one thread.
 */
public final class PdfBook implements Closeable {
  private static final String CONTENT_PAGINATION = "Pagination";

  /** Of each half of the file identifier: a SHA-256 hash. */
  private static final int IDENTIFIER_DIGITS = 64;

  private final PDDocument document = new PDDocument();
  private final StyleSheet styles;
  private final Imprint imprint;
  private final PdfFonts fonts;
  private final Layers layers = new Layers(document);
  private final Structure structure = new Structure(document);
  private final PdfImages images = new PdfImages(document);

  public PdfBook(Imprint imprint, StyleSheet styles, FontFiles files, Glyphs glyphs)
      throws IOException {
    this.imprint = imprint;
    this.styles = styles;
    this.fonts = new PdfFonts(document, files, glyphs);
    document.setVersion(1.7f);
  }

  public PDDocument document() {
    return document;
  }

  public PdfFonts fonts() {
    return fonts;
  }

  public Locale language() {
    return Locale.forLanguageTag(imprint.language());
  }

  public int pageCount() {
    return document.getNumberOfPages();
  }

  /** In millimetres. */
  public double pageHeight(int pageIndex) {
    return document.getPage(pageIndex).getMediaBox().getHeight() / PdfCanvas.POINTS;
  }

  /** Makes layers, in their order, some of them off at first. */
  public void layers(List<String> names, List<String> off) {
    layers.declare(names, off);
  }

  /** Adds a drawing as a page of its own size at the end. */
  public void append(Drawing drawing, String alternative) throws IOException {
    PDPage page = newPage(drawing);
    document.addPage(page);
    draw(page, drawing, alternative, null);
  }

  /** Adds a drawing as the second page, behind the cover. */
  public void insertBehindCover(Drawing drawing, String alternative) throws IOException {
    PDPage page = newPage(drawing);
    document.getPages().insertAfter(page, document.getPage(0));
    draw(page, drawing, alternative, structure.firstSection());
  }

  private static PDPage newPage(Drawing drawing) {
    return new PDPage(
        new PDRectangle(
            (float) (drawing.width() * PdfCanvas.POINTS),
            (float) (drawing.height() * PdfCanvas.POINTS)));
  }

  private void draw(PDPage page, Drawing drawing, String alternative, COSDictionary after)
      throws IOException {
    structure.begin(imprint.language());
    structure.addFigure(page, fonts.glyphs().printable(alternative), after);
    try (PDPageContentStream out =
        new PDPageContentStream(document, page, AppendMode.OVERWRITE, false)) {
      out.beginMarkedContent(COSName.getPDFName("Figure"), Structure.FIGURE_MCID);
      new PdfCanvas(out, styles, fonts, layers, images).draw(drawing, 0, drawing.height());
      out.endMarkedContent();
    }
  }

  /** A drawing as a form for use inside a text page. */
  public PDAppearanceStream form(Drawing drawing) throws IOException {
    PDAppearanceStream form = new PDAppearanceStream(document);
    form.setResources(new PDResources());
    form.setBBox(
        new PDRectangle(
            (float) (drawing.width() * PdfCanvas.POINTS),
            (float) (drawing.height() * PdfCanvas.POINTS)));
    try (PDPageContentStream out = new PDPageContentStream(document, form)) {
      new PdfCanvas(out, styles, fonts, layers, images).draw(drawing, 0, drawing.height());
    }
    return form;
  }

  /** Draws over a finished page what belongs to the page and not to its content. */
  public void stamp(int pageIndex, Drawing furniture) throws IOException {
    PDPage page = document.getPage(pageIndex);
    try (PDPageContentStream out =
        new PDPageContentStream(document, page, AppendMode.APPEND, false, true)) {
      COSDictionary pagination = new COSDictionary();
      pagination.setItem(COSName.TYPE, COSName.getPDFName(CONTENT_PAGINATION));
      out.beginMarkedContent(COSName.ARTIFACT, PDPropertyList.create(pagination));
      double height = page.getMediaBox().getHeight() / PdfCanvas.POINTS;
      new PdfCanvas(out, styles, fonts, layers, images).draw(furniture, 0, height);
      out.endMarkedContent();
    }
    // What was appended becomes part of the one stream that a page has, and only then is packed.
    try (InputStream contents = page.getContents()) {
      page.setContents(new PDStream(document, contents, COSName.FLATE_DECODE));
    }
  }

  public PDDocumentOutline outline() {
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    if (catalog.getDocumentOutline() == null) {
      catalog.setDocumentOutline(new PDDocumentOutline());
    }
    return catalog.getDocumentOutline();
  }

  /** An entry for the outline that shows a whole page. */
  public PDOutlineItem outlineItem(String title, int pageIndex) {
    PDPageFitDestination destination = new PDPageFitDestination();
    destination.setPage(document.getPage(pageIndex));
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(fonts.glyphs().printable(title));
    item.setDestination(destination);
    return item;
  }

  /**
   * Completes and writes the file. The same content gives the same bytes: dates are the edition's,
   * and the file identifier is a hash of the file itself.
   */
  public byte[] save() throws IOException {
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage(imprint.language());
    PDMarkInfo marks = new PDMarkInfo();
    marks.setMarked(true);
    catalog.setMarkInfo(marks);
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    catalog.setViewerPreferences(preferences);
    information();
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(Xmp.packet(imprint));
    catalog.setMetadata(metadata);
    outputIntent(catalog.getCOSObject());
    document.setDocumentId(0L);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    document.save(bytes);
    return identified(bytes.toByteArray());
  }

  private void information() {
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(imprint.title());
    if (!imprint.author().isEmpty()) {
      information.setAuthor(imprint.author());
    }
    information.setSubject(imprint.subject());
    information.setCreator(imprint.program());
    information.setProducer(imprint.program());
    Calendar date =
        new Calendar.Builder()
            .setCalendarType("gregory")
            .setLocale(Locale.ROOT)
            .setTimeZone(TimeZone.getTimeZone("UTC"))
            .setDate(
                imprint.date().getYear(),
                imprint.date().getMonthValue() - 1,
                imprint.date().getDayOfMonth())
            .build();
    information.setCreationDate(date);
    information.setModificationDate(date);
    document.setDocumentInformation(information);
  }

  private void outputIntent(COSDictionary catalog) throws IOException {
    COSStream profile = document.getDocument().createCOSStream();
    profile.setInt(COSName.N, 3);
    try (var out = profile.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(SrgbProfile.bytes());
    }
    COSDictionary intent = new COSDictionary();
    intent.setItem(COSName.TYPE, COSName.getPDFName("OutputIntent"));
    intent.setItem(COSName.S, COSName.getPDFName("GTS_PDFA1"));
    intent.setString(COSName.getPDFName("OutputConditionIdentifier"), "sRGB");
    intent.setString(COSName.INFO, "sRGB IEC61966-2.1");
    intent.setItem(COSName.getPDFName("DestOutputProfile"), profile);
    COSArray intents = new COSArray();
    intents.add(intent);
    catalog.setItem(COSName.getPDFName("OutputIntents"), intents);
  }

  /** Puts a hash of the file in the place of both halves of its identifier. */
  private static byte[] identified(byte[] file) {
    String text = new String(file, StandardCharsets.ISO_8859_1);
    int start = text.lastIndexOf("/ID [<");
    if (start < 0) {
      throw new IllegalStateException("a PDF file without an identifier");
    }
    int first = text.indexOf('<', start) + 1;
    int second = text.indexOf('<', first) + 1;
    int length = text.indexOf('>', first) - first;
    if (length != IDENTIFIER_DIGITS || text.indexOf('>', second) - second != length) {
      throw new IllegalStateException("a PDF file with an identifier of another form");
    }
    byte[] hash;
    try {
      hash = MessageDigest.getInstance("SHA-256").digest(file);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
    byte[] digits =
        HexFormat.of().withUpperCase().formatHex(hash).getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(digits, 0, file, first, length);
    System.arraycopy(digits, 0, file, second, length);
    return file;
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
