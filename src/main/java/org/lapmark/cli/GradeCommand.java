package org.lapmark.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.lapmark.cli.console.Console;
import org.lapmark.cli.console.Version;
import org.lapmark.cli.grade.GradeCsv;
import org.lapmark.cli.grade.GradeJson;
import org.lapmark.cli.grade.GradeText;
import org.lapmark.cli.report.ConsoleReport;
import org.lapmark.cli.report.FolderReport;
import org.lapmark.finding.NearestWord;
import org.lapmark.grade.GradeReport;
import org.lapmark.publish.EvaluatedFolder;
import org.lapmark.publish.request.RefusedException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints how the panels of pattern folders grow from size to size. */
@Command(
    name = "grade",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Compares the sizes of pattern folders: the length of every edge along the stitching line, "
          + "the width, height, perimeter and area of every panel, and by how much each grows from "
          + "size to size.",
      "The report goes to standard output; findings go to standard error. Lengths are "
          + "millimetres, areas square centimetres."
    })
final class GradeCommand implements Callable<Integer> {
  private final Console console;
  private final Workshop workshop;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "1..*",
      description = "The pattern folders, or the pattern.yaml in them.")
  private List<Path> folders = new ArrayList<>();

  @Option(names = "--size", paramLabel = "SIZE", split = ",", description = "Only these sizes.")
  private List<String> sizes = new ArrayList<>();

  @Option(names = "--panel", paramLabel = "NAME", split = ",", description = "Only these panels.")
  private List<String> panels = new ArrayList<>();

  @Option(
      names = "--option",
      paramLabel = "NAME=CHOICE",
      description =
          "What is chosen for one of the pattern's options; all else is as by default. May be given"
              + " several times.")
  private List<String> choices = new ArrayList<>();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "How the report is printed: text (unless stated), csv or json.")
  private String format = "text";

  GradeCommand(Console console, Workshop workshop) {
    this.console = console;
    this.workshop = workshop;
  }

  @Override
  public Integer call() throws IOException {
    WalkCommand.Format wanted = Choice.of("format", format, WalkCommand.Format.class);
    List<EvaluatedFolder> walks =
        workshop.grade(
            Folders.patterns(folders, console),
            sizes.stream().distinct().toList(),
            Choices.of(choices));
    List<FolderReport> all = new ArrayList<>();
    List<List<GradeReport>> reports = new ArrayList<>();
    for (EvaluatedFolder walk : walks) {
      FolderReport checked = FolderReport.of(walk.outcome(), console);
      all.add(checked);
      reports.add(walk.patterns().isEmpty() ? List.of() : List.of(GradeReport.of(walk.patterns())));
    }
    List<List<GradeReport>> chosen = onlyPanels(reports);
    all.forEach(checked -> ConsoleReport.about(checked, console));
    switch (wanted) {
      case JSON -> console.report(GradeJson.of(all, chosen));
      case CSV -> console.report(GradeCsv.of(all, chosen));
      default -> console.text(GradeText.of(all, chosen));
    }
    return ConsoleReport.end(all, console);
  }

  private List<List<GradeReport>> onlyPanels(List<List<GradeReport>> reports) {
    List<String> known =
        reports.stream()
            .flatMap(List::stream)
            .flatMap(report -> report.panels().stream())
            .map(GradeReport.PanelGrades::name)
            .distinct()
            .toList();
    for (String panel : panels) {
      if (!known.isEmpty() && !known.contains(panel)) {
        throw new RefusedException(
            "there is no panel ‘"
                + panel
                + "’"
                + NearestWord.asked(panel, known)
                + " (panels: "
                + String.join(", ", known)
                + ")");
      }
    }
    return reports.stream()
        .map(
            some ->
                some.stream()
                    .map(
                        report ->
                            new GradeReport(
                                report.choices(),
                                report.sizes(),
                                report.panels().stream().filter(this::isWanted).toList()))
                    .toList())
        .toList();
  }

  private boolean isWanted(GradeReport.PanelGrades panel) {
    return panels.isEmpty() || panels.contains(panel.name());
  }
}
