package org.lapmark.check.text;

import java.util.List;
import java.util.stream.Collectors;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.finding.Findings;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.text.Block;
import org.lapmark.text.Inline;
import org.lapmark.text.PlainText;
import org.lapmark.text.Printing;

/** A table has room for the longest word of each of its columns. */
record TableCheck(String size, Printing printing, DocumentLimits reach, Findings findings) {
  /** What tables of a step have beside its number, and what is left between columns. */
  private static final double ROOM = 158;

  private static final double GAP = 4;

  void check(Block.Table table) {
    double width = 0;
    for (int column = 0; column < table.columns().size(); column++) {
      double widest = longest(table.head().get(column));
      for (List<List<Inline>> row : table.rows()) {
        // A row that is too short ends with cells that have nothing in them.
        widest = Math.max(widest, column < row.size() ? longest(row.get(column)) : 0);
      }
      width += widest + GAP;
    }
    if (width > ROOM) {
      findings.add(
          CheckCode.TABLE_TOO_WIDE,
          table.position(),
          "columns",
          table.columns().size(),
          "width",
          Long.toString(Math.round(width)),
          "room",
          Long.toString(Math.round(ROOM)),
          "size",
          size);
    }
  }

  private double longest(List<Inline> cell) {
    PlainText plain =
        new PlainText(
            value ->
                printing.of(value).stream()
                    .map(PrintedValue::text)
                    .collect(Collectors.joining(" ")),
            reference -> " ");
    double longest = 0;
    // A line may end at a space, behind a hyphen, and where the author says so.
    for (String word : plain.inlines(cell).split("[ \\n\u00ad\u200b]+|(?<=[-\u2013\u2014])")) {
      longest = Math.max(longest, reach.width().applyAsDouble(word));
    }
    return longest;
  }
}
