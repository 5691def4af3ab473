package org.lapmark.document;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/** The layers of one document, in the order in which drawings first name them. */
final class Layers {
  private final PDDocument document;
  private final Map<String, PDOptionalContentGroup> groups = new LinkedHashMap<>();

  Layers(PDDocument document) {
    this.document = document;
  }

  PDOptionalContentGroup layer(String name) {
    return groups.computeIfAbsent(name, this::add);
  }

  private PDOptionalContentGroup add(String name) {
    PDOptionalContentProperties properties = document.getDocumentCatalog().getOCProperties();
    if (properties == null) {
      properties = new PDOptionalContentProperties();
      // PDF/A asks for a name of the default configuration.
      properties.getCOSObject().getCOSDictionary(COSName.D).setString(COSName.NAME, "Default");
      document.getDocumentCatalog().setOCProperties(properties);
    }
    PDOptionalContentGroup group = new PDOptionalContentGroup(name);
    properties.addGroup(group);
    return group;
  }
}
