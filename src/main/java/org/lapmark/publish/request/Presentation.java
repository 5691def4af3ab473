package org.lapmark.publish.request;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.source.AuthorTexts;
import org.lapmark.source.PatternSource;
import org.lapmark.source.Translation;

/**
 * The language and the units of the documents, where they aren't the pattern's own.
 *
 * @param language the language of words and texts, or nothing for the pattern's
 * @param units which units are printed and which come first, or nothing for the pattern's
 */
public record Presentation(Optional<Locale> language, Optional<PrintForm.Units> units) {
  /** As the pattern says. */
  public static final Presentation OWN = new Presentation(Optional.empty(), Optional.empty());

  /**
   * The pattern as it is to be presented.
   *
   * @param source the pattern as read
   * @return the pattern with its texts, words and values in the language and units wanted
   * @throws RefusedException when the pattern has no text in the language
   */
  public PatternSource of(PatternSource source) {
    PatternSource worded = language.map(locale -> in(source, locale)).orElse(source);
    return units
        .map(
            wanted ->
                worded.under(worded.masthead().printing(worded.masthead().form().with(wanted))))
        .orElse(worded);
  }

  private static PatternSource in(PatternSource source, Locale locale) {
    Optional<Translation> translation =
        source.translations().stream()
            .filter(each -> each.locale().equals(locale))
            .findFirst()
            .or(
                () ->
                    source.translations().stream()
                        .filter(each -> each.locale().getLanguage().equals(locale.getLanguage()))
                        .findFirst());
    Locale own = source.masthead().language();
    boolean another = !own.getLanguage().equals(locale.getLanguage());
    if (translation.isEmpty() && another) {
      throw new RefusedException(
          "‘"
              + source.folder()
              + "’ has no text in the language "
              + locale.toLanguageTag()
              + "; it has "
              + AuthorTexts.languages(source).stream()
                  .map(Locale::toLanguageTag)
                  .collect(Collectors.joining(", ")));
    }
    PatternSource texts =
        translation
            .filter(each -> another || each.locale().equals(locale))
            .map(each -> AuthorTexts.translated(source, each))
            .orElse(source);
    return texts.under(texts.masthead().in(locale));
  }

  /** What tells the documents from those in the pattern's own language and units; maybe empty. */
  public String suffix() {
    StringBuilder suffix = new StringBuilder();
    language.ifPresent(locale -> suffix.append('.').append(locale.toLanguageTag()));
    units.ifPresent(
        wanted ->
            suffix.append('.').append(wanted.name().toLowerCase(Locale.ROOT).replace('_', '-')));
    return suffix.toString();
  }
}
