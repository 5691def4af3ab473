package org.lapmark.publish;

import java.nio.file.Path;
import java.util.List;
import org.lapmark.finding.Findings;

/**
 * What came of a folder.
 *
 * @param written the files written, sorted; empty when the folder has errors
 * @param findings everything found
 */
public record Result(List<Path> written, Findings findings) {
  /** Copies the list. */
  public Result {
    written = List.copyOf(written);
  }
}
