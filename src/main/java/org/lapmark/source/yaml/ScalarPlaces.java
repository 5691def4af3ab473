package org.lapmark.source.yaml;

import java.util.Arrays;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/**
 * Finds where each character of a YAML scalar stands in the file, by going through the written form
 * and the value side by side: quotes, escapes, folded lines and indentation are passed over.
 */
final class ScalarPlaces {
  private final String yaml;
  private final String value;
  private final int[] places;
  private int at;
  private int done;

  private ScalarPlaces(String yaml, String value) {
    this.yaml = yaml;
    this.value = value;
    this.places = new int[value.length() + 1];
  }

  /**
   * Finds the places.
   *
   * @param event the scalar
   * @param yaml the text that was parsed
   * @param start offset of the scalar in it, quotes included
   * @param end offset behind it
   * @return an offset for each UTF-16 unit of the value and one for its end; null if the forms
   *     can't be brought together
   */
  static int[] find(ScalarEvent event, String yaml, int start, int end) {
    ScalarPlaces places = new ScalarPlaces(yaml, event.getValue());
    boolean found =
        switch (event.getScalarStyle()) {
          case LITERAL, FOLDED -> places.block(start, end);
          case SINGLE_QUOTED -> places.flow(start + 1, end - 1, '\'');
          case DOUBLE_QUOTED -> places.flow(start + 1, end - 1, '"');
          default -> places.flow(start, end, ' ');
        };
    return found ? places.places : null;
  }

  private boolean flow(int start, int end, char quote) {
    at = start;
    while (at < end) {
      char c = yaml.charAt(at);
      if (c == '\n' || isBlank(c) && blankToLineEnd(end)) {
        if (!fold(end)) {
          return false;
        }
      } else if (quote == '"' && c == '\\') {
        if (!escape(end)) {
          return false;
        }
      } else if (quote == '\'' && c == '\'') {
        if (!put(at, c)) {
          return false;
        }
        at += 2;
      } else {
        if (!put(at, c)) {
          return false;
        }
        at++;
      }
    }
    places[done] = end;
    return done == value.length();
  }

  private boolean put(int place, char c) {
    if (done >= value.length() || value.charAt(done) != c) {
      return false;
    }
    places[done++] = place;
    return true;
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t';
  }

  private boolean blankToLineEnd(int end) {
    int i = at;
    while (i < end && isBlank(yaml.charAt(i))) {
      i++;
    }
    return i < end && yaml.charAt(i) == '\n';
  }

  /** One line break becomes a space, each further one stays a line break. */
  private boolean fold(int end) {
    int first = at;
    int breaks = 0;
    int[] where = new int[4];
    while (at < end && (isBlank(yaml.charAt(at)) || yaml.charAt(at) == '\n')) {
      if (yaml.charAt(at) == '\n') {
        if (breaks == where.length) {
          where = Arrays.copyOf(where, breaks * 2);
        }
        where[breaks++] = at;
      }
      at++;
    }
    if (breaks == 1) {
      return put(first, ' ');
    }
    for (int i = 1; i < breaks; i++) {
      if (!put(where[i], '\n')) {
        return false;
      }
    }
    return true;
  }

  private boolean escape(int end) {
    int start = at;
    char kind = at + 1 < end ? yaml.charAt(at + 1) : 0;
    if (kind == '\n') {
      // An escaped line break stands for nothing; blank lines behind it stay line breaks.
      at += 2;
      while (at < end && (isBlank(yaml.charAt(at)) || yaml.charAt(at) == '\n')) {
        if (yaml.charAt(at) == '\n' && !put(at, '\n')) {
          return false;
        }
        at++;
      }
      return true;
    }
    at +=
        switch (kind) {
          case 'x' -> 4;
          case 'u' -> 6;
          case 'U' -> 10;
          default -> 2;
        };
    if (done >= value.length()) {
      return false;
    }
    boolean pair =
        kind == 'U' && Character.isHighSurrogate(value.charAt(done)) && done + 1 < value.length();
    places[done++] = start;
    if (pair) {
      places[done++] = start;
    }
    return true;
  }

  private boolean block(int start, int end) {
    at = yaml.indexOf('\n', start);
    if (at < 0 || at >= end) {
      Arrays.fill(places, Math.min(start, yaml.length()));
      return value.isEmpty();
    }
    at++;
    int indent = indent(end);
    boolean lineStart = true;
    for (; done < value.length(); done++) {
      char c = value.charAt(done);
      while (true) {
        if (lineStart) {
          for (int i = 0; i < indent && at < yaml.length() && yaml.charAt(at) == ' '; i++) {
            at++;
          }
          lineStart = false;
        }
        if (at >= yaml.length()) {
          // The last line has no line end of its own.
          break;
        }
        char written = yaml.charAt(at);
        if (written == c || c == ' ' && written == '\n') {
          break;
        }
        if (written != '\n' && !(c == '\n' && written == ' ')) {
          return false;
        }
        lineStart = written == '\n';
        at++;
      }
      if (at >= yaml.length() && c != '\n') {
        return false;
      }
      places[done] = at;
      if (at < yaml.length()) {
        lineStart = yaml.charAt(at) == '\n';
        at++;
      }
    }
    places[done] = Math.min(at, yaml.length());
    return true;
  }

  /** The block's indentation: that of its first line with words, less what the value keeps. */
  private int indent(int end) {
    int i = at;
    int lineAt = at;
    while (i < end && (yaml.charAt(i) == ' ' || yaml.charAt(i) == '\n')) {
      if (yaml.charAt(i) == '\n') {
        lineAt = i + 1;
      }
      i++;
    }
    int j = 0;
    int kept = 0;
    while (j < value.length() && (value.charAt(j) == ' ' || value.charAt(j) == '\n')) {
      kept = value.charAt(j) == '\n' ? 0 : kept + 1;
      j++;
    }
    return Math.max(0, i - lineAt - kept);
  }
}
