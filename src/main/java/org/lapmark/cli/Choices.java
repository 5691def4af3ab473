package org.lapmark.cli;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.lapmark.publish.request.RefusedException;

/** What is chosen for a pattern's options on the command line: {@code name=choice}. */
final class Choices {
  private Choices() {}

  static SortedMap<String, String> of(List<String> choices) {
    SortedMap<String, String> wanted = new TreeMap<>();
    for (String choice : choices) {
      int sign = choice.indexOf('=');
      if (sign < 1 || sign == choice.length() - 1) {
        throw new RefusedException(
            "‘"
                + choice
                + "’ doesn't say what is chosen; write it as name=choice, such as piping=no");
      }
      String name = choice.substring(0, sign).strip();
      String before = wanted.put(name, choice.substring(sign + 1).strip());
      if (before != null && !before.equals(wanted.get(name))) {
        throw new RefusedException(
            "two choices are given for the option ‘"
                + name
                + "’; publish them one after the other");
      }
    }
    return wanted;
  }
}
