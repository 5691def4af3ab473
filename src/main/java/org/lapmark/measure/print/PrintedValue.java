package org.lapmark.measure.print;

import java.util.List;
import java.util.stream.Collectors;
import org.lapmark.finding.Position;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;

/**
 * An expression as a reader sees it, kept with all that it came from until the last writer.
 *
 * @param expression the expression as written
 * @param variant the variant it was evaluated in
 * @param exact the exact value
 * @param text the printed text
 * @param position where the expression stands
 */
public record PrintedValue(
    String expression, Variant variant, Value exact, String text, Position position) {
  /**
   * What readers see of a text with its values.
   *
   * @param runs strings and printed values in order
   * @return one string
   */
  public static String text(List<?> runs) {
    return runs.stream()
        .map(run -> run instanceof PrintedValue value ? value.text() : run.toString())
        .collect(Collectors.joining());
  }
}
