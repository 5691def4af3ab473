package org.lapmark.measure.print;

import com.ibm.icu.text.DecimalFormatSymbols;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.lapmark.measure.Unit;
import org.lapmark.wording.Wording;

/**
 * How numbers are written in one language.
 *
 * @param decimalMark what stands before decimals
 * @param symbols how the units of length are written, with a no-break space before them
 * @param squareCentimetres how the metric unit of area is written
 * @param squareInches how the inch unit of area is written
 * @param between what stands between the entries of a list
 * @param yes what is printed for what is so
 * @param no what is printed for what is not so
 */
public record NumberWords(
    String decimalMark,
    Map<Unit, String> symbols,
    String squareCentimetres,
    String squareInches,
    String between,
    String yes,
    String no) {
  /** Signs and the units' symbols alone, with a decimal point: right in any English document. */
  public static final NumberWords SYMBOLS =
      new NumberWords(".", Map.of(), "cm²", "in²", ", ", "✓", "–");

  /** Copies the map and fills in the units' symbols where it has none. */
  public NumberWords {
    Map<Unit, String> complete = new EnumMap<>(Unit.class);
    for (Unit unit : Unit.values()) {
      complete.put(unit, symbols.getOrDefault(unit, unit.symbol()));
    }
    symbols = Collections.unmodifiableMap(complete);
  }

  /**
   * The numbers of a document's language: its decimal mark from the locale; from its words, where
   * they are given, {@code unit.mm} and the other units, {@code unit.cm2}, {@code unit.in2}, {@code
   * list.between}, {@code truth.yes} and {@code truth.no}.
   *
   * @param wording the document's words
   * @return how its numbers are written
   */
  public static NumberWords of(Wording wording) {
    Map<Unit, String> symbols = new EnumMap<>(Unit.class);
    for (Unit unit : Unit.values()) {
      symbols.put(unit, text(wording, "unit." + unit.symbol(), unit.symbol()));
    }
    return new NumberWords(
        DecimalFormatSymbols.getInstance(wording.locale()).getDecimalSeparatorString(),
        symbols,
        text(wording, "unit.cm2", SYMBOLS.squareCentimetres),
        text(wording, "unit.in2", SYMBOLS.squareInches),
        text(wording, "list.between", SYMBOLS.between),
        text(wording, "truth.yes", SYMBOLS.yes),
        text(wording, "truth.no", SYMBOLS.no));
  }

  private static String text(Wording wording, String key, String otherwise) {
    return wording.messages().containsKey(key) ? wording.text(key) : otherwise;
  }
}
