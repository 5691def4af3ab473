package org.lapmark.check;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.check.rule.AddedWords;
import org.lapmark.check.rule.CareCode;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.source.FaultCase;
import org.lapmark.source.LabelledFaults;
import org.lapmark.source.PatternSource;

class CheckFaultsTest extends LabelledFaults {
  static final DocumentLimits REACH =
      new DocumentLimits(
          List.of("cutting", "map"),
          List.of("blades", "load", "rivets", "iron"),
          CheckFaultsTest::missing,
          List.of("fusible"),
          List.of("not"),
          word -> word.length() * 2.0);

  /**
   * As if the templates had words in every language but Welsh, and dates and labels were in the
   * signs of the language.
   */
  static final AddedWords ADDED =
      new AddedWords(
          locale -> locale.getLanguage().equals("cy") ? List.of("cover.title") : List.of(),
          locale -> locale.getLanguage().equals("ja") ? Map.of("cover.title", "龍") : Map.of(),
          (date, locale) -> locale.getLanguage().equals("ja") ? "龍" : "a day",
          CheckFaultsTest::missing);

  CheckFaultsTest() {
    // Translations have cases of their own.
    super(
        Path.of("src", "test", "resources", "org", "lapmark", "check"),
        Arrays.stream(CheckCode.values())
            .map(CheckCode::id)
            .filter(id -> !id.startsWith("translation-")));
  }

  /** As if the fonts had everything but these. */
  private static List<String> missing(String text) {
    List<String> missing = new ArrayList<>();
    for (String sign : List.of("✂", "龍")) {
      if (text.contains(sign)) {
        missing.add(sign);
      }
    }
    return missing;
  }

  /** Some hints say which placeholder to write. */
  @Override
  protected boolean isFilledIn(String text) {
    return super.isFilledIn(text.replaceAll("“\\{[^{}]+ as [^{}]+\\}”", ""));
  }

  @Override
  protected Findings found(FaultCase fault, Path parent) throws IOException {
    Findings findings = new Findings();
    PatternSource source = fault.read(parent, findings);
    Rules.asWritten(new Written(source, ADDED, CareWords.NONE), findings);
    List<EvaluatedPattern> sizes = new ArrayList<>();
    for (String size : source.sizes().sizes()) {
      sizes.add(Grader.grade(source, Variant.ofSize(size), findings));
      Rules.inVariant(new Evaluated(sizes.get(sizes.size() - 1), REACH, CareWords.NONE), findings);
    }
    Rules.acrossSizes(sizes, findings);
    Findings ofRules = new Findings();
    ofRules.addAll(
        findings, finding -> Optional.of(finding).filter(one -> !(one.code() instanceof CareCode)));
    return ofRules.joined("size", source.sizes().sizes()).causes();
  }
}
