package org.lapmark.document;

import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.lapmark.geometry.Point;

/**
 * What stands together on the pages of a document, by its tags: each row of a table, paragraph,
 * figure with all its lettering, and step with its paragraphs and figures.
 */
final class PlacesOfPages {
  private static final List<String> PLACES = List.of("TR", "P", "LI", "Figure");
  private static final List<String> INLINE = List.of("Span", "Link", "Lbl");

  /** In parts of the lettering's size: what lies further apart is no part of one word. */
  private static final double APART = 0.15;

  private final Map<COSDictionary, Map<Integer, String>> contents = new IdentityHashMap<>();
  private final Map<String, Integer> count = new LinkedHashMap<>();
  private final List<Place> places = new ArrayList<>();

  /**
   * A place.
   *
   * @param name its tag, or {@code step}, and its number among those
   * @param text its words
   */
  record Place(String name, String text) {}

  static List<Place> of(byte[] file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      PlacesOfPages reading = new PlacesOfPages();
      for (PDPage page : document.getPages()) {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.processPage(page);
        Map<Integer, String> texts = new LinkedHashMap<>();
        reading.contents.put(page.getCOSObject(), texts);
        extractor.getMarkedContents().forEach(content -> take(content, texts));
      }
      reading.read(document.getDocumentCatalog().getStructureTreeRoot(), null);
      return reading.places;
    }
  }

  private static void take(PDMarkedContent content, Map<Integer, String> texts) {
    if (content.getMCID() >= 0) {
      StringBuilder text = new StringBuilder();
      add(content, new TextPosition[1], text);
      texts.merge(content.getMCID(), text.toString(), (one, more) -> one + " " + more);
    }
  }

  private static void add(PDMarkedContent content, TextPosition[] last, StringBuilder text) {
    for (Object part : content.getContents()) {
      if (part instanceof PDMarkedContent inner) {
        add(inner, last, text);
      } else if (part instanceof TextPosition letter) {
        if (last[0] != null && !follows(last[0], letter)) {
          text.append(' ');
        }
        text.append(letter.getUnicode());
        last[0] = letter;
      }
    }
  }

  /** Whether a letter is set right after another, in whatever direction. */
  private static boolean follows(TextPosition before, TextPosition after) {
    double moved = origin(before).distance(origin(after));
    return Math.abs(moved - before.getWidthDirAdj()) < APART * before.getFontSizeInPt();
  }

  private static Point origin(TextPosition letter) {
    return new Point(
        letter.getTextMatrix().getTranslateX(), letter.getTextMatrix().getTranslateY());
  }

  /** Reads a part of the tree; its text. */
  private String read(PDStructureNode node, PDPage above) {
    PDPage page = above;
    String tag = "";
    if (node instanceof PDStructureElement element) {
      page = element.getPage() == null ? above : element.getPage();
      tag = element.getStructureType();
    }
    StringBuilder text = new StringBuilder();
    boolean step = false;
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        step |= element.getStructureType().equals("H4");
        String inner = read(element, page);
        boolean inline = INLINE.contains(element.getStructureType());
        text.append(inline ? inner : " " + inner + " ");
      } else if (kid instanceof PDMarkedContentReference reference) {
        text.append(
            words(reference.getPage() == null ? page : reference.getPage(), reference.getMCID()));
      } else if (kid instanceof Integer number) {
        text.append(words(page, number));
      }
    }
    if (step || PLACES.contains(tag)) {
      String name = step ? "step" : tag;
      places.add(new Place(name + " " + count.merge(name, 1, Integer::sum), text.toString()));
    }
    return text.toString();
  }

  private String words(PDPage page, int number) {
    return contents.get(page.getCOSObject()).getOrDefault(number, "");
  }
}
