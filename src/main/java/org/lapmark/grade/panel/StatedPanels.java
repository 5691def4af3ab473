package org.lapmark.grade.panel;

import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Rounded;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.panel.stated.StatedShape;
import org.lapmark.source.ShapeSource.Stated;

/** Evaluates the numbers of stated shapes. */
final class StatedPanels {
  /** Millimetres; no pattern has a longer edge. */
  private static final double LONGEST = 100_000;

  /** Degrees; a ring that is wider has no room between its ends. */
  private static final double WIDEST_ANGLE = 359.9;

  /** Degrees; steeper, it is a tube. */
  private static final double WIDEST_DROOP = 89;

  private final PatternScope scope;
  private final Variant variant;

  StatedPanels(PatternScope scope, Variant variant) {
    this.scope = scope;
    this.variant = variant;
  }

  /**
   * The shape in this variant.
   *
   * @throws FindingException when a number isn't what it should be
   */
  StatedShape shape(Stated stated) {
    return switch (stated.form()) {
      case CIRCLE ->
          stated.values().containsKey("diameter")
              ? StatedShape.circle(length(stated, "diameter"))
              : StatedShape.circle(2 * length(stated, "radius"));
      case ELLIPSE ->
          stated.values().containsKey("perimeter")
              ? StatedShape.oval(
                  length(stated, "perimeter"), number(stated, "ratio", Dimension.PLAIN, 0.01, 100))
              : StatedShape.ellipse(length(stated, "width"), length(stated, "height"));
      case RING_SECTOR -> ringSector(stated);
      case CONE_BAND -> coneBand(stated);
      case BRIM -> brim(stated);
    };
  }

  private StatedShape brim(Stated stated) {
    double head = length(stated, "head");
    double width = length(stated, "width");
    double share = share(stated);
    double droop = number(stated, "droop", Dimension.ANGLE, 0, WIDEST_DROOP);
    // A brim that doesn't slope goes all the way round, which no panel in one part can.
    double least = StrictMath.toDegrees(StrictMath.acos(Math.min(1, WIDEST_ANGLE / 360 / share)));
    if (droop < least) {
      throw outOfRange(stated, "droop", droop, least, WIDEST_DROOP);
    }
    return StatedShape.brim(head, width, droop, share);
  }

  private StatedShape ringSector(Stated stated) {
    double angle = number(stated, "angle", Dimension.ANGLE, 0.1, WIDEST_ANGLE);
    double inner =
        stated.values().containsKey("inner_radius")
            ? length(stated, "inner_radius")
            : length(stated, "inner_length") / StrictMath.toRadians(angle);
    if (stated.values().containsKey("width")) {
      return StatedShape.ringSector(inner, length(stated, "width"), angle);
    }
    double outer = length(stated, "outer_radius");
    if (!(outer > inner)) {
      throw outOfRange(stated, "outer_radius", outer, inner, LONGEST);
    }
    return StatedShape.ringSector(inner, outer - inner, angle);
  }

  private StatedShape coneBand(Stated stated) {
    double lower = length(stated, "lower");
    double upper = length(stated, "upper");
    double slant;
    if (stated.values().containsKey("slant")) {
      slant = length(stated, "slant");
      double least = Math.abs(lower - upper) / (2 * Math.PI);
      if (!(slant > least)) {
        throw outOfRange(stated, "slant", slant, least, LONGEST);
      }
    } else {
      slant = StatedShape.slant(lower, upper, length(stated, "height"));
    }
    return StatedShape.coneBand(lower, upper, slant, share(stated));
  }

  private double share(Stated stated) {
    return stated.values().containsKey("share")
        ? number(stated, "share", Dimension.PLAIN, 0.01, 1)
        : 1;
  }

  private double length(Stated stated, String key) {
    double length = scope.positiveLength(stated.values().get(key));
    if (length > LONGEST) {
      throw outOfRange(stated, key, length, 0, LONGEST);
    }
    return length;
  }

  /** A number of a dimension in a range, its ends included. */
  private double number(
      Stated stated, String key, Dimension dimension, double least, double limit) {
    Formula formula = stated.values().get(key);
    Value value = formula.evaluate(scope);
    boolean plain = dimension == Dimension.PLAIN;
    if (!(value instanceof Value.Quantity quantity)
        || !quantity.dimension().fits(dimension)
            && !(plain && quantity.dimension() == Dimension.COUNT)) {
      throw scope
          .notA(dimension, formula, value)
          .orElseGet(
              () ->
                  new FindingException(
                      Finding.of(
                          GradeCode.SHAPE_VALUE_KIND,
                          formula.text().position(),
                          "kind",
                          PatternScope.kind(value),
                          "needs",
                          plain ? "plain" : "angle")));
    }
    double amount = quantity.amount();
    if (!(amount >= least && amount <= limit)) {
      throw outOfRange(stated, key, amount, least, limit);
    }
    return amount;
  }

  private FindingException outOfRange(
      Stated stated, String key, double value, double least, double limit) {
    return new FindingException(
        Finding.of(
            GradeCode.SHAPE_OUT_OF_RANGE,
            stated.values().get(key).text().position(),
            "key",
            key,
            "value",
            Rounded.hundredth(value),
            "least",
            Rounded.hundredth(least),
            "limit",
            Rounded.hundredth(limit),
            "size",
            variant.size()));
  }
}
