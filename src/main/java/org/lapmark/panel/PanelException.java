package org.lapmark.panel;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.FindingCode;
import org.lapmark.geometry.Point;

/**
 * A panel operation that cannot be carried out on the shape it was given. Whoever knows where the
 * operation was asked for turns it into a finding.
 */
public final class PanelException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient FindingCode code;
  private final transient Map<String, Object> arguments;
  private final transient Point place;

  /**
   * States what went wrong.
   *
   * @param code the kind of problem
   * @param arguments what the code's message names
   */
  public PanelException(FindingCode code, Map<String, ?> arguments) {
    this(code, arguments, null);
  }

  private PanelException(FindingCode code, Map<String, ?> arguments, Point place) {
    super(code.id() + " " + arguments);
    this.code = code;
    this.arguments = Collections.unmodifiableMap(new LinkedHashMap<>(arguments));
    this.place = place;
  }

  /**
   * The same problem at a place.
   *
   * @param at where on the panel it is
   * @return the problem
   */
  public PanelException at(Point at) {
    return new PanelException(code, arguments, at);
  }

  /**
   * Where on the panel it is.
   *
   * @return the place, if it is at one
   */
  public Optional<Point> place() {
    return Optional.ofNullable(place);
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
