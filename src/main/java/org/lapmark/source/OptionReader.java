package org.lapmark.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;

/** Reads what can be chosen, and what can't be combined. */
final class OptionReader {
  /** How many options are read: enough for any pattern, few enough to combine in pairs. */
  static final int MOST_OPTIONS = 24;

  /** How many choices of one option are read. */
  static final int MOST_CHOICES = 16;

  private static final int MOST_FORBIDDEN = 100;

  private final Reading reading;
  private final Map<String, Position> labels = new LinkedHashMap<>();

  OptionReader(Reading reading) {
    this.reading = reading;
  }

  /** Reads options and forbidden combinations; the conditions are those collected by then. */
  OptionsSource read(Map<String, YamlNode> pattern) {
    List<OptionsSource.OptionSource> options = new ArrayList<>();
    List<SourceText> beyond = new ArrayList<>();
    if (pattern.containsKey("options")) {
      reading.named(
          pattern.get("options"),
          "options",
          true,
          (name, node) -> {
            if (options.size() == MOST_OPTIONS) {
              beyond.add(name);
            } else {
              option(name, node, options);
            }
          });
      if (!beyond.isEmpty()) {
        tooMany(beyond.get(0).position(), "options", MOST_OPTIONS);
      }
    }
    List<OptionsSource.ForbiddenSource> forbidden = new ArrayList<>();
    if (pattern.containsKey("forbidden")) {
      List<YamlNode> nodes = reading.list(pattern.get("forbidden"), "forbidden");
      for (YamlNode node : reading.bounded(nodes, "forbidden", MOST_FORBIDDEN)) {
        forbidden(node, forbidden);
      }
    }
    return new OptionsSource(options, forbidden, reading.switches().conditions());
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
        .add(SourceCode.TOO_MANY_ENTRIES, position, "what", what, "limit", Integer.toString(limit));
  }

  private void option(SourceText name, YamlNode node, List<OptionsSource.OptionSource> options) {
    Map<String, YamlNode> values =
        reading.section(node, Section.OPTION, name.position(), name.text());
    if (values == null || !values.containsKey("label") || !values.containsKey("default")) {
      return;
    }
    SourceText label = reading.name(values.get("label"), "label");
    checkLabel(label, "option", labels);
    TemplateText text =
        values.containsKey("text") ? reading.template(values.get("text"), "text") : null;
    List<OptionsSource.ChoiceSource> choices =
        values.containsKey("choices") ? choices(name, values.get("choices")) : List.of();
    SourceText standard = reading.text(values.get("default"), "default");
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
  private List<OptionsSource.ChoiceSource> choices(SourceText option, YamlNode node) {
    List<OptionsSource.ChoiceSource> choices = new ArrayList<>();
    List<SourceText> written = new ArrayList<>();
    Map<String, Position> called = new LinkedHashMap<>();
    reading.named(
        node,
        "choices",
        true,
        (id, value) -> {
          written.add(id);
          if (written.size() == MOST_CHOICES + 1) {
            tooMany(id.position(), "choices", MOST_CHOICES);
          }
          SourceText label = reading.name(value, id.text());
          checkLabel(label, "choice", called);
          if (label != null && written.size() <= MOST_CHOICES) {
            choices.add(new OptionsSource.ChoiceSource(id, label));
          }
        });
    if (written.size() < 2 && node instanceof YamlNode.Entries) {
      reading.findings().add(SourceCode.OPTION_CHOICES, node.position(), "name", option.text());
    }
    return choices.size() < 2 ? null : choices;
  }

  private void forbidden(YamlNode node, List<OptionsSource.ForbiddenSource> forbidden) {
    Position owner = MastheadReader.firstKey(node);
    Map<String, YamlNode> values = reading.section(node, Section.FORBIDDEN, owner, "forbidden");
    if (values == null || !values.containsKey("when") || !values.containsKey("reason")) {
      return;
    }
    Formula when = reading.formula(values.get("when"), "when");
    TemplateText reason = reading.template(values.get("reason"), "reason");
    if (when != null && reason != null) {
      forbidden.add(new OptionsSource.ForbiddenSource(when, reason));
    }
  }
}
