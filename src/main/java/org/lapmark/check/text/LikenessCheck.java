package org.lapmark.check.text;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.lapmark.check.rule.Amount;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Rule;
import org.lapmark.figure.FigureSource;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.grade.StatedSize;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.PrintForm.Units;
import org.lapmark.source.FinishedSource;
import org.lapmark.source.NoteSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.StepSource;
import org.lapmark.text.Block;
import org.lapmark.text.Steps;
import org.lapmark.text.Targets;
import org.lapmark.text.markdown.ManuscriptReader;

/**
 * Lengths that differ aren't printed alike where they stand side by side: in a step with its
 * figures, in a row of a table, in the sizes of one finished measurement. And a depth to clip is
 * never printed as more than it is.
 */
public final class LikenessCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(LikenessCheck::run, CheckCode.PRINTED_ALIKE, CheckCode.DEPTH_ROUNDED_UP);

  public static final Rule<List<GradedPattern>> ACROSS_SIZES =
      new Rule<>(LikenessCheck::acrossSizes, CheckCode.SIZES_PRINTED_ALIKE);

  private final GradedPattern pattern;
  private final PrintForm form;
  private final Findings findings;

  private LikenessCheck(GradedPattern pattern, Findings findings) {
    this.pattern = pattern;
    this.form = pattern.source().masthead().form();
    this.findings = findings;
  }

  static void run(Evaluated evaluated, Findings findings) {
    GradedPattern pattern = evaluated.pattern();
    LikenessCheck check = new LikenessCheck(pattern, findings);
    for (StepSource step : pattern.source().steps()) {
      List<ShownLength> shown = new ArrayList<>(ShownLength.in(step.title(), pattern));
      shown.addAll(ShownLength.in(step.body(), pattern));
      check.compare(shown, "step");
      evaluated.steps(findings).all().stream()
          .filter(read -> read.id().equals(step.id().text()))
          .forEach(read -> check.depths(read, shown));
    }
    for (NoteSource note : pattern.source().notes()) {
      for (Block.Figure figure :
          ManuscriptReader.read(note.body(), Targets.NONE, new Findings()).figures()) {
        check.compare(ShownLength.in(figure.content(), pattern), "figure");
      }
    }
    for (FinishedSource row : pattern.source().finished()) {
      check.compare(ShownLength.in(row.value(), pattern), "row");
    }
    pattern.pieces().forEach(check::piece);
  }

  private void piece(Piece piece) {
    Optional<StatedSize> size = piece.statedSize();
    if (size.isEmpty()) {
      return;
    }
    Position position =
        pattern.source().pieces().stream()
            .filter(stated -> stated.number() == piece.number())
            .map(PieceSource::position)
            .findFirst()
            .orElse(Position.ofFile(pattern.source().folder()));
    PrintForm ruled = form.ruled();
    compare(
        List.of(
            ShownLength.computed("width", size.get().width(), position, ruled),
            ShownLength.computed("height", size.get().height(), position, ruled)),
        "piece");
  }

  private void compare(List<ShownLength> shown, String place) {
    for (int i = 0; i < shown.size(); i++) {
      for (int j = 0; j < i; j++) {
        ShownLength first = shown.get(j);
        ShownLength second = shown.get(i);
        Optional<String> text = second.alike(first, form.units());
        if (text.isPresent()) {
          Optional<String> apart = second.apart(first, form);
          findings.add(
              CheckCode.PRINTED_ALIKE,
              second.position(),
              "place",
              place,
              "first",
              first.expression(),
              "first_length",
              new Amount(first.metric(), Dimension.LENGTH).value(),
              "second",
              second.expression(),
              "second_length",
              new Amount(second.metric(), Dimension.LENGTH).value(),
              "text",
              plain(text.get()),
              "size",
              pattern.variant().size(),
              "way",
              place.equals("piece") ? "piece" : apart.isPresent() ? "finer" : "words",
              "write_first",
              first.written(apart.orElse("")),
              "write_second",
              second.written(apart.orElse("")));
          break;
        }
      }
    }
  }

  /** What a step says of the depths that its figures draw. */
  private void depths(Steps.Step step, List<ShownLength> shown) {
    Set<String> depths = new LinkedHashSet<>();
    for (Block.Figure block : step.body().figures()) {
      FigureSource.parse(block.content(), new Findings()).stream()
          .flatMap(figure -> figure.clipDepths().stream())
          .forEach(depth -> depths.add(bare(depth.text().text())));
    }
    for (ShownLength length : shown) {
      if (depths.contains(bare(length.expression()))) {
        depth(length);
      }
    }
  }

  private void depth(ShownLength length) {
    boolean metric =
        form.units() != Units.INCHES && read(length.metricText()) > length.metric() + 1e-6;
    boolean inches =
        form.units() != Units.METRIC && read(length.inchText()) > length.inches() + 1e-6;
    if (metric || inches) {
      findings.add(
          CheckCode.DEPTH_ROUNDED_UP,
          length.position(),
          "expression",
          length.expression(),
          "length",
          new Amount(length.metric(), Dimension.LENGTH).value(),
          "text",
          plain(inches ? length.inchText() : length.metricText()),
          "write",
          length.written(length.form().isEmpty() ? "at most" : length.form() + " at most"),
          "size",
          pattern.variant().size());
    }
  }

  /** What a maker measures who reads a length; 0 for a text in words of another language. */
  private double read(String printed) {
    String text = plain(printed).replace(form.words().decimalMark(), ".");
    try {
      return Formula.parse(SourceText.verbatim(new SourceFile("printed", text), 0, text.length()))
          .amount(pattern.scope(), Dimension.LENGTH);
    } catch (FindingException e) {
      return 0;
    }
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  private static String bare(String formula) {
    return formula
        .chars()
        .filter(c -> !Character.isWhitespace(c))
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }

  /**
   * Holds the sizes of each finished measurement against each other.
   *
   * @param patterns the pattern in the sizes of one choice, in order
   * @param findings where problems go
   */
  static void acrossSizes(List<GradedPattern> patterns, Findings findings) {
    GradedPattern first = patterns.get(0);
    Set<Position> told = new LinkedHashSet<>();
    for (int i = 1; i < patterns.size(); i++) {
      GradedPattern before = patterns.get(i - 1);
      GradedPattern after = patterns.get(i);
      for (FinishedSource row : after.source().finished()) {
        for (ShownLength there : ShownLength.in(row.value(), after)) {
          for (FinishedSource same : before.source().finished()) {
            for (ShownLength here : ShownLength.in(same.value(), before)) {
              if (here.position().equals(there.position())) {
                PrintForm form = first.source().masthead().form();
                there
                    .alike(here, form.units())
                    .filter(text -> told.add(there.position()))
                    .ifPresent(
                        text ->
                            findings.add(
                                CheckCode.SIZES_PRINTED_ALIKE,
                                there.position(),
                                "expression",
                                there.expression(),
                                "first",
                                before.variant().size(),
                                "first_length",
                                new Amount(here.metric(), Dimension.LENGTH).value(),
                                "second",
                                after.variant().size(),
                                "second_length",
                                new Amount(there.metric(), Dimension.LENGTH).value(),
                                "text",
                                plain(text),
                                "write",
                                there.written(there.apart(here, form).orElse("mm 0.1"))));
              }
            }
          }
        }
      }
    }
  }
}
