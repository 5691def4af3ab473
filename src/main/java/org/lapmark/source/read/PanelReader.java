package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.lapmark.finding.Known;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.NotchSet;
import org.lapmark.source.PanelSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.StatedForm;
import org.lapmark.source.drawing.Drawings;
import org.lapmark.source.drawing.PanelDrawing;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Section;
import org.lapmark.source.yaml.YamlNode;

/** Reads the panels and the drawings that they name. */
final class PanelReader {
  private static final List<String> STATED_SHAPES =
      List.of(
          "drawing",
          "drawings",
          "rectangle",
          "strip",
          "circle",
          "ellipse",
          "ring_sector",
          "cone_band",
          "brim");

  private static final List<String> SHAPES =
      Stream.concat(STATED_SHAPES.stream(), DerivedReader.KEYS.stream()).toList();

  private static final List<String> PLACES = List.of("at", "every", "from_seam", "corner", "drawn");

  private final Reading reading;
  private final Drawings drawings;

  PanelReader(Reading reading, Drawings drawings) {
    this.reading = reading;
    this.drawings = drawings;
  }

  List<PanelSource> read(YamlNode node) {
    List<PanelSource> panels = new ArrayList<>();
    reading.named(node, "panels", true, (name, value) -> add(name, value, panels));
    return panels;
  }

  private void add(SourceText name, YamlNode node, List<PanelSource> panels) {
    Map<String, YamlNode> values =
        reading.section(node, Section.PANEL, name.position(), name.text());
    if (values == null) {
      return;
    }
    reading.condition(values, name.position());
    panels.add(
        new PanelSource(
            name,
            shape(name, values),
            edges(values),
            chains(values),
            notches(values),
            values.containsKey("any_order")
                && Boolean.TRUE.equals(reading.truth(values.get("any_order"), "any_order")),
            new SlashReader(reading).read(values),
            values.containsKey("stack_on")
                ? reading.corner(values.get("stack_on"), "stack_on")
                : null,
            new DerivedReader(reading).lines(values),
            new MarkReader(reading).read(values)));
  }

  private PanelSource.ShapeSource shape(SourceText name, Map<String, YamlNode> values) {
    List<String> stated = SHAPES.stream().filter(values::containsKey).toList();
    if (stated.isEmpty()) {
      reading
          .findings()
          .add(
              SourceCode.PANEL_WITHOUT_SHAPE,
              name.position(),
              "name",
              name.text(),
              "known",
              Known.listed(SHAPES));
      return null;
    }
    for (String second : stated.subList(1, stated.size())) {
      reading
          .findings()
          .add(
              SourceCode.PANEL_SHAPE_TWICE,
              values.get(second).position(),
              "name",
              name.text(),
              "first",
              stated.get(0),
              "second",
              second);
    }
    String kind = stated.get(0);
    YamlNode node = values.get(kind);
    if (values.containsKey("scale") && !kind.equals("drawing")) {
      reading
          .findings()
          .add(
              SourceCode.SCALE_MISPLACED,
              values.get("scale").position(),
              "kind",
              kind.equals("drawings") ? "drawing for each size" : kind.replace('_', ' '));
    }
    StatedForm form = StatedForm.of(kind);
    if (form != null) {
      return stated(form, name, node);
    }
    return switch (kind) {
      case "drawing" -> drawn(node, values.get("scale"));
      case "drawings" -> drawnBySize(node);
      case "rectangle" -> {
        Map<String, YamlNode> parts = part(node, Section.RECTANGLE, kind);
        Formula width = formula(parts, "width");
        Formula height = formula(parts, "height");
        yield width == null || height == null ? null : new PanelSource.Rectangle(width, height);
      }
      case "strip" -> {
        Map<String, YamlNode> parts = part(node, Section.STRIP, kind);
        Formula length = formula(parts, "length");
        Formula width = formula(parts, "width");
        Boolean bias =
            parts.containsKey("bias") ? reading.truth(parts.get("bias"), "bias") : Boolean.FALSE;
        yield length == null || width == null || bias == null
            ? null
            : new PanelSource.Strip(length, width, bias);
      }
      default -> new DerivedReader(reading).read(kind, node);
    };
  }

  private Map<String, YamlNode> part(YamlNode node, Section section, String key) {
    Map<String, YamlNode> values =
        reading.section(node, section, MastheadReader.firstKey(node), key);
    return values == null ? Map.of() : values;
  }

  private Formula formula(Map<String, YamlNode> values, String key) {
    return values.containsKey(key) ? reading.formula(values.get(key), key) : null;
  }

  private PanelSource.ShapeSource drawn(YamlNode node, YamlNode scale) {
    SourceText name = reading.text(node, "drawing");
    PanelDrawing drawing = name == null ? null : drawings.named(name);
    if (scale == null) {
      return drawing == null ? null : new PanelSource.Drawn(drawing);
    }
    Map<String, YamlNode> parts = part(scale, Section.SCALE, "scale");
    if (drawing != null && drawing.isComputed()) {
      reading
          .findings()
          .add(SourceCode.SCALE_MISPLACED, scale.position(), "kind", "computed drawing");
    }
    PanelSource.EdgeLength until = until(scale, parts);
    Boolean stretch = stretch(parts);
    return drawing == null
        ? null
        : new PanelSource.Drawn(
            drawing, formula(parts, "width"), formula(parts, "height"), until, stretch);
  }

  /** Whether to stretch in one direction only; null where nothing is said. */
  private Boolean stretch(Map<String, YamlNode> parts) {
    if (!parts.containsKey("stretch")) {
      return null;
    }
    if (parts.containsKey("width") == parts.containsKey("height")) {
      reading.findings().add(SourceCode.STRETCH_MISPLACED, parts.get("stretch").position());
      return null;
    }
    return reading.truth(parts.get("stretch"), "stretch");
  }

  private PanelSource.EdgeLength until(YamlNode scale, Map<String, YamlNode> parts) {
    if (!parts.containsKey("edge") && !parts.containsKey("length")) {
      return null;
    }
    for (String key : List.of("edge", "length")) {
      if (!parts.containsKey(key)) {
        reading.findings().add(KeyCode.KEY_MISSING, MastheadReader.firstKey(scale), "key", key);
        return null;
      }
    }
    for (String key : List.of("width", "height")) {
      if (parts.containsKey(key)) {
        reading.findings().add(SourceCode.SCALE_TWO_WAYS, parts.get(key).position(), "key", key);
        return null;
      }
    }
    SourceText edge = reading.text(parts.get("edge"), "edge");
    Formula length = formula(parts, "length");
    return edge == null || length == null ? null : new PanelSource.EdgeLength(edge, length);
  }

  private PanelSource.ShapeSource drawnBySize(YamlNode node) {
    YamlNode.Entries entries = reading.map(node, "drawings");
    Map<String, PanelSource.SizeDrawing> bySize = new LinkedHashMap<>();
    Map<String, YamlNode.Text> seen = new LinkedHashMap<>();
    boolean whole = entries != null;
    if (whole) {
      for (YamlNode.Entry entry : entries.entries()) {
        if (reading.repeated(entry.key(), seen)) {
          continue;
        }
        SourceText name = reading.text(entry.value(), "drawings");
        PanelDrawing drawing = name == null ? null : drawings.named(name);
        whole &= drawing != null;
        if (drawing != null) {
          SourceText size = entry.key().text();
          bySize.put(size.text(), new PanelSource.SizeDrawing(size, name, drawing));
        }
      }
    }
    return whole ? new PanelSource.DrawnBySize(bySize) : null;
  }

  private PanelSource.ShapeSource stated(StatedForm form, SourceText name, YamlNode node) {
    Map<String, YamlNode> parts =
        reading.section(node, form.section(), position(node, name), form.key());
    if (parts == null) {
      return null;
    }
    boolean whole = parts.keySet().containsAll(form.section().required());
    for (StatedForm.Choice choice : form.choices()) {
      long begun =
          choice.ways().stream().filter(way -> way.stream().anyMatch(parts::containsKey)).count();
      long complete = choice.ways().stream().filter(way -> parts.keySet().containsAll(way)).count();
      if (begun != 1 || complete != 1) {
        whole = false;
        reading
            .findings()
            .add(
                SourceCode.SHAPE_STATEMENT,
                position(node, name),
                "kind",
                form.key(),
                "ways",
                choice.shown());
      }
    }
    Map<String, Formula> formulas = new LinkedHashMap<>();
    for (Map.Entry<String, YamlNode> part : parts.entrySet()) {
      Formula formula = reading.formula(part.getValue(), part.getKey());
      whole &= formula != null;
      formulas.put(part.getKey(), formula);
    }
    return whole ? new PanelSource.Stated(form, name, formulas) : null;
  }

  /** Where something missing in a map is reported: its first key, or the name of its owner. */
  private static Position position(YamlNode node, SourceText owner) {
    return node instanceof YamlNode.Entries map && !map.entries().isEmpty()
        ? MastheadReader.firstKey(node)
        : owner.position();
  }

  private List<PanelSource.EdgeSource> edges(Map<String, YamlNode> values) {
    List<PanelSource.EdgeSource> edges = new ArrayList<>();
    if (values.containsKey("edges")) {
      reading.named(
          values.get("edges"),
          "edges",
          false,
          (name, node) -> {
            int before = edges.size();
            YamlNode ends = node;
            if (node instanceof YamlNode.Entries) {
              Map<String, YamlNode> parts =
                  reading.section(node, Section.EDGE, name.position(), name.text());
              if (parts == null || !parts.containsKey("corners")) {
                return;
              }
              reading.condition(parts, name.position());
              ends = parts.get("corners");
            }
            List<SourceText> corners =
                ends instanceof YamlNode.Items ? reading.texts(ends, name.text()) : List.of();
            if (corners.size() == 2) {
              edges.add(
                  new PanelSource.EdgeSource(
                      name, Reading.corner(corners.get(0)), Reading.corner(corners.get(1))));
            }
            if (edges.size() == before && !isEmptyList(ends)) {
              reading.findings().add(SourceCode.EDGE_CORNERS, ends.position(), "name", name.text());
            }
          });
    }
    return edges;
  }

  private static boolean isEmptyList(YamlNode node) {
    return node instanceof YamlNode.Items items && items.items().isEmpty();
  }

  private List<PanelSource.ChainSource> chains(Map<String, YamlNode> values) {
    List<PanelSource.ChainSource> chains = new ArrayList<>();
    if (values.containsKey("chains")) {
      reading.named(
          values.get("chains"),
          "chains",
          false,
          (name, node) -> {
            List<SourceText> edges = reading.texts(node, name.text());
            if (!edges.isEmpty()) {
              chains.add(new PanelSource.ChainSource(name, edges));
            }
          });
    }
    return chains;
  }

  private List<PanelSource.NotchSource> notches(Map<String, YamlNode> values) {
    List<PanelSource.NotchSource> notches = new ArrayList<>();
    if (!values.containsKey("notches")) {
      return notches;
    }
    MarkReader marks = new MarkReader(reading);
    NotchSet.Cut general = marks.general(values);
    List<YamlNode> nodes = reading.list(values.get("notches"), "notches");
    for (YamlNode node : reading.bounded(nodes, "notches", reading.limits().entries())) {
      Position owner = MastheadReader.firstKey(node);
      Map<String, YamlNode> parts = reading.section(node, Section.NOTCH, owner, "notches");
      if (parts == null) {
        continue;
      }
      String owned = parts.containsKey("drawn") ? "drawn" : "edge";
      if (!parts.containsKey(owned)) {
        reading.findings().add(KeyCode.KEY_MISSING, owner, "key", owned);
      }
      SourceText edge = parts.containsKey(owned) ? reading.text(parts.get(owned), owned) : null;
      PanelSource.NotchPlace place = place(parts, owner);
      Integer count =
          parts.containsKey("count")
              ? reading.number(parts.get("count"), "count", 1, 3)
              : Integer.valueOf(1);
      List<Formula> gaps = marks.gaps(parts);
      NotchSet.Cut cut = marks.cut(parts, general);
      if (edge != null && place != null && count != null && gaps != null && cut != null) {
        reading.condition(parts, edge.position());
        notches.add(new PanelSource.NotchSource(edge, place, count, gaps, cut));
      }
    }
    return notches;
  }

  private PanelSource.NotchPlace place(Map<String, YamlNode> parts, Position owner) {
    List<String> stated = PLACES.stream().filter(parts::containsKey).toList();
    boolean centredAlone = parts.containsKey("centred") && !parts.containsKey("every");
    if (stated.size() != 1 || centredAlone) {
      Position at = centredAlone ? parts.get("centred").position() : owner;
      reading
          .findings()
          .add(SourceCode.NOTCH_PLACE, at, "ways", stated.size(), "known", Known.listed(PLACES));
      return null;
    }
    YamlNode node = parts.get(stated.get(0));
    switch (stated.get(0)) {
      case "at" -> {
        Formula at = reading.formula(node, "at");
        return at == null ? null : new PanelSource.NotchPlace.At(at);
      }
      case "every" -> {
        Formula spacing = reading.formula(node, "every");
        Boolean centred =
            parts.containsKey("centred")
                ? reading.truth(parts.get("centred"), "centred")
                : Boolean.TRUE;
        return spacing == null || centred == null
            ? null
            : new PanelSource.NotchPlace.Every(spacing, centred);
      }
      case "drawn" -> {
        SourceText name = reading.text(node, "drawn");
        return name == null ? null : new PanelSource.NotchPlace.Drawn(name);
      }
      case "from_seam" -> {
        SourceText seam = reading.text(node, "from_seam");
        return seam == null ? null : new PanelSource.NotchPlace.FromSeam(seam);
      }
      default -> {
        SourceText corner = reading.corner(node, "corner");
        return corner == null ? null : new PanelSource.NotchPlace.NearCorner(corner);
      }
    }
  }

  /** The edges of a panel that can be named without its geometry. */
  static List<String> stockEdges() {
    return List.of("top", "right", "bottom", "left");
  }

  /** Panels by name, the first of each name. */
  static Map<String, PanelSource> byName(List<PanelSource> panels) {
    Map<String, PanelSource> byName = new LinkedHashMap<>();
    panels.forEach(panel -> byName.putIfAbsent(panel.name().text(), panel));
    return byName;
  }
}
