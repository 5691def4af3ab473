package org.lapmark.document.film;

import java.util.Map;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.source.PatternSource;
import org.lapmark.source.outside.FilmSource;
import org.lapmark.wording.Wording;

/**
 * The link to a film where it shows a step.
 *
 * @param address where it leads
 * @param words what is shown
 * @param alternative what the code is, in words
 * @param code the address as a code of squares
 */
public record FilmLink(String address, String words, String alternative, Drawing code) {
  /** The link of a step, if the film shows it. */
  public static Optional<FilmLink> of(PatternSource source, String step, Wording wording) {
    return source
        .outside()
        .chapter(step)
        .map(chapter -> of(source.outside().film(), chapter, wording));
  }

  private static FilmLink of(FilmSource film, FilmSource.Chapter chapter, Wording wording) {
    String address = film.at(chapter);
    return new FilmLink(
        address,
        wording.text("film.link", Map.of("time", chapter.time())),
        wording.text("film.code", Map.of("time", chapter.time(), "address", address)),
        SquareCode.of(address));
  }
}
