package org.lapmark.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Nearest;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;

/** Reads a panel's drawing: which shapes have roles, and what their attributes say. */
final class SvgReader {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final Set<String> ACTIVE =
      new TreeSet<>(
          List.of(
              "script",
              "foreignObject",
              "image",
              "animate",
              "animateMotion",
              "animateTransform",
              "set",
              "handler"));
  private static final Set<String> UNREAD =
      new TreeSet<>(
          List.of(
              "defs",
              "symbol",
              "clipPath",
              "mask",
              "pattern",
              "marker",
              "svg",
              "switch",
              "use",
              "text"));

  private final SourceFile file;
  private final Reading reading;
  private final List<DrawnShape> shapes = new ArrayList<>();
  private final Map<String, SourceText> ids = new LinkedHashMap<>();
  private XmlElement firstIgnored;
  private int ignored;
  private boolean reported;

  private SvgReader(SourceFile file, Reading reading) {
    this.file = file;
    this.reading = reading;
  }

  /** Reads a drawing; null if it isn't one, which is then reported. */
  static PanelDrawing read(SourceFile file, Reading reading) {
    try {
      return new SvgReader(file, reading).drawing();
    } catch (FindingException e) {
      reading.findings().add(e.finding());
      return null;
    }
  }

  private PanelDrawing drawing() {
    XmlElement root = XmlParser.read(file, reading.limits());
    if (!root.localName().equals("svg") || !root.namespace().equals(SVG)) {
      reading.findings().add(SourceCode.SVG_ROOT, root.position(), "name", root.name());
      return null;
    }
    active(root);
    for (XmlElement child : root.children()) {
      walk(child, List.of(), false);
    }
    if (firstIgnored != null) {
      reading
          .findings()
          .add(
              SourceCode.SVG_IGNORED,
              firstIgnored.position(),
              "count",
              ignored,
              "name",
              firstIgnored.localName());
    }
    if (shapes.stream().noneMatch(shape -> shape.role() == Role.OUTLINE)) {
      reading.findings().add(SourceCode.OUTLINE_MISSING, root.position());
    }
    boolean computed = shapes.stream().anyMatch(DrawnShape::isComputed);
    Affine map = Affine.IDENTITY;
    if (!computed) {
      try {
        map = Viewport.of(root);
      } catch (FindingException e) {
        reading.findings().add(e.finding());
        map = null;
      }
    }
    PanelDrawing drawing = new PanelDrawing(file, shapes, computed, map, reading.limits());
    drawing.check(reading.findings());
    return drawing;
  }

  private void walk(XmlElement element, List<AttributeText> around, boolean unread) {
    boolean svg = element.namespace().equals(SVG);
    if (!svg) {
      // What drawing programs keep for themselves.
      return;
    }
    active(element);
    String kind = element.localName();
    boolean shape = DrawnShape.isShape(kind);
    List<AttributeText> transforms = new ArrayList<>(around);
    Role role = role(element, shape, unread);
    AttributeText transform = attribute(element, "transform", role != null || !shape);
    if (transform != null) {
      transforms.add(transform);
    }
    if (role != null) {
      add(element, role, transforms);
    } else if (!reported
        && (shape || kind.equals("text") || kind.equals("use") || kind.equals("svg"))) {
      // What has a finding of its own needs no note.
      ignored++;
      firstIgnored = firstIgnored == null ? element : firstIgnored;
    }
    boolean below = unread || UNREAD.contains(kind) || ACTIVE.contains(kind);
    for (XmlElement child : element.children()) {
      walk(child, transforms, below);
    }
  }

  /** The role that an id states; null if it states none, or one that was reported. */
  private Role role(XmlElement element, boolean shape, boolean unread) {
    SourceText id = element.value("id");
    reported = false;
    if (id == null) {
      return null;
    }
    int dot = id.text().indexOf('.');
    String word = dot < 0 ? id.text() : id.text().substring(0, dot);
    Role role = Role.of(word);
    if (role == null || role.isNamed() != dot >= 0) {
      String nearest =
          role == null ? Nearest.of(word.toLowerCase(Locale.ROOT), Role.words()).orElse("") : word;
      if (!nearest.isEmpty()) {
        reading
            .findings()
            .add(
                SourceCode.ROLE_UNKNOWN,
                id.position(),
                "id",
                id.text(),
                "nearest",
                Role.of(nearest).pattern());
        reported = true;
      }
      return null;
    }
    if (role.isNamed() && !reading.checkName(id.part(dot + 1, id.text().length()))) {
      reported = true;
      return null;
    }
    if (!shape || unread) {
      reported = true;
      reading
          .findings()
          .add(
              SourceCode.ROLE_NOT_READ,
              id.position(),
              "id",
              id.text(),
              "element",
              element.localName(),
              "shape",
              shape ? "yes" : "no");
      return null;
    }
    SourceText first = ids.putIfAbsent(id.text(), id);
    if (first != null) {
      reported = true;
      reading
          .findings()
          .add(
              SourceCode.ROLE_TWICE,
              id.position(),
              "id",
              id.text(),
              "line",
              Integer.toString(first.position().line()));
      return null;
    }
    return role;
  }

  private void add(XmlElement element, Role role, List<AttributeText> transforms) {
    String kind = element.localName();
    Map<String, AttributeText> attributes = new LinkedHashMap<>();
    List<String> known = DrawnShape.geometry(kind);
    for (String name : known) {
      AttributeText text = attribute(element, name, true);
      if (text != null) {
        attributes.put(name, text);
      }
    }
    for (XmlElement.Attribute attribute : element.attributes()) {
      String name = attribute.name();
      if (name.startsWith("data-")
          && !known.contains(name.substring(5))
          && !name.equals("data-transform")
          && attribute.value().text().indexOf('{') >= 0) {
        List<String> all = new ArrayList<>();
        known.forEach(each -> all.add("data-" + each));
        all.add("data-transform");
        reading.unknown(SourceCode.DATA_ATTRIBUTE_UNKNOWN, attribute.position(), name, all);
      }
    }
    SourceText id = element.value("id");
    String name = role.isNamed() ? id.text().substring(id.text().indexOf('.') + 1) : "";
    shapes.add(new DrawnShape(role, name, id, kind, attributes, List.copyOf(transforms)));
  }

  /** An attribute, or the {@code data-} attribute that overrides it; null if there is neither. */
  private AttributeText attribute(XmlElement element, String name, boolean placeholders) {
    SourceText computed = placeholders ? element.value("data-" + name) : null;
    if (computed != null) {
      return AttributeText.parse(computed, reading.findings());
    }
    SourceText plain = element.value(name);
    return plain == null ? null : AttributeText.literal(plain);
  }

  /** Reports what would run or fetch something elsewhere; here it is only passed over. */
  private void active(XmlElement element) {
    if (ACTIVE.contains(element.localName())) {
      active(element.position(), element.localName());
      return;
    }
    for (XmlElement.Attribute attribute : element.attributes()) {
      String name = attribute.name();
      String value = attribute.value().text().strip();
      boolean handler = name.matches("on[a-zA-Z]+");
      boolean external =
          (name.equals("href") || name.endsWith(":href"))
              && !value.isEmpty()
              && !value.startsWith("#");
      if (handler || external) {
        active(attribute.position(), name);
        return;
      }
    }
  }

  private void active(Position position, String name) {
    reading.findings().add(SourceCode.SVG_ACTIVE, position, "name", name);
  }
}
