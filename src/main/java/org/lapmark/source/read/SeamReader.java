package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.SeamSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Section;
import org.lapmark.source.yaml.YamlNode;

/** Reads the seams. */
final class SeamReader {
  /** More layers than this no machine sews, and comparing each with each takes time. */
  private static final int MOST_SIDES = 24;

  private final Reading reading;

  SeamReader(Reading reading) {
    this.reading = reading;
  }

  List<SeamSource> read(YamlNode node) {
    List<SeamSource> seams = new ArrayList<>();
    reading.named(
        node,
        "seams",
        false,
        (name, value) -> {
          SeamSource seam = seam(name, value);
          if (seam != null) {
            seams.add(seam);
          }
        });
    return seams;
  }

  private SeamSource seam(SourceText name, YamlNode node) {
    Map<String, YamlNode> values =
        reading.section(node, Section.SEAM, name.position(), name.text());
    if (values == null) {
      return null;
    }
    reading.condition(values, name.position());
    Formula ease = formula(values, "ease");
    Formula tolerance = formula(values, "tolerance");
    boolean closed = truth(values, "closed");
    boolean matchNotches = truth(values, "match_notches");
    if (!values.containsKey("sides")) {
      return null;
    }
    YamlNode sidesNode = values.get("sides");
    List<YamlNode> nodes = reading.list(sidesNode, "sides");
    if (nodes.size() < 2 && sidesNode instanceof YamlNode.Items) {
      reading.findings().add(SourceCode.SEAM_SIDES, name.position(), "name", name.text());
    }
    List<SeamSource.Side> sides = new ArrayList<>();
    int most = Math.min(MOST_SIDES, reading.limits().entries());
    for (YamlNode side : reading.bounded(nodes, "sides", most)) {
      sides.add(side instanceof YamlNode.Entries ? side(side, name, closed) : plain(side, "side"));
    }
    return new SeamSource(name, sides, ease, tolerance, closed, matchNotches);
  }

  /** A side that is a list of its parts and nothing else. */
  private SeamSource.Side plain(YamlNode node, String key) {
    List<SeamSource.Member> members = new ArrayList<>();
    List<SeamSource.Tab> tabs = new ArrayList<>();
    parts(node, key, members, tabs);
    return new SeamSource.Side(members, tabs, null, null, false, null, List.of());
  }

  private SeamSource.Side side(YamlNode node, SourceText seam, boolean closed) {
    Map<String, YamlNode> values =
        reading.section(node, Section.SEAM_SIDE, MastheadReader.firstKey(node), "sides");
    List<SeamSource.Member> members = new ArrayList<>();
    List<SeamSource.Tab> tabs = new ArrayList<>();
    if (values.containsKey("edges")) {
      parts(values.get("edges"), "edges", members, tabs);
    }
    if (values.containsKey("start") && !closed) {
      reading
          .findings()
          .add(
              SourceCode.SEAM_START_MISPLACED, values.get("start").position(), "name", seam.text());
    }
    List<SeamSource.Side> basted = new ArrayList<>();
    if (values.containsKey("basted")) {
      List<YamlNode> layers = reading.list(values.get("basted"), "basted");
      for (YamlNode layer : reading.bounded(layers, "basted", MOST_SIDES)) {
        basted.add(plain(layer, "basted"));
      }
    }
    return new SeamSource.Side(
        members,
        tabs,
        values.containsKey("name") ? reading.text(values.get("name"), "name") : null,
        formula(values, "ease"),
        truth(values, "reversed"),
        formula(values, "start"),
        basted);
  }

  private void parts(
      YamlNode node, String key, List<SeamSource.Member> members, List<SeamSource.Tab> tabs) {
    List<YamlNode> nodes = reading.list(node, key);
    if (nodes.isEmpty() && node instanceof YamlNode.Items) {
      reading.findings().add(KeyCode.LIST_EMPTY, node.position(), "key", key);
    }
    for (YamlNode part : reading.bounded(nodes, key, reading.limits().entries())) {
      SeamSource.Member member = null;
      if (!(part instanceof YamlNode.Entries entries) || Reading.looksLikePlaceholder(entries)) {
        member = member(part, key, Map.of());
      } else if (has(entries, "edge")) {
        Map<String, YamlNode> values = section(part, Section.SEAM_EDGE);
        member = member(values.get("edge"), "edge", values);
      } else if (has(entries, "length")) {
        Map<String, YamlNode> values = section(part, Section.SEAM_LENGTH);
        member = member(values.get("length"), "length", values);
      } else if (has(entries, "tab")) {
        Map<String, YamlNode> values = section(part, Section.SEAM_TAB);
        SeamSource.Member width = member(values.get("tab"), "tab", Map.of());
        Formula at = formula(values, "at");
        if (width != null && at != null) {
          tabs.add(new SeamSource.Tab(width, at));
        }
      } else {
        reading.findings().add(SourceCode.SEAM_PART_WRONG, part.position());
      }
      if (member != null) {
        members.add(member);
      }
    }
  }

  private Map<String, YamlNode> section(YamlNode node, Section section) {
    return reading.section(node, section, MastheadReader.firstKey(node), "sides");
  }

  private static boolean has(YamlNode.Entries map, String key) {
    return map.entries().stream().anyMatch(entry -> entry.key().text().text().equals(key));
  }

  private SeamSource.Member member(YamlNode node, String key, Map<String, YamlNode> values) {
    SourceText text = reading.text(node, key);
    Formula formula = text == null ? null : reading.formula(text);
    Integer notch =
        values.containsKey("notch")
            ? reading.number(values.get("notch"), "notch", 1, 2)
            : Integer.valueOf(1);
    if (formula == null || notch == null) {
      return null;
    }
    return new SeamSource.Member(
        text,
        formula,
        formula(values, "from"),
        formula(values, "to"),
        truth(values, "reversed"),
        notch);
  }

  private Formula formula(Map<String, YamlNode> values, String key) {
    return values.containsKey(key) ? reading.formula(values.get(key), key) : null;
  }

  private boolean truth(Map<String, YamlNode> values, String key) {
    return values.containsKey(key) && Boolean.TRUE.equals(reading.truth(values.get(key), key));
  }
}
