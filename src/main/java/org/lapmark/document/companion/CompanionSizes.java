package org.lapmark.document.companion;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.lapmark.document.manual.Hazards;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.PrintedText;
import org.lapmark.measure.print.NumberWords;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.PatternSource;
import org.lapmark.text.Inline;
import org.lapmark.text.Markup;
import org.lapmark.text.Printing;
import org.lapmark.wording.Wording;

/** Prints whatever a companion says in every size and every choice of units. */
final class CompanionSizes {
  private final List<EvaluatedPattern> patterns;
  private final List<String> names;
  private final Map<CompanionUnits, PrintForm> forms;
  private final Wording wording;
  private final Findings findings;

  /**
   * Sizes of one pattern.
   *
   * @param patterns the pattern in each size, in the order of the size table
   * @param wording the page's words
   * @param findings where problems go
   */
  CompanionSizes(List<EvaluatedPattern> patterns, Wording wording, Findings findings) {
    this.patterns = List.copyOf(patterns);
    this.names = patterns.stream().map(pattern -> pattern.variant().size()).toList();
    this.wording = wording;
    this.findings = findings;
    this.forms = new EnumMap<>(CompanionUnits.class);
    PrintForm author = source().masthead().form().with(NumberWords.of(wording));
    for (CompanionUnits units : CompanionUnits.values()) {
      forms.put(units, units.of(author));
    }
  }

  PatternSource source() {
    return patterns.get(0).source();
  }

  List<EvaluatedPattern> patterns() {
    return patterns;
  }

  List<String> names() {
    return names;
  }

  Wording wording() {
    return wording;
  }

  Findings findings() {
    return findings;
  }

  /** The cautions of the page. */
  Hazards hazards() {
    return new Hazards(patterns, source().masthead().form().with(NumberWords.of(wording)), wording);
  }

  /** The size in which a drawing stands for all of them. */
  int typical() {
    return (patterns.size() - 1) / 2;
  }

  /**
   * A text that is worked out by size and units. A size whose text can't be printed is left out and
   * reported.
   */
  SizedText sized(BiFunction<EvaluatedPattern, PrintForm, String> text) {
    Map<Integer, List<String>> texts = new LinkedHashMap<>();
    for (int i = 0; i < patterns.size(); i++) {
      List<String> printed = new ArrayList<>();
      for (PrintForm form : forms.values()) {
        try {
          String one = text.apply(patterns.get(i), patterns.get(i).printing(form));
          if (one != null) {
            printed.add(one);
          }
        } catch (FindingException e) {
          findings.add(e.finding());
        }
      }
      if (printed.size() == forms.size()) {
        texts.put(i, printed);
      }
    }
    return new SizedText(texts);
  }

  /** An author's text without any form. */
  SizedText sized(TemplateText text) {
    return sized(
        (pattern, form) ->
            PrintedText.of(text, pattern, form, findings).map(PrintedText::text).orElse(null));
  }

  /** As markup within a line; empty for no text. */
  String html(TemplateText text) {
    if (text == null) {
      return "";
    }
    Markup out = new Markup();
    text.<Runnable>made(
            words -> () -> out.text(words),
            part -> () -> value(sized(new TemplateText(text.source(), List.of(part))), out))
        .forEach(Runnable::run);
    return out.toString();
  }

  /** As markup within a line. */
  String html(SizedText text) {
    Markup out = new Markup();
    value(text, out);
    return out.toString();
  }

  /** As markup, one cell a size. */
  List<String> cells(SizedText text) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      Markup out = new Markup();
      text.write(i, out);
      cells.add(out.toString());
    }
    return cells;
  }

  void value(SizedText text, Markup out) {
    if (!text.texts().isEmpty()) {
      out.open("span", "class", "value");
      text.write(names, wording, out);
      out.close();
    }
  }

  /** What placeholders come to in every choice of units. */
  Map<CompanionUnits, Printing> printings(List<Inline.Value> values) {
    Map<CompanionUnits, Printing> printings = new EnumMap<>(CompanionUnits.class);
    forms.forEach(
        (units, form) -> printings.put(units, Printing.of(values, patterns, form, findings)));
    return printings;
  }

  /** What one placeholder comes to. */
  SizedText sized(Inline.Value value, Map<CompanionUnits, Printing> printings) {
    Map<Integer, List<String>> texts = new LinkedHashMap<>();
    for (int i = 0; i < patterns.size(); i++) {
      EvaluatedPattern pattern = patterns.get(i);
      List<String> printed = new ArrayList<>();
      for (Printing printing : printings.values()) {
        Optional<PrintedValue> one =
            printing.of(value).stream()
                .filter(candidate -> candidate.variant().equals(pattern.variant()))
                .findFirst();
        one.ifPresent(found -> printed.add(found.text()));
      }
      if (printed.size() == forms.size()) {
        texts.put(i, printed);
      }
    }
    return new SizedText(texts);
  }
}
