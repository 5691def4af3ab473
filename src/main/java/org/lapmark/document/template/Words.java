package org.lapmark.document.template;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.lapmark.finding.Position;
import org.lapmark.wording.Wording;

/**
 * Finds the words of a language among the templates: every {@code en.properties} below {@code
 * words/}, over it the language's file, over that its region's, in each folder.
 */
public final class Words {
  private static final String FOLDER = "words/";
  private static final Locale BASE = Locale.ENGLISH;

  /** How the names of words end that are looked for and never printed. */
  private static final String SOUGHT = ".sought";

  private Words() {}

  public static Wording of(Templates templates, Locale locale) {
    Map<String, String> messages = in(templates, name(BASE));
    if (!isBase(locale)) {
      // What is looked for in an author's text is of use in its own language alone.
      messages.keySet().removeIf(key -> key.endsWith(SOUGHT));
    }
    names(locale).stream()
        .filter(name -> !name.equals(name(BASE)))
        .forEach(name -> messages.putAll(in(templates, name)));
    return new Wording(locale, messages);
  }

  /**
   * The words that a language only has in English.
   *
   * @return their names, sorted
   */
  public static List<String> lacking(Templates templates, Locale locale) {
    if (isBase(locale)) {
      return List.of();
    }
    Map<String, String> lacking = in(templates, name(BASE));
    for (String name : names(locale)) {
      if (!name.equals(name(BASE))) {
        lacking.keySet().removeAll(in(templates, name).keySet());
      }
    }
    return List.copyOf(lacking.keySet());
  }

  private static boolean isBase(Locale locale) {
    return locale.getLanguage().equals(BASE.getLanguage());
  }

  /** Where a word stands, or would have to stand. */
  static Position place(Templates templates, Locale locale, String key) {
    Position place = Position.ofFile(templates.display(FOLDER + name(BASE)));
    for (String name : names(locale)) {
      for (String path : paths(templates, name)) {
        for (PropertyFile.Entry entry : PropertyFile.entries(templates.text(path))) {
          if (entry.key().equals(key)) {
            place = templates.line(path, entry.line());
          }
        }
      }
    }
    return place;
  }

  /** Whether a file has words in it. */
  static boolean isIn(String path) {
    return path.startsWith(FOLDER) && path.endsWith(".properties");
  }

  /** Whether a file's words are those that every language falls back on. */
  static boolean isBase(String path) {
    return isIn(path) && path.substring(path.lastIndexOf('/') + 1).equals(name(BASE));
  }

  private static List<String> paths(Templates templates, String name) {
    return templates.files().keySet().stream()
        .filter(path -> isIn(path) && path.substring(path.lastIndexOf('/') + 1).equals(name))
        .toList();
  }

  private static List<String> names(Locale locale) {
    return Stream.of(
            name(BASE), name(Locale.forLanguageTag(locale.getLanguage())), name(region(locale)))
        .distinct()
        .toList();
  }

  /** The words in every file of a name. */
  private static Map<String, String> in(Templates templates, String name) {
    Map<String, String> messages = new TreeMap<>();
    paths(templates, name)
        .forEach(path -> messages.putAll(PropertyFile.read(templates.text(path))));
    return messages;
  }

  private static Locale region(Locale locale) {
    return new Locale.Builder()
        .setLanguage(locale.getLanguage())
        .setRegion(locale.getCountry())
        .build();
  }

  private static String name(Locale locale) {
    return locale.toLanguageTag() + ".properties";
  }
}
