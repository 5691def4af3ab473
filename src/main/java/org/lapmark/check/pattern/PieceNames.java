package org.lapmark.check.pattern;

import java.util.LinkedHashMap;
import java.util.Map;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Piece;
import org.lapmark.source.PieceSource;

/** Makers can tell pieces apart by their names, as printed in one variant. */
public final class PieceNames {
  public static final Rule<Evaluated> RULE =
      new Rule<>(PieceNames::run, CheckCode.PIECE_NAME_AGAIN);

  private PieceNames() {}

  static void run(Evaluated evaluated, Findings findings) {
    EvaluatedPattern pattern = evaluated.pattern();
    Map<Integer, Position> places = new LinkedHashMap<>();
    for (PieceSource source : pattern.source().pieces()) {
      places.put(source.number(), source.name().source().position());
    }
    Map<String, Integer> seen = new LinkedHashMap<>();
    for (Piece piece : pattern.pieces()) {
      Integer first =
          piece.cuts().isEmpty() ? null : seen.putIfAbsent(piece.name().strip(), piece.number());
      if (first != null && places.containsKey(piece.number())) {
        findings.add(
            CheckCode.PIECE_NAME_AGAIN,
            places.get(piece.number()),
            "first",
            Integer.toString(first),
            "second",
            Integer.toString(piece.number()),
            "name",
            piece.name(),
            "size",
            pattern.variant().size());
      }
    }
  }
}
