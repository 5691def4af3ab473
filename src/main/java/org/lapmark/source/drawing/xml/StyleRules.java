package org.lapmark.source.drawing.xml;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What the style sheets in a drawing say, by selectors of one element name, class or id; of two
 * rules for one selector the later goes before. Other selectors are passed over.
 */
public final class StyleRules {
  private static final Pattern COMMENT =
      Pattern.compile("/\\*.*?\\*/|<!\\[CDATA\\[|\\]\\]>|<!--|-->", Pattern.DOTALL);
  private static final Pattern SELECTOR = Pattern.compile("[.#]?[A-Za-z_][A-Za-z0-9_-]*");

  private final Map<String, Map<String, String>> rules = new LinkedHashMap<>();

  private StyleRules() {}

  /** Takes the rules of every style sheet in a drawing, in their order. */
  public static StyleRules of(XmlElement root) {
    StyleRules styles = new StyleRules();
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
        if (SELECTOR.matcher(selector.strip()).matches()) {
          rules
              .computeIfAbsent(selector.strip(), unused -> new LinkedHashMap<>())
              .putAll(declarations);
        }
      }
      at = closing + 1;
    }
  }

  /**
   * What is declared for a selector.
   *
   * @param selector an element's name, a class after a point, or an id after a hash
   * @return values by the names of properties in lower case; empty if nothing is
   */
  public Map<String, String> declared(String selector) {
    return Collections.unmodifiableMap(rules.getOrDefault(selector, Map.of()));
  }

  /**
   * What a text of declarations says, as it stands in a rule or in an attribute.
   *
   * @param text declarations parted by semicolons
   * @return values by the names of properties in lower case, without their importance
   */
  public static Map<String, String> declarations(String text) {
    Map<String, String> found = new LinkedHashMap<>();
    for (String declaration : text.split(";")) {
      int colon = declaration.indexOf(':');
      if (colon > 0) {
        found.put(
            declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT),
            declaration.substring(colon + 1).replace("!important", "").strip());
      }
    }
    return found;
  }
}
