package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Slash;
import org.lapmark.source.PanelSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Section;
import org.lapmark.source.yaml.YamlNode;

/** Reads the lines along which panels are cut and opened. */
final class SlashReader {
  /** Nobody cuts a panel more often; every line is looked at together with every other. */
  private static final int MOST = 100;

  private static final List<String> HINGES = List.of("from", "to", "none");

  private final Reading reading;

  SlashReader(Reading reading) {
    this.reading = reading;
  }

  List<PanelSource.SlashSource> read(Map<String, YamlNode> panel) {
    List<PanelSource.SlashSource> slashes = new ArrayList<>();
    if (!panel.containsKey("slashes")) {
      return slashes;
    }
    List<YamlNode> nodes = reading.list(panel.get("slashes"), "slashes");
    for (YamlNode node : reading.bounded(nodes, "slashes", MOST)) {
      Position owner = MastheadReader.firstKey(node);
      Map<String, YamlNode> parts = reading.section(node, Section.SLASH, owner, "slashes");
      if (parts == null) {
        continue;
      }
      SourceText name = parts.containsKey("name") ? reading.text(parts.get("name"), "name") : null;
      Formula open = parts.containsKey("open") ? reading.formula(parts.get("open"), "open") : null;
      Slash.Hinge hinge = hinge(parts.get("hinge"));
      boolean whole = name != null && reading.checkName(name) && open != null && hinge != null;
      PanelSource.SlashEnd from = end(parts, "from");
      PanelSource.SlashEnd to = end(parts, "to");
      whole &= parts.containsKey("from") == (from != null);
      whole &= parts.containsKey("to") == (to != null);
      if (parts.containsKey("from") != parts.containsKey("to")) {
        String missing = parts.containsKey("from") ? "to" : "from";
        reading.findings().add(KeyCode.KEY_MISSING, owner, "key", missing);
        whole = false;
      }
      if (name != null) {
        whole &= isFirst(name, slashes);
        reading.condition(parts, name.position());
      }
      if (whole) {
        slashes.add(new PanelSource.SlashSource(name, from, to, open, hinge));
      }
    }
    return slashes;
  }

  private boolean isFirst(SourceText name, List<PanelSource.SlashSource> slashes) {
    for (PanelSource.SlashSource other : slashes) {
      if (other.name().text().equals(name.text())) {
        Position first = other.name().position();
        reading
            .findings()
            .add(
                SourceCode.NAME_TAKEN,
                name.position(),
                "name",
                name.text(),
                "file",
                first.file(),
                "line",
                Integer.toString(first.line()));
        return false;
      }
    }
    return true;
  }

  private Slash.Hinge hinge(YamlNode node) {
    if (node == null) {
      return Slash.Hinge.NONE;
    }
    SourceText word = reading.text(node, "hinge");
    if (word == null) {
      return null;
    }
    switch (word.text()) {
      case "from" -> {
        return Slash.Hinge.FROM;
      }
      case "to" -> {
        return Slash.Hinge.TO;
      }
      case "none" -> {
        return Slash.Hinge.NONE;
      }
      default -> {
        reading.unknown(SourceCode.HINGE_UNKNOWN, word.position(), word.text(), HINGES);
        return null;
      }
    }
  }

  private PanelSource.SlashEnd end(Map<String, YamlNode> parts, String key) {
    YamlNode node = parts.get(key);
    if (node == null) {
      return null;
    }
    Position owner = MastheadReader.firstKey(node);
    Map<String, YamlNode> values = reading.section(node, Section.SLASH_END, owner, key);
    if (values == null) {
      return null;
    }
    boolean onEdge = values.containsKey("edge") && values.containsKey("at");
    boolean begun = values.containsKey("edge") || values.containsKey("at");
    if (onEdge && !values.containsKey("corner")) {
      SourceText edge = reading.text(values.get("edge"), "edge");
      Formula at = reading.formula(values.get("at"), "at");
      return edge == null || at == null ? null : new PanelSource.SlashEnd.OnEdge(edge, at);
    }
    if (values.containsKey("corner") && !begun) {
      SourceText corner = reading.corner(values.get("corner"), "corner");
      return corner == null ? null : new PanelSource.SlashEnd.AtCorner(corner);
    }
    reading.findings().add(SourceCode.SLASH_END, owner, "key", key);
    return null;
  }
}
