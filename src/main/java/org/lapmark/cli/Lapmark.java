package org.lapmark.cli;

import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.Logger;
import org.lapmark.cli.console.Console;
import org.lapmark.cli.console.ExitCode;
import org.lapmark.cli.console.NameCoding;

/** The program's entry point. */
public final class Lapmark {
  private Lapmark() {}

  /**
   * Runs a command. Ends the Java machine only when the exit code isn't 0, so that a build tool
   * that runs the program within itself goes on.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    OptionalInt second = NameCoding.again(arguments);
    if (second.isPresent()) {
      end(second.getAsInt());
      return;
    }
    System.setProperty("java.awt.headless", "true");
    PrintStream out = System.out;
    PrintStream err = System.err;
    Console console = new Console(out, err, terminalCharset(), Path.of("").toAbsolutePath());
    silenceLibraries();
    int code = CommandRunner.run(NameCoding.arguments(arguments), console, new Workshop.Real());
    out.flush();
    err.flush();
    end(code);
  }

  private static void end(int code) {
    if (code != ExitCode.DONE) {
      System.exit(code);
    }
  }

  /** Libraries log to standard error what is no news to a user; problems reach us as exceptions. */
  private static void silenceLibraries() {
    System.setProperty("slf4j.internal.verbosity", "ERROR");
    LogManager.getLogManager().reset();
    Logger.getLogger("").setLevel(Level.OFF);
  }

  /** What the terminal expects; where it states nothing but ASCII, nearly every one takes UTF-8. */
  private static Charset terminalCharset() {
    for (String property : new String[] {"stdout.encoding", "native.encoding"}) {
      String name = System.getProperty(property);
      if (name != null && Charset.isSupported(name)) {
        Charset charset = Charset.forName(name);
        return charset.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : charset;
      }
    }
    return StandardCharsets.UTF_8;
  }
}
