package org.lapmark.check.pattern;

import java.util.Optional;
import java.util.OptionalDouble;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.grade.fastening.Fastened;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.AttachmentSource;
import org.lapmark.source.fastening.TrimSource;

/**
 * Compares hardware with what it is for: a ring with what passes through it, a zip with what it is
 * sewn into. Stock sizes are compared by their names: what is 25 mm (1 in) fits what is.
 */
public final class HardwareCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(
          HardwareCheck::run,
          PieceCode.HARDWARE_TOO_NARROW,
          PieceCode.PASSING_UNKNOWN,
          PieceCode.TRIM_SHOWS_TOO_WIDE,
          PieceCode.ZIP_TOO_LONG);

  /** So much more, in millimetres, still passes and still fits. */
  private static final double ROOM = 0.5;

  private final Evaluated evaluated;
  private final PatternScope scope;
  private final Findings findings;

  private HardwareCheck(Evaluated evaluated, Findings findings) {
    this.evaluated = evaluated;
    this.scope = new PatternScope(evaluated.pattern().scope(), evaluated.size());
    this.findings = findings;
  }

  static void run(Evaluated evaluated, Findings findings) {
    new HardwareCheck(evaluated, findings).check();
  }

  /** Everything that the variant has. */
  private void check() {
    for (ThingSource thing : evaluated.source().hardware()) {
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
    Fastened fastened = evaluated.pattern().fastened();
    for (TrimSource trim : evaluated.source().fastenings().trims()) {
      if (fastened.trim(trim.name().text()).isPresent()) {
        attempt(() -> shown(trim, evaluated.statements().thing(trim.thing().text())));
      }
    }
    for (AttachmentSource attachment : evaluated.source().fastenings().attachments()) {
      if (attachment.where() instanceof AttachmentSource.HeldBy held
          && attachment.thing() != null
          && fastened.attachment(attachment.name().text()).isPresent()) {
        fastened
            .attachment(held.holder().text())
            .ifPresent(holder -> attempt(() -> held(attachment, held.holder(), holder)));
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
    static Size plain(double millimetres) {
      return new Size(millimetres, millimetres, false);
    }

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
    ThingSource thing = evaluated.statements().thing(passing.text().text());
    if (thing == null) {
      compare(hardware, passing, "width", size(passing.formula()), inner.get());
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
      narrow(passing.text().position(), passing.text().text(), dimension, value, hardware, inner);
    }
  }

  /** What a ring or a slide is held by has to go through it. */
  private void held(AttachmentSource attachment, SourceText named, Attached holder) {
    ThingSource hardware = evaluated.statements().thing(attachment.thing().text());
    Formula width = hardware.properties().get("inner_width");
    if (width != null) {
      Size inner = Size.plain(scope.length(width));
      Size value = Size.plain(holder.width());
      if (value.isBeyond(inner)) {
        narrow(named.position(), holder.name(), "width", value, hardware, inner);
      }
    }
  }

  private void narrow(
      Position place,
      String passing,
      String dimension,
      Size value,
      ThingSource hardware,
      Size inner) {
    findings.add(
        PieceCode.HARDWARE_TOO_NARROW,
        place,
        "passing",
        passing,
        "dimension",
        dimension,
        "value",
        Rounded.hundredth(value.metric()),
        "hardware",
        hardware.id().text(),
        "inner",
        Rounded.hundredth(inner.metric()),
        "size",
        evaluated.size());
  }

  private void unknown(Position place, String thing, boolean inside) {
    findings.add(
        Finding.of(
            PieceCode.PASSING_UNKNOWN, place, "thing", thing, "inside", inside ? "yes" : "no"));
  }

  private void tape(ThingSource thing) {
    Optional<Size> visible = size(thing, TrimSource.VISIBLE_WIDTH);
    if (visible.isPresent()) {
      Size tape = size(thing.properties().get("tape_width"));
      shown(
          thing.properties().get(TrimSource.VISIBLE_WIDTH),
          visible.get().metric(),
          thing.id().text(),
          thing,
          tape.metric());
    }
  }

  /** What a trim states of itself; what its thing says is looked at with the thing. */
  private void shown(TrimSource trim, ThingSource thing) {
    Formula tape = thing.properties().get("tape_width");
    if (trim.visibleWidth() != null && tape != null) {
      double width = scope.length(tape);
      double visible = scope.length(trim.visibleWidth());
      shown(trim.visibleWidth(), visible, trim.name().text(), thing, width);
    }
  }

  private void shown(Formula stated, double visible, String name, ThingSource thing, double tape) {
    if (visible > tape + ROOM) {
      findings.add(
          PieceCode.TRIM_SHOWS_TOO_WIDE,
          stated.text().position(),
          "visible",
          Rounded.hundredth(visible),
          "tape",
          Rounded.hundredth(tape),
          "thing",
          thing.id().text(),
          "name",
          name,
          "size",
          evaluated.size());
    }
  }

  private void zip(ThingSource zip) {
    Optional<Size> length = size(zip, "length").or(() -> chosen(zip));
    Size opening = size(zip.properties().get("sewn_into"));
    if (length.isPresent() && length.get().metric() > opening.metric() + ROOM) {
      findings.add(
          Finding.of(
              PieceCode.ZIP_TOO_LONG,
              zip.properties().get("sewn_into").text().position(),
              "length",
              Rounded.hundredth(length.get().metric()),
              "opening",
              Rounded.hundredth(opening.metric()),
              "size",
              evaluated.size()));
    }
  }

  /** The stock length that a measure chooses. */
  private Optional<Size> chosen(ThingSource zip) {
    String stock = zip.id().text() + ".stock_lengths";
    for (MeasureSource measure : evaluated.source().measures()) {
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
    return Size.plain(length.getAsDouble());
  }
}
