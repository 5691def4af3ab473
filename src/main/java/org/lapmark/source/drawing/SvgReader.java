package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.source.drawing.xml.XmlCode;
import org.lapmark.source.drawing.xml.XmlElement;
import org.lapmark.source.drawing.xml.XmlParser;
import org.lapmark.source.key.Reading;

/**
 * Reads a panel's drawing: which shapes have roles, where groups, copies and inner drawings place
 * them, and what their attributes say.
 */
final class SvgReader {
  private final Reading reading;
  private final XmlElement root;
  private final SvgElements elements;
  private final List<DrawnShape> shapes = new ArrayList<>();
  private final Map<String, SourceText> ids = new LinkedHashMap<>();

  /** Elements that stand in the drawing itself, not only where copies are made from. */
  private final Set<XmlElement> direct = new LinkedHashSet<>();

  private final UnreadRoles roles;

  /** The elements that the one being read stands in, copies included. */
  private final Set<XmlElement> open = new LinkedHashSet<>();

  private final CountedNote ignored = new CountedNote(DrawingCode.SVG_IGNORED);
  private final CountedNote hidden = new CountedNote(DrawingCode.SVG_HIDDEN);
  private boolean outlineSeen;
  private int visited;

  private SvgReader(XmlElement root, Reading reading) {
    this.root = root;
    this.reading = reading;
    this.elements = new SvgElements(root, reading);
    this.roles = new UnreadRoles(root, elements, reading);
  }

  /** Reads a drawing; null if it isn't one, which is then reported. */
  static PanelDrawing read(SourceFile file, Reading reading) {
    try {
      XmlElement root = XmlParser.read(file, reading.limits());
      if (!root.localName().equals("svg") || !root.namespace().equals(SvgElements.SVG)) {
        reading.findings().add(DrawingCode.SVG_ROOT, root.position(), "name", root.name());
        return null;
      }
      return new SvgReader(root, reading).drawing(file);
    } catch (FindingException e) {
      reading.findings().add(e.finding());
      return null;
    }
  }

  private PanelDrawing drawing(SourceFile file) {
    Viewport viewport = elements.isComputed() ? null : elements.attempt(() -> Viewport.of(root));
    Affine map = viewport == null ? null : viewport.map();
    if (elements.isComputed()) {
      map = Affine.IDENTITY;
    }
    markDirect(root);
    moving(root);
    if (elements.step(root) != null) {
      unread(root.position(), "transform");
    }
    ViewportSize extent = viewport == null ? ViewportSize.UNKNOWN : viewport.extent();
    Surroundings around =
        new Surroundings(List.of(), true, true, extent, null, null).looking(elements.look(root));
    open.add(root);
    for (XmlElement child : root.children()) {
      walk(child, around);
    }
    roles.report(root);
    ignored.report(reading);
    hidden.report(reading);
    if (!outlineSeen) {
      reading.findings().add(DrawingCode.OUTLINE_MISSING, root.position());
    }
    PanelDrawing drawing = new PanelDrawing(shapes, elements.isComputed(), map, reading.limits());
    drawing.check(reading.findings());
    Viewport.Doubt doubt = viewport == null ? null : Viewport.doubt(root);
    if (doubt != null) {
      SourceText width = root.value("width");
      drawing.reportSize(
          doubt, width == null ? root.position() : width.position(), reading.findings());
    }
    return drawing;
  }

  private void markDirect(XmlElement element) {
    direct.add(element);
    if (isContainer(element.localName())) {
      element.children().forEach(this::markDirect);
    }
  }

  private static boolean isContainer(String kind) {
    return List.of("svg", "g", "a", "switch").contains(kind);
  }

  private void walk(XmlElement element, Surroundings around) {
    if (!element.namespace().equals(SvgElements.SVG)) {
      // What drawing programs keep for themselves.
      return;
    }
    if (++visited > reading.limits().xmlElements()) {
      throw limit(DrawingCode.SVG_COPIES, around.copy(), reading.limits().xmlElements());
    }
    if (open.size() >= reading.limits().xmlDepth()) {
      throw limit(XmlCode.XML_TOO_DEEP, around.copy(), reading.limits().xmlDepth());
    }
    Surroundings here = around.looking(elements.look(element));
    Placing step = elements.step(element);
    open.add(element);
    String kind = element.localName();
    if (DrawnPart.isShape(kind)) {
      shape(element, step == null ? here : here.placed(step));
    } else if (kind.equals("use") || isContainer(kind)) {
      moving(element);
      Surroundings inside = step == null ? here : here.placed(step);
      switch (kind) {
        case "use" -> copy(element, inside);
        case "svg" -> inner(element, null, inside);
        case "switch" -> choice(element, inside);
        default -> group(element, inside);
      }
    } else if (here.isDrawn() && (kind.equals("text") || isPicture(element))) {
      ignored.add(element.position(), kind);
    }
    open.remove(element);
  }

  /** A picture in the drawing itself; one elsewhere is reported as what would be fetched. */
  private static boolean isPicture(XmlElement element) {
    XmlElement.Attribute link = link(element);
    return element.localName().equals("image")
        && (link == null || link.value().text().strip().startsWith("data:"));
  }

  private static FindingException limit(FindingCode code, XmlElement copy, int limit) {
    return new FindingException(
        Finding.of(code, copy.position(), "limit", Integer.toString(limit)));
  }

  private void shape(XmlElement element, Surroundings around) {
    SvgElements.RoleId stated = elements.role(element);
    PartCollector owner = around.owner();
    boolean own = stated.role() != null && around.hasRoles();
    if (own) {
      roles.settle(element);
    }
    if (!own && owner == null) {
      // What has a finding of its own needs no note.
      if (!stated.reported() && around.isDrawn()) {
        ignored.add(element.position(), element.localName());
      }
      return;
    }
    if (!around.isDrawn()) {
      if (own) {
        hidden.add(stated.id().position(), stated.id().text());
      } else {
        owner.passOver();
      }
      return;
    }
    moving(element);
    if (!elements.look(element).shaping().isEmpty()) {
      unread(element.position(), elements.look(element).shaping());
    }
    DrawnPart part =
        new DrawnPart(
            element.localName(), elements.geometry(element), around.placings(), around.extent());
    if (!own) {
      owner.add(part);
      return;
    }
    if (around.copy() != null && direct.contains(element)) {
      // A copy of what is drawn and read already.
      ignored.add(around.copy().position(), "use");
      return;
    }
    add(stated, around, List.of(part));
  }

  /** Adds a shape, unless its role is taken or its place couldn't be understood. */
  private void add(SvgElements.RoleId stated, Surroundings around, List<DrawnPart> parts) {
    SourceText first = ids.putIfAbsent(stated.id().text(), stated.id());
    outlineSeen |= stated.role() == Role.OUTLINE;
    if (first != null) {
      boolean same = around.copy() != null && first.offset(0) == stated.id().offset(0);
      reading
          .findings()
          .add(
              DrawingCode.ROLE_TWICE,
              same ? around.copy().position() : stated.id().position(),
              "id",
              stated.id().text(),
              "line",
              Integer.toString(first.position().line()));
      return;
    }
    shapes.add(new DrawnShape(stated.role(), stated.name(), stated.id(), parts));
  }

  private void group(XmlElement element, Surroundings around) {
    SvgElements.RoleId stated = elements.role(element);
    boolean outline = stated.role() == Role.OUTLINE && around.hasRoles();
    if (!outline || hasOutline(element)) {
      if (outline) {
        roles.settle(element);
      }
      for (XmlElement child : element.children()) {
        walk(child, around);
      }
      return;
    }
    collect(element, stated, around, new PartCollector(false), element.children());
  }

  /** Whether a shape inside is an outline by itself, so that the group is but a layer. */
  private boolean hasOutline(XmlElement group) {
    for (XmlElement child : group.children()) {
      if (elements.role(child).role() == Role.OUTLINE
          || isContainer(child.localName()) && hasOutline(child)) {
        return true;
      }
    }
    return false;
  }

  private void collect(
      XmlElement element,
      SvgElements.RoleId stated,
      Surroundings around,
      PartCollector collector,
      List<XmlElement> inside) {
    for (XmlElement child : inside) {
      walk(child, around.ownedBy(collector));
    }
    if (!collector.parts().isEmpty()) {
      roles.settle(element);
      add(stated, around, collector.parts());
    } else if (collector.hasPassedOver()) {
      roles.settle(element);
      hidden.add(stated.id().position(), stated.id().text());
    }
  }

  private void choice(XmlElement element, Surroundings around) {
    for (XmlElement child : element.children()) {
      if (child.namespace().equals(SvgElements.SVG)
          && child.value("requiredExtensions") == null
          && child.value("systemLanguage") == null) {
        walk(child, around);
        return;
      }
    }
  }

  private void inner(XmlElement element, XmlElement use, Surroundings around) {
    if (element.localName().equals("symbol")
        && (element.value("refX") != null || element.value("refY") != null)) {
      unread(element.position(), "refX");
    }
    Map<String, AttributeText> attributes = new LinkedHashMap<>();
    for (String name : List.of("x", "y", "width", "height")) {
      SourceText text = use != null && name.length() > 1 ? use.value(name) : null;
      text = text == null ? element.value(name) : text;
      if (text != null) {
        attributes.put(name, AttributeText.literal(text));
      }
    }
    SvgNumbers numbers =
        new SvgNumbers(attributes, formula -> 0.0, elements.isComputed(), around.extent());
    Viewport viewport = elements.attempt(() -> Viewport.inside(element, numbers));
    Surroundings inside =
        around
            .placed(viewport == null ? new Placing.Broken() : new Placing.Fixed(viewport.map()))
            .in(viewport == null ? ViewportSize.UNKNOWN : viewport.extent());
    for (XmlElement child : element.children()) {
      walk(child, inside);
    }
  }

  private void copy(XmlElement use, Surroundings around) {
    SvgElements.RoleId stated = elements.role(use);
    boolean own = stated.role() != null && around.hasRoles();
    if (own) {
      roles.settle(use);
    }
    XmlElement.Attribute link = link(use);
    String target = link == null ? "" : link.value().text().strip();
    if (!target.startsWith("#")) {
      if (around.isDrawn()) {
        ignored.add(use.position(), "use");
      }
      return;
    }
    XmlElement original = elements.withId(target.substring(1));
    if (original == null || !original.namespace().equals(SvgElements.SVG)) {
      reading
          .findings()
          .add(DrawingCode.SVG_COPY_UNKNOWN, link.value().position(), "name", target.substring(1));
      outlineSeen |= own && stated.role() == Role.OUTLINE;
      return;
    }
    if (open.contains(original)) {
      reading
          .findings()
          .add(DrawingCode.SVG_COPY_CYCLE, link.value().position(), "name", target.substring(1));
      outlineSeen |= own && stated.role() == Role.OUTLINE;
      return;
    }
    Surroundings inside = around.copied(use);
    Map<String, AttributeText> place = elements.geometry(use);
    if (place.values().stream().anyMatch(AttributeText::hasPlaceholders)) {
      inside = inside.placed(new Placing.Shift(place));
    } else if (!place.isEmpty()) {
      SvgNumbers numbers =
          new SvgNumbers(place, formula -> 0.0, elements.isComputed(), around.extent());
      Affine shift = elements.attempt(() -> Affine.translation(numbers.get("x"), numbers.get("y")));
      inside = inside.placed(shift == null ? new Placing.Broken() : new Placing.Fixed(shift));
    }
    if (!own) {
      original(original, use, inside);
      return;
    }
    PartCollector collector = new PartCollector(true);
    original(original, use, inside.ownedBy(collector));
    if (collector.parts().isEmpty() && !collector.hasPassedOver() && around.isDrawn()) {
      reading
          .findings()
          .add(DrawingCode.SHAPE_EMPTY, stated.id().position(), "id", stated.id().text());
      outlineSeen |= stated.role() == Role.OUTLINE;
      return;
    }
    collect(use, stated, around, collector, List.of());
  }

  private void original(XmlElement original, XmlElement use, Surroundings around) {
    String kind = original.localName();
    if (!kind.equals("symbol") && !kind.equals("svg")) {
      walk(original, around);
      return;
    }
    if (++visited > reading.limits().xmlElements()) {
      throw limit(DrawingCode.SVG_COPIES, around.copy(), reading.limits().xmlElements());
    }
    open.add(original);
    moving(original);
    Surroundings here = kind.equals("svg") ? around.looking(elements.look(original)) : around;
    Placing step = elements.step(original);
    inner(original, use, step == null ? here : here.placed(step));
    open.remove(original);
  }

  private static XmlElement.Attribute link(XmlElement use) {
    XmlElement.Attribute link = null;
    for (XmlElement.Attribute attribute : use.attributes()) {
      if (attribute.name().equals("href")) {
        return attribute;
      }
      if (attribute.name().endsWith(":href")) {
        link = attribute;
      }
    }
    return link;
  }

  /** Reports style properties that would move what an element draws. */
  private void moving(XmlElement element) {
    String moving = elements.look(element).moving();
    if (!moving.isEmpty()) {
      unread(element.position(), moving);
    } else if (element.value("transform-origin") != null && element.value("transform") != null) {
      unread(element.position(), "transform-origin");
    }
  }

  private void unread(Position position, String name) {
    reading.findings().add(DrawingCode.SVG_GEOMETRY_UNREAD, position, "name", name);
  }
}
