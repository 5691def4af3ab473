package org.lapmark.source.yaml;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;

/**
 * Finds values without quotes in maps and lists between braces and square brackets, which have
 * commas within round brackets: {@code {at: if(lined, 10 mm, 12 mm)}} would be a value {@code
 * if(lined} and two keys more. They are put together again as they were meant.
 */
final class BracketedCommas {
  private BracketedCommas() {}

  /**
   * The entries of a map between braces, as they were meant.
   *
   * @param entries what YAML makes of it
   * @param findings where unquoted values are reported
   */
  static List<YamlNode.Entry> mendedEntries(List<YamlNode.Entry> entries, Findings findings) {
    List<YamlNode.Entry> mended = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      YamlNode.Entry entry = entries.get(i);
      List<YamlNode> parts = new ArrayList<>(List.of(entry.value()));
      for (YamlNode.Entry next : entries.subList(i + 1, entries.size())) {
        if (!next.value().isNothing()) {
          break;
        }
        parts.add(next.key());
      }
      int used = used(parts);
      if (used > 1) {
        YamlNode joined = joined(parts.subList(0, used), entry.key().text().text(), findings);
        mended.add(new YamlNode.Entry(entry.key(), joined));
        i += used - 1;
      } else {
        mended.add(entry);
      }
    }
    return mended;
  }

  /**
   * The values of a list between square brackets, as they were meant.
   *
   * @param items what YAML makes of it
   * @param findings where unquoted values are reported
   */
  static List<YamlNode> mendedItems(List<YamlNode> items, Findings findings) {
    List<YamlNode> mended = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      int used = used(items.subList(i, items.size()));
      mended.add(used > 1 ? joined(items.subList(i, i + used), "", findings) : items.get(i));
      i += used - 1;
    }
    return mended;
  }

  /** Of how many parts a value consists whose brackets are open in the first, and closed after. */
  private static int used(List<YamlNode> parts) {
    int open = 0;
    for (int i = 0; i < parts.size(); i++) {
      if (!(parts.get(i) instanceof YamlNode.Text part) || !part.plain()) {
        return 1;
      }
      open += opened(part.text().text());
      if (open <= 0) {
        return open < 0 ? 1 : i + 1;
      }
    }
    return 1;
  }

  private static int opened(String text) {
    int open = 0;
    for (char c : text.toCharArray()) {
      open += c == '(' ? 1 : c == ')' ? -1 : 0;
    }
    return open;
  }

  private static YamlNode joined(List<YamlNode> parts, String key, Findings findings) {
    YamlNode first = parts.get(0);
    int start = first.start();
    int end = parts.get(parts.size() - 1).end();
    SourceFile file = first.file();
    SourceText whole = SourceText.verbatim(file, start, end);
    report(whole, key, findings);
    return new YamlNode.Text(start, end, whole, true);
  }

  /**
   * Reports a value that needs quotes.
   *
   * @param whole the value
   * @param key the key whose value it is, or the empty text
   */
  static void report(SourceText whole, String key, Findings findings) {
    findings.add(
        YamlCode.COMMAS_UNQUOTED,
        whole.position(),
        "text",
        whole.text(),
        "quoted",
        whole.text().indexOf('"') < 0 ? '"' + whole.text() + '"' : "'" + whole.text() + "'",
        "key",
        key,
        "keyed",
        key.isEmpty() ? "no" : "yes");
  }
}
