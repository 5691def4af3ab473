package org.lapmark.source.outside;

import java.util.List;
import org.lapmark.finding.SourceText;

/**
 * A film that shows steps. It is never fetched.
 *
 * @param address where it is, beginning with {@code https://}
 * @param chapters where it shows steps
 */
public record FilmSource(SourceText address, List<Chapter> chapters) {
  /** Copies the list. */
  public FilmSource {
    chapters = List.copyOf(chapters);
  }

  /**
   * Where the film shows a step.
   *
   * @param step the step's id
   * @param second how many seconds into the film
   */
  public record Chapter(SourceText step, int second) {
    /** The time as people write it: minutes and seconds, behind hours if there are any. */
    public String time() {
      int hours = second / 3600;
      String minutes = Integer.toString(second / 60 % 60);
      String seconds = second % 60 < 10 ? "0" + second % 60 : Integer.toString(second % 60);
      String shown = minutes + ":" + seconds;
      return hours == 0 ? shown : hours + ":" + (minutes.length() < 2 ? "0" : "") + shown;
    }
  }

  /** The address of a moment, as W3C’s Media Fragments has it: {@code #t=200}. */
  public String at(Chapter chapter) {
    String link = address.text();
    return link + (link.indexOf('#') < 0 ? "#" : "&") + "t=" + chapter.second();
  }
}
