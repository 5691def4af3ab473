package org.lapmark.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.lapmark.cli.console.Console;
import org.lapmark.cli.console.Version;
import org.lapmark.cli.report.ConsoleReport;
import org.lapmark.cli.report.FolderReport;
import org.lapmark.cli.walk.WalkCsv;
import org.lapmark.cli.walk.WalkJson;
import org.lapmark.cli.walk.WalkText;
import org.lapmark.publish.EvaluatedFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Walks the seams of pattern folders and prints what it measured. */
@Command(
    name = "walk",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Walks every seam of pattern folders in every size: the lengths of its sides along the "
          + "stitching line, their ease and what is left over, where notches meet as sewn, whether "
          + "corners are true and allowances agree, and where to clip.",
      "The walk goes to standard output; findings go to standard error. Lengths are millimetres."
    })
final class WalkCommand implements Callable<Integer> {
  private final Console console;
  private final Workshop workshop;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "1..*",
      description = "The pattern folders, or the pattern.yaml in them.")
  private List<Path> folders = new ArrayList<>();

  @Option(names = "--size", paramLabel = "SIZE", split = ",", description = "Only these sizes.")
  private List<String> sizes = new ArrayList<>();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "How the walk is printed: text (unless stated), csv or json.")
  private String format = "text";

  WalkCommand(Console console, Workshop workshop) {
    this.console = console;
    this.workshop = workshop;
  }

  /** How the walk is printed. */
  enum Format {
    TEXT,
    CSV,
    JSON
  }

  @Override
  public Integer call() throws IOException {
    Format wanted = Choice.of("format", format, Format.class);
    List<EvaluatedFolder> walks =
        workshop.walk(Folders.patterns(folders, console), sizes.stream().distinct().toList());
    List<FolderReport> all = new ArrayList<>();
    for (EvaluatedFolder walk : walks) {
      FolderReport checked = FolderReport.of(walk.outcome(), console);
      all.add(checked);
      ConsoleReport.about(checked, console);
    }
    switch (wanted) {
      case JSON -> console.report(WalkJson.of(all, walks));
      case CSV -> console.report(WalkCsv.of(all, walks));
      default -> console.text(WalkText.of(all, walks));
    }
    return ConsoleReport.end(all, console);
  }
}
