package org.lapmark.finding;

import com.ibm.icu.text.MessageFormat;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;

/**
 * The program's own English for findings, read from {@code findings.properties} beside each code.
 */
public final class FindingText {
  private FindingText() {}

  /**
   * What is wrong, as one sentence.
   *
   * @param finding the finding
   * @return the sentence
   * @throws IllegalStateException when the program's resource lacks the code
   */
  public static String message(Finding finding) {
    return text(finding, "message");
  }

  /**
   * What to do about it.
   *
   * @param finding the finding
   * @return the hint
   * @throws IllegalStateException when the program's resource lacks the code
   */
  public static String hint(Finding finding) {
    return text(finding, "hint");
  }

  private static String text(Finding finding, String part) {
    Class<?> owner = finding.code().getClass();
    if (finding.code() instanceof Enum<?> constant) {
      owner = constant.getDeclaringClass();
    }
    Properties words = new Properties();
    try (InputStream stream = owner.getResourceAsStream("findings.properties")) {
      if (stream == null) {
        throw new IllegalStateException("no findings.properties beside " + owner.getName());
      }
      words.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String pattern = words.getProperty(finding.code().id() + "." + part);
    if (pattern == null) {
      throw new IllegalStateException("no " + part + " for " + finding.code().id());
    }
    return new MessageFormat(pattern, Locale.ENGLISH).format(finding.arguments());
  }
}
