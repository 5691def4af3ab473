package org.lapmark.source.key;

import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.source.yaml.YamlNode;
import org.lapmark.source.yaml.YamlParser;

/**
 * A Markdown file taken apart: YAML between lines of three hyphens, then text.
 *
 * @param in what the front matter states
 * @param body the text behind it
 */
public record FrontMatter(Stated in, SourceText body) {
  private static final String FENCE = "---";

  /**
   * Takes a file apart.
   *
   * @param table which keys the front matter may have
   * @return its parts, or null if it has no front matter, which is then reported
   */
  public static FrontMatter read(SourceFile file, Table table, Reading reading) {
    String content = file.content();
    int firstEnd = lineEnd(content, 0);
    if (!content.substring(0, firstEnd).stripTrailing().equals(FENCE)) {
      reading
          .findings()
          .add(KeyCode.STEP_FRONT_MATTER_MISSING, file.position(0, Math.max(1, firstEnd)));
      return null;
    }
    int start = Math.min(firstEnd + 1, content.length());
    int at = start;
    while (at < content.length()) {
      int end = lineEnd(content, at);
      if (content.substring(at, end).stripTrailing().equals(FENCE)) {
        YamlNode.Entries map =
            YamlParser.read(file, start, at, reading.limits(), reading.findings());
        Stated in =
            map == null
                ? null
                : reading.stated(map, table, file.position(0, FENCE.length()), "front matter");
        return in == null
            ? null
            : new FrontMatter(
                in,
                SourceText.verbatim(file, Math.min(end + 1, content.length()), content.length()));
      }
      at = end + 1;
    }
    reading.findings().add(KeyCode.STEP_FRONT_MATTER_OPEN, file.position(0, firstEnd));
    return null;
  }

  private static int lineEnd(String content, int from) {
    int end = content.indexOf('\n', from);
    return end < 0 ? content.length() : end;
  }
}
