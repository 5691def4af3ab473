package org.lapmark.figure.read;

import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;

/** What is wrong with a figure, to be thrown. */
public final class Faults {
  private Faults() {}

  /**
   * A fault.
   *
   * @param position where it stands
   * @param code what is wrong
   * @param namesAndValues the message's arguments
   * @return what to throw
   */
  public static FindingException of(Position position, FigureCode code, Object... namesAndValues) {
    return new FindingException(Finding.of(code, position, namesAndValues));
  }

  /**
   * Something of another kind than is needed.
   *
   * @param position where it stands
   * @param what the key, with what it belongs to before a slash
   * @param needed what is needed
   * @return what to throw
   */
  public static FindingException kind(Position position, String what, String needed) {
    return of(
        position,
        FigureCode.FIGURE_VALUE_KIND,
        "name",
        what.substring(what.indexOf('/') + 1),
        "needed",
        needed,
        "example",
        new FigureExamples().of(what).orElseThrow());
  }
}
