package org.lapmark.document.manual;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;

/** The look of drawings in large print: their lettering is larger, all else is as it was. */
public final class Enlarged {
  private static final List<String> ROLES =
      List.of("figure-", "lay-", "map-", "cover-", "page-number");

  private Enlarged() {}

  /**
   * Enlarges the lettering of drawings that are made to fit it. Those at true scale keep theirs.
   *
   * @param styles the look
   * @param smallest the smallest size of lettering afterwards, in points
   */
  public static StyleSheet of(StyleSheet styles, double smallest) {
    Map<String, Style> enlarged = new LinkedHashMap<>();
    styles.styles().forEach((role, style) -> enlarged.put(role, of(role, style, smallest)));
    return new StyleSheet(enlarged);
  }

  private static Style of(String role, Style style, double smallest) {
    boolean fits = ROLES.stream().anyMatch(role::startsWith);
    if (!fits || style.fontSize() == 0 || style.fontSize() >= smallest) {
      return style;
    }
    return new Style(
        style.strokeWidth(),
        style.dash(),
        style.strokeGrey(),
        style.fillGrey(),
        smallest,
        style.bold(),
        style.halo());
  }
}
