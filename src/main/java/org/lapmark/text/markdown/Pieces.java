package org.lapmark.text.markdown;

import java.util.Arrays;
import org.lapmark.finding.SourceText;

/** Puts stretches of a text together as one text whose characters still know their places. */
final class Pieces {
  private final SourceText whole;
  private final StringBuilder text = new StringBuilder();
  private int[] offsets = new int[64];
  private int end;

  Pieces(SourceText whole) {
    this.whole = whole;
  }

  void add(int from, int to) {
    for (int at = from; at < to; at++) {
      append(whole.text().charAt(at), at);
    }
    end = to;
  }

  /** Adds a line end, which stands behind what was added last. */
  void lineEnd() {
    append('\n', end);
  }

  /** Says where the next line end stands when nothing has been added before it. */
  void at(int place) {
    end = place;
  }

  private void append(char c, int at) {
    if (text.length() + 1 >= offsets.length) {
      offsets = Arrays.copyOf(offsets, offsets.length * 2);
    }
    offsets[text.length()] = whole.offset(at);
    text.append(c);
  }

  SourceText joined() {
    int[] all = Arrays.copyOf(offsets, text.length() + 1);
    all[text.length()] = whole.offset(end);
    return SourceText.mapped(whole.file(), text.toString(), all);
  }
}
