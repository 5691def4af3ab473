package org.lapmark.source.outside;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.lapmark.finding.SourceText;
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

  private static final Pattern COMMENT =
      Pattern.compile("/\\*.*?\\*/|<!\\[CDATA\\[|\\]\\]>|<!--|-->", Pattern.DOTALL);
  private static final Pattern SELECTOR = Pattern.compile("[.#]?[A-Za-z_][A-Za-z0-9_-]*");

  private final Map<String, Map<String, String>> rules = new LinkedHashMap<>();

  LineStyles(XmlElement root) {
    collect(root);
  }

  private void collect(XmlElement element) {
    if (element.localName().equals("style")) {
      rules(COMMENT.matcher(element.content()).replaceAll(" "));
    }
    element.children().forEach(this::collect);
  }

  private void rules(String sheet) {
    int at = 0;
    while (true) {
      int opening = sheet.indexOf('{', at);
      int closing = opening < 0 ? -1 : sheet.indexOf('}', opening);
      if (closing < 0) {
        return;
      }
      Map<String, String> declarations = declarations(sheet.substring(opening + 1, closing));
      for (String selector : sheet.substring(at, opening).split(",")) {
        if (SELECTOR.matcher(selector.strip()).matches()) {
          rules
              .computeIfAbsent(selector.strip(), unused -> new LinkedHashMap<>())
              .putAll(declarations);
        }
      }
      at = closing + 1;
    }
  }

  private static Map<String, String> declarations(String text) {
    Map<String, String> found = new LinkedHashMap<>();
    for (String declaration : text.split(";")) {
      int colon = declaration.indexOf(':');
      if (colon > 0) {
        String name = declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT);
        if (INHERITED.contains(name) || OWN.contains(name)) {
          found.put(name, declaration.substring(colon + 1).replace("!important", "").strip());
        }
      }
    }
    return found;
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
    own.putAll(rules.getOrDefault(element.localName(), Map.of()));
    for (String word : text(element, "class").split("\\s+")) {
      own.putAll(rules.getOrDefault("." + word, Map.of()));
    }
    own.putAll(rules.getOrDefault("#" + text(element, "id"), Map.of()));
    own.putAll(declarations(text(element, "style")));
    own.values().removeIf("inherit"::equals);
    all.putAll(own);
    return all;
  }

  private static String text(XmlElement element, String attribute) {
    SourceText value = element.value(attribute);
    return value == null ? "" : value.text().strip();
  }
}
