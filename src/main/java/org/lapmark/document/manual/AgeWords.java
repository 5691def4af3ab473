package org.lapmark.document.manual;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.Ages;
import org.lapmark.source.UseSource;
import org.lapmark.wording.Wording;

/** Says how old those are whom a size is made for, where not all sizes are for grown-ups. */
public final class AgeWords {
  private AgeWords() {}

  /**
   * The ages of a document.
   *
   * @param sizes the pattern in every size of the document
   * @return one text; sizes lead what isn't the same in all of them
   */
  public static Optional<String> of(List<EvaluatedPattern> sizes, Wording wording) {
    SizeWords words =
        new SizeWords(sizes.stream().map(size -> size.variant().size()).toList(), wording);
    List<String> told =
        words.led(sizes.stream().map(size -> of(size, wording).stream().toList()).toList());
    return told.isEmpty()
        ? Optional.empty()
        : Optional.of(String.join(wording.text("list.between"), told));
  }

  /** The ages of one size. */
  public static Optional<String> of(EvaluatedPattern pattern, Wording wording) {
    UseSource use = pattern.source().making().use();
    return use.isForYoung()
        ? Optional.of(text(use.agesOf(pattern.variant().size()), wording))
        : Optional.empty();
  }

  private static String text(Ages ages, Wording wording) {
    if (ages.equals(Ages.ADULTS)) {
      return wording.text("ages.adults");
    }
    String unit = ages.inMonths() ? "months" : "years";
    if (ages.last().isEmpty()) {
      return wording.text("ages.from", Map.of("first", ages.first(), "unit", unit));
    }
    double last = ages.last().getAsDouble();
    return last == ages.first()
        ? wording.text("ages.one", Map.of("first", last, "unit", unit))
        : wording.text("ages.range", Map.of("first", ages.first(), "last", last, "unit", unit));
  }
}
