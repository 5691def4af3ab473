package org.lapmark.document;

import java.io.IOException;
import org.lapmark.finding.Findings;

/** A file as it is made of values; each kind says here how its bytes come about. */
@FunctionalInterface
public interface Document {
  /**
   * Makes the file.
   *
   * @param writer has templates, words and fonts
   * @param findings where problems of texts, values and figures go; with an error among them, the
   *     file has a gap
   * @return the file's bytes
   */
  byte[] write(DocumentWriter writer, Findings findings) throws IOException;
}
