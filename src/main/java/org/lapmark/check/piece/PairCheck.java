package org.lapmark.check.piece;

import java.util.List;
import java.util.Locale;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.grade.piece.Piece;
import org.lapmark.source.PieceSource;
import org.lapmark.source.PieceSource.CutSource;

/**
 * Of pieces that come in pairs, from cloth with a wrong side, half are mirrored, or each is its own
 * mirror image, or its author has said that none is.
 */
public final class PairCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(PairCheck::run, PieceCode.PAIR_NOT_MIRRORED);

  private final Evaluated evaluated;
  private final Findings findings;

  private PairCheck(Evaluated evaluated, Findings findings) {
    this.evaluated = evaluated;
    this.findings = findings;
  }

  static void run(Evaluated evaluated, Findings findings) {
    PairCheck check = new PairCheck(evaluated, findings);
    for (Piece piece : evaluated.pattern().pieces()) {
      if (!piece.isFolded()) {
        evaluated
            .statements()
            .piece(Integer.toString(piece.number()))
            .ifPresent(source -> check.check(piece, source));
      }
    }
  }

  private void check(Piece piece, PieceSource source) {
    List<CutSource> unsaid = source.cuts().stream().filter(this::mayNeedMirror).toList();
    if (unsaid.isEmpty()) {
      return;
    }
    MirrorImage.Difference difference = MirrorImage.of(piece.shape());
    if (difference == MirrorImage.Difference.NONE) {
      return;
    }
    for (CutSource cut : unsaid) {
      int count = count(cut);
      findings.add(
          PieceCode.PAIR_NOT_MIRRORED,
          cut.count().text().position(),
          "number",
          piece.number(),
          "count",
          count,
          "half",
          count / 2,
          "material",
          cut.material().text(),
          "what",
          difference.name().toLowerCase(Locale.ROOT),
          "size",
          evaluated.size());
    }
  }

  /** Whether pieces come in pairs from what has a wrong side, and nothing is said of mirroring. */
  private boolean mayNeedMirror(CutSource cut) {
    int count = cut.reversed() == null ? count(cut) : 0;
    return count > 0
        && count % 2 == 0
        && !evaluated
            .pattern()
            .is(evaluated.statements().thing(cut.material().text()), "both_sides_alike");
  }

  /** How many are cut; it was whole when the piece was built. */
  private int count(CutSource cut) {
    return (int) Math.round(cut.count().evaluate(evaluated.pattern().scope()).number().orElse(0));
  }
}
