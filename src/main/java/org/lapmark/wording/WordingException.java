package org.lapmark.wording;

import java.util.Locale;
import java.util.Objects;

/** A text that isn't there, or can't be formed. */
public final class WordingException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;
  private final String key;
  private final Locale locale;

  WordingException(Locale locale, String key) {
    super("no wording for " + key);
    this.locale = locale;
    this.key = Objects.requireNonNull(key);
  }

  WordingException(Locale locale, String key, RuntimeException cause) {
    super(cause.getMessage() == null ? cause.toString() : cause.getMessage(), cause);
    this.locale = locale;
    this.key = Objects.requireNonNull(key);
  }

  /**
   * The text's key.
   *
   * @return the key
   */
  public String key() {
    return key;
  }

  /**
   * The language that it was wanted in.
   *
   * @return the language
   */
  public Locale locale() {
    return locale;
  }

  /**
   * Whether there is no such text; otherwise there is, and it can't be formed.
   *
   * @return whether the bundle lacks the key
   */
  public boolean isMissing() {
    return getCause() == null;
  }
}
