package org.lapmark.text.markdown;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.commonmark.ext.footnotes.FootnoteDefinition;
import org.commonmark.node.Node;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;
import org.lapmark.text.Block;
import org.lapmark.text.Footnote;
import org.lapmark.text.Letters;
import org.lapmark.text.TextCode;

/** The footnotes of one parse: numbered at their first mark, and read there. */
final class Notes {
  private final ManuscriptReader manuscript;
  private final PreparedText text;
  private final List<FootnoteDefinition> all = new ArrayList<>();
  private final Map<String, FootnoteDefinition> definitions = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final List<Stray> strays = new ArrayList<>();
  private boolean inNote;

  /** The mark of a footnote that doesn't exist. */
  private record Stray(String label, Position position) {}

  Notes(ManuscriptReader manuscript, PreparedText text) {
    this.manuscript = manuscript;
    this.text = text;
  }

  void define(FootnoteDefinition definition) {
    all.add(definition);
    definitions.putIfAbsent(key(definition.getLabel()), definition);
  }

  /** The footnote of a label where its first mark stands; null for another mark, or for none. */
  FootnoteDefinition unread(String label) {
    String key = key(label);
    return numbers.containsKey(key) ? null : definitions.get(key);
  }

  /** The number of a footnote that has been read; 0 where there is none. */
  int number(String label) {
    return numbers.getOrDefault(key(label), 0);
  }

  /** Numbers a footnote that has a label, and reads it. */
  int read(String label, Supplier<List<Block>> content) {
    int number = manuscript.numberNote();
    numbers.put(key(label), number);
    return read(number, content);
  }

  /** Numbers a footnote that is written at its mark, and reads it. */
  int read(Supplier<List<Block>> content) {
    return read(manuscript.numberNote(), content);
  }

  private int read(int number, Supplier<List<Block>> content) {
    inNote = true;
    manuscript.add(new Footnote(number, content.get()));
    inNote = false;
    return number;
  }

  /** Whether a mark stands in a footnote, where there can be none. */
  boolean refused(Node mark) {
    if (inNote) {
      text.findings().add(TextCode.FOOTNOTE_IN_FOOTNOTE, text.position(mark));
    }
    return inNote;
  }

  /** Keeps the mark of a footnote that doesn't exist, found while the text is being parsed. */
  void stray(String label, Position position) {
    strays.add(new Stray(label, position));
  }

  void reportStrays() {
    List<String> known = all.stream().map(FootnoteDefinition::getLabel).toList();
    for (Stray stray : strays) {
      String nearest = NearestWord.of(stray.label(), known).orElse("");
      text.findings()
          .add(
              TextCode.FOOTNOTE_UNKNOWN,
              stray.position(),
              "label",
              Letters.shown(stray.label()),
              "nearest",
              nearest,
              "hasNearest",
              nearest.isEmpty() ? "no" : "yes");
    }
  }

  void reportUnused() {
    for (FootnoteDefinition definition : all) {
      String label = key(definition.getLabel());
      if (!numbers.containsKey(label) || definitions.get(label) != definition) {
        String shown = Letters.shown(definition.getLabel());
        text.findings().add(TextCode.FOOTNOTE_UNUSED, text.position(definition), "label", shown);
      }
    }
  }

  private static String key(String label) {
    return label.strip().replaceAll("\\s+", " ").toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }
}
