package org.lapmark.source.read;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.FinishedSource;
import org.lapmark.source.Masthead;
import org.lapmark.source.NoteSource;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.SizeTable;
import org.lapmark.source.SourceCode;
import org.lapmark.source.StepSource;
import org.lapmark.source.Translation;
import org.lapmark.source.UnitSource;
import org.lapmark.source.drawing.Drawings;
import org.lapmark.source.folder.FolderFiles;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.outside.FilmReader;
import org.lapmark.source.outside.Outside;
import org.lapmark.source.outside.OutsideReader;
import org.lapmark.source.sizes.SizeTableReader;
import org.lapmark.source.yaml.YamlNode;
import org.lapmark.source.yaml.YamlParser;

/** Reads a pattern folder. */
public final class PatternReader {
  /** The version of the folder's form that this program reads. */
  public static final int FORMAT = 1;

  private static final String PATTERN = "pattern.yaml";
  private static final String SIZES = "sizes.csv";
  private static final String NOTES = "notes/";
  private static final List<String> NOTE_NAMES = List.of("introduction", "cautions", "fitting");

  private static final Key<SourceText> FORMAT_KEY =
      Key.required(
          "format",
          Forms.special(
              Integer.toString(FORMAT), Forms.schema("const", FORMAT), PatternReader::format));

  private static final Key<TemplateText> LABEL = Key.required("label", Forms.LABEL_TEMPLATE);
  private static final Key<TemplateText> VALUE = Key.required("value", Forms.LABEL_TEMPLATE);
  private static final Table ROW = Table.of("finished", LABEL, VALUE, Stated.WHEN);
  private static final Key<List<Stated>> FINISHED = Key.of("finished", Forms.list(Forms.map(ROW)));

  private static final Key<List<Named<YamlNode>>> UNITS =
      Key.of(
          "assembled",
          Forms.named(
              Forms.special("view, as in figures", Forms.schema("type", "object"), (r, n, k) -> n),
              false));

  /** The top of {@code pattern.yaml}. */
  static final Table TABLE =
      Table.of("pattern", FORMAT_KEY)
          .with(MastheadReader.NEEDED)
          .with(List.of(ThingReader.MATERIALS, PanelReader.PANELS, PieceReader.PIECES))
          .with(MastheadReader.FURTHER)
          .with(
              List.of(
                  OptionReader.OPTIONS,
                  OptionReader.FORBIDDEN,
                  ThingReader.HARDWARE,
                  MeasureReader.MEASURES,
                  FINISHED,
                  SeamReader.SEAMS,
                  FasteningReader.TRIMS,
                  FasteningReader.ATTACHMENTS,
                  UNITS,
                  MakingReader.MAKING,
                  MakingReader.TOOLS,
                  CareReader.USE,
                  OutsideReader.COVER,
                  FilmReader.FILM));

  private PatternReader() {}

  /**
   * The tables of keys that a pattern folder is held against: of {@code pattern.yaml}, of a step's
   * front matter, and of translations' texts, steps and notes.
   */
  public static List<Table> tables() {
    return List.of(
        TABLE,
        StepReader.STEP,
        TranslationReader.TRANSLATION,
        TranslationReader.STEP,
        TranslationReader.NOTE);
  }

  /**
   * Reads a folder.
   *
   * @param folder the folder
   * @param findings where problems go
   * @return what could be read, or null when {@code pattern.yaml} itself is missing or unreadable
   *     as YAML (which is then reported)
   * @throws IOException when the folder itself can't be read for reasons outside its content
   */
  public static PatternSource read(Path folder, Findings findings) throws IOException {
    return read(folder, Limits.STANDARD, findings);
  }

  /**
   * Reads a folder within limits of one's own.
   *
   * @param folder the folder
   * @param limits how much is read
   * @param findings where problems go
   * @return what could be read, or null when {@code pattern.yaml} itself is missing or unreadable
   *     as YAML or the folder holds too many files (which is then reported). Of the masthead, what
   *     is missing is empty, English or the first of January 1970. A panel whose shape couldn't be
   *     read has none
   * @throws IOException when the folder itself can't be read for reasons outside its content
   */
  public static PatternSource read(Path folder, Limits limits, Findings findings)
      throws IOException {
    FolderFiles files = new FolderFiles(folder, limits, findings);
    if (files.isTooMany()) {
      return null;
    }
    Reading reading = new Reading(limits, findings);
    SizeTable sizes = null;
    if (files.has(SIZES)) {
      SourceFile file = files.text(SIZES);
      sizes = file == null ? null : new SizeTableReader(reading, file).read();
    } else if (!files.isRefused(SIZES)) {
      missing(SourceCode.SIZES_MISSING, SIZES, files, reading);
    }
    List<StepSource> steps = new StepReader(reading, files).read();
    List<NoteSource> notes = notes(reading, files);
    new UnreadFiles(reading, files, NOTE_NAMES).report();
    if (!files.has(PATTERN)) {
      if (!files.isRefused(PATTERN)) {
        missing(SourceCode.PATTERN_MISSING, PATTERN, files, reading);
      }
      return null;
    }
    SourceFile file = files.text(PATTERN);
    YamlNode.Entries root =
        file == null ? null : YamlParser.read(file, 0, file.content().length(), limits, findings);
    if (root != null && root.entries().isEmpty()) {
      reading.saysNothing(file, "pattern", TABLE.required());
      return null;
    }
    return root == null ? null : pattern(root, reading, files, sizes, steps, notes);
  }

  /** Reports a file that has to be there; one whose name comes near is named. */
  private static void missing(FindingCode code, String name, FolderFiles files, Reading reading) {
    List<String> beside = files.all().stream().filter(path -> path.indexOf('/') < 0).toList();
    String nearest = reading.hints().nearest(name, beside);
    reading
        .findings()
        .add(
            code,
            Position.ofFile(files.display(name)),
            "near",
            nearest.isEmpty() ? "no" : "yes",
            "nearest",
            nearest);
  }

  private static PatternSource pattern(
      YamlNode.Entries root,
      Reading reading,
      FolderFiles files,
      SizeTable sizes,
      List<StepSource> steps,
      List<NoteSource> notes) {
    Stated in = Stated.of(reading, root, TABLE, root.firstKey(), PATTERN);
    in.get(FORMAT_KEY);
    Masthead masthead = new MastheadReader(reading, root.file()).read(in);
    ThingReader things = new ThingReader(reading);
    Drawings drawings = new Drawings(reading, files);
    List<Translation> translations = new TranslationReader(reading, files).read();
    Outside outside =
        new OutsideReader(reading, files)
            .read(
                in,
                steps.stream().map(step -> step.id().text()).toList(),
                bodies(steps, notes, translations));
    PatternSource source =
        new PatternSource(
            files.folderName(),
            masthead,
            sizes,
            things.read(in.all(ThingReader.MATERIALS)),
            things.read(in.all(ThingReader.HARDWARE)),
            new MeasureReader(reading).read(in),
            finished(in, reading),
            new PanelReader(reading, drawings).read(in),
            new PieceReader(reading).read(in),
            new SeamReader(reading).read(in),
            new FasteningReader(reading).read(in),
            units(in),
            new MakingReader(reading).read(in),
            steps,
            notes,
            translations,
            // Last, when all names that formulas ask for are known.
            new OptionReader(reading).read(in),
            outside);
    drawings.reportUnused();
    reportIdle(source, reading);
    if (in.node(PanelReader.PANELS) instanceof YamlNode.Entries panels) {
      new References(reading, source, panels, in.node(SeamReader.SEAMS)).check();
    }
    return source;
  }

  /** The texts that may show pictures. */
  private static List<SourceText> bodies(
      List<StepSource> steps, List<NoteSource> notes, List<Translation> translations) {
    List<SourceText> bodies = new ArrayList<>();
    steps.forEach(step -> bodies.add(step.body()));
    notes.forEach(note -> bodies.add(note.body()));
    for (Translation translation : translations) {
      translation.steps().forEach(step -> bodies.add(step.step().body()));
      translation.notes().forEach(note -> bodies.add(note.note().body()));
    }
    return bodies;
  }

  /** Reports the options that nothing asks for, not even by a name that is mistyped. */
  private static void reportIdle(PatternSource source, Reading reading) {
    List<String> options =
        source.options().options().stream().map(option -> option.name().text()).toList();
    Set<String> unknown = new TreeSet<>(reading.switches().asked());
    unknown.removeAll(names(source));
    Set<String> meant = new TreeSet<>();
    unknown.forEach(word -> meant.add(reading.hints().nearest(word, options)));
    for (OptionsSource.OptionSource option : source.options().options()) {
      SourceText name = option.name();
      if (!reading.switches().isAsked(name.text()) && !meant.contains(name.text())) {
        reading.findings().add(SourceCode.OPTION_IDLE, name.position(), "name", name.text());
      }
    }
  }

  private static Set<String> names(PatternSource source) {
    Set<String> names = new TreeSet<>();
    if (source.sizes() != null) {
      source.sizes().rows().forEach(row -> names.add(row.name()));
    }
    source.measures().forEach(measure -> names.add(measure.name().text()));
    source.options().options().forEach(option -> names.add(option.name().text()));
    source.fastenings().trims().forEach(trim -> names.add(trim.name().text()));
    source.fastenings().attachments().forEach(one -> names.add(one.name().text()));
    return names;
  }

  private static List<NoteSource> notes(Reading reading, FolderFiles files) {
    List<NoteSource> notes = new ArrayList<>();
    for (String path : files.in(NOTES, ".md")) {
      String name = path.substring(NOTES.length(), path.length() - ".md".length());
      if (!NOTE_NAMES.contains(name)) {
        reading.unknown(
            SourceCode.NOTE_UNKNOWN, Position.ofFile(files.display(path)), name, NOTE_NAMES);
        continue;
      }
      SourceFile file = files.text(path);
      if (file != null) {
        SourceText body = SourceText.verbatim(file, 0, file.content().length());
        reading.passages(body);
        notes.add(new NoteSource(name, body));
      }
    }
    return notes;
  }

  private static SourceText format(Reading reading, YamlNode node, String key) {
    SourceText format = reading.text(node, key);
    if (format != null && !format.text().equals(Integer.toString(FORMAT))) {
      reading
          .findings()
          .add(
              SourceCode.FORMAT_UNSUPPORTED,
              format.position(),
              "text",
              format.text(),
              "supported",
              Integer.toString(FORMAT));
    }
    return format;
  }

  private static List<UnitSource> units(Stated pattern) {
    List<UnitSource> units = new ArrayList<>();
    for (Named<YamlNode> unit : pattern.all(UNITS)) {
      units.add(new UnitSource(unit.name(), label(unit.value()), unit.value()));
    }
    return units;
  }

  /** What readers see as a unit's name; what is wrong with it is told where figures read it. */
  private static TemplateText label(YamlNode unit) {
    if (unit instanceof YamlNode.Entries view) {
      for (YamlNode.Entry entry : view.entries()) {
        if (entry.key().text().text().equals("name")
            && entry.value() instanceof YamlNode.Text text
            && !List.of("yes", "no").contains(text.text().text())) {
          return TemplateText.parse(text.text(), new Findings());
        }
      }
    }
    return null;
  }

  private static List<FinishedSource> finished(Stated pattern, Reading reading) {
    List<FinishedSource> rows = new ArrayList<>();
    int nth = 0;
    for (Stated in : pattern.all(FINISHED)) {
      nth++;
      if (in.isSound(LABEL, VALUE)) {
        Formula when = in.get(Stated.WHEN);
        if (when != null) {
          Ref row = Ref.of(Ref.Kind.FINISHED, Integer.toString(nth));
          reading.switches().condition(row, when);
        }
        rows.add(new FinishedSource(in.get(LABEL), in.get(VALUE), when));
      }
    }
    return rows;
  }
}
