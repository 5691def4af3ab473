package org.lapmark.check;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import org.lapmark.check.rule.AddedWords;
import org.lapmark.check.rule.CareCode;
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
import org.lapmark.wording.Wording;

class CareFaultsTest extends LabelledFaults {
  private static final DocumentLimits REACH =
      new DocumentLimits(List.of(), List.of(), text -> List.of());

  CareFaultsTest() {
    super(
        Path.of("src", "test", "resources", "org", "lapmark", "check", "care"),
        Arrays.stream(CareCode.values()).map(CareCode::id));
  }

  @Override
  protected Findings found(FaultCase fault, Path parent) throws IOException {
    Findings findings = new Findings();
    PatternSource source = fault.read(parent, findings);
    CareWords words = words(source.masthead().language());
    Rules.asWritten(new Written(source, AddedWords.NONE, words), findings);
    for (String size : source.sizes().sizes()) {
      Rules.inVariant(
          new Evaluated(Grader.grade(source, Variant.ofSize(size), findings), REACH, words),
          findings);
    }
    Findings ofCare = new Findings();
    ofCare.addAll(
        findings,
        finding -> Optional.of(finding).filter(one -> !(one.code() instanceof CheckCode)));
    return ofCare.joined("size", source.sizes().sizes());
  }

  /** Hints show how something is written, braces and all. */
  @Override
  protected boolean isFilledIn(String text) {
    return !text.matches("(?s).*\\{(?:name|word|kind|hazard|what|size|tool|task|by|stated)\\b.*");
  }

  /** The words of the templates; only English has some. */
  static CareWords words(Locale language) throws IOException {
    Map<String, String> messages = new TreeMap<>();
    if (language.getLanguage().equals("en")) {
      Properties properties = new Properties();
      try (var reader =
          Files.newBufferedReader(
              Path.of("templates", "words", "kinds", "en.properties"), StandardCharsets.UTF_8)) {
        properties.load(reader);
      }
      properties
          .stringPropertyNames()
          .forEach(key -> messages.put(key, properties.getProperty(key)));
    }
    return CareWords.of(new Wording(language, messages));
  }
}
