package org.lapmark.cli.console;

/** What the program tells the shell. */
public final class ExitCode {
  /** Everything asked for was done. */
  public static final int DONE = 0;

  /** A folder has errors; faultless folders were published all the same. */
  public static final int ERRORS = 1;

  /** The command line can't be meant. */
  public static final int USAGE = 2;

  /** Something could not be read or written, or the program itself failed. */
  public static final int FAILED = 3;

  private ExitCode() {}
}
