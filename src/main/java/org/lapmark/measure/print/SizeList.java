package org.lapmark.measure.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.lapmark.measure.Variant;

/** One expression's values in several variants, as one text for a document of all sizes. */
public final class SizeList {
  private SizeList() {}

  /**
   * The values led by the names of their variants, such as {@code S 200 mm, M 240 mm}; or one value
   * alone where all are printed alike. A variant named like an earlier one with the same text is
   * not repeated.
   *
   * @param values the same expression in several variants, in the order to print them
   * @param name what a variant is called
   * @param afterName what stands between a name and its value; best a no-break space
   * @param between what stands between one value and the next name
   * @return the text; empty when there are no values
   */
  public static String text(
      List<PrintedValue> values, Function<Variant, String> name, String afterName, String between) {
    if (values.stream().map(PrintedValue::text).distinct().count() <= 1) {
      return values.isEmpty() ? "" : values.get(0).text();
    }
    List<String> entries = new ArrayList<>();
    for (PrintedValue value : values) {
      String entry = name.apply(value.variant()) + afterName + value.text();
      if (!entries.contains(entry)) {
        entries.add(entry);
      }
    }
    return String.join(between, entries);
  }

  /**
   * The values led by the names of their sizes.
   *
   * @param values the same expression in several variants, in the order to print them
   * @param afterName what stands between a name and its value; best a no-break space
   * @param between what stands between one value and the next name
   * @return the text; empty when there are no values
   */
  public static String text(List<PrintedValue> values, String afterName, String between) {
    return text(values, Variant::size, afterName, between);
  }
}
