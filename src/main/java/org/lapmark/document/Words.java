package org.lapmark.document;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.lapmark.wording.Wording;

/**
 * Finds the words of a language among the templates: every {@code en.properties} below {@code
 * words/}, over it the language's file, over that its region's, in each folder.
 */
final class Words {
  private static final String FOLDER = "words/";
  private static final Locale BASE = Locale.ENGLISH;

  private Words() {}

  static Wording of(Templates templates, Locale locale) {
    Map<String, String> messages = new TreeMap<>();
    List<String> names =
        List.of(
            name(BASE), name(Locale.forLanguageTag(locale.getLanguage())), name(region(locale)));
    for (String name : names.stream().distinct().toList()) {
      templates
          .files()
          .keySet()
          .forEach(
              path -> {
                if (path.startsWith(FOLDER)
                    && path.substring(path.lastIndexOf('/') + 1).equals(name)) {
                  messages.putAll(PropertyFile.read(templates.text(path)));
                }
              });
    }
    return new Wording(locale, messages);
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
