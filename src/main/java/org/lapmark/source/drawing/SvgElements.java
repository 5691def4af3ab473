package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.source.drawing.text.RoleText;
import org.lapmark.source.drawing.xml.ActiveParts;
import org.lapmark.source.drawing.xml.XmlElement;
import org.lapmark.source.key.Reading;

/**
 * What each element of a drawing says by itself, worked out once however often it is copied: its
 * role, its style, its geometry. What is wrong with it is reported then.
 */
final class SvgElements {
  static final String SVG = ActiveParts.SVG;
  private final Reading reading;
  private final SvgStyles styles;
  private final Map<String, XmlElement> ids = new LinkedHashMap<>();
  private final Map<XmlElement, RoleId> roles = new LinkedHashMap<>();
  private final Map<XmlElement, SvgStyles.Look> looks = new LinkedHashMap<>();
  private final Map<XmlElement, Map<String, AttributeText>> geometry = new LinkedHashMap<>();
  private final Map<XmlElement, Placing> steps = new LinkedHashMap<>();
  private final boolean computed;

  SvgElements(XmlElement root, Reading reading) {
    this.reading = reading;
    this.styles = SvgStyles.of(root);
    this.computed = isComputed(root);
    register(root);
  }

  /**
   * A role that an element states.
   *
   * @param role the role, or null if there is none
   * @param id the id or label
   * @param reported whether something about it was reported
   */
  record RoleId(Role role, SourceText id, boolean reported) {
    private static final RoleId NONE = new RoleId(null, null, false);

    /** The name behind the role's word. */
    String name() {
      return role.isNamed() ? id.text().substring(id.text().indexOf('.') + 1) : "";
    }
  }

  /** Whether a placeholder states geometry somewhere in the drawing. */
  boolean isComputed() {
    return computed;
  }

  /** The element with an id, or null. */
  XmlElement withId(String id) {
    return ids.get(id);
  }

  private static boolean isComputed(XmlElement element) {
    if (element.namespace().equals(SVG)) {
      List<String> known = geometryOf(element.localName());
      for (XmlElement.Attribute attribute : element.attributes()) {
        String name = attribute.name();
        if (name.startsWith("data-")
            && (name.equals("data-transform") || known.contains(name.substring(5)))
            && (attribute.value().text().indexOf('{') >= 0
                || attribute.value().text().indexOf('}') >= 0)) {
          return true;
        }
      }
    }
    return element.children().stream().anyMatch(SvgElements::isComputed);
  }

  private static List<String> geometryOf(String kind) {
    if (kind.equals("use")) {
      return List.of("x", "y");
    }
    return DrawnPart.isShape(kind) ? DrawnPart.geometry(kind) : List.of();
  }

  private void register(XmlElement element) {
    if (element.value("id") != null) {
      ids.putIfAbsent(element.value("id").text(), element);
    }
    active(element);
    element.children().forEach(this::register);
  }

  /** Reports what would run or fetch something elsewhere; here it is only passed over. */
  private void active(XmlElement element) {
    // The usual use of a switch: what other programs don't understand beside a plain group.
    if (ActiveParts.isActive(element) && element.value("requiredExtensions") != null) {
      return;
    }
    ActiveParts.of(element).stream()
        .findFirst()
        .ifPresent(
            part ->
                reading.findings().add(DrawingCode.SVG_ACTIVE, part.place(), "name", part.name()));
  }

  SvgStyles.Look look(XmlElement element) {
    return looks.computeIfAbsent(element, styles::look);
  }

  /** The role that an element states by its id, or else by a label. */
  RoleId role(XmlElement element) {
    RoleId known = roles.get(element);
    if (known == null) {
      known = stated(element);
      roles.put(element, known);
    }
    return known;
  }

  private RoleId stated(XmlElement element) {
    SourceText id = element.value("id");
    RoleId byId = id == null ? RoleId.NONE : role(RoleText.of(id), true);
    if (byId.role() != null || byId.reported()) {
      return byId;
    }
    for (XmlElement.Attribute attribute : element.attributes()) {
      String name = attribute.name();
      boolean label =
          name.endsWith(":label") && !name.startsWith("xml:") && !name.startsWith("xlink:");
      if (label || name.equals("data-name")) {
        boolean layer = element.localName().equals("g");
        RoleId byLabel = role(RoleText.of(attribute.value()), !layer);
        // A layer may well be called like a role; only its shapes have one.
        if (byLabel.reported() || byLabel.role() != null && !(layer && byLabel.role().isNamed())) {
          return byLabel;
        }
      }
    }
    return RoleId.NONE;
  }

  private RoleId role(RoleText written, boolean strict) {
    SourceText id = written.text();
    int dot = id.text().indexOf('.');
    String word = (dot < 0 ? id.text() : id.text().substring(0, dot)).strip();
    Role role = Role.of(word);
    if (role == null || role.isNamed() != dot >= 0) {
      String nearest =
          role == null
              ? NearestWord.of(
                      word.toLowerCase(Locale.ROOT), dot < 0 ? Role.plainWords() : Role.words())
                  .orElse("")
              : word;
      if (nearest.isEmpty() || !strict) {
        return RoleId.NONE;
      }
      reading
          .findings()
          .add(
              DrawingCode.ROLE_UNKNOWN,
              id.position(),
              "id",
              id.text(),
              "nearest",
              Role.of(nearest).pattern());
      return new RoleId(null, id, true);
    }
    if (!strict && role != Role.OUTLINE) {
      return RoleId.NONE;
    }
    if (role.isNamed() && !reading.checkName(id.part(dot + 1, id.text().length()))) {
      return new RoleId(null, id, true);
    }
    if (written.numbered()) {
      reading.findings().add(DrawingCode.ROLE_NUMBERED, id.position(), "id", id.text());
    }
    return new RoleId(role, id, false);
  }

  /** A shape's or a copy's geometry attributes. */
  Map<String, AttributeText> geometry(XmlElement element) {
    Map<String, AttributeText> known = geometry.get(element);
    if (known == null) {
      known = new LinkedHashMap<>();
      for (String name : geometryOf(element.localName())) {
        AttributeText text = attribute(element, name);
        if (text != null) {
          known.put(name, text);
        }
      }
      unknownData(element);
      geometry.put(element, known);
    }
    return known;
  }

  private void unknownData(XmlElement element) {
    List<String> known = geometryOf(element.localName());
    for (XmlElement.Attribute attribute : element.attributes()) {
      String name = attribute.name();
      if (name.startsWith("data-")
          && !known.contains(name.substring(5))
          && !name.equals("data-transform")
          && attribute.value().text().indexOf('{') >= 0) {
        List<String> all = new ArrayList<>();
        known.forEach(each -> all.add("data-" + each));
        all.add("data-transform");
        reading.unknown(DrawingCode.DATA_ATTRIBUTE_UNKNOWN, attribute.position(), name, all);
      }
    }
  }

  /** An attribute, or the {@code data-} attribute that overrides it; null if there is neither. */
  private AttributeText attribute(XmlElement element, String name) {
    SourceText stated = element.value("data-" + name);
    if (stated != null) {
      return AttributeText.parse(stated, reading.findings());
    }
    SourceText plain = element.value(name);
    return plain == null ? null : AttributeText.literal(plain);
  }

  /** An element's own transform, or null. */
  Placing step(XmlElement element) {
    if (element.value("transform") == null && element.value("data-transform") == null) {
      return null;
    }
    Placing known = steps.get(element);
    if (known == null) {
      AttributeText text = attribute(element, "transform");
      if (text.hasPlaceholders()) {
        known = new Placing.Transform(text);
      } else {
        Affine fixed = attempt(() -> TransformParser.parse(text.source()));
        known = fixed == null ? new Placing.Broken() : new Placing.Fixed(fixed);
      }
      steps.put(element, known);
    }
    return known;
  }

  /** What a computation gives; null if it can't, which is reported. */
  <T> T attempt(Supplier<T> computation) {
    try {
      return computation.get();
    } catch (FindingException e) {
      reading.findings().add(e.finding());
      return null;
    }
  }
}
