package org.lapmark.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;

/** Reads the steps: front matter between lines of three hyphens, then Markdown. */
final class StepReader {
  private static final String FOLDER = "steps/";
  private static final String FENCE = "---";

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
              SourceCode.TOO_MANY_ENTRIES,
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
    String content = file.content();
    int firstEnd = lineEnd(content, 0);
    if (!content.substring(0, firstEnd).stripTrailing().equals(FENCE)) {
      reading
          .findings()
          .add(SourceCode.STEP_FRONT_MATTER_MISSING, file.position(0, Math.max(1, firstEnd)));
      return null;
    }
    int start = Math.min(firstEnd + 1, content.length());
    int at = start;
    while (at < content.length()) {
      int end = lineEnd(content, at);
      if (content.substring(at, end).stripTrailing().equals(FENCE)) {
        return step(file, start, at, Math.min(end + 1, content.length()));
      }
      at = end + 1;
    }
    reading.findings().add(SourceCode.STEP_FRONT_MATTER_OPEN, file.position(0, firstEnd));
    return null;
  }

  private StepSource step(SourceFile file, int start, int end, int body) {
    YamlNode.Entries map = YamlParser.read(file, start, end, reading.limits(), reading.findings());
    if (map == null) {
      return null;
    }
    Map<String, YamlNode> values =
        reading.section(map, Section.STEP, file.position(0, FENCE.length()), "front matter");
    SourceText id = text(values, "id");
    SourceText title = text(values, "title");
    SourceText stage = text(values, "stage");
    boolean named = id != null && reading.checkName(id);
    if (!named || title == null || stage == null) {
      return null;
    }
    reading.condition(values, id.position());
    SourceText text = SourceText.verbatim(file, body, file.content().length());
    reading.passages(text);
    reading.switches().askWords(title.text());
    return new StepSource(
        id,
        title,
        stage,
        values.containsKey("uses") ? reading.texts(values.get("uses"), "uses") : List.of(),
        text);
  }

  private SourceText text(Map<String, YamlNode> values, String key) {
    return values.containsKey(key) ? reading.label(values.get(key), key) : null;
  }

  private static int lineEnd(String content, int from) {
    int end = content.indexOf('\n', from);
    return end < 0 ? content.length() : end;
  }
}
