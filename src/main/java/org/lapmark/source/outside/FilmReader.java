package org.lapmark.source.outside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.finding.SourceText;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads {@code film}: where a film of the pattern is, and where in it each step begins. */
public final class FilmReader {
  /** Longer ones make codes of squares too fine to be read from paper. */
  private static final int LONGEST = 300;

  private static final Pattern ADDRESS =
      Pattern.compile(
          "https://[A-Za-z0-9][A-Za-z0-9.-]*(?::[0-9]{1,5})?(?:[/?#][!-~&&[^\\s<>\"{}|\\\\^`]]*)?");
  private static final Pattern TIME = Pattern.compile("(?:([0-9]{1,2}):)?([0-9]{1,2}):([0-9]{2})");
  private static final Pattern MOMENT = Pattern.compile("#(?:.*&)?t=.*");
  private static final int SIXTY = 60;

  private static final Key<SourceText> ADDRESS_KEY =
      Key.required(
          "address",
          Forms.special(
              "address that begins with https://",
              Forms.schema("type", "string", "pattern", "^https://"),
              FilmReader::address));
  private static final Key<List<Named<Integer>>> CHAPTERS =
      Key.required(
          "chapters",
          Forms.byText(
              "ids of steps",
              Forms.special(
                  "time as 00:03:20",
                  Forms.schema("type", "string", "pattern", "^([0-9]{1,2}:)?[0-9]{1,2}:[0-9]{2}$"),
                  FilmReader::time)));
  private static final Table TABLE = Table.of("film", ADDRESS_KEY, CHAPTERS);

  /** The film. */
  public static final Key<Stated> FILM = Key.of("film", Forms.map(TABLE));

  private FilmReader() {}

  /**
   * Reads what is said of the film.
   *
   * @param pattern the top of {@code pattern.yaml}
   * @param steps the ids of the steps in their order
   * @return the film, or null if there is none
   */
  public static FilmSource read(Stated pattern, List<String> steps, Reading reading) {
    Stated in = pattern.get(FILM);
    if (in == null) {
      return null;
    }
    Map<String, FilmSource.Chapter> chapters = new LinkedHashMap<>();
    for (Named<Integer> named : in.all(CHAPTERS)) {
      if (!steps.contains(named.name().text())) {
        reading.unknown(OutsideCode.FILM_STEP, named.name().position(), named.name().text(), steps);
      } else if (named.value() != null) {
        chapters.put(named.name().text(), new FilmSource.Chapter(named.name(), named.value()));
      }
    }
    List<FilmSource.Chapter> ordered = new ArrayList<>();
    FilmSource.Chapter latest = null;
    for (String step : steps) {
      FilmSource.Chapter chapter = chapters.get(step);
      if (chapter == null) {
        continue;
      }
      if (latest != null && chapter.second() < latest.second()) {
        reading
            .findings()
            .add(
                OutsideCode.FILM_ORDER,
                chapter.step().position(),
                "step",
                step,
                "before",
                latest.step().text());
      } else {
        latest = chapter;
      }
      ordered.add(chapter);
    }
    SourceText address = in.get(ADDRESS_KEY);
    return address == null ? null : new FilmSource(address, ordered);
  }

  private static SourceText address(Reading reading, YamlNode node, String key) {
    SourceText text = reading.text(node, key);
    if (text == null) {
      return null;
    }
    String reason = "";
    if (!text.text().regionMatches(true, 0, "https://", 0, "https://".length())) {
      reason = "scheme";
    } else if (text.text().length() > LONGEST) {
      reason = "long";
    } else if (!ADDRESS.matcher(text.text()).matches()) {
      reason = "form";
    } else if (MOMENT
        .matcher(text.text().substring(Math.max(0, text.text().indexOf('#'))))
        .matches()) {
      reason = "moment";
    }
    if (!reason.isEmpty()) {
      reading
          .findings()
          .add(
              OutsideCode.FILM_ADDRESS,
              text.position(),
              "reason",
              reason,
              "limit",
              Integer.toString(LONGEST));
      return null;
    }
    return text;
  }

  private static Integer time(Reading reading, YamlNode node, String key) {
    SourceText text = reading.text(node, key);
    if (text == null) {
      return null;
    }
    Matcher time = TIME.matcher(text.text());
    if (time.matches()) {
      int hours = time.group(1) == null ? 0 : Integer.parseInt(time.group(1));
      int minutes = Integer.parseInt(time.group(2));
      int seconds = Integer.parseInt(time.group(3));
      if (seconds < SIXTY && (minutes < SIXTY || time.group(1) == null)) {
        return (hours * SIXTY + minutes) * SIXTY + seconds;
      }
    }
    reading.findings().add(OutsideCode.FILM_TIME, text.position(), "text", text.text());
    return null;
  }
}
