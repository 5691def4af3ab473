package org.lapmark.check.rule;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.lapmark.source.ThingKind;
import org.lapmark.wording.Wording;

/**
 * The words that names and steps are searched for, in one language. A language that has none finds
 * nothing.
 */
public final class CareWords {
  private static final String SOUGHT = ".sought";
  private static final String KIND = "kind.";
  private static final String USE = "use.";
  private static final Phrases NOTHING = Phrases.of(null);

  /** Those of a language that has none. */
  public static final CareWords NONE = new CareWords(Map.of());

  private final Map<String, Phrases> byKey;

  private CareWords(Map<String, Phrases> byKey) {
    this.byKey = Collections.unmodifiableMap(byKey);
  }

  /**
   * The words among those of the templates.
   *
   * @param wording the words of the pattern's language
   * @return those that are searched for
   */
  public static CareWords of(Wording wording) {
    Map<String, Phrases> byKey = new LinkedHashMap<>();
    wording
        .messages()
        .forEach(
            (key, words) -> {
              if (key.endsWith(SOUGHT)) {
                byKey.put(key, Phrases.of(words));
              }
            });
    return new CareWords(byKey);
  }

  /** The words of a list; nothing where the language has none. */
  public Phrases list(String key) {
    return byKey.getOrDefault(key, NOTHING);
  }

  /** Whether a name sounds like a kind. */
  public boolean sounds(ThingKind kind, String name) {
    return ofKind(kind).in(name);
  }

  /** What a kind is called. */
  public Phrases ofKind(ThingKind kind) {
    return list(KIND + kind.id() + SOUGHT);
  }

  /** The first hazardous kind that a name sounds like. */
  public Optional<ThingKind> soundsLike(String name, boolean tool) {
    for (ThingKind kind : ThingKind.values()) {
      if ((tool || kind.group() == ThingKind.Group.PART)
          && !kind.hazards().isEmpty()
          && sounds(kind, name)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /** What an article may be for, by the hazard of that use. */
  public Map<String, Phrases> uses() {
    Map<String, Phrases> uses = new LinkedHashMap<>();
    byKey.forEach(
        (key, words) -> {
          if (key.startsWith(USE)) {
            uses.put(key.substring(USE.length(), key.length() - SOUGHT.length()), words);
          }
        });
    return uses;
  }
}
