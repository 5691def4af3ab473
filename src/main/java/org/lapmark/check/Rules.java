package org.lapmark.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.check.care.ChildCheck;
import org.lapmark.check.care.HazardCheck;
import org.lapmark.check.care.IronCheck;
import org.lapmark.check.care.KindCheck;
import org.lapmark.check.care.TaskCheck;
import org.lapmark.check.care.ToolCheck;
import org.lapmark.check.care.UseCheck;
import org.lapmark.check.pattern.HardwareCheck;
import org.lapmark.check.pattern.LayerCheck;
import org.lapmark.check.pattern.PieceNames;
import org.lapmark.check.pattern.PropertyCheck;
import org.lapmark.check.pattern.SizeOrder;
import org.lapmark.check.pattern.UnusedCheck;
import org.lapmark.check.piece.AllowanceCheck;
import org.lapmark.check.piece.GrainCheck;
import org.lapmark.check.piece.LiningCheck;
import org.lapmark.check.piece.MarksApart;
import org.lapmark.check.piece.MarksInside;
import org.lapmark.check.piece.MatchPoints;
import org.lapmark.check.piece.PairCheck;
import org.lapmark.check.piece.SeamCheck;
import org.lapmark.check.piece.TrimCheck;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.Written;
import org.lapmark.check.text.BracesCheck;
import org.lapmark.check.text.GlyphCheck;
import org.lapmark.check.text.LabelCheck;
import org.lapmark.check.text.LikenessCheck;
import org.lapmark.check.text.TextCheck;
import org.lapmark.check.text.TranslationCheck;
import org.lapmark.check.text.WordsCheck;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;

/** All rules, in order, by what they need. */
public final class Rules {
  /** Rules that need no variant. */
  static final List<Rule<Written>> AS_WRITTEN =
      List.of(
          TranslationCheck.RULE,
          WordsCheck.RULE,
          ToolCheck.RULE,
          UnusedCheck.RULE,
          BracesCheck.RULE,
          LabelCheck.RULE,
          KindCheck.RULE,
          UseCheck.RULE);

  /** Rules that hold in each variant. */
  static final List<Rule<Evaluated>> IN_A_VARIANT =
      List.of(
          LiningCheck.RULE,
          AllowanceCheck.RULE,
          HardwareCheck.RULE,
          TrimCheck.RULE,
          GrainCheck.RULE,
          PairCheck.RULE,
          MarksInside.RULE,
          MarksApart.RULE,
          MatchPoints.RULE,
          SeamCheck.RULE,
          TextCheck.RULE,
          LikenessCheck.RULE,
          HazardCheck.RULE,
          GlyphCheck.RULE,
          PropertyCheck.RULE,
          PieceNames.RULE,
          IronCheck.RULE,
          LayerCheck.RULE,
          ChildCheck.RULE,
          TaskCheck.RULE);

  /** Rules that hold from size to size, the sizes of one choice of options in their order. */
  static final List<Rule<List<EvaluatedPattern>>> ACROSS_SIZES =
      List.of(SizeOrder.RULE, LikenessCheck.ACROSS_SIZES);

  private Rules() {}

  /**
   * Holds a pattern as written against the rules that need no variant.
   *
   * @param written the pattern as written
   * @param findings where breaches go
   */
  public static void asWritten(Written written, Findings findings) {
    AS_WRITTEN.forEach(rule -> rule.holding().accept(written, findings));
  }

  /**
   * Holds a pattern in one variant against the rules for that.
   *
   * @param evaluated the pattern in one variant
   * @param findings where breaches go
   */
  public static void inVariant(Evaluated evaluated, Findings findings) {
    IN_A_VARIANT.forEach(rule -> rule.holding().accept(evaluated, findings));
  }

  /**
   * Holds a pattern's sizes against each other, separately for each choice of options.
   *
   * @param patterns the pattern in several variants, in any order
   * @param findings where breaches go
   */
  public static void acrossSizes(List<EvaluatedPattern> patterns, Findings findings) {
    for (List<EvaluatedPattern> row : rows(patterns)) {
      ACROSS_SIZES.forEach(rule -> rule.holding().accept(row, findings));
    }
  }

  /** The variants by choice of options, each in the order of its sizes. */
  static List<List<EvaluatedPattern>> rows(List<EvaluatedPattern> patterns) {
    if (patterns.isEmpty() || patterns.get(0).source().sizes() == null) {
      return List.of();
    }
    List<String> sizes = patterns.get(0).source().sizes().sizes();
    Map<Map<String, String>, List<EvaluatedPattern>> byChoice = new LinkedHashMap<>();
    for (EvaluatedPattern pattern : patterns) {
      byChoice
          .computeIfAbsent(pattern.variant().choices(), unused -> new ArrayList<>())
          .add(pattern);
    }
    byChoice
        .values()
        .forEach(
            row ->
                row.sort(
                    Comparator.comparingInt(pattern -> sizes.indexOf(pattern.variant().size()))));
    return List.copyOf(byChoice.values());
  }
}
