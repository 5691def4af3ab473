package org.lapmark.document.pdf;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** The structure tree of a document: adds drawn pages, one figure a page, to what is there. */
public final class Structure {
  /** The marked-content number of the figure on a drawn page, which has no other. */
  public static final int FIGURE_MCID = 0;

  private final PDDocument document;

  Structure(PDDocument document) {
    this.document = document;
  }

  /** Makes a tree with an empty Document element where there is none. */
  void begin(String language) {
    if (document.getDocumentCatalog().getStructureTreeRoot() != null) {
      return;
    }
    PDStructureTreeRoot root = new PDStructureTreeRoot();
    PDStructureElement top = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);
    top.setLanguage(language);
    root.appendKid(top);
    COSDictionary numbers = new COSDictionary();
    numbers.setItem(COSName.NUMS, new COSArray());
    root.setParentTree(new PDNumberTreeNode(numbers, COSArray.class));
    root.setParentTreeNextKey(0);
    document.getDocumentCatalog().setStructureTreeRoot(root);
  }

  /**
   * Adds a page as one figure.
   *
   * @param page the page, whose content marks the figure with {@link #FIGURE_MCID}
   * @param alternative what it shows, in words
   * @param after the section element it follows, or null for the end
   */
  void addFigure(PDPage page, String alternative, COSDictionary after) {
    PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
    COSDictionary parent = after == null ? top(root) : after.getCOSDictionary(COSName.P);
    COSDictionary figure = new COSDictionary();
    figure.setItem(COSName.TYPE, COSName.getPDFName("StructElem"));
    figure.setItem(COSName.S, COSName.getPDFName(StandardStructureTypes.Figure));
    figure.setItem(COSName.P, parent);
    figure.setItem(COSName.PG, page);
    figure.setString(COSName.ALT, alternative);
    figure.setItem(COSName.K, COSInteger.get(FIGURE_MCID));
    figure.setItem(COSName.A, layout(page.getMediaBox()));
    COSArray kids = kids(parent);
    int index = after == null ? kids.size() : position(kids, after) + 1;
    kids.add(index, figure);

    int key = root.getParentTreeNextKey();
    COSArray numbers = root.getParentTree().getCOSObject().getCOSArray(COSName.NUMS);
    COSArray parents = new COSArray();
    parents.add(figure);
    numbers.add(COSInteger.get(key));
    numbers.add(parents);
    root.setParentTreeNextKey(key + 1);
    page.getCOSObject().setInt(COSName.STRUCT_PARENTS, key);
    page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
  }

  /**
   * The first section in reading order.
   *
   * @return its element, or null when there is none
   */
  COSDictionary firstSection() {
    PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
    COSDictionary element = top(root);
    while (element != null
        && !StandardStructureTypes.SECT.equals(element.getNameAsString(COSName.S))) {
      COSArray kids = kids(element);
      element = kids.size() == 0 ? null : dictionary(kids, 0);
    }
    return element;
  }

  private static COSDictionary top(PDStructureTreeRoot root) {
    return dictionary(kids(root.getCOSObject()), 0);
  }

  private static COSDictionary dictionary(COSArray array, int index) {
    return array.getObject(index) instanceof COSDictionary found ? found : null;
  }

  /** The kids of an element as an array, also where it had a single one or none. */
  private static COSArray kids(COSDictionary element) {
    if (element.getDictionaryObject(COSName.K) instanceof COSArray kids) {
      return kids;
    }
    COSArray kids = new COSArray();
    if (element.getItem(COSName.K) != null) {
      kids.add(element.getItem(COSName.K));
    }
    element.setItem(COSName.K, kids);
    return kids;
  }

  private static int position(COSArray kids, COSDictionary element) {
    for (int i = 0; i < kids.size(); i++) {
      if (kids.getObject(i) == element) {
        return i;
      }
    }
    throw new IllegalStateException("an element that its parent doesn't have");
  }

  private static COSDictionary layout(PDRectangle box) {
    COSDictionary attributes = new COSDictionary();
    attributes.setItem(COSName.O, COSName.getPDFName("Layout"));
    attributes.setItem(COSName.BBOX, box.getCOSArray());
    attributes.setItem(COSName.getPDFName("Placement"), COSName.getPDFName("Block"));
    return attributes;
  }
}
