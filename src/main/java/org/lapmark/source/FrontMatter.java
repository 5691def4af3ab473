package org.lapmark.source;

import java.util.Map;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;

/**
 * A Markdown file taken apart: YAML between lines of three hyphens, then text.
 *
 * @param values the front matter's values by key
 * @param body the text behind it
 */
record FrontMatter(Map<String, YamlNode> values, SourceText body) {
  private static final String FENCE = "---";

  /**
   * Takes a file apart.
   *
   * @param section which keys the front matter may have
   * @return its parts, or null if it has no front matter, which is then reported
   */
  static FrontMatter read(SourceFile file, Section section, Reading reading) {
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
        YamlNode.Entries map =
            YamlParser.read(file, start, at, reading.limits(), reading.findings());
        Map<String, YamlNode> values =
            map == null
                ? null
                : reading.section(map, section, file.position(0, FENCE.length()), "front matter");
        return values == null
            ? null
            : new FrontMatter(
                values,
                SourceText.verbatim(file, Math.min(end + 1, content.length()), content.length()));
      }
      at = end + 1;
    }
    reading.findings().add(SourceCode.STEP_FRONT_MATTER_OPEN, file.position(0, firstEnd));
    return null;
  }

  /** A value as text, or null. */
  SourceText text(String key, Reading reading) {
    return values.containsKey(key) ? reading.name(values.get(key), key) : null;
  }

  private static int lineEnd(String content, int from) {
    int end = content.indexOf('\n', from);
    return end < 0 ? content.length() : end;
  }
}
