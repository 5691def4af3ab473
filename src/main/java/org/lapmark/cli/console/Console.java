package org.lapmark.cli.console;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Standard output and standard error, and the folder in which the command was given. */
public final class Console {
  private final PrintStream result;
  private final PrintStream report;
  private final PrintStream talk;
  private final CharsetEncoder encoder;
  private final Path directory;

  /**
   * Wraps the streams.
   *
   * @param out standard output
   * @param err standard error
   * @param terminal the charset of lines meant for people and shells
   * @param directory the working directory, absolute
   */
  public Console(OutputStream out, OutputStream err, Charset terminal, Path directory) {
    this.result = new PrintStream(out, true, terminal);
    this.report = new PrintStream(out, true, StandardCharsets.UTF_8);
    this.talk = new PrintStream(err, true, terminal);
    this.encoder = terminal.newEncoder();
    this.directory = directory;
  }

  /** The working directory. */
  public Path directory() {
    return directory;
  }

  /** One line of the result, on standard output: it isn't touched, scripts read it. */
  public void result(String line) {
    result.print(line + "\n");
    result.flush();
  }

  /**
   * The path of a file written, as one line of the result. A path that would be more than one line,
   * or would look like another path, is written as a JSON string; so is one that begins with a
   * quotation mark, so that no plain path can be taken for such a string.
   */
  public void path(Path path) {
    String text = path.toString();
    boolean plain =
        !text.startsWith("\"") && text.codePoints().allMatch(c -> Visible.is(c) && canPrint(c));
    result(plain ? text : Json.string(text, this::canPrint));
  }

  private boolean canPrint(int c) {
    return encoder.canEncode(Character.toString(c));
  }

  /** Lines of the result that are meant for people. */
  public void text(String text) {
    text.lines().map(Visible::text).forEach(this::result);
  }

  /** A report in a format of its own, always UTF-8, on standard output. */
  public void report(String text) {
    report.print(text);
    report.flush();
  }

  /** Text for people, on standard error. */
  public void talk(String text) {
    talk.print(text);
    talk.flush();
  }

  /** A line for people about the program's own state, on standard error. */
  public void say(String line) {
    talk("lapmark: " + Visible.text(line) + "\n");
  }

  /** Whether everything said on standard output so far has arrived there. */
  public boolean hasResult() {
    return !result.checkError() && !report.checkError();
  }

  /** Whether everything said on standard error so far has arrived there. */
  public boolean hasTalk() {
    return !talk.checkError();
  }

  /** A path as people write it from where they are. */
  public String shown(Path path) {
    Path plain = directory.resolve(path).normalize();
    if (plain.equals(directory)) {
      return ".";
    }
    return (plain.startsWith(directory) ? directory.relativize(plain) : plain).toString();
  }
}
