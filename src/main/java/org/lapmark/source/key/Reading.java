package org.lapmark.source.key;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.folder.Hints;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.yaml.YamlCode;
import org.lapmark.source.yaml.YamlNode;

/**
 * What every section's reader needs: turning nodes into texts, formulas, maps and lists, and
 * reporting what is of another kind.
 *
 * @param limits how much is read
 * @param findings where problems go
 * @param hints finds the words that were meant
 * @param switches collects what depends on a condition
 */
public record Reading(Limits limits, Findings findings, Hints hints, Switches switches) {
  /** How the corners of a rectangle were once spelled, which formulas can't read. */
  private static final Pattern HYPHENED = Pattern.compile("(top|bottom)-(left|right)(_mirrored)*");

  /** A printed value is about as long as this. */
  private static final int VALUE_LENGTH = 6;

  /** Begins reading a folder. */
  public Reading(Limits limits, Findings findings) {
    this(limits, findings, new Hints(), new Switches());
  }

  /** Reports a word that doesn't have the form of a name. */
  public boolean checkName(SourceText name) {
    return checkName(name, false);
  }

  /**
   * Reports a word that can't be a name.
   *
   * @param free whether formulas use the name by itself, so that it must not be one of their words
   */
  public boolean checkName(SourceText name, boolean free) {
    return new NameCheck(findings).check(name, free);
  }

  /** A scalar's text, or null if it is something else or nothing, which is then reported. */
  public SourceText text(YamlNode node, String key) {
    if (node instanceof YamlNode.Text text) {
      if (text.isNothing()) {
        findings.add(KeyCode.VALUE_EMPTY, emptyPosition(text), "key", key);
        return null;
      }
      return text.text();
    }
    String written = node.file().content().substring(node.start(), node.end());
    if (node instanceof YamlNode.Entries map && looksLikePlaceholder(map)) {
      findings.add(YamlCode.PLACEHOLDER_UNQUOTED, node.position(), "text", written);
    } else {
      findings.add(KeyCode.VALUE_NOT_TEXT, node.position(), "key", key);
    }
    return null;
  }

  /** Braces around keys without values: what YAML makes of a placeholder without quotes. */
  public static boolean looksLikePlaceholder(YamlNode.Entries map) {
    return map.flow()
        && !map.entries().isEmpty()
        && map.entries().stream().allMatch(entry -> entry.value().isNothing());
  }

  /** An empty value is shown at the end of what stands before it, its key. */
  private static Position emptyPosition(YamlNode text) {
    if (text.end() > text.start()) {
      return text.file().position(text.start(), text.end());
    }
    SourceFile file = text.file();
    int end = text.start();
    while (end > 0 && file.content().charAt(end - 1) <= ' ') {
      end--;
    }
    return file.position(Math.max(0, end - 1), end);
  }

  /** A short text for readers, or null. */
  public SourceText label(YamlNode node, String key) {
    return within(text(node, key), key, limits.nameLength());
  }

  /** The name of something in figures, tables and lists, or null. */
  public SourceText name(YamlNode node, String key) {
    SourceText text = label(node, key);
    if (text != null) {
      new NameCheck(findings).checkBrief(text, text.text().length(), key);
    }
    return text;
  }

  /** The name of something, with placeholders, or null. */
  public TemplateText nameTemplate(YamlNode node, String key) {
    TemplateText template = labelTemplate(node, key);
    if (template != null) {
      List<Integer> lengths = template.made(String::length, placeholder -> VALUE_LENGTH);
      new NameCheck(findings)
          .checkBrief(template.source(), lengths.stream().mapToInt(Integer::intValue).sum(), key);
    }
    return template;
  }

  /** A short text with placeholders, or null. */
  public TemplateText labelTemplate(YamlNode node, String key) {
    return parsed(label(node, key));
  }

  /** A text with placeholders, or null. */
  public TemplateText template(YamlNode node, String key) {
    return parsed(within(text(node, key), key, limits.textLength()));
  }

  /** A text with placeholders that stands anywhere, or null if it is too long. */
  public TemplateText template(SourceText text, String what) {
    return parsed(within(text, what, limits.textLength()));
  }

  private TemplateText parsed(SourceText text) {
    if (text == null) {
      return null;
    }
    TemplateText template = TemplateText.parse(text, findings);
    switches.ask(template);
    return template;
  }

  private SourceText within(SourceText text, String key, int limit) {
    if (text == null || text.text().length() <= limit) {
      return text;
    }
    findings.add(
        KeyCode.LABEL_TOO_LONG,
        text.position(limit, text.text().length()),
        "key",
        key,
        "limit",
        Integer.toString(limit));
    return null;
  }

  /** A formula, or null if it can't be understood, which is then reported. */
  public Formula formula(YamlNode node, String key) {
    SourceText text = text(node, key);
    return text == null ? null : formula(text);
  }

  /** A formula, or null if it can't be understood, which is then reported. */
  public Formula formula(SourceText text) {
    try {
      Formula formula = Formula.parse(text);
      switches.ask(formula);
      return formula;
    } catch (FindingException e) {
      findings.add(e.finding());
      return null;
    }
  }

  /** Reads the conditions of a text's passages. */
  public void passages(SourceText body) {
    Ref text = Ref.of(Ref.Kind.PASSAGE, body.file().name());
    int nth = 0;
    for (SourceText condition : Passages.conditions(body)) {
      Formula when = condition.text().isEmpty() ? null : formula(condition);
      nth++;
      if (when != null) {
        switches.condition(text.inside(Ref.Kind.PASSAGE, nth), when);
      }
    }
    Passages.unclosed(body)
        .forEach(fence -> findings.add(KeyCode.PASSAGE_UNCLOSED, fence.position()));
    Passages.bare(body)
        .forEach(fence -> findings.add(KeyCode.PASSAGE_WITHOUT_CONDITION, fence.position()));
    Passages.tooShort(body)
        .forEach(
            fence ->
                findings.add(
                    KeyCode.PASSAGE_FENCE_SHORT, fence.position(), "fence", longer(fence.text())));
    switches.askWords(body.text());
  }

  /** The signs of a fence, and one more. */
  private static String longer(String fence) {
    return fence.charAt(0) + fence.replaceFirst("(?s)([`~]+).*", "$1");
  }

  /** A whole number in a range, or null. */
  public Integer number(YamlNode node, String key, int lowest, int highest) {
    SourceText text = text(node, key);
    if (text == null) {
      return null;
    }
    if (text.text().matches("[0-9]{1,9}")) {
      int number = Integer.parseInt(text.text());
      if (number >= lowest && number <= highest) {
        return number;
      }
    }
    findings.add(
        KeyCode.NUMBER_WRONG,
        text.position(),
        "text",
        text.text(),
        "lowest",
        Integer.toString(lowest),
        "highest",
        Integer.toString(highest));
    return null;
  }

  /** Yes or no, or null. */
  public Boolean truth(YamlNode node, String key) {
    SourceText text = text(node, key);
    if (text == null) {
      return null;
    }
    switch (text.text()) {
      case "true", "yes":
        return Boolean.TRUE;
      case "false", "no":
        return Boolean.FALSE;
      default:
        findings.add(KeyCode.TRUTH_WRONG, text.position(), "text", text.text());
        return null;
    }
  }

  /** A list's values; empty if it isn't one, which is then reported. */
  public List<YamlNode> list(YamlNode node, String key) {
    return node.list()
        .orElseGet(
            () -> {
              ofAnotherKind(node, key, KeyCode.VALUE_NOT_LIST);
              return List.of();
            });
  }

  private void ofAnotherKind(YamlNode node, String key, FindingCode code) {
    if (node.isNothing()) {
      findings.add(KeyCode.VALUE_EMPTY, emptyPosition(node), "key", key);
    } else {
      findings.add(code, node.position(), "key", key);
    }
  }

  /** A corner's name, or null if it is something else. */
  public SourceText corner(YamlNode node, String key) {
    return corner(text(node, key));
  }

  /** A corner's name as formulas read it; null for null. */
  public static SourceText corner(SourceText name) {
    return name != null && HYPHENED.matcher(name.text()).matches()
        ? name.respelled('-', '_')
        : name;
  }

  /** A list's values as texts; an empty list is reported. */
  public List<SourceText> texts(YamlNode node, String key) {
    List<SourceText> texts = new ArrayList<>();
    for (YamlNode item : items(node, key, true, Integer.MAX_VALUE)) {
      SourceText text = text(item, key);
      if (text != null) {
        texts.add(text);
      }
    }
    return texts;
  }

  /**
   * A list's values, up to a limit.
   *
   * @param needed whether an empty list is reported
   */
  List<YamlNode> items(YamlNode node, String key, boolean needed, int most) {
    List<YamlNode> nodes = list(node, key);
    if (needed && nodes.isEmpty() && node.list().isPresent()) {
      findings.add(KeyCode.LIST_EMPTY, node.position(), "key", key);
    }
    return bounded(nodes, key, most);
  }

  /** A list's values up to a limit; passing it is reported at the first value left out. */
  public List<YamlNode> bounded(List<YamlNode> nodes, String what, int limit) {
    if (nodes.size() <= limit) {
      return nodes;
    }
    tooMany(nodes.get(limit).position(), what, limit);
    return nodes.subList(0, limit);
  }

  private void tooMany(Position first, String what, int limit) {
    findings.add(KeyCode.TOO_MANY_ENTRIES, first, "what", what, "limit", Integer.toString(limit));
  }

  /**
   * The entries of a map with names of the author's own. Duplicate names and names that formulas
   * can't use are reported; of duplicates the first counts.
   *
   * @param free whether formulas use the names by themselves
   */
  public void named(
      YamlNode node, String what, boolean free, BiConsumer<SourceText, YamlNode> each) {
    YamlNode.Entries map = map(node, what);
    if (map == null) {
      return;
    }
    Map<String, YamlNode.Text> seen = new LinkedHashMap<>();
    for (YamlNode.Entry entry : map.entries()) {
      String name = entry.key().text().text();
      if (repeated(entry.key(), seen)) {
        continue;
      }
      if (seen.size() > limits.entries()) {
        tooMany(entry.key().position(), what, limits.entries());
        return;
      }
      if (name.isEmpty()) {
        findings.add(YamlCode.KEY_NOT_TEXT, entry.key().position());
      } else if (checkName(entry.key().text(), free)) {
        each.accept(entry.key().text(), entry.value());
      }
    }
  }

  /** A map's entries up to a limit; passing it is reported at the first entry left out. */
  public List<YamlNode.Entry> bounded(YamlNode.Entries map, String what) {
    List<YamlNode.Entry> entries = map.entries();
    if (entries.size() <= limits.entries()) {
      return entries;
    }
    tooMany(entries.get(limits.entries()).key().position(), what, limits.entries());
    return entries.subList(0, limits.entries());
  }

  public boolean repeated(YamlNode.Text key, Map<String, YamlNode.Text> seen) {
    YamlNode.Text first = seen.putIfAbsent(key.text().text(), key);
    if (first == null) {
      return false;
    }
    findings.add(
        KeyCode.KEY_DUPLICATE,
        key.position(),
        "key",
        key.text().text(),
        "line",
        Integer.toString(first.position().line()));
    return true;
  }

  /** A map, or null if it is something else, which is then reported. */
  public YamlNode.Entries map(YamlNode node, String key) {
    if (node instanceof YamlNode.Entries map) {
      return map;
    }
    ofAnotherKind(node, key, YamlCode.VALUE_NOT_MAP);
    return null;
  }

  /**
   * Reports that nothing stands in a file, instead of all that is missing in it.
   *
   * @param kind {@code sizes} for the size table
   * @param keys the keys that it needs
   */
  public void saysNothing(SourceFile file, String kind, List<String> keys) {
    findings.add(
        KeyCode.FILE_SAYS_NOTHING,
        Position.ofFile(file.name()),
        "file",
        file.name(),
        "kind",
        kind,
        "keys",
        String.join(", ", keys));
  }

  /** Reports a word that isn't among the known ones, naming the nearest. */
  public void unknown(
      FindingCode code,
      Position position,
      String word,
      Collection<String> known,
      Object... further) {
    hints.unknown(findings, code, position, word, known, further);
  }
}
