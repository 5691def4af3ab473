package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.CornerSources;
import org.lapmark.source.CornerSources.CornerKind;
import org.lapmark.source.CornerSources.CornerSource;
import org.lapmark.source.CornerSources.Way;
import org.lapmark.source.PieceSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Section;
import org.lapmark.source.yaml.YamlNode;

/** Reads a piece's allowances edge by edge, and how its corners are cut. */
final class AllowanceReader {
  private static final String FOLD = "fold";
  private static final int MOST_FOLDS = 2;

  private final Reading reading;

  AllowanceReader(Reading reading) {
    this.reading = reading;
  }

  /** The value of {@code edge_allowances}: by edge a length, a start and an end, or a fold. */
  List<PieceSource.EdgeAllowance> edges(YamlNode node) {
    List<PieceSource.EdgeAllowance> edges = new ArrayList<>();
    reading.named(
        node,
        "edge_allowances",
        false,
        (edge, value) -> {
          PieceSource.EdgeAllowance allowance = edge(edge, value);
          if (allowance != null) {
            edges.add(allowance);
          }
        });
    return edges;
  }

  private PieceSource.EdgeAllowance edge(SourceText edge, YamlNode value) {
    // Braces around one word are a placeholder without quotes, which is reported as such.
    if (value instanceof YamlNode.Entries map && !Reading.looksLikePlaceholder(map)) {
      Map<String, YamlNode> parts =
          reading.section(value, Section.EDGE_ALLOWANCE, edge.position(), edge.text());
      if (parts == null) {
        return null;
      }
      reading.condition(parts, edge.position());
      boolean ends = parts.containsKey("start") && parts.containsKey("end");
      boolean end = parts.containsKey("start") || parts.containsKey("end");
      if (parts.containsKey("allowance") ? end : !ends) {
        reading.findings().add(SourceCode.EDGE_ALLOWANCE, edge.position(), "edge", edge.text());
        return null;
      }
      if (!ends) {
        return even(edge, parts.get("allowance"), "allowance");
      }
      Formula start = reading.formula(parts.get("start"), "start");
      Formula last = reading.formula(parts.get("end"), "end");
      return start == null || last == null
          ? null
          : new PieceSource.EdgeAllowance(edge, start, last);
    }
    return even(edge, value, edge.text());
  }

  private PieceSource.EdgeAllowance even(SourceText edge, YamlNode value, String key) {
    SourceText text = reading.text(value, key);
    if (text == null) {
      return null;
    }
    if (text.text().equals(FOLD)) {
      return new PieceSource.EdgeAllowance(edge, null, null);
    }
    Formula formula = reading.formula(text);
    return formula == null ? null : new PieceSource.EdgeAllowance(edge, formula, formula);
  }

  /** The values of {@code corner} and {@code corners} among a piece's. */
  CornerSources corners(Map<String, YamlNode> values) {
    CornerKind general = values.containsKey("corner") ? kind(values.get("corner"), true) : null;
    List<CornerSource> single = new ArrayList<>();
    YamlNode.Entries entries =
        values.containsKey("corners") ? reading.map(values.get("corners"), "corners") : null;
    Map<String, YamlNode.Text> seen = new LinkedHashMap<>();
    List<YamlNode.Entry> all = entries == null ? List.of() : entries.entries();
    // No panel has more corners than that.
    for (YamlNode.Entry entry : all.subList(0, Math.min(all.size(), reading.limits().entries()))) {
      CornerKind kind = reading.repeated(entry.key(), seen) ? null : kind(entry.value(), false);
      if (kind != null) {
        single.add(new CornerSource(Reading.corner(entry.key().text()), kind));
      }
    }
    return new CornerSources(general, single);
  }

  private CornerKind kind(YamlNode node, boolean general) {
    if (node instanceof YamlNode.Text text && !text.isNothing()) {
      switch (text.text().text()) {
        case "mitred":
          return new CornerKind(Way.MITRED, null, null, 1);
        case "blunt":
          return new CornerKind(Way.BLUNT, null, null, 1);
        default:
          return wrong(node.position(), general);
      }
    }
    Position owner = MastheadReader.firstKey(node);
    Map<String, YamlNode> parts = reading.section(node, Section.CORNER_KIND, owner, "corners");
    if (parts == null) {
      return null;
    }
    boolean mitred = parts.containsKey("mitred");
    boolean square = parts.containsKey("square_to");
    boolean turned = parts.containsKey("turned_back");
    int ways = (mitred ? 1 : 0) + (square ? 1 : 0) + (turned ? 1 : 0);
    if (ways != 1 || parts.containsKey("folds") && !turned || general && !mitred) {
      return wrong(owner, general);
    }
    if (mitred) {
      Formula limit = reading.formula(parts.get("mitred"), "mitred");
      return limit == null ? null : new CornerKind(Way.MITRED, limit, null, 1);
    }
    String key = square ? "square_to" : "turned_back";
    SourceText edge = reading.text(parts.get(key), key);
    Integer folds =
        parts.containsKey("folds")
            ? reading.number(parts.get("folds"), "folds", 1, MOST_FOLDS)
            : Integer.valueOf(1);
    return edge == null || folds == null
        ? null
        : new CornerKind(square ? Way.SQUARE_TO : Way.TURNED_BACK, null, edge, folds);
  }

  private CornerKind wrong(Position position, boolean general) {
    reading.findings().add(SourceCode.CORNER_KIND, position, "where", general ? "every" : "single");
    return null;
  }
}
