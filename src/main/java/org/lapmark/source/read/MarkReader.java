package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchSet;
import org.lapmark.source.MarkKind;
import org.lapmark.source.MarkSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.yaml.YamlNode;

/** Reads what is stated of a panel's marks, and how notches are cut. */
final class MarkReader {
  private static final List<String> NAMES =
      List.of("edge", "line", "corner", "press", "towards", "from_edge", "to_edge");

  private final Reading reading;

  MarkReader(Reading reading) {
    this.reading = reading;
  }

  /** The marks of a panel, in the order of their kinds. */
  List<MarkSource> read(Map<String, YamlNode> panel) {
    List<MarkSource> marks = new ArrayList<>();
    for (MarkKind kind : MarkKind.values()) {
      if (panel.containsKey(kind.key())) {
        reading.named(
            panel.get(kind.key()),
            kind.key(),
            false,
            (name, node) -> {
              MarkSource mark = mark(kind, name, node);
              if (mark != null) {
                marks.add(mark);
              }
            });
      }
    }
    return marks;
  }

  private MarkSource mark(MarkKind kind, SourceText name, YamlNode node) {
    Map<String, YamlNode> parts =
        reading.section(node, kind.section(), name.position(), name.text());
    if (parts == null) {
      return null;
    }
    reading.condition(parts, name.position());
    boolean whole = parts.keySet().containsAll(kind.section().required());
    if (!kind.isPlaced(List.copyOf(parts.keySet()))) {
      reading
          .findings()
          .add(
              SourceCode.MARK_STATEMENT,
              name.position(),
              "name",
              name.text(),
              "kind",
              kind.name().toLowerCase(Locale.ROOT),
              "ways",
              kind.shown());
      whole = false;
    }
    Map<String, Formula> formulas = new LinkedHashMap<>();
    Map<String, SourceText> names = new LinkedHashMap<>();
    Mark.PleatKind pleat = Mark.PleatKind.KNIFE;
    boolean across = false;
    for (Map.Entry<String, YamlNode> part : parts.entrySet()) {
      String key = part.getKey();
      if (key.equals("when")) {
        continue;
      }
      if (key.equals("kind")) {
        pleat = word(part.getValue(), key, Mark.PleatKind.class);
        whole &= pleat != null;
      } else if (key.equals("across")) {
        Boolean truth = reading.truth(part.getValue(), key);
        whole &= truth != null;
        across = Boolean.TRUE.equals(truth);
      } else if (NAMES.contains(key)) {
        SourceText text = Reading.corner(reading.text(part.getValue(), key));
        whole &= text != null;
        names.put(key, text);
      } else {
        Formula formula = reading.formula(part.getValue(), key);
        whole &= formula != null;
        formulas.put(key, formula);
      }
    }
    return whole ? new MarkSource(kind, name, formulas, names, pleat, across) : null;
  }

  /** One of an enumeration's words, or null, which is then reported. */
  private <T extends Enum<T>> T word(YamlNode node, String key, Class<T> type) {
    SourceText text = reading.text(node, key);
    if (text == null) {
      return null;
    }
    List<String> words = new ArrayList<>();
    for (T value : type.getEnumConstants()) {
      String word = value.name().toLowerCase(Locale.ROOT);
      if (word.equals(text.text())) {
        return value;
      }
      words.add(word);
    }
    reading.unknown(KeyCode.MARK_WORD_UNKNOWN, text.position(), text.text(), words);
    return null;
  }

  /** How notches are cut: as stated of them, or of the panel, or by slits; null if misstated. */
  NotchSet.Cut cut(Map<String, YamlNode> notch, NotchSet.Cut general) {
    return notch.containsKey("cut") ? word(notch.get("cut"), "cut", NotchSet.Cut.class) : general;
  }

  /** How a panel's notches are cut where nothing else is stated of them. */
  NotchSet.Cut general(Map<String, YamlNode> panel) {
    NotchSet.Cut cut =
        panel.containsKey("notch_cut")
            ? word(panel.get("notch_cut"), "notch_cut", NotchSet.Cut.class)
            : NotchSet.Cut.SLIT;
    return cut == null ? NotchSet.Cut.SLIT : cut;
  }

  /** The gaps of a set; empty for a single notch, null if they are misstated. */
  List<Formula> gaps(Map<String, YamlNode> notch) {
    List<Formula> gaps = new ArrayList<>();
    if (!notch.containsKey("set")) {
      return gaps;
    }
    if (notch.containsKey("count")) {
      reading.findings().add(SourceCode.NOTCH_SET_TWICE, notch.get("count").position());
    }
    List<YamlNode> nodes = reading.list(notch.get("set"), "set");
    if (nodes.isEmpty() && notch.get("set") instanceof YamlNode.Items items) {
      reading.findings().add(KeyCode.LIST_EMPTY, items.position(), "key", "set");
    }
    for (YamlNode node : reading.bounded(nodes, "gaps", NotchSet.MOST - 1)) {
      Formula gap = reading.formula(node, "set");
      if (gap == null) {
        return null;
      }
      gaps.add(gap);
    }
    return gaps.isEmpty() ? null : gaps;
  }
}
