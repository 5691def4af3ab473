package org.lapmark.figure.read;

import java.util.List;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.yaml.YamlNode;

/**
 * Values of a figure's keys; what can't be read is thrown as a finding. {@code what} is always the
 * key, with what it belongs to before a slash.
 */
public final class Values {
  private Values() {}

  /** The entries of a list. */
  public static List<YamlNode> list(YamlNode block, String what) {
    return block.list().orElseThrow(() -> Faults.kind(block.position(), what, "a list"));
  }

  /** The entries of a list that has some. */
  public static List<YamlNode> entries(YamlNode block, String what) {
    List<YamlNode> entries = list(block, what);
    if (entries.isEmpty()) {
      throw Faults.kind(block.position(), what, "at least one entry, or else leave it out");
    }
    return entries;
  }

  /** A text that isn't empty. */
  public static SourceText text(YamlNode block, String what) {
    if (block instanceof YamlNode.Text text && !text.text().text().isBlank()) {
      return text.text();
    }
    throw Faults.kind(block.position(), what, "text");
  }

  /** A formula. */
  public static Formula formula(YamlNode block, String what) {
    return Formula.parse(text(block, what));
  }

  static int count(YamlNode node, String what, int most) {
    String text = text(node, what).text();
    if (!text.matches("[1-9]\\d?") || Integer.parseInt(text) > most) {
      throw Faults.kind(node.position(), what, "a number from 1 to " + most);
    }
    return Integer.parseInt(text);
  }

  static double share(YamlNode node, String what) {
    String text = text(node, what).text();
    if (!text.matches("0(\\.\\d+)?|1(\\.0+)?")) {
      throw Faults.kind(node.position(), what, "a number from 0 to 1");
    }
    return Double.parseDouble(text);
  }

  static double degrees(YamlNode node, String what) {
    String text = text(node, what).text();
    if (!text.matches("-?\\d{1,3}(\\.\\d{1,3})?") || Math.abs(Double.parseDouble(text)) > 360) {
      throw Faults.kind(node.position(), what, "a number of degrees from -360 to 360");
    }
    return Double.parseDouble(text);
  }

  static Entries<Formula> pair(YamlNode node, String what) {
    List<YamlNode> both = node.list().orElse(List.of());
    if (both.size() != 2) {
      throw Faults.kind(node.position(), what, "two lengths in brackets");
    }
    return new Entries<>(List.of(formula(both.get(0), what), formula(both.get(1), what)), true);
  }

  static String word(YamlNode block, String what, List<String> known) {
    String word = text(block, what).text();
    if (known.contains(word)) {
      return word;
    }
    Position position = block.position();
    throw Faults.of(
        position,
        FigureCode.FIGURE_WORD_UNKNOWN,
        "word",
        word,
        "name",
        what.substring(what.indexOf('/') + 1),
        "near",
        NearestWord.of(word, known).orElse("none"),
        "known",
        Known.listed(known));
  }
}
