package org.lapmark.source.outside;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.lapmark.drawing.Ink;
import org.lapmark.finding.Findings;
import org.lapmark.source.drawing.xml.XmlElement;

/** How shapes of a line drawing look; what lets paper through comes out as it looks on white. */
final class LineInks {
  /** What all groups around leave of what is drawn. */
  static final String OPACITY = "opacity of groups";

  /** Finer lines don't print. */
  private static final double FINEST = 0.08;

  private static final int MOST_DASHES = 16;

  private final Findings findings;
  private final LineColours colours = new LineColours();

  LineInks(Findings findings) {
    this.findings = findings;
  }

  boolean isVisible(Map<String, String> style) {
    return !List.of("hidden", "collapse").contains(style.getOrDefault("visibility", ""));
  }

  /** What a group leaves, with those around it. */
  String opacity(Map<String, String> style, String own) {
    return Double.toString(share(style.get(OPACITY)) * share(own));
  }

  private static double share(String text) {
    if (text == null) {
      return 1;
    }
    boolean percent = text.strip().endsWith("%");
    try {
      double number = Double.parseDouble(text.strip().replace("%", ""));
      return Math.max(0, Math.min(1, percent ? number / 100 : number));
    } catch (NumberFormatException e) {
      return 1;
    }
  }

  /** The ink of a shape whose user units come out enlarged; nothing if it has none. */
  Optional<Ink> of(XmlElement element, Map<String, String> style, double scale) {
    double width = LineNumbers.length(style.getOrDefault("stroke-width", "1")).orElse(1) * scale;
    int fill = colour(element, style, "fill", "black");
    int stroke = width > 0 ? colour(element, style, "stroke", "none") : Ink.NONE;
    if (fill == Ink.NONE && stroke == Ink.NONE) {
      return Optional.empty();
    }
    return Optional.of(
        new Ink(
            fill,
            style.getOrDefault("fill-rule", "").equals("evenodd"),
            stroke,
            Math.max(FINEST, width),
            dashes(style, scale),
            one(Ink.Cap.values(), style.get("stroke-linecap")),
            one(Ink.Join.values(), style.get("stroke-linejoin"))));
  }

  private static <T extends Enum<T>> T one(T[] all, String word) {
    for (T each : all) {
      if (each.name().toLowerCase(Locale.ROOT).equals(word)) {
        return each;
      }
    }
    return all[0];
  }

  private static List<Double> dashes(Map<String, String> style, double scale) {
    String written = style.getOrDefault("stroke-dasharray", "none");
    List<Double> stated = written.equals("none") ? List.of() : LineNumbers.lengths(written);
    List<Double> dashes = new ArrayList<>();
    // An odd number of lengths goes round twice.
    for (int i = 0; i < stated.size() * (1 + stated.size() % 2); i++) {
      dashes.add(stated.get(i % stated.size()) * scale);
    }
    double sum = dashes.stream().mapToDouble(Double::doubleValue).sum();
    boolean usable =
        dashes.size() <= MOST_DASHES && sum > 0.1 && dashes.stream().allMatch(one -> one >= 0);
    return usable ? dashes : List.of();
  }

  /** A colour as it comes out on paper, or {@link Ink#NONE}. */
  int colour(XmlElement element, Map<String, String> style, String property, String usual) {
    String written = style.getOrDefault(property, usual).strip();
    if (written.equalsIgnoreCase("currentColor")) {
      written = style.getOrDefault("color", "black");
    }
    double opacity = share(style.get(property + "-opacity")) * share(style.get(OPACITY));
    if (written.equals("none") || written.equals("transparent") || opacity == 0) {
      return Ink.NONE;
    }
    OptionalInt colour = colours.of(written);
    if (colour.isEmpty()) {
      findings.add(
          OutsideCode.LINE_ART_UNREAD,
          element.position(),
          "name",
          property + " " + (written.length() > 40 ? written.substring(0, 40) : written));
      return Ink.NONE;
    }
    return LineColours.onPaper(colour.getAsInt(), opacity);
  }
}
