package org.lapmark.document.section;

import java.util.Optional;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.manual.Manual;
import org.lapmark.source.PatternSource;
import org.lapmark.text.Steps;

/**
 * What a document has to say, as far as sections hang on it.
 *
 * @param source the pattern
 * @param steps the steps
 * @param hazards the hazards
 * @param manual what is printed; nothing on a screen
 * @param map whether there is a page map
 */
public record Content(
    PatternSource source, Steps steps, Hazards hazards, Optional<Manual> manual, boolean map) {
  /** Whether the author has written such a note. */
  boolean hasNote(String name) {
    return source.notes().stream().anyMatch(note -> note.name().equals(name));
  }

  /** What is printed for one size: what differs by size as a whole is left to such documents. */
  Optional<Manual> ofOneSize() {
    return manual.filter(printed -> !printed.isOfSizes());
  }
}
