package org.lapmark.cli.report;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Paths as URI references (RFC 3986). */
final class PathUri {
  private PathUri() {}

  /** Whether a character stands for itself in the path of a URI. */
  static boolean isPlain(char c) {
    return c >= 'a' && c <= 'z'
        || c >= 'A' && c <= 'Z'
        || c >= '0' && c <= '9'
        || "-._~/".indexOf(c) >= 0;
  }

  /** A path as a URI reference (RFC 3986), absolute if the path is. */
  static String of(String path) {
    StringBuilder uri = new StringBuilder();
    if (path.startsWith("/")) {
      uri.append("file://");
    } else if (path.length() > 1 && path.charAt(1) == ':') {
      uri.append("file:///");
    }
    for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xFF);
      if (isPlain(c)) {
        uri.append(c);
      } else {
        uri.append(String.format(Locale.ROOT, "%%%02X", (int) c));
      }
    }
    return uri.toString();
  }
}
