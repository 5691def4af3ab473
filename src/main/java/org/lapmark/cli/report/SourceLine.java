package org.lapmark.cli.report;

import org.lapmark.cli.console.Visible;
import org.lapmark.finding.Position;

/** A line of a source file with the part that is meant underlined. */
public final class SourceLine {
  private static final int TAB = 4;
  private static final int BEFORE = 40;
  private static final int MOST = 100;

  /** Escapes take more room than what they stand for. */
  private static final int MOST_COLUMNS = 120;

  private static final String CUT = "…";

  private SourceLine() {}

  /**
   * Two lines: the source and, below, {@code ^~~~} under what is meant. Tabs become spaces, long
   * lines are cut around the place.
   *
   * @param position a position with a line
   * @param margin what begins both lines
   * @return the lines, each ended by LF
   */
  static String underlined(Position position, String margin) {
    int[] points = position.lineText().codePoints().toArray();
    int from = Math.min(Math.max(position.column() - 1, 0), points.length);
    int to = Math.min(from + Math.max(1, position.length()), Math.max(points.length, from + 1));
    int first = first(points, from);
    int last = Math.min(points.length, first + MOST);
    StringBuilder line = new StringBuilder(first > 0 ? CUT : "");
    StringBuilder under = new StringBuilder(first > 0 ? " " : "");
    for (int i = first; i < Math.max(last, from + 1); i++) {
      if (i > from && Visible.width(line.toString()) >= MOST_COLUMNS) {
        last = i;
        break;
      }
      String shown;
      if (i >= points.length) {
        shown = "";
      } else if (points[i] == '\t') {
        shown = " ".repeat(TAB - Visible.width(line.toString()) % TAB);
      } else {
        shown = Visible.character(points[i]);
      }
      line.append(shown);
      int columns = i >= points.length ? 1 : Visible.width(shown);
      if (i == from) {
        // What is meant shows at least one mark, even if it takes no column of its own.
        under.append('^').append("~".repeat(Math.max(0, columns - 1)));
      } else if (i < to) {
        under.append((i < from ? " " : "~").repeat(columns));
      }
    }
    if (last < points.length) {
      line.append(CUT);
    }
    return margin + line.toString().stripTrailing() + "\n" + margin + under + "\n";
  }

  /** The first code point that is shown. */
  private static int first(int[] points, int from) {
    int first = from;
    int columns = 0;
    while (first > 0 && from - first < BEFORE) {
      columns +=
          points[first - 1] == '\t' ? TAB : Visible.width(Visible.character(points[first - 1]));
      if (columns > MOST_COLUMNS / 2) {
        break;
      }
      first--;
    }
    return first;
  }
}
