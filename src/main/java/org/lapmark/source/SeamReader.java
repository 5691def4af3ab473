package org.lapmark.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;

/** Reads the seams. */
final class SeamReader {
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
    Formula ease = values.containsKey("ease") ? reading.formula(values.get("ease"), "ease") : null;
    Formula tolerance =
        values.containsKey("tolerance")
            ? reading.formula(values.get("tolerance"), "tolerance")
            : null;
    if (!values.containsKey("sides")) {
      return null;
    }
    YamlNode sidesNode = values.get("sides");
    List<YamlNode> nodes = reading.list(sidesNode, "sides");
    if (nodes.size() < 2 && sidesNode instanceof YamlNode.Items) {
      reading.findings().add(SourceCode.SEAM_SIDES, name.position(), "name", name.text());
    }
    List<SeamSource.Side> sides = new ArrayList<>();
    for (YamlNode side : reading.bounded(nodes, "sides", reading.limits().entries())) {
      List<SeamSource.Member> members = new ArrayList<>();
      for (SourceText text : reading.texts(side, "sides")) {
        Formula formula = reading.formula(text);
        if (formula != null) {
          members.add(new SeamSource.Member(text, formula));
        }
      }
      sides.add(new SeamSource.Side(members));
    }
    return new SeamSource(name, sides, ease, tolerance);
  }
}
