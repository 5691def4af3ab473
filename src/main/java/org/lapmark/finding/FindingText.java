package org.lapmark.finding;

import com.ibm.icu.text.MessageFormat;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/**
 * The program's own English for findings, read from {@code findings.properties} beside each code.
 *
 * <p>An instance keeps what it has read, for whoever writes many findings; it belongs to one
 * thread. The static methods read anew each time.
 */
public final class FindingText {
  /** The argument that counts in how many further places the same is amiss. */
  static final String MORE = "more";

  private static final String ELSEWHERE =
      "{message} The same stands in {more, plural, one {one more place} other {# more places}}.";

  private final Map<Class<?>, Properties> read = new HashMap<>();
  private final Map<String, MessageFormat> patterns = new HashMap<>();

  /** Has read nothing yet. */
  public FindingText() {}

  /**
   * What is wrong, as one sentence.
   *
   * @param finding the finding
   * @return the sentence
   * @throws IllegalStateException when the program's resource lacks the code
   */
  public static String message(Finding finding) {
    return new FindingText().messageOf(finding);
  }

  /**
   * What to do about it.
   *
   * @param finding the finding
   * @return the hint
   * @throws IllegalStateException when the program's resource lacks the code
   */
  public static String hint(Finding finding) {
    return new FindingText().hintOf(finding);
  }

  /**
   * What is wrong, as one sentence.
   *
   * @param finding the finding
   * @return the sentence
   * @throws IllegalStateException when the program's resource lacks the code
   */
  public String messageOf(Finding finding) {
    String message = text(finding, "message");
    if (!finding.arguments().containsKey(MORE)) {
      return message;
    }
    Map<String, Object> told = new HashMap<>();
    told.put("message", message);
    told.put(MORE, finding.arguments().get(MORE));
    return new MessageFormat(ELSEWHERE, Locale.ENGLISH).format(told);
  }

  /**
   * What to do about it.
   *
   * @param finding the finding
   * @return the hint
   * @throws IllegalStateException when the program's resource lacks the code
   */
  public String hintOf(Finding finding) {
    return text(finding, "hint");
  }

  private String text(Finding finding, String part) {
    Class<?> owner = finding.code().getClass();
    if (finding.code() instanceof Enum<?> constant) {
      owner = constant.getDeclaringClass();
    }
    Properties words = read.computeIfAbsent(owner, FindingText::read);
    String key = finding.code().id() + "." + part;
    String pattern = words.getProperty(key);
    if (pattern == null) {
      throw new IllegalStateException("no " + part + " for " + finding.code().id());
    }
    // Arguments are values, never patterns: braces and apostrophes in them stand for themselves.
    return patterns
        .computeIfAbsent(
            owner.getName() + ' ' + key, unused -> new MessageFormat(pattern, Locale.ENGLISH))
        .format(brief(finding.arguments()));
  }

  private static Map<String, Object> brief(Map<String, Object> arguments) {
    Map<String, Object> brief = new LinkedHashMap<>(arguments);
    brief.replaceAll((name, value) -> value instanceof String text ? ShortQuote.text(text) : value);
    return brief;
  }

  private static Properties read(Class<?> owner) {
    Properties words = new Properties();
    try (InputStream stream = owner.getResourceAsStream("findings.properties")) {
      if (stream == null) {
        throw new IllegalStateException("no findings.properties beside " + owner.getName());
      }
      words.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return words;
  }
}
