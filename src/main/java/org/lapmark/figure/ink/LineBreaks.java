package org.lapmark.figure.ink;

import java.util.ArrayList;
import java.util.List;

/** How the words of a label may be broken into lines. */
final class LineBreaks {
  private static final double LONGEST_LINE = 44;

  /** A label is broken only into lines that are longer than this on average. */
  private static final double SHORTEST_LINE = 15;

  private LineBreaks() {}

  /** The text in one line, and in two or three of like width where it is long. */
  static List<List<String>> of(Canvas.Wish wish, Canvas canvas) {
    List<List<String>> ways = new ArrayList<>();
    double width = canvas.width(wish.text());
    if (wish.ring() || width <= LONGEST_LINE) {
      ways.add(List.of(wish.text()));
    }
    if (!wish.ring()) {
      for (int count = 2; count <= 3; count++) {
        if (width > SHORTEST_LINE * count) {
          List<String> lines = divided(wish.text(), width / count, canvas);
          if (lines.size() == count) {
            ways.add(lines);
          }
        }
      }
      if (ways.isEmpty()) {
        ways.add(divided(wish.text(), LONGEST_LINE, canvas));
      }
    }
    return ways;
  }

  /** The text in as few lines of like width as come out no longer than they may be. */
  static List<String> within(String text, double widest, Canvas canvas) {
    double width = canvas.width(text);
    int most = text.split(" ").length;
    for (int count = Math.max(1, (int) Math.ceil(width / widest)); count <= most; count++) {
      List<String> lines = divided(text, width / count, canvas);
      if (lines.stream().allMatch(line -> canvas.width(line) <= widest)) {
        return lines;
      }
    }
    return List.of(text.split(" "));
  }

  private static List<String> divided(String text, double target, Canvas canvas) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      // A word goes where it leaves the line nearer to the target.
      if (!line.isEmpty()
          && canvas.width(longer) - target > target - canvas.width(line.toString())) {
        lines.add(line.toString());
        line = new StringBuilder(word);
      } else {
        line = new StringBuilder(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }
}
