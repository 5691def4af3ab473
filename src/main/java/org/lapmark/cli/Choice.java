package org.lapmark.cli;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.lapmark.finding.NearestWord;
import org.lapmark.publish.request.RefusedException;

/** One of a few named things, as stated on the command line in either case. */
final class Choice {
  private Choice() {}

  /**
   * The thing of that name.
   *
   * @param kind what such things are called
   * @param name the name as stated
   * @param known all of them
   * @param nameOf the name of one, in lower case
   * @param <T> what they are
   * @return the one meant
   * @throws RefusedException when none has that name; the message names the nearest, and all
   */
  static <T> T of(String kind, String name, List<T> known, Function<T, String> nameOf) {
    String wanted = name.strip().toLowerCase(Locale.ROOT);
    List<String> names = known.stream().map(nameOf).toList();
    int index = names.indexOf(wanted);
    if (index < 0) {
      throw new RefusedException(
          "there is no "
              + kind
              + " ‘"
              + name
              + "’"
              + NearestWord.asked(wanted, names)
              + " ("
              + kind
              + "s: "
              + String.join(", ", names)
              + ")");
    }
    return known.get(index);
  }

  /** The same of an enum, whose names are written with hyphens. */
  static <E extends Enum<E>> E of(String kind, String name, Class<E> known) {
    return of(
        kind,
        name,
        List.of(known.getEnumConstants()),
        one -> one.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }
}
