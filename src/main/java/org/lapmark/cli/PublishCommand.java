package org.lapmark.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IllformedLocaleException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.cli.console.Console;
import org.lapmark.cli.console.ExitCode;
import org.lapmark.cli.console.Version;
import org.lapmark.cli.report.ConsoleReport;
import org.lapmark.cli.report.FolderReport;
import org.lapmark.cli.report.TextReport;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.print.arrange.PlanQuality;
import org.lapmark.print.paper.Correction;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.Listener;
import org.lapmark.publish.Outcome;
import org.lapmark.publish.product.Products;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.Papers;
import org.lapmark.publish.request.Presentation;
import org.lapmark.publish.request.RefusedException;
import org.lapmark.publish.request.Request;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Publishes pattern folders: written paths on standard output, everything else on the other. */
@Command(
    name = "publish",
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Publishes pattern folders. Each pattern gets a folder of its own in the output folder; its"
          + " files of this edition are replaced all at once, and only if the pattern has no"
          + " errors. Files of other editions stay.",
      "Prints the paths of the files written on standard output; findings and progress go to "
          + "standard error."
    })
final class PublishCommand implements Callable<Integer> {
  private static final Pattern MEASURED =
      Pattern.compile("([0-9]{1,4}(?:\\.[0-9]{1,3})?) ?[x×] ?([0-9]{1,4}(?:\\.[0-9]{1,3})?)");

  private static final Path OUTPUT = Path.of("build-output", "published");

  /** Where the help lists what can be asked for; what follows it has a greater number. */
  private static final int EXTRAS = 1;

  private static final int BEHIND_EXTRAS = 2;

  private final Console console;
  private final Workshop workshop;
  private CommandSpec spec;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "0..*",
      description =
          "The pattern folders, or the pattern.yaml in them; without any, every folder in"
              + " ‘content’.")
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
          "Only these papers: a4, letter or shared (prints on both), and, made only when asked for,"
              + " with the pieces alone: a0, roll36 (36 in wide) or projector. Files for other"
              + " papers, and cut files, stay as they are.")
  private List<String> papers = new ArrayList<>();

  @Option(
      names = "--measured",
      paramLabel = "WxH",
      description =
          "For one maker's printer: what the bars of 180 and 240 mm measured on her print, such as "
              + "178.6x239.1. Pages are corrected for it and say so, in a folder of their own.")
  private Optional<String> measured = Optional.empty();

  @Option(
      names = "--option",
      paramLabel = "NAME=CHOICE",
      description =
          "What is chosen for one of the pattern's options; all else is as by default. May be given"
              + " several times; files of other choices stay as they are.")
  private List<String> choices = new ArrayList<>();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "The output folder; build-output/published if none is given.")
  private Path output = OUTPUT;

  @Option(
      names = "--piece",
      order = BEHIND_EXTRAS,
      paramLabel = "PIECE",
      split = ",",
      description =
          "Only the tiles of these pieces, by number or name, in a folder of their own; nothing "
              + "else.")
  private List<String> pieces = new ArrayList<>();

  @Option(
      names = "--language",
      order = BEHIND_EXTRAS,
      paramLabel = "TAG",
      description =
          "The documents' language, such as en-US: one that the pattern is translated into, or "
              + "another region's form of its own. Such documents get a folder of their own.")
  private Optional<String> language = Optional.empty();

  @Option(
      names = "--units",
      order = BEHIND_EXTRAS,
      paramLabel = "UNITS",
      description =
          "Which units are printed: metric, inches, metric-first or inches-first. Such documents "
              + "get a folder of their own.")
  private Optional<String> units = Optional.empty();

  @Option(
      names = "--templates",
      order = BEHIND_EXTRAS,
      paramLabel = "DIR",
      description = "A folder of templates that replaces the program's own.")
  private Path templates;

  @Option(
      names = {"-h", "--help"},
      order = BEHIND_EXTRAS,
      usageHelp = true,
      description = "Show this help message and exit.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      order = BEHIND_EXTRAS,
      versionHelp = true,
      description = "Print version information and exit.")
  private boolean version;

  PublishCommand(Console console, Workshop workshop) {
    this.console = console;
    this.workshop = workshop;
  }

  @Override
  public Integer call() throws IOException {
    Path target = Folders.one("--out", output, console);
    Path ownTemplates = Folders.one("--templates", templates, console);
    List<Path> wanted =
        folders.isEmpty() ? Folders.content(console) : Folders.patterns(folders, console);
    List<FolderReport> all = new ArrayList<>();
    boolean[] made = {false};
    Listener listener =
        new Listener() {
          @Override
          public void begun(Path folder, int sizeCount, int paperCount) {
            if (sizeCount == 0) {
              return; // Its findings will say why.
            }
            made[0] = true;
            console.say(
                "publishing "
                    + console.shown(folder)
                    + ": "
                    + TextReport.counted(sizeCount, "size")
                    + " on "
                    + TextReport.counted(paperCount, "paper"));
          }

          @Override
          public void upToDate(Path folder) {
            console.say(
                console.shown(folder)
                    + " hasn’t changed since its files were made; they are all there");
          }

          @Override
          public void setAside(Path folder, String file, String kept) {
            console.say(file + " had been changed; that one is kept as " + kept);
          }

          @Override
          public void arranged(Path folder, String size, String paper, PlanQuality quality) {
            console.say(
                size
                    + " on "
                    + paper
                    + ": "
                    + TextReport.counted(quality.pages(), "page")
                    + (quality.leftOutPages() > 0
                        ? ", " + quality.leftOutPages() + " without a line left out, "
                        : " (at least " + quality.bound() + " needed), ")
                    + TextReport.counted(quality.joins(), "join")
                    + (quality.blankPages() > 0
                        ? "; "
                            + TextReport.counted(quality.blankPages(), "page")
                            + " without a line, which --without-blank-pages leaves out"
                        : "")
                    + (quality.savedPages() == 0
                        ? ""
                        : "; rectangles left off the paper save "
                            + TextReport.counted(quality.savedPages(), "page")));
          }

          @Override
          public void omitted(Path folder, String what) {
            console.say(console.shown(folder) + ": " + what);
          }

          @Override
          public void ended(Outcome outcome) {
            FolderReport checked = FolderReport.of(outcome, console);
            all.add(checked);
            ConsoleReport.about(checked, console);
            for (Path file : outcome.result().written()) {
              console.path(output.resolve(target.relativize(file)));
            }
          }
        };
    workshop.publish(
        ownTemplates,
        wanted,
        new Request(
            sizes.stream().distinct().toList(),
            papersWanted(),
            Choices.of(choices),
            target,
            presentation(),
            extras(),
            pieces.stream().distinct().toList()),
        listener);
    if (made[0] && ConsoleReport.exitCode(all) == ExitCode.DONE) {
      ClassArchive.isWorthKeeping();
    }
    return ConsoleReport.end(all, console);
  }

  /** The options for what can be asked for beside the usual, which the products state. */
  private Set<Extra> extras() {
    Set<Extra> asked = new LinkedHashSet<>();
    for (Extra extra : Products.extras()) {
      if (spec.findOption(extra.option()).<Boolean>getValue()) {
        asked.add(extra);
      }
    }
    return asked;
  }

  @Spec
  void addExtras(CommandSpec self) {
    spec = self;
    for (Extra extra : Products.extras()) {
      self.addOption(
          OptionSpec.builder(extra.option())
              .type(boolean.class)
              .order(EXTRAS)
              .defaultValue("false")
              .description(extra.description())
              .build());
    }
  }

  private Presentation presentation() {
    return new Presentation(
        language.map(PublishCommand::locale),
        units.map(name -> Choice.of("unit", name, PrintForm.Units.class)));
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
    if (measured.isPresent()) {
      Correction correction = correction(measured.get());
      List<Paper> named = papersNamed();
      return (named.isEmpty() ? Papers.USUAL : named)
          .stream().map(paper -> paper.corrected(correction)).toList();
    }
    return papersNamed();
  }

  private static Correction correction(String text) {
    Matcher matcher = MEASURED.matcher(text.strip());
    if (!matcher.matches()) {
      throw new RefusedException(
          "‘" + text + "’ is no pair of measurements in millimetres; write it like 178.6x239.1");
    }
    double across = Double.parseDouble(matcher.group(1));
    double down = Double.parseDouble(matcher.group(2));
    if (!Correction.plausible(across, down)) {
      throw new RefusedException(
          "bars of 180 and 240 mm can't measure ‘"
              + text
              + "’: no printer is more than 6 % out; measure the bars of the printing page again,"
              + " in millimetres, printed at 100 %");
    }
    return new Correction(across, down);
  }

  private List<Paper> papersNamed() {
    return papers.stream()
        .map(name -> Choice.of("paper", name, Papers.ALL, Paper::id))
        .distinct()
        .toList();
  }
}
