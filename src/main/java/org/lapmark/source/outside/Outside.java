package org.lapmark.source.outside;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;

/**
 * What a pattern brings from outside.
 *
 * @param art the pictures that texts or the cover show, by their path in the folder
 * @param cover the picture on the cover, or null
 * @param film the film, or null
 */
public record Outside(Map<String, ArtSource> art, CoverSource cover, FilmSource film) {
  /** Nothing from outside. */
  public static final Outside NONE = new Outside(Map.of(), null, null);

  /** Copies the map. */
  public Outside {
    art = Collections.unmodifiableMap(new LinkedHashMap<>(art));
  }

  /**
   * The picture on the cover.
   *
   * @param path its path in the folder
   * @param alternative what it shows, in words
   * @param place where it is named
   */
  public record CoverSource(String path, TemplateText alternative, SourceText place) {}

  /** The film of a step, if it has a chapter. */
  public Optional<FilmSource.Chapter> chapter(String step) {
    return film == null
        ? Optional.empty()
        : film.chapters().stream().filter(one -> one.step().text().equals(step)).findFirst();
  }

  /** The same with other texts. */
  public Outside with(UnaryOperator<TemplateText> exchange) {
    Map<String, ArtSource> exchanged = new LinkedHashMap<>();
    art.forEach((path, one) -> exchanged.put(path, one.with(exchange)));
    return new Outside(
        exchanged,
        cover == null
            ? null
            : new CoverSource(cover.path(), exchange.apply(cover.alternative()), cover.place()),
        film);
  }

  /** The paths of all pictures. */
  public List<String> paths() {
    return List.copyOf(art.keySet());
  }
}
