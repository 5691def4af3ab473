package org.lapmark.grade;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.lapmark.check.Rules;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Findings;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.measure.Variant;
import org.lapmark.source.FaultCase;
import org.lapmark.source.LabelledFaults;
import org.lapmark.source.PatternSource;
import org.lapmark.source.derived.DerivedCode;
import org.lapmark.source.mark.MarkCode;

/**
 * What shows in a pattern's variants: panels have codes of their own, and so have the rules that
 * look at what a variant comes to.
 */
class GradeFaultsTest extends LabelledFaults {
  private static final DocumentLimits REACH =
      new DocumentLimits(List.of(), List.of(), text -> List.of());

  /** What shows before anything is computed. */
  private static final List<FindingCode> READ =
      List.of(
          DerivedCode.DISTANCE_MISSING,
          DerivedCode.CONSTRUCTION_WRONG,
          MarkCode.MARK_STATEMENT,
          MarkCode.PLEAT_UNSTATED);

  GradeFaultsTest() {
    super(Path.of("src", "test", "resources", "org", "lapmark", "grade"), codes());
  }

  private static Stream<String> codes() {
    Stream<FindingCode> stated =
        Stream.<FindingCode[]>of(DerivedCode.values(), MarkCode.values()).flatMap(Arrays::stream);
    return Stream.<FindingCode>concat(
            Stream.<FindingCode[]>of(GradeCode.values(), PieceCode.values())
                .flatMap(Arrays::stream),
            stated.filter(code -> !READ.contains(code)))
        .map(FindingCode::id);
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
      EvaluatedPattern pattern = Grader.grade(source, variant, own);
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
