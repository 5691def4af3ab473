package org.lapmark.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Standard output and standard error, and the folder in which the command was given. */
final class Console {
  private final PrintStream result;
  private final PrintStream report;
  private final PrintStream talk;
  private final Path directory;

  /**
   * Wraps the streams.
   *
   * @param out standard output
   * @param err standard error
   * @param terminal the charset of lines meant for people and shells
   * @param directory the working directory, absolute
   */
  Console(OutputStream out, OutputStream err, Charset terminal, Path directory) {
    this.result = new PrintStream(out, true, terminal);
    this.report = new PrintStream(out, true, StandardCharsets.UTF_8);
    this.talk = new PrintStream(err, true, terminal);
    this.directory = directory;
  }

  /** The working directory. */
  Path directory() {
    return directory;
  }

  /** One line of the result, on standard output: it isn't touched, scripts read it. */
  void result(String line) {
    result.print(line + "\n");
    result.flush();
  }

  /** A report in a format of its own, always UTF-8, on standard output. */
  void report(String text) {
    report.print(text);
    report.flush();
  }

  /** Text for people, on standard error. */
  void talk(String text) {
    talk.print(text);
    talk.flush();
  }

  /** A line for people about the program's own state, on standard error. */
  void say(String line) {
    talk("lapmark: " + Visible.text(line) + "\n");
  }

  /** A path as people write it from where they are. */
  String shown(Path path) {
    Path plain = directory.resolve(path).normalize();
    if (plain.equals(directory)) {
      return ".";
    }
    return (plain.startsWith(directory) ? directory.relativize(plain) : plain).toString();
  }
}
