package org.lapmark.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.SizeList;
import org.lapmark.source.Masthead;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.SizeTable;
import org.lapmark.source.StepSource;
import org.lapmark.source.key.Ref;
import org.lapmark.text.markdown.ManuscriptReader;

/** Texts, and a pattern with a few measures, to read and print. */
final class Samples {
  static final Targets TARGETS =
      new Targets(
          List.of("mark", "fuse", "zip"),
          List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12"),
          List.of("printing", "cutting"),
          new OptionsSource(
              List.of(),
              List.of(),
              Collections.singletonMap(
                  Ref.of(Ref.Kind.STEP, "line"), Formula.parse(source("lined"))),
              Collections.singleton(Ref.of(Ref.Kind.STEP, "misstated"))));

  private Samples() {}

  static SourceText source(String text) {
    SourceFile file = new SourceFile("bag/steps/010-a.md", text);
    return SourceText.verbatim(file, 0, text.length());
  }

  static Manuscript read(String text, Findings findings) {
    return ManuscriptReader.read(source(text), TARGETS, findings);
  }

  /** Reads a text that must be without fault. */
  static Manuscript read(String text) {
    Findings findings = new Findings();
    Manuscript manuscript = read(text, findings);
    if (!findings.sorted().isEmpty()) {
      throw new AssertionError(findings.sorted());
    }
    return manuscript;
  }

  /** Steps, one a line: id; title; stage; body. */
  static List<StepSource> steps(String lines) {
    SourceFile file = new SourceFile("bag/steps", lines);
    List<StepSource> steps = new ArrayList<>();
    int start = 0;
    for (String line : lines.split("\n")) {
      SourceText[] parts = new SourceText[4];
      int at = start;
      int end = start + line.length();
      for (int i = 0; i < 4; i++) {
        int semicolon = i == 3 ? end : lines.indexOf(';', at);
        while (at < semicolon && lines.charAt(at) == ' ') {
          at++;
        }
        parts[i] = SourceText.verbatim(file, at, semicolon);
        at = Math.min(end, semicolon + 1);
      }
      steps.add(new StepSource(parts[0], parts[1], parts[2], parts[3]));
      start = end + 1;
    }
    return steps;
  }

  /** A pattern in one size, with the measures a (in millimetres) and n, a count. */
  static EvaluatedPattern pattern(String size, double a) {
    Scope scope =
        new Scope() {
          @Override
          public Value value(SourceText name) {
            return switch (name.text()) {
              case "a" -> Value.Quantity.length(a);
              case "n" -> Value.Quantity.plain(3);
              default ->
                  throw new org.lapmark.finding.FindingException(
                      Finding.of(TextCode.STEP_EMPTY, name.position()));
            };
          }

          @Override
          public Value geometry(SourceText function, List<SourceText> references) {
            return Value.Quantity.length(10);
          }
        };
    return new EvaluatedPattern(
        source(), Variant.ofSize(size), Map.of(), Map.of(), List.of(), List.of(), scope);
  }

  private static PatternSource source() {
    SourceText words = SourceText.verbatim(new SourceFile("pattern.yaml", "Pouch"), 0, 5);
    Masthead masthead =
        new Masthead(
            words,
            words,
            null,
            Locale.UK,
            null,
            null,
            METRIC,
            words,
            LocalDate.of(2027, 4, 2),
            null);
    return new PatternSource(
        "pouch",
        masthead,
        new SizeTable(List.of("M"), List.of()),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  static final PrintForm METRIC = new PrintForm(PrintForm.Units.METRIC, 1, 8);

  static Printing printing(Manuscript manuscript, EvaluatedPattern... patterns) {
    return Printing.of(manuscript.values(), List.of(patterns), METRIC, new Findings());
  }

  /** Hooks that show what they were given. */
  static final class Plain implements HtmlText.Hooks {
    @Override
    public String value(Inline.Value value, List<PrintedValue> values) {
      return values.isEmpty() ? "?" : SizeList.text(values, " ", ", ");
    }

    @Override
    public HtmlText.Link reference(Inline.Reference reference) {
      String target = reference.kind().scheme() + "-" + reference.target();
      return new HtmlText.Link(target, "#" + target);
    }

    @Override
    public void figure(Block.Figure figure, Markup out) {
      out.open("figure").text(figure.content().text()).close();
    }

    @Override
    public void art(Block.Art art, String alternative, String caption, Markup out) {
      out.empty("img", "src", art.path(), "alt", alternative);
      out.raw(caption);
    }

    @Override
    public String boxLabel(Block.Box.Kind kind) {
      return kind.word().toUpperCase(java.util.Locale.ROOT);
    }

    @Override
    public String noteLabel(int number) {
      return "note " + number;
    }
  }

  static HtmlText html(Printing printing) {
    return new HtmlText(printing, new HtmlText.Frame(2, "s1", 0), new Plain());
  }

  static String html(Manuscript manuscript, EvaluatedPattern... patterns) {
    return html(printing(manuscript, patterns)).text(manuscript);
  }
}
