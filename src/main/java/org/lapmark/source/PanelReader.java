package org.lapmark.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;

/** Reads the panels and the drawings that they name. */
final class PanelReader {
  private static final List<String> SHAPES = List.of("drawing", "rectangle", "strip", "inset");

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
        new PanelSource(name, shape(name, values), edges(values), chains(values), notches(values)));
  }

  private PanelSource.ShapeSource shape(SourceText name, Map<String, YamlNode> values) {
    List<String> stated = SHAPES.stream().filter(values::containsKey).toList();
    if (stated.isEmpty()) {
      reading.findings().add(SourceCode.PANEL_WITHOUT_SHAPE, name.position(), "name", name.text());
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
          .add(SourceCode.SCALE_MISPLACED, values.get("scale").position(), "kind", kind);
    }
    return switch (kind) {
      case "drawing" -> drawn(node, values.get("scale"));
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
      default -> {
        Map<String, YamlNode> parts = part(node, Section.INSET, kind);
        SourceText panel =
            parts.containsKey("panel") ? reading.text(parts.get("panel"), "panel") : null;
        Formula distance = formula(parts, "distance");
        yield panel == null || distance == null ? null : new PanelSource.Inset(panel, distance);
      }
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
      return drawing == null ? null : new PanelSource.Drawn(drawing, null, null);
    }
    Map<String, YamlNode> parts = part(scale, Section.SCALE, "scale");
    if (drawing == null) {
      return null;
    }
    if (drawing.isComputed()) {
      reading
          .findings()
          .add(SourceCode.SCALE_MISPLACED, scale.position(), "kind", "computed drawing");
    }
    return new PanelSource.Drawn(drawing, formula(parts, "width"), formula(parts, "height"));
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
            List<SourceText> corners =
                node instanceof YamlNode.Items ? reading.texts(node, name.text()) : List.of();
            if (corners.size() == 2) {
              edges.add(new PanelSource.EdgeSource(name, corners.get(0), corners.get(1)));
            }
            if (edges.size() == before && !isEmptyList(node)) {
              reading.findings().add(SourceCode.EDGE_CORNERS, node.position(), "name", name.text());
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
    List<YamlNode> nodes = reading.list(values.get("notches"), "notches");
    for (YamlNode node : reading.bounded(nodes, "notches", reading.limits().entries())) {
      Position owner = MastheadReader.firstKey(node);
      Map<String, YamlNode> parts = reading.section(node, Section.NOTCH, owner, "notches");
      if (parts == null) {
        continue;
      }
      SourceText edge = parts.containsKey("edge") ? reading.text(parts.get("edge"), "edge") : null;
      Formula at = formula(parts, "at");
      Integer count =
          parts.containsKey("count")
              ? reading.number(parts.get("count"), "count", 1, 2)
              : Integer.valueOf(1);
      if (edge != null && at != null && count != null) {
        reading.condition(parts, edge.position());
        notches.add(new PanelSource.NotchSource(edge, at, count));
      }
    }
    return notches;
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
