package org.lapmark.cli;

import java.util.concurrent.Callable;
import org.lapmark.cli.console.Console;
import org.lapmark.cli.console.ExitCode;
import org.lapmark.cli.console.Version;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command. */
@Command(
    name = "lapmark",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Publishes sewing patterns from one source.",
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:done",
      "1:a folder has errors; faultless folders are published all the same",
      "2:wrong usage",
      "3:something could not be read or written"
    })
final class RootCommand implements Callable<Integer> {
  private final Console console;
  @Spec private CommandSpec spec;

  RootCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    console.talk(spec.commandLine().getUsageMessage().replace(System.lineSeparator(), "\n"));
    return ExitCode.USAGE;
  }
}
