package org.lapmark.check;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Findings;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.source.FaultCase;
import org.lapmark.source.LabelledFaults;
import org.lapmark.source.PatternSource;

class TranslationFaultsTest extends LabelledFaults {
  private static final DocumentLimits REACH =
      new DocumentLimits(List.of(), List.of(), text -> List.of());

  TranslationFaultsTest() {
    super(
        Path.of("src", "test", "resources", "org", "lapmark", "check", "translation"),
        Arrays.stream(CheckCode.values())
            .map(CheckCode::id)
            .filter(id -> id.startsWith("translation-")));
  }

  @Override
  protected Findings found(FaultCase fault, Path parent) throws IOException {
    Findings findings = new Findings();
    PatternSource source = fault.read(parent, findings);
    Rules.asWritten(new Written(source), findings);
    for (String size : source.sizes().sizes()) {
      Rules.inVariant(
          new Evaluated(
              Grader.grade(source, Variant.ofSize(size), findings), REACH, CareWords.NONE),
          findings);
    }
    return findings;
  }
}
