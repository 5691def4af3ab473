package org.lapmark.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.lapmark.cli.console.Console;
import org.lapmark.cli.console.ExitCode;
import org.lapmark.cli.console.Version;
import org.lapmark.cli.report.ConsoleReport;
import org.lapmark.cli.report.FolderReport;
import org.lapmark.cli.report.JsonReport;
import org.lapmark.cli.report.SarifReport;
import org.lapmark.cli.report.TextReport;
import org.lapmark.publish.Listener;
import org.lapmark.publish.Outcome;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks pattern folders in every variant without writing anything. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Reads and evaluates pattern folders in every size and combination of options and writes "
          + "nothing.",
      "Findings as text go to standard error, where ‘publish’ writes them too; a report as JSON or "
          + "SARIF 2.1.0 goes to standard output."
    })
final class CheckCommand implements Callable<Integer> {
  private final Console console;
  private final Workshop workshop;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "1..*",
      description = "The pattern folders, or the pattern.yaml in them.")
  private List<Path> folders = new ArrayList<>();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "How findings are reported: text (unless stated), json or sarif.")
  private String format = "text";

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "A folder of templates that replaces the program's own.")
  private Path templates;

  CheckCommand(Console console, Workshop workshop) {
    this.console = console;
    this.workshop = workshop;
  }

  /** How findings are reported. */
  enum Format {
    TEXT,
    JSON,
    SARIF
  }

  @Override
  public Integer call() throws IOException {
    Format wanted = Choice.of("format", format, Format.class);
    List<FolderReport> all = new ArrayList<>();
    int[] sizes = {0};
    Listener listener =
        new Listener() {
          @Override
          public void begun(Path folder, int sizeCount, int paperCount) {
            sizes[0] += sizeCount;
          }

          @Override
          public void ended(Outcome outcome) {
            FolderReport checked = FolderReport.of(outcome, console);
            all.add(checked);
            if (wanted == Format.TEXT) {
              ConsoleReport.about(checked, console);
            } else {
              ConsoleReport.failure(checked, console);
            }
          }
        };
    workshop.check(
        Folders.one("--templates", templates, console),
        Folders.patterns(folders, console),
        listener);
    if (sizes[0] > 0 && ConsoleReport.exitCode(all) == ExitCode.DONE) {
      ClassArchive.isWorthKeeping();
    }
    switch (wanted) {
      case JSON -> console.report(JsonReport.of(all));
      case SARIF -> console.report(SarifReport.of(all));
      default -> {
        int code = ConsoleReport.end(all, console);
        if (code == ExitCode.DONE) {
          console.say("no errors in " + TextReport.counted(sizes[0], "size"));
        }
        return code;
      }
    }
    return ConsoleReport.exitCode(all);
  }
}
