package org.lapmark.document.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The fonts of one document: one subset a face, whoever sets text in it. Those for code are read
 * when text in them comes up, as most documents have none.
 */
public final class PdfFonts {
  private final Map<Typeface, PDFont> fonts = new EnumMap<>(Typeface.class);
  private final PDDocument document;
  private final FontFiles files;
  private final Glyphs glyphs;

  PdfFonts(PDDocument document, FontFiles files, Glyphs glyphs) {
    this.document = document;
    this.files = files;
    this.glyphs = glyphs;
  }

  PDFont font(Typeface face) {
    PDFont known = fonts.get(face);
    if (known != null) {
      return known;
    }
    try {
      PDFont font = PDType0Font.load(document, files.parse(face), true);
      fonts.put(face, font);
      return font;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Glyphs glyphs() {
    return glyphs;
  }

  public void register(PdfRendererBuilder builder) {
    for (Typeface face : Typeface.values()) {
      for (String family : face.families()) {
        builder.useFont(new Late(face), family, face.weight(), FontStyle.NORMAL, true);
      }
    }
  }

  /** A font that is loaded when it is asked for. */
  private final class Late extends PDFontSupplier {
    private final Typeface face;

    Late(Typeface face) {
      super(null);
      this.face = face;
    }

    @Override
    public PDFont supply() {
      return font(face);
    }
  }
}
