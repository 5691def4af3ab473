package org.lapmark.document.setting;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.lapmark.document.pdf.PdfBook;
import org.lapmark.drawing.Drawing;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Sets HTML as tagged text pages of a book. Nothing is fetched from anywhere: a drawing is asked
 * for by name, {@code <object type="lapmark/drawing" data="name">}, and everything else is refused.
 */
public final class HtmlPages {
  private static final String DRAWING_TYPE = "lapmark/drawing";

  private HtmlPages() {}

  /**
   * Adds pages to an empty book.
   *
   * @param book the book
   * @param html well-formed XHTML with its style sheet inside
   * @param drawings what {@code object} elements show, by name
   * @param pagesInserted how many pages will be put behind the first, for page numbers in texts
   * @throws IllegalStateException when the renderer warns of anything
   */
  public static void render(
      PdfBook book, String html, Map<String, Drawing> drawings, int pagesInserted)
      throws IOException {
    // The renderer's own log would go to standard error; what matters is collected below.
    XRLog.setLoggerImpl(new Silence());
    List<String> warnings = new ArrayList<>();
    Document page = Typesetting.prepared(html);
    boolean wide;
    try (PdfBoxRenderer renderer =
        builder(book, page, drawings, pagesInserted, warnings).buildPdfRenderer()) {
      renderer.layout();
      wide = WideTables.mark(renderer.getRootBox());
      if (!wide) {
        renderer.createPDFWithoutClosing();
      }
    }
    if (wide) {
      try (PdfBoxRenderer renderer =
          builder(book, page, drawings, pagesInserted, warnings).buildPdfRenderer()) {
        renderer.createPDFWithoutClosing();
      }
    }
    if (!warnings.isEmpty()) {
      throw new UnsetPages(warnings);
    }
  }

  /**
   * Lays pages out as {@link #render} does and draws nothing. What else could keep them from being
   * drawn is looked up: where links and bookmarks lead, and that pictures are described.
   *
   * @param book a book that nothing is added to
   * @param html well-formed XHTML with its style sheet inside
   * @param drawings what {@code object} elements show, by name
   * @param pagesInserted how many pages will be put behind the first, for page numbers in texts
   * @throws IllegalStateException when the renderer warns of anything
   */
  static void layOut(PdfBook book, String html, Map<String, Drawing> drawings, int pagesInserted)
      throws IOException {
    XRLog.setLoggerImpl(new Silence());
    List<String> warnings = new ArrayList<>();
    Document page = Typesetting.prepared(html);
    boolean wide;
    do {
      try (PdfBoxRenderer renderer =
          builder(book, page, drawings, pagesInserted, warnings).buildPdfRenderer()) {
        renderer.layout();
        wide = WideTables.mark(renderer.getRootBox());
        if (!wide) {
          warnings.addAll(
              Targets.amiss(page, id -> renderer.getSharedContext().getBoxById(id) != null));
        }
      }
    } while (wide);
    if (!warnings.isEmpty()) {
      throw new UnsetPages(warnings);
    }
  }

  private static PdfRendererBuilder builder(
      PdfBook book,
      Document page,
      Map<String, Drawing> drawings,
      int pagesInserted,
      List<String> warnings) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePDDocument(book.document());
    builder.usePdfUaAccessibility(true);
    builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
    builder.usePdfVersion(1.7f);
    // Leaves content as it is; a book packs each page once, when it is complete.
    builder.testMode(true);
    builder.useUriResolver((base, uri) -> uri != null && uri.startsWith("#") ? uri : null);
    builder.useExternalResourceAccessControl(
        (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
    builder.useExternalResourceAccessControl(
        (uri, type) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
    builder.useProtocolsStreamImplementation(
        new Refusal(), "http", "https", "ftp", "file", "jar", "data", "classpath");
    builder.useObjectDrawerFactory(new Drawings(book, drawings));
    builder.withDiagnosticConsumer(diagnostic -> note(diagnostic, warnings));
    builder.useUnicodeLineBreaker(new LineBreaks(book.language()));
    builder.withW3cDocument(page, "");
    builder.useInitialPageNumber(1 + pagesInserted);
    book.fonts().register(builder);
    return builder;
  }

  /** Pages of which the renderer couldn't set all as it was told. */
  static final class UnsetPages extends IllegalStateException {
    private static final long serialVersionUID = 1L;
    private final String first;

    UnsetPages(List<String> warnings) {
      super("the text pages could not be set: " + warnings);
      this.first = warnings.get(0);
    }

    /** The first thing that the renderer said. */
    String first() {
      return first;
    }
  }

  private static void note(Diagnostic diagnostic, List<String> warnings) {
    if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
      warnings.add(diagnostic.getFormattedMessage());
    }
  }

  /** Logs nothing. */
  private static final class Silence implements XRLogger {
    @Override
    public void log(String where, Level level, String message) {}

    @Override
    public void log(String where, Level level, String message, Throwable problem) {}

    @Override
    public void setLevel(String logger, Level level) {}

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
      return false;
    }
  }

  /** Refuses to open anything. */
  private static final class Refusal implements FSStreamFactory {
    @Override
    public FSStream getUrl(String url) {
      throw new IllegalStateException("a template asks for " + url);
    }
  }

  private record Drawings(PdfBook book, Map<String, Drawing> drawings)
      implements FSObjectDrawerFactory {
    @Override
    public FSObjectDrawer createDrawer(Element element) {
      Drawing drawing = drawings.get(element.getAttribute("data"));
      if (drawing == null) {
        throw new IllegalStateException("no drawing " + element.getAttribute("data"));
      }
      return (e, x, y, width, height, device, context, dotsPerPixel) -> {
        PDAppearanceStream form;
        try {
          form = book.form(drawing);
        } catch (IOException problem) {
          throw new UncheckedIOException(problem);
        }
        Rectangle place = new Rectangle((int) x, (int) y, (int) width, (int) height);
        // Stated twice alike, so that nothing is scaled.
        ((PdfBoxOutputDevice) device).drawPdfAsImage(form, place, place.width, place.height);
        return null;
      };
    }

    @Override
    public boolean isReplacedObject(Element element) {
      return DRAWING_TYPE.equals(element.getAttribute("type"));
    }
  }
}
