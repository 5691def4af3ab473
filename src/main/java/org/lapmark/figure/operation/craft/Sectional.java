package org.lapmark.figure.operation.craft;

import java.util.List;
import java.util.stream.Stream;
import org.lapmark.source.key.Key;

/** A kind of operation that is shown in section, and from above as well where that is asked for. */
public abstract class Sectional extends Craft {
  /**
   * A kind of operation.
   *
   * @param word its key
   * @param named what it may be about
   * @param given what follows from that and is stated otherwise
   * @param needed what has to be stated in any case
   * @param free what may be stated
   */
  protected Sectional(
      String word, Named named, List<Key<?>> given, List<Key<?>> needed, List<Key<?>> free) {
    super(
        word,
        named,
        given,
        needed,
        Stream.<Key<?>>concat(free.stream(), Stream.of(Amounts.PLAN)).toList());
  }
}
