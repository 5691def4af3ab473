package org.lapmark.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.InvalidPathException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.lapmark.cli.console.Console;
import org.lapmark.cli.console.ExitCode;
import org.lapmark.cli.console.Failures;
import org.lapmark.finding.NearestWord;
import org.lapmark.publish.request.RefusedException;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Reads the command line, runs the command and answers every mistake in one line. */
public final class CommandRunner {
  private CommandRunner() {}

  /**
   * Runs a command.
   *
   * @param arguments the command line
   * @param console where results and talk go
   * @param workshop does the work
   * @return the exit code; that of a failure when what was to be said couldn't be written
   */
  public static int run(String[] arguments, Console console, Workshop workshop) {
    int code = answer(arguments, console, workshop);
    if (!console.hasResult()) {
      console.say(
          "standard output can't be written: its disk is full, or whoever read it has stopped");
      return ExitCode.FAILED;
    }
    // Findings are results too, even if nobody can be told that they are lost.
    return console.hasTalk() ? code : ExitCode.FAILED;
  }

  private static int answer(String[] arguments, Console console, Workshop workshop) {
    CommandLine line =
        new CommandLine(new RootCommand(console))
            .addSubcommand(new PublishCommand(console, workshop))
            .addSubcommand(new CheckCommand(console, workshop))
            .addSubcommand(new WalkCommand(console, workshop))
            .addSubcommand(new GradeCommand(console, workshop))
            .setExpandAtFiles(false)
            .setExecutionStrategy(CommandRunner::execute)
            .setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF))
            .setParameterExceptionHandler((problem, given) -> usage(problem, console))
            .setExecutionExceptionHandler((failure, command, given) -> failed(failure, console));
    StringWriter out = new StringWriter();
    line.setOut(new PrintWriter(out, true));
    try {
      int code = line.execute(arguments);
      if (!out.toString().isEmpty()) {
        // Help and version, which were asked for.
        out.toString().replace(System.lineSeparator(), "\n").lines().forEach(console::result);
      }
      return code;
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      return failed(e, console);
    }
  }

  /** Runs what was asked for; a list of commas alone would stand for everything. */
  private static int execute(ParseResult asked) {
    ParseResult command = asked;
    while (command.hasSubcommand()) {
      command = command.subcommand();
    }
    for (OptionSpec option : command.matchedOptions()) {
      if (option.getValue() instanceof Collection<?> values && values.isEmpty()) {
        throw new ParameterException(
            command.commandSpec().commandLine(), "‘" + option.longestName() + "’ names nothing");
      }
    }
    return new CommandLine.RunLast().execute(asked);
  }

  private static int failed(Throwable failure, Console console) {
    console.say(Failures.describe(failure, console));
    return failure instanceof RefusedException ? ExitCode.USAGE : ExitCode.FAILED;
  }

  private static int usage(ParameterException problem, Console console) {
    if (problem.getCause() instanceof InvalidPathException) {
      return failed(problem.getCause(), console);
    }
    CommandLine command = problem.getCommandLine();
    String message = problem.getMessage();
    if (problem instanceof UnmatchedArgumentException unmatched
        && !unmatched.getUnmatched().isEmpty()) {
      String word = unmatched.getUnmatched().get(0);
      boolean option = word.startsWith("-");
      String name = option && word.indexOf('=') > 0 ? word.substring(0, word.indexOf('=')) : word;
      List<String> known =
          option
              ? command.getCommandSpec().options().stream().map(OptionSpec::longestName).toList()
              : List.copyOf(command.getSubcommands().keySet());
      Optional<String> near = NearestWord.of(name, known);
      message =
          (option ? "there is no option ‘" : "there is no command ‘")
              + name
              + "’"
              + near.map(nearest -> "; did you mean ‘" + nearest + "’?").orElse("");
    }
    console.say(message);
    console.say("try ‘" + command.getCommandSpec().qualifiedName() + " --help’");
    return ExitCode.USAGE;
  }
}
