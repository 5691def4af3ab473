package org.lapmark.source.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.MeasureCode;

/**
 * Finds decimal commas in maps between braces, where YAML takes them for the end of a value: {@code
 * {distance: 1,5 mm}} would be a distance of 1 and a key {@code 5 mm}.
 */
public final class DecimalCommas {
  private static final Pattern WHOLE = Pattern.compile(".*(?<![\\w.])[0-9]+", Pattern.DOTALL);
  private static final Pattern DECIMALS = Pattern.compile("[0-9]+(?:[^0-9.].*)?", Pattern.DOTALL);

  private DecimalCommas() {}

  /**
   * The entries of a map, with values that a decimal comma took apart put together again as they
   * were meant.
   *
   * @param map the map
   * @param findings where the commas are reported
   */
  public static List<YamlNode.Entry> mended(YamlNode.Entries map, Findings findings) {
    if (!map.flow()) {
      return map.entries();
    }
    List<YamlNode.Entry> entries = new ArrayList<>();
    for (YamlNode.Entry entry : map.entries()) {
      YamlNode.Entry before = entries.isEmpty() ? null : entries.get(entries.size() - 1);
      if (before != null && isRest(before, entry)) {
        int comma = before.value().end();
        findings.add(MeasureCode.FORMULA_DECIMAL_COMMA, map.file().position(comma, comma + 1));
        entries.set(entries.size() - 1, joined(before, entry));
      } else {
        entries.add(entry);
      }
    }
    return entries;
  }

  private static boolean isRest(YamlNode.Entry before, YamlNode.Entry entry) {
    return before.value() instanceof YamlNode.Text value
        && entry.value().isNothing()
        && entry.key().start() == value.end() + 1
        && value.file().content().charAt(value.end()) == ','
        && WHOLE.matcher(value.text().text()).matches()
        && DECIMALS.matcher(entry.key().text().text()).matches();
  }

  private static YamlNode.Entry joined(YamlNode.Entry before, YamlNode.Entry rest) {
    YamlNode.Text value = (YamlNode.Text) before.value();
    SourceText first = value.text();
    SourceText second = rest.key().text();
    String text = first.text() + "." + second.text();
    int[] offsets = new int[text.length() + 1];
    for (int i = 0; i < offsets.length; i++) {
      int behind = i - first.text().length();
      offsets[i] = behind <= 0 ? first.offset(i) : second.offset(behind - 1);
    }
    SourceFile file = first.file();
    return new YamlNode.Entry(
        before.key(),
        new YamlNode.Text(
            value.start(),
            rest.key().end(),
            SourceText.mapped(file, text, offsets),
            value.plain()));
  }
}
