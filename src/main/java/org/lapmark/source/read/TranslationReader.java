package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.NoteSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.StepSource;
import org.lapmark.source.Translation;
import org.lapmark.source.folder.FolderFiles;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.FrontMatter;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;
import org.lapmark.source.yaml.YamlParser;

/**
 * Reads the author's text in other languages: {@code translations/<tag>/} with {@code texts.yaml},
 * pairs of {@code from} and {@code to}, and {@code steps} and {@code notes} as in the pattern
 * folder, whose front matter states the mark of the original.
 */
final class TranslationReader {
  private static final String FOLDER = "translations/";
  private static final String TEXTS = "texts.yaml";
  private static final Pattern READ =
      Pattern.compile("translations/([^/]+)/(?:texts\\.yaml|(?:steps|notes)/[^/]+\\.md)");

  private static final Key<SourceText> FROM = Key.required("from", Forms.TEXT);
  private static final Key<TemplateText> TO = Key.required("to", Forms.TEMPLATE);
  private static final Table TEXT = Table.of("translated_text", FROM, TO);
  private static final Key<List<Stated>> ALL =
      Key.required("texts", Forms.list(Forms.map(TEXT)).naming(TEXTS));

  /** The texts of {@code pattern.yaml} in another language. */
  static final Table TRANSLATION = Table.of("translation", ALL);

  private static final Key<SourceText> ORIGINAL = Key.required("original", Forms.PRINTED_NAME);

  /** A translated step's front matter. */
  static final Table STEP =
      Table.of("translated_step").with(StepReader.HEAD).with(List.of(ORIGINAL));

  /** A translated note's front matter. */
  static final Table NOTE = Table.of("translated_note", ORIGINAL);

  private final Reading reading;
  private final FolderFiles files;

  TranslationReader(Reading reading, FolderFiles files) {
    this.reading = reading;
    this.files = files;
  }

  List<Translation> read() {
    Set<String> tags = new TreeSet<>();
    for (String path : files.all()) {
      Matcher read = READ.matcher(path);
      if (read.matches()) {
        tags.add(read.group(1));
      }
    }
    List<Translation> translations = new ArrayList<>();
    for (String tag : tags) {
      Locale locale = locale(tag);
      if (locale != null) {
        translations.add(translation(tag, locale));
      }
    }
    return translations;
  }

  private Locale locale(String tag) {
    try {
      Locale locale = new Locale.Builder().setLanguageTag(tag).build();
      if (!locale.getLanguage().isEmpty()) {
        return locale;
      }
    } catch (IllformedLocaleException e) {
      // Reported below.
    }
    reading
        .findings()
        .add(SourceCode.LANGUAGE_WRONG, Position.ofFile(files.display(FOLDER + tag)), "text", tag);
    return null;
  }

  private Translation translation(String tag, Locale locale) {
    String folder = FOLDER + tag + "/";
    List<Translation.TranslatedText> texts = new ArrayList<>();
    if (files.has(folder + TEXTS)) {
      SourceFile file = files.text(folder + TEXTS);
      YamlNode.Entries root =
          file == null
              ? null
              : YamlParser.read(
                  file, 0, file.content().length(), reading.limits(), reading.findings());
      Stated in =
          root == null ? null : Stated.of(reading, root, TRANSLATION, root.firstKey(), TEXTS);
      for (Stated text : in == null ? List.<Stated>of() : in.all(ALL)) {
        if (text.isSound(FROM, TO)) {
          texts.add(new Translation.TranslatedText(text.get(FROM), text.get(TO)));
        }
      }
    }
    StepReader stepReader = new StepReader(reading, files);
    List<Translation.TranslatedStep> steps = new ArrayList<>();
    for (String path : files.in(folder + "steps/", ".md")) {
      FrontMatter front = front(path, STEP);
      StepSource step = front == null ? null : stepReader.step(front);
      SourceText mark = front == null ? null : front.in().get(ORIGINAL);
      if (step != null && mark != null) {
        steps.add(new Translation.TranslatedStep(mark, step));
      }
    }
    List<Translation.TranslatedNote> notes = new ArrayList<>();
    String noteFolder = folder + "notes/";
    for (String path : files.in(noteFolder, ".md")) {
      FrontMatter front = front(path, NOTE);
      SourceText mark = front == null ? null : front.in().get(ORIGINAL);
      if (mark != null) {
        reading.passages(front.body());
        String name = path.substring(noteFolder.length(), path.length() - ".md".length());
        notes.add(new Translation.TranslatedNote(mark, new NoteSource(name, front.body())));
      }
    }
    return new Translation(
        locale, Position.ofFile(files.display(FOLDER + tag)), texts, steps, notes);
  }

  private FrontMatter front(String path, Table table) {
    SourceFile file = files.text(path);
    return file == null ? null : FrontMatter.read(file, table, reading);
  }
}
