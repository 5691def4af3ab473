package org.lapmark.text;

import java.util.List;

/**
 * A footnote.
 *
 * @param number its number within its manuscript, from 1
 * @param content what it says
 */
public record Footnote(int number, List<Block> content) {
  /** Copies the list. */
  public Footnote {
    content = List.copyOf(content);
  }
}
