package org.lapmark.cli;

/** The program's entry point. */
public final class Lapmark {
  private Lapmark() {}

  /**
   * Runs a command.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    System.err.println(arguments.length);
  }
}
