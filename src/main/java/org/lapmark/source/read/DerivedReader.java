package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.DerivedSource;
import org.lapmark.source.DerivedSource.EdgeDistance;
import org.lapmark.source.DerivedSource.Way;
import org.lapmark.source.PanelSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Section;
import org.lapmark.source.yaml.YamlNode;

/** Reads how panels are derived from others, and the lines along which they are split. */
final class DerivedReader {
  /** The keys that state it. */
  static final List<String> KEYS =
      List.of("inset", "outset", "mirror", "unfold", "fold", "split", "merge", "facing", "lining");

  private static final List<String> CONSTRUCTIONS = List.of("mounted", "bagged", "dropped");

  private final Reading reading;

  DerivedReader(Reading reading) {
    this.reading = reading;
  }

  /** The derivation, or null if it can't be read, which is reported. */
  PanelSource.ShapeSource read(String kind, YamlNode node) {
    Parts parts = parts(node, Section.valueOf(kind.toUpperCase(Locale.ROOT)), kind);
    DerivedSource how = parts == null ? null : derived(kind, parts);
    return how == null ? null : new PanelSource.Derived(how);
  }

  private DerivedSource derived(String kind, Parts parts) {
    SourceText panel = parts.text("panel");
    return switch (kind) {
      case "inset" -> beside(parts, panel, Way.INSET);
      case "outset" -> beside(parts, panel, Way.OUTSET);
      case "lining" -> beside(parts, panel, construction(parts));
      case "mirror" -> panel == null ? null : new DerivedSource.Mirrored(panel);
      case "unfold" -> {
        SourceText edge = parts.text("edge");
        List<SourceText> apart = parts.texts("apart");
        yield panel == null || edge == null ? null : new DerivedSource.Unfolded(panel, edge, apart);
      }
      case "fold" -> {
        SourceText from = Reading.corner(parts.text("from"));
        SourceText to = Reading.corner(parts.text("to"));
        String edge = parts.name("edge", "fold");
        yield panel == null || from == null || to == null || edge == null
            ? null
            : new DerivedSource.Folded(panel, from, to, edge);
      }
      case "split" -> {
        SourceText along = parts.text("along");
        SourceText keep = parts.text("keep");
        String edge = parts.name("edge", along == null ? "" : along.text());
        yield panel == null || along == null || keep == null || edge == null
            ? null
            : new DerivedSource.Split(panel, along, keep, edge);
      }
      case "merge" -> {
        SourceText edge = parts.text("edge");
        SourceText with = parts.text("with");
        SourceText withEdge = parts.text("with_edge");
        yield panel == null || edge == null || with == null || withEdge == null
            ? null
            : new DerivedSource.Merged(panel, edge, with, withEdge);
      }
      default -> {
        SourceText along = parts.text("along");
        Formula width = parts.formula("width");
        String edge = parts.name("edge", "inner");
        yield panel == null || along == null || width == null || edge == null
            ? null
            : new DerivedSource.Facing(panel, along, width, edge);
      }
    };
  }

  private Way construction(Parts parts) {
    SourceText word = parts.text("construction");
    if (word == null) {
      return null;
    }
    if (CONSTRUCTIONS.contains(word.text())) {
      return Way.valueOf(word.text().toUpperCase(Locale.ROOT));
    }
    reading.unknown(SourceCode.CONSTRUCTION_WRONG, word.position(), word.text(), CONSTRUCTIONS);
    return null;
  }

  private DerivedSource beside(Parts parts, SourceText panel, Way way) {
    Formula distance = parts.formula("distance");
    boolean whole = parts.has("distance") == (distance != null);
    List<EdgeDistance> edges = new ArrayList<>();
    if (parts.has("edges")) {
      reading.named(
          parts.values.get("edges"),
          "edges",
          false,
          (name, node) -> {
            Formula own = reading.formula(node, name.text());
            if (own != null) {
              edges.add(new EdgeDistance(name, own));
            }
          });
    }
    if (way != null && way != Way.MOUNTED && !parts.has("distance") && !parts.has("edges")) {
      reading.findings().add(SourceCode.DISTANCE_MISSING, parts.owner);
      whole = false;
    }
    Boolean marks = parts.has("marks") ? reading.truth(parts.values.get("marks"), "marks") : null;
    whole &= parts.has("marks") == (marks != null);
    if (marks == null && way != null && way.isLining()) {
      marks = Boolean.TRUE;
    }
    return panel == null || way == null || !whole
        ? null
        : new DerivedSource.Beside(panel, way, distance, edges, marks);
  }

  /** The lines along which a panel may be split. */
  List<PanelSource.StyleLineSource> lines(Map<String, YamlNode> values) {
    List<PanelSource.StyleLineSource> lines = new ArrayList<>();
    if (values.containsKey("style_lines")) {
      reading.named(
          values.get("style_lines"),
          "style_lines",
          false,
          (name, node) -> {
            Parts parts = parts(node, Section.STYLE_LINE, name.text());
            PanelSource.LinePlace from = parts == null ? null : place(parts, "from");
            PanelSource.LinePlace to = parts == null ? null : place(parts, "to");
            Formula bow = parts == null ? null : parts.formula("bow");
            if (from != null && to != null && parts.has("bow") == (bow != null)) {
              lines.add(new PanelSource.StyleLineSource(name, from, to, bow));
            }
          });
    }
    return lines;
  }

  private PanelSource.LinePlace place(Parts parts, String key) {
    YamlNode node = parts.values.get(key);
    if (!(node instanceof YamlNode.Entries)) {
      SourceText name = parts.text(key);
      return name == null ? null : new PanelSource.LinePlace(name, null);
    }
    Parts place = parts(node, Section.LINE_PLACE, key);
    SourceText edge = place.text("edge");
    Formula at = place.formula("at");
    return edge == null || at == null ? null : new PanelSource.LinePlace(edge, at);
  }

  private Parts parts(YamlNode node, Section section, String key) {
    Position owner = MastheadReader.firstKey(node);
    Map<String, YamlNode> values = reading.section(node, section, owner, key);
    return values == null ? null : new Parts(values, owner);
  }

  /** What is stated of a derivation. */
  private final class Parts {
    private final Map<String, YamlNode> values;
    private final Position owner;

    Parts(Map<String, YamlNode> values, Position owner) {
      this.values = values;
      this.owner = owner;
    }

    boolean has(String key) {
      return values.containsKey(key);
    }

    SourceText text(String key) {
      return has(key) ? reading.text(values.get(key), key) : null;
    }

    List<SourceText> texts(String key) {
      return has(key) ? reading.texts(values.get(key), key) : List.of();
    }

    Formula formula(String key) {
      return has(key) ? reading.formula(values.get(key), key) : null;
    }

    /** A new edge's name, or null if it can't be one. */
    String name(String key, String standard) {
      SourceText name = text(key);
      if (name == null) {
        return has(key) ? null : standard;
      }
      return reading.checkName(name) ? name.text() : null;
    }
  }
}
