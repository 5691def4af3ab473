package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.source.SourceCode;
import org.lapmark.source.StepSource;
import org.lapmark.source.folder.FolderFiles;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.FrontMatter;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;

/** Reads the steps: front matter between lines of three hyphens, then Markdown. */
final class StepReader {
  private static final String FOLDER = "steps/";

  private static final Key<SourceText> ID =
      Key.required("id", new Form<>("new name", Forms.NAME.schema(), List.of(), Reading::name));
  private static final Key<SourceText> TITLE = Key.required("title", Forms.PRINTED_NAME);
  private static final Key<SourceText> STAGE = Key.required("stage", Forms.PRINTED_NAME);
  private static final Key<List<SourceText>> USES = Key.of("uses", Forms.NAMES);

  /** The keys of a step, and of its translation. */
  static final List<Key<?>> HEAD = List.of(ID, TITLE, STAGE);

  /** A step's front matter. */
  static final Table STEP = Table.of("step").with(HEAD).with(List.of(USES, Stated.WHEN));

  private final Reading reading;
  private final FolderFiles files;

  StepReader(Reading reading, FolderFiles files) {
    this.reading = reading;
    this.files = files;
  }

  List<StepSource> read() {
    List<StepSource> steps = new ArrayList<>();
    Map<String, Position> ids = new LinkedHashMap<>();
    List<String> paths = files.in(FOLDER, ".md");
    int limit = reading.limits().steps();
    if (paths.size() > limit) {
      reading
          .findings()
          .add(
              KeyCode.TOO_MANY_ENTRIES,
              Position.ofFile(files.display(paths.get(limit))),
              "what",
              "steps",
              "limit",
              Integer.toString(limit));
      paths = paths.subList(0, limit);
    }
    for (String path : paths) {
      SourceFile file = files.text(path);
      StepSource step = file == null ? null : step(file);
      if (file == null) {
        reading.switches().unread(StepSource.UNNAMED);
      }
      if (step == null) {
        continue;
      }
      Position first = ids.putIfAbsent(step.id().text(), step.id().position());
      if (first != null) {
        reading
            .findings()
            .add(
                SourceCode.STEP_ID_DUPLICATE,
                step.id().position(),
                "id",
                step.id().text(),
                "file",
                first.file());
      }
      steps.add(step);
    }
    return steps;
  }

  private StepSource step(SourceFile file) {
    FrontMatter front = FrontMatter.read(file, STEP, reading);
    if (front == null) {
      reading.switches().unread(StepSource.UNNAMED);
    }
    return front == null ? null : step(front);
  }

  /** The step that front matter and text make, or null if it can't be one. */
  StepSource step(FrontMatter front) {
    Stated in = front.in();
    SourceText id = in.get(ID);
    SourceText title = in.get(TITLE);
    SourceText stage = in.get(STAGE);
    boolean named = id != null && reading.checkName(id);
    boolean original = in.table() == STEP;
    if (!named || title == null || stage == null) {
      if (original) {
        reading
            .switches()
            .unread(id == null ? StepSource.UNNAMED : Ref.of(Ref.Kind.STEP, id.text()));
      }
      return null;
    }
    if (original) {
      in.condition(Ref.of(Ref.Kind.STEP, id.text()));
    }
    reading.passages(front.body());
    reading.switches().askWords(title.text());
    return new StepSource(id, title, stage, original ? in.all(USES) : List.of(), front.body());
  }
}
