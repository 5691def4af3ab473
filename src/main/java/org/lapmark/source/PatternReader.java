package org.lapmark.source;

import java.io.IOException;
import java.nio.file.Path;
import org.lapmark.finding.Findings;

/** Reads a pattern folder. */
public final class PatternReader {
  private PatternReader() {}

  /**
   * Reads a folder.
   *
   * @param folder the folder
   * @param findings where problems go
   * @return what could be read, or null when {@code pattern.yaml} itself is missing or unreadable
   *     as YAML (which is then reported)
   * @throws IOException when the folder itself can't be read for reasons outside its content
   */
  public static PatternSource read(Path folder, Findings findings) throws IOException {
    throw new UnsupportedOperationException();
  }
}
