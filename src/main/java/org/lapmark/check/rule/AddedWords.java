package org.lapmark.check.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * The words that documents add to the author's, in any language.
 *
 * @param lacking the names of those that a language lacks
 * @param labels the labels of a language, by name
 * @param dates how a date is printed in a language
 * @param missing gives the characters of a text that can't be printed, each once
 */
public record AddedWords(
    Function<Locale, List<String>> lacking,
    Function<Locale, Map<String, String>> labels,
    BiFunction<LocalDate, Locale, String> dates,
    Function<String, List<String>> missing) {
  /** None, where nothing is lacking. */
  public static final AddedWords NONE =
      new AddedWords(
          language -> List.of(), language -> Map.of(), (date, language) -> "", text -> List.of());
}
