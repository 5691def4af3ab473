package org.lapmark.document.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentMembershipDictionary;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/**
 * The layers of one document, in the order in which they are declared, or else drawings first name
 * them. What belongs to several layers is seen as long as any of them is.
 */
final class Layers {
  private final PDDocument document;
  private final Map<String, PDOptionalContentGroup> groups = new LinkedHashMap<>();
  private final Map<List<String>, PDPropertyList> several = new LinkedHashMap<>();

  Layers(PDDocument document) {
    this.document = document;
  }

  /** Makes layers before anything is drawn, some of them switched off at first. */
  void declare(List<String> names, List<String> off) {
    for (String name : names) {
      PDOptionalContentGroup group = layer(name);
      if (off.contains(name)) {
        document.getDocumentCatalog().getOCProperties().setGroupEnabled(group, false);
      }
    }
  }

  PDOptionalContentGroup layer(String name) {
    return groups.computeIfAbsent(name, this::add);
  }

  /** What content is marked with that belongs to one layer or to several. */
  PDPropertyList of(String name, List<String> others) {
    if (others.isEmpty()) {
      return layer(name);
    }
    List<String> names = new ArrayList<>(List.of(name));
    names.addAll(others);
    PDPropertyList made = several.get(names);
    if (made == null) {
      PDOptionalContentMembershipDictionary any = new PDOptionalContentMembershipDictionary();
      any.setOCGs(names.stream().<PDPropertyList>map(this::layer).toList());
      any.setVisibilityPolicy(COSName.ANY_ON);
      several.put(names, any);
      made = any;
    }
    return made;
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
