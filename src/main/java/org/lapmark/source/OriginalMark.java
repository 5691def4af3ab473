package org.lapmark.source;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.lapmark.finding.SourceText;

/**
 * A short mark of a file's text by which a translation says which state of the original it follows:
 * the first eight hexadecimal digits of the text's SHA-256, lines ended by LF.
 */
public final class OriginalMark {
  private static final int DIGITS = 8;

  private OriginalMark() {}

  /**
   * The mark of the file in which a text stands.
   *
   * @param text any text of the file
   * @return eight lower-case hexadecimal digits
   */
  public static String of(SourceText text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256")
              .digest(text.file().content().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash).substring(0, DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
