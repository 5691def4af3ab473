package org.lapmark.document;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of one document: one subset a face, whoever sets text in it. */
final class PdfFonts {
  private final Map<Typeface, PDFont> fonts = new EnumMap<>(Typeface.class);
  private final Glyphs glyphs;

  PdfFonts(PDDocument document, FontFiles files, Glyphs glyphs) throws IOException {
    this.glyphs = glyphs;
    for (Typeface face : Typeface.values()) {
      fonts.put(face, PDType0Font.load(document, files.parse(face), true));
    }
  }

  PDFont font(Typeface face) {
    return fonts.get(face);
  }

  Glyphs glyphs() {
    return glyphs;
  }

  void register(PdfRendererBuilder builder) {
    fonts.forEach(
        (face, font) ->
            builder.useFont(
                new PDFontSupplier(font), Typeface.FAMILY, face.weight(), FontStyle.NORMAL, true));
  }
}
