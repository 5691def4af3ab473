package org.lapmark.source.outside;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.source.drawing.xml.StyleRules;
import org.lapmark.source.drawing.xml.XmlElement;

/**
 * What properties hold at each element of a line drawing: from what it lies in, from attributes,
 * from rules for an element, a class or an id, and from style attributes, the later going before
 * the earlier.
 */
final class LineStyles {
  /** Properties that hold for what lies inside, too. */
  private static final List<String> INHERITED =
      List.of(
          "fill",
          "fill-rule",
          "fill-opacity",
          "stroke",
          "stroke-width",
          "stroke-opacity",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-dasharray",
          "color",
          "visibility",
          "font-size",
          "font-weight",
          "text-anchor");

  /** Properties of an element alone; the last of them aren't followed. */
  private static final List<String> OWN =
      List.of(
          "display",
          "opacity",
          "clip-path",
          "mask",
          "filter",
          "marker",
          "marker-start",
          "marker-mid",
          "marker-end",
          "transform");

  private final StyleRules rules;

  LineStyles(XmlElement root) {
    this.rules = StyleRules.of(root);
  }

  /** What holds at an element that lies in something. */
  Map<String, String> of(XmlElement element, Map<String, String> around) {
    Map<String, String> all = new LinkedHashMap<>(around);
    OWN.forEach(all::remove);
    Map<String, String> own = new LinkedHashMap<>();
    for (XmlElement.Attribute attribute : element.attributes()) {
      String name = attribute.name();
      if (INHERITED.contains(name) || OWN.contains(name) && !name.equals("transform")) {
        own.put(name, attribute.value().text().strip());
      }
    }
    own.putAll(known(rules.declared(element.localName())));
    for (String word : text(element, "class").split("\\s+")) {
      own.putAll(known(rules.declared("." + word)));
    }
    own.putAll(known(rules.declared("#" + text(element, "id"))));
    own.putAll(known(StyleRules.declarations(text(element, "style"))));
    own.values().removeIf("inherit"::equals);
    all.putAll(own);
    return all;
  }

  private static Map<String, String> known(Map<String, String> declared) {
    Map<String, String> known = new LinkedHashMap<>(declared);
    known.keySet().removeIf(name -> !INHERITED.contains(name) && !OWN.contains(name));
    return known;
  }

  private static String text(XmlElement element, String attribute) {
    SourceText value = element.value(attribute);
    return value == null ? "" : value.text().strip();
  }
}
