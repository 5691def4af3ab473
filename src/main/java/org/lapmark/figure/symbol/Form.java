package org.lapmark.figure.symbol;

import java.util.List;
import java.util.function.Function;

/**
 * A form of things.
 *
 * @param id its name in a pattern
 * @param parts what can be shown of it alone, or how; the first is meant where nothing is said
 * @param reader makes the symbol of a thing’s measures
 */
public record Form(String id, List<String> parts, Function<Measures, Symbol> reader) {
  /** Copies the list. */
  public Form {
    parts = List.copyOf(parts);
  }

  static Form of(String id, Function<Measures, Symbol> reader) {
    return new Form(id, List.of(), reader);
  }

  /** The key of its words: what readers call it, or the part of it. */
  public String words(String part) {
    String word = "symbol." + id.replace('_', '-');
    return parts.isEmpty() ? word : word + '.' + part.replace('_', '-');
  }
}
