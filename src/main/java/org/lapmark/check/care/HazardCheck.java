package org.lapmark.check.care;

import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PrintedTexts;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;
import org.lapmark.source.CareSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingKind;

/** Every hazard has a caution. */
public final class HazardCheck {
  public static final Rule<Evaluated> RULE = new Rule<>(HazardCheck::run, CheckCode.HAZARD_UNKNOWN);

  private HazardCheck() {}

  static void run(Evaluated evaluated, Findings findings) {
    PatternSource source = evaluated.source();
    DocumentLimits reach = evaluated.reach();
    source
        .making()
        .tools()
        .forEach(tool -> check(tool.id().position(), tool.care(), reach, findings));
    PrintedTexts.things(source)
        .forEach(thing -> check(thing.id().position(), thing.care(), reach, findings));
    source
        .making()
        .use()
        .stated()
        .forEach(hazard -> check(hazard.position(), hazard.text(), reach, findings));
  }

  private static void check(Position id, CareSource care, DocumentLimits reach, Findings findings) {
    care.stated().forEach(hazard -> check(hazard.position(), hazard.text(), reach, findings));
    // Templates of somebody's own may lack what a kind brings.
    for (ThingKind kind : care.kinds()) {
      kind.hazards().forEach(hazard -> check(id, hazard, reach, findings));
    }
  }

  private static void check(
      Position position, String hazard, DocumentLimits reach, Findings findings) {
    if (!reach.hazards().contains(hazard)) {
      String nearest = NearestWord.of(hazard, reach.hazards()).orElse("");
      findings.add(
          CheckCode.HAZARD_UNKNOWN,
          position,
          "hazard",
          hazard,
          "nearest",
          nearest,
          "hasNearest",
          nearest.isEmpty() ? "no" : "yes",
          "known",
          Known.listed(reach.hazards()));
    }
  }
}
