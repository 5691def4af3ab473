package org.lapmark.seam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A line of the table of a seam's notches: what stands on the first side and what lies on it on
 * another.
 *
 * @param side the index of the other side, from 1
 * @param first the mark of the first side, if any
 * @param second the mark of the other side, if any
 * @param verdict what is to be said of them
 * @param difference by how much they miss each other beyond what ease explains, in millimetres,
 *     signed; 0 without a partner
 */
public record NotchLine(
    int side,
    Optional<SeamMark> first,
    Optional<SeamMark> second,
    Verdict verdict,
    double difference) {
  /** What is to be said of a notch. */
  public enum Verdict {
    /** It lies on its partner. */
    COINCIDES,
    /** It nearly meets what was meant to be its partner. */
    MISSES,
    /** It has no partner. */
    ALONE
  }

  static List<NotchLine> of(int side, NotchMatching matching) {
    List<NotchLine> lines = new ArrayList<>();
    matching.pairs().forEach(pair -> lines.add(of(side, pair, Verdict.COINCIDES)));
    matching.apart().forEach(pair -> lines.add(of(side, pair, Verdict.MISSES)));
    for (SeamMark mark : matching.first()) {
      if (matching.apart().stream().noneMatch(pair -> pair.first().equals(mark))) {
        lines.add(new NotchLine(side, Optional.of(mark), Optional.empty(), Verdict.ALONE, 0));
      }
    }
    for (SeamMark mark : matching.second()) {
      if (matching.apart().stream().noneMatch(pair -> pair.second().equals(mark))) {
        lines.add(new NotchLine(side, Optional.empty(), Optional.of(mark), Verdict.ALONE, 0));
      }
    }
    lines.sort(Comparator.comparingDouble(NotchLine::at));
    return lines;
  }

  private static NotchLine of(int side, NotchMatching.Pair pair, Verdict verdict) {
    return new NotchLine(
        side, Optional.of(pair.first()), Optional.of(pair.second()), verdict, pair.difference());
  }

  private double at() {
    return first.or(() -> second).orElseThrow().at();
  }
}
