package org.lapmark.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.check.rule.CareCode;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.source.FaultCase;
import org.lapmark.source.PatternSource;

class RulesTest {
  @TempDir Path folder;

  private static List<Rule<?>> all() {
    return Stream.<List<? extends Rule<?>>>of(
            Rules.AS_WRITTEN, Rules.IN_A_VARIANT, Rules.ACROSS_SIZES)
        .<Rule<?>>flatMap(List::stream)
        .toList();
  }

  @Test
  void everyCodeIsOfOneRule() {
    assertEquals(
        Stream.<FindingCode[]>of(CheckCode.values(), CareCode.values(), PieceCode.values())
            .flatMap(Stream::of)
            .map(FindingCode::id)
            .sorted()
            .toList(),
        all().stream()
            .flatMap(rule -> rule.codes().stream())
            .filter(RulesTest::isOfRules)
            .map(FindingCode::id)
            .sorted()
            .toList());
  }

  @Test
  void everyRuleIsListedOnce() throws IllegalAccessException {
    Set<Rule<?>> listed = Collections.newSetFromMap(new IdentityHashMap<>());
    listed.addAll(all());
    assertEquals(all().size(), listed.size());
    int stated = 0;
    for (JavaClass type : new ClassFileImporter().importPackagesOf(Rules.class)) {
      for (JavaField field : type.getFields()) {
        if (field.getRawType().isEquivalentTo(Rule.class)) {
          assertTrue(listed.contains(field.reflect().get(null)), field.getFullName());
          stated++;
        }
      }
    }
    assertEquals(listed.size(), stated);
  }

  /** Every code is said by the rule that states it, in some labelled fault, and by no other. */
  @ParameterizedTest
  @ValueSource(strings = {"check", "check/care", "check/translation", "grade"})
  void everyRuleSaysWhatItStates(String topic) throws IOException {
    Map<String, Integer> ruleOf = new TreeMap<>();
    for (int i = 0; i < all().size(); i++) {
      for (FindingCode code : all().get(i).codes()) {
        ruleOf.put(code.id(), i);
      }
    }
    Path resources = Path.of("src", "test", "resources", "org", "lapmark", topic);
    Map<String, Integer> said = new TreeMap<>();
    for (FaultCase fault : FaultCase.all(resources)) {
      Findings findings = new Findings();
      PatternSource source = fault.read(Files.createTempDirectory(folder, "case"), findings);
      CareWords sought = CareFaultsTest.words(source.masthead().language());
      Written written = new Written(source, CheckFaultsTest.ADDED, sought);
      listen(Rules.AS_WRITTEN, written, findings, said);
      List<EvaluatedPattern> sizes = new ArrayList<>();
      for (String size : source.sizes().sizes()) {
        sizes.add(Grader.grade(source, Variant.ofSize(size), findings));
        Evaluated evaluated =
            new Evaluated(sizes.get(sizes.size() - 1), CheckFaultsTest.REACH, sought);
        listen(Rules.IN_A_VARIANT, evaluated, findings, said);
      }
      listen(Rules.ACROSS_SIZES, sizes, findings, said);
    }
    said.forEach((code, rule) -> assertEquals(ruleOf.get(code), rule, code));
    assertTrue(said.size() > 3, said.toString());
  }

  private static <I> void listen(
      List<Rule<I>> rules, I shown, Findings findings, Map<String, Integer> said) {
    for (Rule<I> rule : rules) {
      Set<Finding> before = new LinkedHashSet<>(findings.sorted());
      rule.holding().accept(shown, findings);
      for (Finding finding : findings.sorted()) {
        if (isOfRules(finding.code()) && !before.contains(finding)) {
          Integer other = said.put(finding.code().id(), all().indexOf(rule));
          assertTrue(other == null || other == all().indexOf(rule), finding.code().id());
        }
      }
    }
  }

  /** Whether only rules say it: what can't even be made is said by floors below as well. */
  static boolean isOfRules(FindingCode code) {
    return code instanceof CheckCode || code instanceof CareCode || code instanceof PieceCode;
  }
}
