package org.lapmark.grade;

import java.util.Optional;
import java.util.OptionalDouble;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.TrimSource;

/**
 * Compares hardware with what it is for: a ring with what passes through it, a zip with what it is
 * sewn into. Stock sizes are compared by their names: what is 25 mm (1 in) fits what is.
 */
final class HardwareCheck {
  /** So much more, in millimetres, still passes and still fits. */
  private static final double ROOM = 0.5;

  private final PatternEvaluator evaluator;
  private final PatternScope scope;
  private final PatternSource source;
  private final Findings findings;

  HardwareCheck(PatternEvaluator evaluator, PatternSource source, Findings findings) {
    this.evaluator = evaluator;
    this.scope = evaluator.scope();
    this.source = source;
    this.findings = findings;
  }

  /** Everything that the variant has. */
  void check() {
    for (ThingSource thing : source.hardware()) {
      for (ThingSource.Passing passing : thing.passes()) {
        attempt(() -> passing(thing, passing));
      }
      if (thing.properties().get("tape_width") != null) {
        attempt(() -> tape(thing));
      }
      if (thing.properties().get("sewn_into") != null) {
        attempt(() -> zip(thing));
      }
    }
  }

  /** What can't be computed is reported once. */
  private void attempt(Runnable check) {
    try {
      check.run();
    } catch (FindingException e) {
      findings.add(e.finding());
    } catch (DemandGraph.Unavailable e) {
      // It was reported where it is stated.
      return;
    }
  }

  /** A size, in both of its names if it has two. */
  private record Size(double metric, double inches, boolean pair) {
    boolean isBeyond(Size other) {
      return metric > other.metric + ROOM || pair && other.pair && inches > other.inches + ROOM;
    }
  }

  private void passing(ThingSource hardware, ThingSource.Passing passing) {
    Optional<Size> inner = size(hardware, "inner_width");
    if (inner.isEmpty()) {
      unknown(hardware.id().position(), hardware.id().text(), true);
      return;
    }
    ThingSource thing = evaluator.statements().thing(passing.text().text());
    if (thing == null) {
      compare(hardware, passing, "width", size(passing.formula()), inner.get());
      return;
    }
    if (!evaluator.presence().holds(thing.ref())) {
      return;
    }
    Optional<Size> width =
        size(thing, "width")
            .or(() -> size(thing, "diameter"))
            .or(() -> size(thing, "tape_width"))
            .or(() -> size(thing, "usable_width"));
    if (width.isEmpty()) {
      unknown(passing.text().position(), thing.id().text(), false);
      return;
    }
    compare(hardware, passing, "width", width.get(), inner.get());
    Optional<Size> thickness = size(thing, "thickness").or(() -> size(thing, "diameter"));
    Optional<Size> height = size(hardware, "inner_height");
    if (thickness.isPresent() && height.isPresent()) {
      compare(hardware, passing, "thickness", thickness.get(), height.get());
    }
  }

  private void compare(
      ThingSource hardware, ThingSource.Passing passing, String dimension, Size value, Size inner) {
    if (value.isBeyond(inner)) {
      findings.add(
          Finding.of(
              GradeCode.HARDWARE_TOO_NARROW,
              passing.text().position(),
              "passing",
              passing.text().text(),
              "dimension",
              dimension,
              "value",
              Rounded.hundredth(value.metric()),
              "hardware",
              hardware.id().text(),
              "inner",
              Rounded.hundredth(inner.metric()),
              "size",
              scope.size()));
    }
  }

  private void unknown(Position place, String thing, boolean inside) {
    findings.add(
        Finding.of(
            GradeCode.PASSING_UNKNOWN, place, "thing", thing, "inside", inside ? "yes" : "no"));
  }

  private void tape(ThingSource thing) {
    Optional<Size> visible = size(thing, TrimSource.VISIBLE_WIDTH);
    Size tape = size(thing.properties().get("tape_width"));
    if (visible.isPresent() && visible.get().metric() > tape.metric() + ROOM) {
      findings.add(
          Finding.of(
              GradeCode.TRIM_SHOWS_TOO_WIDE,
              thing.properties().get(TrimSource.VISIBLE_WIDTH).text().position(),
              "name",
              thing.id().text(),
              "thing",
              thing.id().text(),
              "visible",
              Rounded.hundredth(visible.get().metric()),
              "tape",
              Rounded.hundredth(tape.metric()),
              "size",
              scope.size()));
    }
  }

  private void zip(ThingSource zip) {
    Optional<Size> length = size(zip, "length").or(() -> chosen(zip));
    Size opening = size(zip.properties().get("sewn_into"));
    if (length.isPresent() && length.get().metric() > opening.metric() + ROOM) {
      findings.add(
          Finding.of(
              GradeCode.ZIP_TOO_LONG,
              zip.properties().get("sewn_into").text().position(),
              "length",
              Rounded.hundredth(length.get().metric()),
              "opening",
              Rounded.hundredth(opening.metric()),
              "size",
              scope.size()));
    }
  }

  /** The stock length that a measure chooses. */
  private Optional<Size> chosen(ThingSource zip) {
    String stock = zip.id().text() + ".stock_lengths";
    for (MeasureSource measure : source.measures()) {
      if (measure.formula() != null
          && measure.formula().text().text().contains(stock)
          && scope.value(measure.name()) instanceof Value.NominalPair pair) {
        return Optional.of(new Size(pair.metric(), pair.inches(), true));
      }
    }
    return Optional.empty();
  }

  private Optional<Size> size(ThingSource thing, String property) {
    return Optional.ofNullable(thing.properties().get(property)).map(this::size);
  }

  private Size size(Formula formula) {
    Value value = formula.evaluate(scope);
    if (value instanceof Value.NominalPair pair) {
      return new Size(pair.metric(), pair.inches(), true);
    }
    OptionalDouble length = value.amount(Dimension.LENGTH);
    if (length.isEmpty()) {
      throw scope.notALength(formula, value);
    }
    return new Size(length.getAsDouble(), length.getAsDouble(), false);
  }
}
