package org.lapmark.finding;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * One thing a check has to say.
 *
 * @param code the kind of problem
 * @param position where it stands
 * @param arguments what the code's message names, in the order they were given
 */
public record Finding(FindingCode code, Position position, Map<String, Object> arguments) {
  /** By position, then by code. */
  public static final Comparator<Finding> BY_POSITION =
      Comparator.comparing(Finding::position)
          .thenComparing(finding -> finding.code().id())
          .thenComparing(finding -> finding.arguments().toString());

  /** Copies the arguments, keeping their order. */
  public Finding {
    Objects.requireNonNull(code);
    Objects.requireNonNull(position);
    arguments = Collections.unmodifiableMap(new LinkedHashMap<>(arguments));
  }

  /**
   * A finding with arguments given in turn.
   *
   * @param code the kind of problem
   * @param position where it stands
   * @param namesAndValues argument name, value, name, value …
   * @return the finding
   */
  public static Finding of(FindingCode code, Position position, Object... namesAndValues) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      arguments.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return new Finding(code, position, arguments);
  }

  /**
   * How much it weighs.
   *
   * @return the code's severity
   */
  public Severity severity() {
    return code.severity();
  }
}
