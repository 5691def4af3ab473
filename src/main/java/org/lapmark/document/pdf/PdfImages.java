package org.lapmark.document.pdf;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Photograph;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;

/** The photographs of a file, each embedded once. */
final class PdfImages {
  private final PDDocument document;
  private final Map<Photograph, PDImageXObject> embedded = new LinkedHashMap<>();

  PdfImages(PDDocument document) {
    this.document = document;
  }

  /** Draws a photograph at its place, which a map takes to the stream's coordinates. */
  void draw(Item.Photo photo, Affine map, PDPageContentStream out) throws IOException {
    PDImageXObject image = embedded.get(photo.photograph());
    if (image == null) {
      image = JPEGFactory.createFromByteArray(document, photo.photograph().jpeg());
      embedded.put(photo.photograph(), image);
    }
    Box place = photo.place();
    // An image fills the unit square, whose y runs up.
    Affine all =
        map.after(Affine.translation(place.minX(), place.maxY()))
            .after(Affine.scaling(place.width(), -place.height()));
    out.drawImage(
        image,
        new Matrix(
            (float) all.a(),
            (float) all.b(),
            (float) all.c(),
            (float) all.d(),
            (float) all.e(),
            (float) all.f()));
  }
}
