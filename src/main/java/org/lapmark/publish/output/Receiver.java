package org.lapmark.publish.output;

import java.io.IOException;

/** Takes the files that are made, and says what they are to be known by. */
public interface Receiver {
  /** Takes a file. */
  Manifest.Entry write(
      String name, String size, String paper, String kind, String choices, byte[] content)
      throws IOException;

  /** Takes a file of no other choices than the default. */
  default Manifest.Entry write(String name, String size, String paper, String kind, byte[] content)
      throws IOException {
    return write(name, size, paper, kind, "", content);
  }
}
