package org.lapmark.panel;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.lapmark.finding.FindingCode;

/**
 * A panel operation that cannot be carried out on the shape it was given. Whoever knows where the
 * operation was asked for turns it into a finding.
 */
public final class PanelException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient FindingCode code;
  private final transient Map<String, Object> arguments;

  /**
   * States what went wrong.
   *
   * @param code the kind of problem
   * @param arguments what the code's message names
   */
  public PanelException(FindingCode code, Map<String, ?> arguments) {
    super(code.id() + " " + arguments);
    this.code = code;
    this.arguments = Collections.unmodifiableMap(new LinkedHashMap<>(arguments));
  }

  /**
   * The kind of problem.
   *
   * @return the code
   */
  public FindingCode code() {
    return code;
  }

  /**
   * What the code's message names.
   *
   * @return values by name
   */
  public Map<String, Object> arguments() {
    return arguments;
  }
}
