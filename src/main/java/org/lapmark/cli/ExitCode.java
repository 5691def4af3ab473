package org.lapmark.cli;

/** What the program tells the shell. */
final class ExitCode {
  /** Everything asked for was done. */
  static final int DONE = 0;

  /** A folder has errors; faultless folders were published all the same. */
  static final int ERRORS = 1;

  /** The command line can't be meant. */
  static final int USAGE = 2;

  /** Something could not be read or written, or the program itself failed. */
  static final int FAILED = 3;

  private ExitCode() {}
}
