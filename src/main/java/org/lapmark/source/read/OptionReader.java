package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads what can be chosen, and what can't be combined. */
final class OptionReader {
  /** How many options are read: enough for any pattern, few enough to combine in pairs. */
  static final int MOST_OPTIONS = 24;

  /** How many choices of one option are read. */
  static final int MOST_CHOICES = 16;

  private static final int MOST_FORBIDDEN = 100;

  private static final Key<SourceText> LABEL = Key.required("label", Forms.PRINTED_NAME);
  private static final Form<SourceText> CHOSEN =
      Forms.special(
          "yes, no, a condition, or the name of a choice",
          Forms.schema("type", List.of("string", "boolean")),
          Reading::text);
  private static final Key<SourceText> DEFAULT = Key.required("default", CHOSEN);
  private static final Key<List<Named<SourceText>>> CHOICES =
      Key.of(
          "choices",
          Forms.named(Forms.PRINTED_NAME, true)
              .with("minProperties", 2, "maxProperties", MOST_CHOICES));
  private static final Key<TemplateText> TEXT = Key.of("text", Forms.TEMPLATE);
  private static final Table OPTION = Table.of("option", LABEL, DEFAULT, CHOICES, TEXT);

  private static final Key<Formula> WHEN = Key.required("when", Forms.CONDITION);
  private static final Key<TemplateText> REASON = Key.required("reason", Forms.TEMPLATE);
  private static final Table FORBIDDEN_TABLE = Table.of("forbidden", WHEN, REASON);

  /** The options of a pattern; those beyond the most aren't looked at. */
  static final Key<List<Named<YamlNode>>> OPTIONS =
      Key.of(
          "options",
          Forms.named(Forms.map(OPTION).unread(), true).with("maxProperties", MOST_OPTIONS));

  /** The combinations that a pattern forbids. */
  static final Key<List<Stated>> FORBIDDEN =
      Key.of("forbidden", Forms.list(Forms.map(FORBIDDEN_TABLE), 0, MOST_FORBIDDEN));

  private final Reading reading;
  private final Map<String, Position> labels = new LinkedHashMap<>();

  OptionReader(Reading reading) {
    this.reading = reading;
  }

  /** Reads options and forbidden combinations; the conditions are those collected by then. */
  OptionsSource read(Stated pattern) {
    List<OptionsSource.OptionSource> options = new ArrayList<>();
    for (Named<YamlNode> option : pattern.all(OPTIONS)) {
      if (options.size() == MOST_OPTIONS) {
        tooMany(option.name().position(), OPTIONS.name(), MOST_OPTIONS);
        break;
      }
      option(option.name(), option.value(), options);
    }
    List<OptionsSource.ForbiddenSource> forbidden = new ArrayList<>();
    for (Stated in : pattern.all(FORBIDDEN)) {
      if (in.isComplete() && in.isSound(WHEN, REASON)) {
        forbidden.add(new OptionsSource.ForbiddenSource(in.get(WHEN), in.get(REASON)));
      }
    }
    return new OptionsSource(
        options, forbidden, reading.switches().conditions(), reading.switches().unread());
  }

  /** Reports a label that makers have read before. */
  private void checkLabel(SourceText label, String what, Map<String, Position> seen) {
    String words = label == null ? "" : label.text().strip();
    Position first = words.isEmpty() ? null : seen.putIfAbsent(words, label.position());
    if (first != null) {
      reading
          .findings()
          .add(
              SourceCode.OPTION_LABEL_AGAIN,
              label.position(),
              "what",
              what,
              "label",
              words,
              "line",
              Integer.toString(first.line()));
    }
  }

  private void tooMany(Position position, String what, int limit) {
    reading
        .findings()
        .add(KeyCode.TOO_MANY_ENTRIES, position, "what", what, "limit", Integer.toString(limit));
  }

  private void option(SourceText name, YamlNode node, List<OptionsSource.OptionSource> options) {
    Stated in = Stated.of(reading, node, OPTION, name.position(), name.text());
    if (in == null || !in.isComplete()) {
      return;
    }
    SourceText label = in.get(LABEL);
    checkLabel(label, "option", labels);
    TemplateText text = in.get(TEXT);
    List<OptionsSource.ChoiceSource> choices = in.has(CHOICES) ? choices(name, in) : List.of();
    SourceText standard = in.get(DEFAULT);
    if (label == null || standard == null || choices == null) {
      return;
    }
    if (choices.isEmpty()) {
      yesOrNo(name, label, standard, text, options);
      return;
    }
    List<String> ids = choices.stream().map(choice -> choice.id().text()).toList();
    if (!ids.contains(standard.text())) {
      reading.unknown(SourceCode.CHOICE_UNKNOWN, standard.position(), standard.text(), ids);
    }
    // An option without a right default still makes a name that others may use.
    String id = ids.contains(standard.text()) ? standard.text() : ids.get(0);
    options.add(new OptionsSource.OptionSource(name, label, choices, id, null, text));
  }

  private void yesOrNo(
      SourceText name,
      SourceText label,
      SourceText standard,
      TemplateText text,
      List<OptionsSource.OptionSource> options) {
    String word =
        switch (standard.text()) {
          case "yes", "true" -> OptionsSource.YES;
          case "no", "false" -> OptionsSource.NO;
          default -> null;
        };
    Formula when = word == null ? reading.formula(standard) : null;
    boolean unread = word == null && when == null;
    options.add(
        new OptionsSource.OptionSource(
            name, label, List.of(), unread ? OptionsSource.NO : word, when, text));
  }

  /** The choices; null if they are too few, which is then reported. */
  private List<OptionsSource.ChoiceSource> choices(SourceText option, Stated in) {
    List<OptionsSource.ChoiceSource> choices = new ArrayList<>();
    List<Named<SourceText>> written = in.all(CHOICES);
    Map<String, Position> called = new LinkedHashMap<>();
    for (Named<SourceText> choice : written) {
      checkLabel(choice.value(), "choice", called);
      if (choice.value() != null && written.indexOf(choice) < MOST_CHOICES) {
        choices.add(new OptionsSource.ChoiceSource(choice.name(), choice.value()));
      }
    }
    if (written.size() > MOST_CHOICES) {
      tooMany(written.get(MOST_CHOICES).name().position(), CHOICES.name(), MOST_CHOICES);
    }
    if (written.size() < 2 && in.node(CHOICES) instanceof YamlNode.Entries map) {
      reading.findings().add(SourceCode.OPTION_CHOICES, map.position(), "name", option.text());
    }
    return choices.size() < 2 ? null : choices;
  }
}
