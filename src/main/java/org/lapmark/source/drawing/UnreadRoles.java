package org.lapmark.source.drawing;

import java.util.LinkedHashSet;
import java.util.Set;
import org.lapmark.source.drawing.xml.XmlElement;
import org.lapmark.source.key.Reading;

/** Roles that are stated where nothing comes of them. */
final class UnreadRoles {
  private final XmlElement root;
  private final SvgElements elements;
  private final Reading reading;
  private final Set<XmlElement> settled = new LinkedHashSet<>();

  UnreadRoles(XmlElement root, SvgElements elements, Reading reading) {
    this.root = root;
    this.elements = elements;
    this.reading = reading;
  }

  /** Takes note of an element whose role was read, reported or knowingly passed over. */
  void settle(XmlElement element) {
    settled.add(element);
  }

  /** Reports those of an element and what is in it. */
  void report(XmlElement element) {
    if (!element.namespace().equals(SvgElements.SVG)) {
      return;
    }
    SvgElements.RoleId stated = element == root ? null : elements.role(element);
    if (stated != null && stated.role() != null && !settled.contains(element)) {
      boolean shape = DrawnPart.isShape(element.localName());
      reading
          .findings()
          .add(
              DrawingCode.ROLE_NOT_READ,
              stated.id().position(),
              "id",
              stated.id().text(),
              "element",
              element.localName(),
              "shape",
              shape ? "yes" : "no");
    }
    element.children().forEach(this::report);
  }
}
