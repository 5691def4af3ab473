package org.lapmark.source.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lapmark.source.drawing.xml.StyleRules;
import org.lapmark.source.drawing.xml.XmlElement;

/**
 * The few style properties that say whether a shape is drawn, and where: from attributes, from
 * style sheet rules whose selector is a single class, and from style attributes, the later ones
 * going before the earlier.
 */
final class SvgStyles {
  /** Style properties that would move or shape what an element draws. */
  private static final List<String> MOVING =
      List.of("transform", "translate", "rotate", "scale", "offset-path");

  private static final List<String> SHAPING =
      List.of("x", "y", "width", "height", "cx", "cy", "r", "rx", "ry", "d");

  private final StyleRules rules;

  private SvgStyles(StyleRules rules) {
    this.rules = rules;
  }

  /**
   * What an element's style says.
   *
   * @param hidden whether it and all inside it isn't drawn
   * @param visibility its own visibility, or the empty text
   * @param moving a property that would move it and isn't read, or the empty text
   * @param shaping a property that would shape it and isn't read, or the empty text
   */
  record Look(boolean hidden, String visibility, String moving, String shaping) {}

  /** Takes the rules of every style sheet in a drawing. */
  static SvgStyles of(XmlElement root) {
    return new SvgStyles(StyleRules.of(root));
  }

  /** Of what is declared the properties that matter here. */
  private static Map<String, String> known(Map<String, String> declared) {
    Map<String, String> known = new LinkedHashMap<>();
    declared.forEach(
        (name, value) -> {
          if (name.equals("display")
              || name.equals("visibility")
              || MOVING.contains(name)
              || SHAPING.contains(name)) {
            known.put(name, value.toLowerCase(Locale.ROOT));
          }
        });
    return known;
  }

  /** What an element's attributes and the rules say of it. */
  Look look(XmlElement element) {
    Map<String, String> all = new LinkedHashMap<>();
    for (String name : List.of("display", "visibility")) {
      if (element.value(name) != null) {
        all.put(name, element.value(name).text().strip());
      }
    }
    Map<String, String> styled = new LinkedHashMap<>();
    if (element.value("class") != null) {
      for (String word : element.value("class").text().strip().split("\\s+")) {
        styled.putAll(known(rules.declared("." + word)));
      }
    }
    if (element.value("style") != null) {
      styled.putAll(known(StyleRules.declarations(element.value("style").text())));
    }
    all.putAll(styled);
    String visibility = all.getOrDefault("visibility", "");
    return new Look(
        all.getOrDefault("display", "").equals("none"),
        visibility,
        stated(styled, MOVING),
        stated(styled, SHAPING));
  }

  private static String stated(Map<String, String> styled, List<String> names) {
    return names.stream()
        .filter(name -> !List.of("", "none", "auto").contains(styled.getOrDefault(name, "")))
        .findFirst()
        .orElse("");
  }
}
