package org.lapmark.grade;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.lapmark.check.CareWords;
import org.lapmark.check.DocumentLimits;
import org.lapmark.check.Evaluated;
import org.lapmark.check.Rules;
import org.lapmark.finding.Findings;
import org.lapmark.measure.Variant;
import org.lapmark.source.FaultCase;
import org.lapmark.source.LabelledFaults;
import org.lapmark.source.PatternSource;

/** Panels have codes of their own, of which some show only in a pattern's variants. */
class GradeFaultsTest extends LabelledFaults {
  private static final DocumentLimits REACH =
      new DocumentLimits(List.of(), List.of(), text -> List.of());

  GradeFaultsTest() {
    super(
        Path.of("src", "test", "resources", "org", "lapmark", "grade"),
        Arrays.stream(GradeCode.values()).map(GradeCode::id));
  }

  @Override
  protected Findings found(FaultCase fault, Path parent) throws IOException {
    Findings findings = new Findings();
    PatternSource source = fault.read(parent, findings);
    Variants variants = new Variants(source, findings);
    List<Variant> all = variants.all();
    List<Findings> found = new ArrayList<>();
    Conditions conditions = new Conditions(source);
    for (Variant variant : all) {
      Findings own = new Findings();
      GradedPattern pattern = Grader.grade(source, variant, own);
      Rules.inVariant(new Evaluated(pattern, REACH, CareWords.NONE), own);
      conditions.see(pattern);
      found.add(own);
    }
    variants.join(found, all);
    conditions.report(variants.neverChosen(), variants.isComplete(), findings);
    return source.sizes() == null
        ? findings.causes()
        : findings.joined("size", source.sizes().sizes()).causes();
  }
}
