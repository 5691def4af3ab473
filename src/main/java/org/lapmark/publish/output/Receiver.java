package org.lapmark.publish.output;

import java.io.IOException;

/** Takes the files that are made, and says what they are to be known by. */
public interface Receiver {
  /**
   * Takes a file.
   *
   * @param kind what it is, as the manifest calls it
   */
  Manifest.Entry write(
      String name, String size, String paper, String kind, String choices, byte[] content)
      throws IOException;
}
