package org.lapmark.publish.output;

import java.util.List;
import java.util.Optional;
import org.lapmark.print.paper.Paper;

/**
 * For what a file is made.
 *
 * @param size the size it is for; nothing for several
 * @param sizes the sizes it is for, if it is for several; empty for all
 * @param choices what it chooses other than by default; empty for the default
 * @param paper the paper it is for; nothing for none
 */
public record Purpose(
    Optional<String> size, List<String> sizes, String choices, Optional<Paper> paper) {
  /** Copies the list. */
  public Purpose {
    sizes = List.copyOf(sizes);
  }

  /** One size. */
  public static Purpose ofSize(String size, String choices) {
    return new Purpose(Optional.of(size), List.of(), choices, Optional.empty());
  }

  /** Several sizes, or all of them where none is named. */
  public static Purpose ofSizes(List<String> sizes, String choices) {
    return new Purpose(Optional.empty(), sizes, choices, Optional.empty());
  }

  /** The same on a paper. */
  public Purpose on(Paper one) {
    return new Purpose(size, sizes, choices, Optional.of(one));
  }
}
