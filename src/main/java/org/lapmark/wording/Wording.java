package org.lapmark.wording;

import com.ibm.icu.text.MessageFormat;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * The reader-facing words of one language, as ICU message patterns with named arguments. Immutable.
 *
 * @param locale the language and its region
 * @param messages patterns by key
 */
public record Wording(Locale locale, Map<String, String> messages) {
  /** Copies the map. */
  public Wording {
    messages = Collections.unmodifiableMap(new LinkedHashMap<>(messages));
  }

  /**
   * A text without arguments.
   *
   * @param key its key
   * @return the text
   * @throws WordingException when the bundle lacks the key, or the text can't be formed
   */
  public String text(String key) {
    return text(key, Map.of());
  }

  /**
   * A text with arguments.
   *
   * @param key its key
   * @param arguments values by name: strings and numbers
   * @return the text
   * @throws WordingException when the bundle lacks the key, or the text can't be formed
   */
  public String text(String key, Map<String, ?> arguments) {
    String pattern = messages.get(key);
    if (pattern == null) {
      throw new WordingException(locale, key);
    }
    if (isPlain(pattern)) {
      return pattern;
    }
    try {
      return new MessageFormat(pattern, locale).format(arguments);
    } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
      throw new WordingException(locale, key, e);
    }
  }

  /** Whether a pattern is its own text: it has no arguments, and no apostrophe, which may quote. */
  private static boolean isPlain(String pattern) {
    return pattern.indexOf('{') < 0 && pattern.indexOf('}') < 0 && pattern.indexOf('\'') < 0;
  }
}
