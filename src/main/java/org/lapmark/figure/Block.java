package org.lapmark.figure;

import java.util.List;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;

/** A value in a figure's block, with its place. */
sealed interface Block {
  /** Where it stands. */
  Position position();

  /**
   * A word, a number or a text.
   *
   * @param text its characters with their places
   * @param position where it stands, also when it is empty
   */
  record Text(SourceText text, Position position) implements Block {}

  /**
   * A list.
   *
   * @param items its values
   * @param position where it begins
   */
  record Items(List<Block> items, Position position) implements Block {}

  /**
   * A map, whose keys may still be repeated.
   *
   * @param entries its entries in order
   * @param position where it begins
   */
  record Entries(List<Entry> entries, Position position) implements Block {}

  /**
   * A key and its value.
   *
   * @param key the key
   * @param value the value
   */
  record Entry(Text key, Block value) {}
}
