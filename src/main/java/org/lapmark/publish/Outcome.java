package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * What came of one folder among several. Templates that take the place of the program's own come
 * last, if anything is wrong with them, or alone, if no document can be made of them.
 *
 * @param folder the pattern folder, or that of the templates, absolute
 * @param result files and findings; what was found before a failure
 * @param failure why the folder could not be finished for reasons outside its content: an {@link
 *     IOException}, or anything else for a fault of the program's own
 */
public record Outcome(Path folder, Result result, Optional<Throwable> failure) {
  /** Checks the components. */
  public Outcome {
    Objects.requireNonNull(folder);
    Objects.requireNonNull(result);
    Objects.requireNonNull(failure);
  }
}
