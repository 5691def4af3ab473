package org.lapmark.source.drawing.xml;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.Position;

/**
 * What of an SVG file would run, play or fetch something elsewhere, wherever such a file is read.
 */
public final class ActiveParts {
  public static final String SVG = "http://www.w3.org/2000/svg";

  private static final Set<String> ELEMENTS =
      new TreeSet<>(
          List.of(
              "script",
              "foreignObject",
              "animate",
              "animateMotion",
              "animateTransform",
              "animateColor",
              "set",
              "handler",
              "iframe",
              "audio",
              "video"));

  private ActiveParts() {}

  /**
   * An element or an attribute.
   *
   * @param place where it is written
   * @param name its name
   */
  public record Part(Position place, String name) {}

  /** Whether an element is one as a whole. */
  public static boolean isActive(XmlElement element) {
    return element.namespace().equals(SVG) && ELEMENTS.contains(element.localName());
  }

  /** Such parts of an element, without those of its children: itself first, then its attributes. */
  public static List<Part> of(XmlElement element) {
    List<Part> parts = new ArrayList<>();
    if (!element.namespace().equals(SVG)) {
      return parts;
    }
    if (isActive(element)) {
      parts.add(new Part(element.position(), element.localName()));
    } else if (element.localName().equals("style")
        && (element.content().matches("(?is).*@import.*") || fetches(element.content()))) {
      parts.add(new Part(element.position(), "style"));
    }
    for (XmlElement.Attribute attribute : element.attributes()) {
      if (isActive(element, attribute)) {
        parts.add(new Part(attribute.position(), attribute.name()));
      }
    }
    return parts;
  }

  private static boolean isActive(XmlElement element, XmlElement.Attribute attribute) {
    String name = attribute.name();
    String value = attribute.value().text().strip();
    boolean held = element.localName().equals("image") && value.startsWith("data:image/");
    boolean leads =
        (name.equals("href") || name.endsWith(":href"))
            && !value.isEmpty()
            && !value.startsWith("#")
            && !held;
    return leads || fetches(value) || name.matches("on[a-zA-Z]+");
  }

  private static boolean fetches(String style) {
    return style.matches("(?is).*url\\s*\\(\\s*['\"]?\\s*[^#'\"\\s].*");
  }
}
