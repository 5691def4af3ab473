package org.lapmark.source.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.lapmark.source.drawing.xml.XmlElement;

/**
 * The few style properties that say whether a shape is drawn, and where: from attributes, from
 * style sheet rules whose selector is a single class, and from style attributes, the later ones
 * going before the earlier.
 */
final class SvgStyles {
  private static final Pattern COMMENT =
      Pattern.compile("/\\*.*?\\*/|<!\\[CDATA\\[|\\]\\]>|<!--|-->", Pattern.DOTALL);
  private static final Pattern CLASS = Pattern.compile("\\.[A-Za-z_][A-Za-z0-9_-]*");

  /** Style properties that would move or shape what an element draws. */
  private static final List<String> MOVING =
      List.of("transform", "translate", "rotate", "scale", "offset-path");

  private static final List<String> SHAPING =
      List.of("x", "y", "width", "height", "cx", "cy", "r", "rx", "ry", "d");

  private final Map<String, Map<String, String>> classes = new LinkedHashMap<>();

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
    SvgStyles styles = new SvgStyles();
    styles.collect(root);
    return styles;
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
        if (!declarations.isEmpty() && CLASS.matcher(selector.strip()).matches()) {
          classes
              .computeIfAbsent(selector.strip().substring(1), unused -> new LinkedHashMap<>())
              .putAll(declarations);
        }
      }
      at = closing + 1;
    }
  }

  /** Declarations of the properties that matter here. */
  private static Map<String, String> declarations(String text) {
    Map<String, String> found = new LinkedHashMap<>();
    for (String declaration : text.split(";")) {
      int colon = declaration.indexOf(':');
      if (colon > 0) {
        String name = declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT);
        String value = declaration.substring(colon + 1).replace("!important", "").strip();
        if (name.equals("display")
            || name.equals("visibility")
            || MOVING.contains(name)
            || SHAPING.contains(name)) {
          found.put(name, value.toLowerCase(Locale.ROOT));
        }
      }
    }
    return found;
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
        styled.putAll(classes.getOrDefault(word, Map.of()));
      }
    }
    if (element.value("style") != null) {
      styled.putAll(declarations(element.value("style").text()));
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
