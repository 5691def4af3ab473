package org.lapmark.source;

import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Ref;

/**
 * A named formula, or a value that a condition decides.
 *
 * @param name its name
 * @param formula what it is; where it is solved for, the condition, which is an equation. Null if
 *     that couldn't be understood, which was reported
 * @param solving where it is looked for, or null where the formula says what it is
 */
public record MeasureSource(SourceText name, Formula formula, Solving solving) {
  /** Its identity. */
  public Ref ref() {
    return Ref.of(Ref.Kind.MEASURE, name.text());
  }

  /**
   * A named formula.
   *
   * @param name its name
   * @param formula what it is
   */
  public MeasureSource(SourceText name, Formula formula) {
    this(name, formula, null);
  }

  /**
   * Where a value is looked for.
   *
   * @param from the least it may be
   * @param to the most it may be
   * @param tolerance how far the condition's sides may be apart; null for 0.01 mm, mm² or degrees,
   *     or a millionth of a plain number
   */
  public record Solving(Formula from, Formula to, Formula tolerance) {}
}
