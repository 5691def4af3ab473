package org.lapmark.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.lapmark.measure.PrintForm;
import org.lapmark.print.Paper;
import org.lapmark.publish.Presentation;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.Publisher.Listener;
import org.lapmark.publish.Publisher.Outcome;
import org.lapmark.publish.Publisher.Request;
import org.lapmark.publish.RefusedException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Publishes pattern folders: written paths on standard output, everything else on the other. */
@Command(
    name = "publish",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Publishes pattern folders. Each pattern gets a folder of its own in the output folder, "
          + "which is replaced as a whole, and only if the pattern has no errors.",
      "Prints the paths of the files written on standard output; findings and progress go to "
          + "standard error."
    })
final class PublishCommand implements Callable<Integer> {
  private static final String CONTENT = "content";
  private static final Path OUTPUT = Path.of("build-output", "published");

  private final Console console;
  private final Workshop workshop;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "0..*",
      description = "The pattern folders; without any, every folder in ‘content’.")
  private List<Path> folders = new ArrayList<>();

  @Option(
      names = "--size",
      paramLabel = "SIZE",
      split = ",",
      description = "Only these sizes; files of other sizes stay as they are.")
  private List<String> sizes = new ArrayList<>();

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      split = ",",
      description =
          "Only these papers: a4, letter or shared (prints on both); files for other papers stay "
              + "as they are.")
  private List<String> papers = new ArrayList<>();

  @Option(
      names = "--option",
      paramLabel = "NAME=CHOICE",
      description =
          "What is chosen for one of the pattern's options; all else is as by default. May be given "
              + "several times; files of other choices stay as they are.")
  private List<String> choices = new ArrayList<>();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "The output folder; build-output/published if none is given.")
  private Path output = OUTPUT;

  @Option(
      names = "--large-print",
      description = "The instructions in large print as well, as files of their own.")
  private boolean largePrint;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description =
          "The documents' language, such as en-US: one that the pattern is translated into, or "
              + "another region's form of its own. Such documents get a folder of their own.")
  private Optional<String> language = Optional.empty();

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description =
          "Which units are printed: metric, inches, metric-first or inches-first. Such documents "
              + "get a folder of their own.")
  private Optional<String> units = Optional.empty();

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "A folder of templates that replaces the program's own.")
  private Path templates;

  PublishCommand(Console console, Workshop workshop) {
    this.console = console;
    this.workshop = workshop;
  }

  @Override
  public Integer call() throws IOException {
    Path base = console.directory();
    List<Path> wanted = folders.isEmpty() ? content(base.resolve(CONTENT)) : folders;
    Path target = base.resolve(output);
    List<Checked> all = new ArrayList<>();
    Listener listener =
        new Listener() {
          @Override
          public void begun(Path folder, int sizeCount, int paperCount) {
            if (sizeCount == 0) {
              return; // Its findings will say why.
            }
            console.say(
                "publishing "
                    + console.shown(folder)
                    + ": "
                    + TextReport.counted(sizeCount, "size")
                    + " on "
                    + TextReport.counted(paperCount, "paper"));
          }

          @Override
          public void ended(Outcome outcome) {
            Checked checked = Checked.of(outcome, console);
            all.add(checked);
            Talk.about(checked, console);
            for (Path file : outcome.result().written()) {
              console.result(output.resolve(target.relativize(file)).toString());
            }
          }
        };
    workshop.publish(
        templates == null ? null : base.resolve(templates),
        wanted.stream().map(base::resolve).toList(),
        new Request(
            sizes.stream().distinct().toList(),
            papersWanted(),
            choicesWanted(),
            target,
            largePrint,
            presentation()),
        listener);
    return Talk.end(all, console);
  }

  private Presentation presentation() {
    return new Presentation(
        language.map(PublishCommand::locale),
        units.map(
            name ->
                Choice.of(
                    "units",
                    name,
                    List.of(PrintForm.Units.values()),
                    each -> each.name().toLowerCase(Locale.ROOT).replace('_', '-'))));
  }

  private static Locale locale(String tag) {
    try {
      Locale locale = new Locale.Builder().setLanguageTag(tag).build();
      if (!locale.getLanguage().isEmpty()) {
        return locale;
      }
    } catch (IllformedLocaleException e) {
      // Refused below, like a tag that names no language.
    }
    throw new RefusedException("‘" + tag + "’ is no language tag; write it like en-GB");
  }

  private List<Paper> papersWanted() {
    return papers.stream()
        .map(name -> Choice.of("paper", name, Publisher.PAPERS, Paper::id))
        .distinct()
        .toList();
  }

  private SortedMap<String, String> choicesWanted() {
    SortedMap<String, String> wanted = new TreeMap<>();
    for (String choice : choices) {
      int sign = choice.indexOf('=');
      if (sign < 1 || sign == choice.length() - 1) {
        throw new RefusedException(
            "‘"
                + choice
                + "’ doesn't say what is chosen; write it as name=choice, such as piping=no");
      }
      String name = choice.substring(0, sign).strip();
      String before = wanted.put(name, choice.substring(sign + 1).strip());
      if (before != null && !before.equals(wanted.get(name))) {
        throw new RefusedException(
            "two choices are given for the option ‘"
                + name
                + "’; publish them one after the other");
      }
    }
    return wanted;
  }

  private List<Path> content(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new RefusedException(
          "no pattern folder was given, and there is no folder ‘" + CONTENT + "’ here");
    }
    List<Path> found;
    try (Stream<Path> children = Files.list(folder)) {
      found =
          children
              .filter(Files::isDirectory)
              .filter(child -> !child.getFileName().toString().startsWith("."))
              .sorted()
              .toList();
    }
    if (found.isEmpty()) {
      throw new RefusedException("there is no pattern folder in ‘" + console.shown(folder) + "’");
    }
    return found;
  }
}
