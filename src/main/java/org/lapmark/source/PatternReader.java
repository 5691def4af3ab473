package org.lapmark.source;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;

/** Reads a pattern folder. */
public final class PatternReader {
  /** The version of the folder's form that this program reads. */
  public static final int FORMAT = 1;

  private static final String PATTERN = "pattern.yaml";
  private static final String SIZES = "sizes.csv";
  private static final String NOTES = "notes/";
  private static final List<String> NOTE_NAMES = List.of("introduction", "cautions", "fitting");

  private PatternReader() {}

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
      saysNothing(file, reading);
      return null;
    }
    return root == null ? null : pattern(root, reading, files, sizes, steps, notes);
  }

  /** Reports a file that has to be there; one whose name comes near is named. */
  private static void missing(SourceCode code, String name, FolderFiles files, Reading reading) {
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

  /** Reports that nothing stands in a file, instead of all that is missing in it. */
  static void saysNothing(SourceFile file, Reading reading) {
    reading
        .findings()
        .add(
            SourceCode.FILE_SAYS_NOTHING,
            Position.ofFile(file.name()),
            "file",
            file.name(),
            "kind",
            file.name().endsWith(SIZES) ? "sizes" : "pattern",
            "keys",
            String.join(", ", Section.PATTERN.required()));
  }

  private static PatternSource pattern(
      YamlNode.Entries root,
      Reading reading,
      FolderFiles files,
      SizeTable sizes,
      List<StepSource> steps,
      List<NoteSource> notes) {
    Map<String, YamlNode> values =
        reading.section(root, Section.PATTERN, MastheadReader.firstKey(root), PATTERN);
    if (values.containsKey("format")) {
      SourceText format = reading.text(values.get("format"), "format");
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
    }
    Masthead masthead = new MastheadReader(reading, root.file()).read(values);
    ThingReader things = new ThingReader(reading);
    Drawings drawings = new Drawings(reading, files);
    PatternSource source =
        new PatternSource(
            files.folderName(),
            masthead,
            sizes,
            values.containsKey("materials")
                ? things.read(values.get("materials"), Section.MATERIAL, "materials")
                : List.of(),
            values.containsKey("hardware")
                ? things.read(values.get("hardware"), Section.HARDWARE, "hardware")
                : List.of(),
            values.containsKey("measures")
                ? new MeasureReader(reading).read(values.get("measures"))
                : List.of(),
            values.containsKey("finished") ? finished(values.get("finished"), reading) : List.of(),
            values.containsKey("panels")
                ? new PanelReader(reading, drawings).read(values.get("panels"))
                : List.of(),
            values.containsKey("pieces")
                ? new PieceReader(reading).read(values.get("pieces"))
                : List.of(),
            values.containsKey("seams")
                ? new SeamReader(reading).read(values.get("seams"))
                : List.of(),
            new MakingReader(reading).read(values),
            steps,
            notes,
            new TranslationReader(reading, files).read(),
            // Last, when all names that formulas ask for are known.
            new OptionReader(reading).read(values));
    drawings.reportUnused();
    reportIdle(source, reading);
    if (values.containsKey("panels") && values.get("panels") instanceof YamlNode.Entries panels) {
      new References(reading, source, panels, values.get("seams")).check();
    }
    return source;
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

  private static List<FinishedSource> finished(YamlNode node, Reading reading) {
    List<FinishedSource> rows = new ArrayList<>();
    List<YamlNode> nodes = reading.list(node, "finished");
    for (YamlNode item : reading.bounded(nodes, "finished", reading.limits().entries())) {
      Position owner = MastheadReader.firstKey(item);
      Map<String, YamlNode> values = reading.section(item, Section.FINISHED, owner, "finished");
      if (values == null) {
        continue;
      }
      TemplateText label =
          values.containsKey("label") ? reading.labelTemplate(values.get("label"), "label") : null;
      TemplateText value =
          values.containsKey("value") ? reading.labelTemplate(values.get("value"), "value") : null;
      if (label != null && value != null) {
        Formula when =
            values.containsKey("when") ? reading.formula(values.get("when"), "when") : null;
        if (when != null) {
          reading.switches().condition(when.text().position(), when);
        }
        rows.add(new FinishedSource(label, value, when));
      }
    }
    return rows;
  }
}
