package org.lapmark.publish.request;

/** What was asked for can't be meant: the message says why, for whoever gave the command. */
public final class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Refuses a request.
   *
   * @param message one sentence without a full stop
   */
  public RefusedException(String message) {
    super(message, null, false, false);
  }
}
