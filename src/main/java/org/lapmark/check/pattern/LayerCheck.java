package org.lapmark.check.pattern;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Originals;
import org.lapmark.check.rule.Rule;
import org.lapmark.figure.Layers;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.source.PieceSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.derived.DerivedSource;

/**
 * A lining, an interfacing or a stiffener isn't larger than the piece that it belongs to: the one
 * of the same panel, or of the nearest that its panel runs beside. What is sewn is compared on the
 * stitching line, and as cut; what stiffens only as cut. A layer that is meant to be larger, such
 * as a lining with a pleat for ease, is a panel of its own and isn't compared.
 */
public final class LayerCheck {
  public static final Rule<Evaluated> RULE = new Rule<>(LayerCheck::run, CheckCode.LAYER_LARGER);

  /** Less can't be cut. */
  private static final double NOTHING = 0.1;

  private final GradedPattern pattern;
  private final Findings findings;
  private final Map<String, ThingSource> materials = new LinkedHashMap<>();

  private LayerCheck(GradedPattern pattern, Findings findings) {
    this.pattern = pattern;
    this.findings = findings;
    pattern.source().materials().forEach(thing -> materials.put(thing.id().text(), thing));
  }

  static void run(Evaluated evaluated, Findings findings) {
    GradedPattern pattern = evaluated.pattern();
    LayerCheck check = new LayerCheck(pattern, findings);
    pattern.pieces().forEach(check::check);
  }

  private boolean isInside(Piece piece) {
    return !piece.cuts().isEmpty()
        && piece.cuts().stream()
            .map(cut -> materials.get(cut.material()))
            .allMatch(thing -> thing != null && Layers.isInside(thing));
  }

  private boolean isOutside(Piece piece) {
    return piece.cuts().stream()
        .map(cut -> materials.get(cut.material()))
        .anyMatch(thing -> thing != null && !Layers.isInside(thing));
  }

  private void check(Piece piece) {
    if (!isInside(piece)) {
      return;
    }
    Optional<PieceSource> source =
        pattern.source().pieces().stream()
            .filter(one -> one.number() == piece.number())
            .findFirst();
    Optional<Piece> outer =
        Originals.beside(pattern.source(), piece.shape().panel().name()).stream()
            .flatMap(
                panel ->
                    pattern.pieces().stream()
                        .filter(other -> other.shape().panel().name().equals(panel))
                        .filter(this::isOutside))
            .findFirst();
    if (source.isEmpty() || outer.isEmpty()) {
      return;
    }
    boolean stiffening =
        piece.cuts().stream().allMatch(cut -> Layers.isStiffening(materials.get(cut.material())));
    Path own = piece.shape().openedStitching();
    Path theirs = outer.get().shape().openedStitching();
    if (!stiffening && isLarger(own, theirs)) {
      report(source.get(), piece, outer.get(), "stitching", own, theirs);
    } else if (!isMounted(piece)
        && isLarger(piece.shape().opened(), outer.get().shape().opened())) {
      report(
          source.get(),
          piece,
          outer.get(),
          "cut",
          piece.shape().opened(),
          outer.get().shape().opened());
    }
  }

  /** The allowances of a mounted lining are compared with its main cloth's edge by edge. */
  private boolean isMounted(Piece piece) {
    return pattern.source().panels().stream()
        .filter(panel -> panel.name().text().equals(piece.shape().panel().name()))
        .flatMap(panel -> panel.derivation().stream())
        .anyMatch(DerivedSource::isMounted);
  }

  private static boolean isLarger(Path own, Path other) {
    Box box = own.bounds();
    Box outer = other.bounds();
    return box.width() > outer.width() + NOTHING
        || box.height() > outer.height() + NOTHING
        || Math.abs(own.signedArea()) > Math.abs(other.signedArea()) + NOTHING * other.length() / 2;
  }

  private void report(
      PieceSource source, Piece piece, Piece outer, String line, Path own, Path theirs) {
    findings.add(
        CheckCode.LAYER_LARGER,
        source.panel().position(),
        "number",
        Integer.toString(piece.number()),
        "material",
        piece.cuts().get(0).material(),
        "outer",
        Integer.toString(outer.number()),
        "line",
        line,
        "width",
        tenth(own.bounds().width()),
        "height",
        tenth(own.bounds().height()),
        "outer_width",
        tenth(theirs.bounds().width()),
        "outer_height",
        tenth(theirs.bounds().height()),
        "size",
        pattern.variant().size());
  }

  private static String tenth(double millimetres) {
    return BigDecimal.valueOf(millimetres)
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
