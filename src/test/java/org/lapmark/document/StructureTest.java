package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.junit.jupiter.api.Test;
import org.lapmark.document.pdf.Structure;
import org.lapmark.document.pdf.Typeface;
import org.lapmark.print.paper.Paper;

class StructureTest {
  @Test
  void describesEveryFigureInReadingOrder() throws Exception {
    try (PDDocument document = Loader.loadPDF(Documents.complete(Paper.A4, Locale.UK))) {
      List<String> alternatives = new ArrayList<>();
      collect(document.getDocumentCatalog().getStructureTreeRoot(), "Figure", alternatives);
      assertEquals(7, alternatives.size(), alternatives::toString);
      assertTrue(
          alternatives.get(0).replace('\u00a0', ' ').contains("1 Body, 4 Pocket, 7 Binding"));
      assertTrue(alternatives.get(1).startsWith("Printing page"));
      assertTrue(alternatives.get(2).startsWith("Plan of the 4 tiles"));
      assertEquals("Tile A1 with part of the body", alternatives.get(3));
      assertEquals("Tile B2 with part of the body", alternatives.get(6));
      List<String> headers = new ArrayList<>();
      collect(document.getDocumentCatalog().getStructureTreeRoot(), "TH", headers);
      assertTrue(headers.size() >= 13, () -> headers.size() + " table headers");
    }
  }

  private static void collect(PDStructureNode node, String type, List<String> alternatives) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        if (element.getStructureType().equals(type)) {
          alternatives.add(element.getAlternateDescription());
        }
        collect(element, type, alternatives);
      }
    }
  }

  @Test
  void leadsFromEachTileBackToItsFigure() throws Exception {
    try (PDDocument document = Loader.loadPDF(Documents.complete(Paper.A4, Locale.UK))) {
      COSArray numbers =
          document
              .getDocumentCatalog()
              .getStructureTreeRoot()
              .getParentTree()
              .getCOSObject()
              .getCOSArray(COSName.NUMS);
      for (int index : new int[] {1, 5, 6, 7, 8}) {
        PDPage page = document.getPage(index);
        assertEquals(COSName.S, page.getCOSObject().getCOSName(COSName.getPDFName("Tabs")));
        COSArray parents = parents(numbers, page.getStructParents());
        COSDictionary figure = (COSDictionary) parents.getObject(Structure.FIGURE_MCID);
        assertEquals("Figure", figure.getNameAsString(COSName.S));
        assertSame(page.getCOSObject(), figure.getCOSDictionary(COSName.PG));
        COSDictionary layout = figure.getCOSDictionary(COSName.A);
        assertEquals(
            page.getMediaBox().getHeight(), layout.getCOSArray(COSName.BBOX).toFloatArray()[3]);
      }
    }
  }

  private static COSArray parents(COSArray numbers, int key) {
    for (int i = 0; i < numbers.size(); i += 2) {
      if (numbers.getInt(i) == key) {
        return (COSArray) numbers.getObject(i + 1);
      }
    }
    throw new AssertionError("no entry " + key + " in the parent tree");
  }

  @Test
  void asksToBePrintedUnscaled() throws Exception {
    for (byte[] file :
        List.of(Documents.complete(Paper.A4, Locale.UK), Documents.tiles(Paper.A4, Locale.UK))) {
      try (PDDocument document = Loader.loadPDF(file)) {
        PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
        assertEquals("None", preferences.getPrintScaling());
        assertTrue(preferences.displayDocTitle());
        assertEquals("en-GB", document.getDocumentCatalog().getLanguage());
        assertTrue(document.getDocumentInformation().getTitle().contains("size M"));
        assertNotNull(
            document.getDocumentCatalog().getOCProperties().getGroup("Size M"), "the layer");
      }
    }
  }

  @Test
  void listsSectionsAndTilesInTheOutline() throws Exception {
    try (PDDocument document = Loader.loadPDF(Documents.complete(Paper.A4, Locale.UK))) {
      List<String> titles = new ArrayList<>();
      List<Integer> pages = new ArrayList<>();
      for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
        titles.add(item.getTitle());
        pages.add(document.getPages().indexOf(item.findDestinationPage(document)) + 1);
      }
      assertEquals(
          List.of(
              "Cover",
              "Printing page",
              "Contents",
              "Before you begin",
              "Finished measurements",
              "What to cut",
              "Page map",
              "Colophon",
              "Labels to cut out",
              "Tiles"),
          titles);
      assertEquals(List.of(1, 2, 3, 3, 3, 3, 4, 4, 5, 6), pages);
    }
  }

  @Test
  void embedsEachFaceOnce() throws Exception {
    try (PDDocument document = Loader.loadPDF(Documents.complete(Paper.A4, Locale.UK))) {
      List<COSDictionary> fonts = new ArrayList<>();
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          COSDictionary font = page.getResources().getFont(name).getCOSObject();
          if (!fonts.contains(font)) {
            fonts.add(font);
          }
        }
      }
      assertEquals(Typeface.TEXT.size(), fonts.size());
    }
  }
}
