package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.Position;
import org.lapmark.geometry.Path;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * How much of a line is sewn.
 *
 * @param from where it begins, or null for the line's start
 * @param to where it ends, or null for the line's end
 * @param gaps what is left open
 */
record Extent(Formula from, Formula to, List<Gap> gaps) {
  static final Key<Formula> FROM = Key.of("from", FigureForms.PLACE);
  static final Key<Formula> TO = Key.of("to", FigureForms.PLACE);
  static final Key<Entries<Gap>> GAPS = Key.of("gaps", Gap.LIST);

  static Extent read(Keys keys) {
    return new Extent(keys.get(FROM), keys.get(TO), keys.all(GAPS));
  }

  /** Whether the whole line is sewn. */
  boolean isAll() {
    return from == null && to == null && gaps.isEmpty();
  }

  /** The key by which it says that it isn't all; for who can't have that. */
  Position stated() {
    return from != null
        ? from.text().position()
        : to != null ? to.text().position() : gaps.get(0).from().text().position();
  }

  /**
   * What is left open.
   *
   * @param from where it begins
   * @param to where it ends
   * @param measured whether its length is dimensioned
   * @param text a label, or null
   */
  record Gap(Formula from, Formula to, boolean measured, TemplateText text) {
    private static final Key<Formula> GAP_FROM = Key.required("from", FigureForms.PLACE);
    private static final Key<Formula> GAP_TO = Key.required("to", FigureForms.PLACE);
    private static final Key<Boolean> MEASURED = Key.of("measured", FigureForms.YES).unless("yes");
    private static final Key<TemplateText> TEXT = Key.of("text", FigureForms.LABEL);
    private static final Table TABLE = Table.of("gap", GAP_FROM, GAP_TO, MEASURED, TEXT);
    static final Form<Entries<Gap>> LIST = FigureForms.list(TABLE, Gap::read);

    private static Gap read(Keys keys) {
      return keys.whole(
          new Gap(keys.get(GAP_FROM), keys.get(GAP_TO), keys.or(MEASURED, true), keys.get(TEXT)));
    }
  }

  /** A stretch of a line, in millimetres from its start. */
  record Stretch(double from, double to) {
    double length() {
      return to - from;
    }

    double middle() {
      return (from + to) / 2;
    }
  }

  /** Its gaps, each within what is sewn, in the order stated. */
  List<Stretch> open(Staging staging, Path line) {
    Stretch whole = whole(staging, line);
    List<Stretch> open = new ArrayList<>();
    double before = whole.from;
    for (Gap gap : gaps) {
      Stretch one =
          new Stretch(
              staging.along(gap.from, line.length(), 0),
              staging.along(gap.to, line.length(), line.length()));
      ordered(staging, one, gap.to, "gaps");
      if (one.from < before - 1e-6 || one.to > whole.to + 1e-6) {
        throw Faults.of(
            gap.from.text().position(),
            FigureCode.FIGURE_GAP_OUTSIDE,
            "from",
            Staging.hundredth(one.from),
            "to",
            Staging.hundredth(one.to),
            "least",
            Staging.hundredth(before),
            "most",
            Staging.hundredth(whole.to),
            "size",
            staging.size());
      }
      before = one.to;
      open.add(one);
    }
    return open;
  }

  /** From where to where it is sewn, gaps left out. */
  Stretch whole(Staging staging, Path line) {
    Stretch whole =
        new Stretch(
            staging.along(from, line.length(), 0), staging.along(to, line.length(), line.length()));
    ordered(staging, whole, to == null ? from : to, "lines");
    return whole;
  }

  private static void ordered(Staging staging, Stretch one, Formula blamed, String name) {
    if (one.to < one.from + 1e-6) {
      throw Faults.of(
          blamed.text().position(),
          FigureCode.FIGURE_STRETCH_BACKWARDS,
          "name",
          name,
          "from",
          Staging.hundredth(one.from),
          "to",
          Staging.hundredth(one.to),
          "size",
          staging.size());
    }
  }

  /** What is sewn of a line: the stretches between gaps. */
  List<Stretch> sewn(Staging staging, Path line) {
    Stretch whole = whole(staging, line);
    List<Stretch> sewn = new ArrayList<>();
    double from = whole.from;
    for (Stretch gap : open(staging, line)) {
      if (gap.from > from + 1e-6) {
        sewn.add(new Stretch(from, gap.from));
      }
      from = gap.to;
    }
    if (whole.to > from + 1e-6) {
      sewn.add(new Stretch(from, whole.to));
    }
    return sewn;
  }

  /**
   * The part of a line that runs beside another, as far as a stretch of that reaches.
   *
   * @param line the line along which places are counted
   * @param beside runs along it, some distance to its right
   * @param inside that distance; negative on its left
   * @return nothing where it has no length there
   */
  static Optional<Path> part(Path line, Path beside, double inside, Stretch stretch) {
    boolean first = stretch.from < 1e-6;
    boolean last = stretch.to > line.length() - 1e-6;
    if (first && last) {
      return Optional.of(beside);
    }
    double from = first && !beside.isClosed() ? 0 : nearest(line, beside, inside, stretch.from);
    double to =
        last && !beside.isClosed() ? beside.length() : nearest(line, beside, inside, stretch.to);
    if (beside.isClosed()) {
      return Optional.of(beside.around(from, to));
    }
    return to > from + 1e-3 ? Optional.of(beside.part(from, to)) : Optional.empty();
  }

  private static double nearest(Path line, Path beside, double inside, double at) {
    return beside.nearestLength(
        line.atLength(at).plus(line.tangentAtLength(at).quarterTurn().times(inside)));
  }
}
