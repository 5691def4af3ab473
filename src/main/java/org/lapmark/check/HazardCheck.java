package org.lapmark.check;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.Nearest;
import org.lapmark.finding.SourceText;
import org.lapmark.source.PatternSource;

/** Every hazard has a caution. */
final class HazardCheck {
  private HazardCheck() {}

  static void run(PatternSource source, Reach reach, Findings findings) {
    List<SourceText> hazards = new ArrayList<>();
    source.making().tools().forEach(tool -> hazards.addAll(tool.hazards()));
    PrintedTexts.things(source).forEach(thing -> hazards.addAll(thing.hazards()));
    hazards.addAll(source.making().useHazards());
    for (SourceText hazard : hazards) {
      if (!reach.hazards().contains(hazard.text())) {
        String nearest = Nearest.of(hazard.text(), reach.hazards()).orElse("");
        findings.add(
            CheckCode.HAZARD_UNKNOWN,
            hazard.position(),
            "hazard",
            hazard.text(),
            "nearest",
            nearest,
            "hasNearest",
            nearest.isEmpty() ? "no" : "yes",
            "known",
            Known.listed(reach.hazards()));
      }
    }
  }
}
