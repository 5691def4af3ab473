package org.lapmark.grade;

import java.util.List;
import org.lapmark.finding.FindingException;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingSource;

/**
 * Computes every property of materials and hardware, and every stitch length, also those that no
 * formula asks for: documents print them all.
 */
final class ThingProperties {
  /** In millimetres; bought by the roll. */
  private static final double MOST_BOUGHT = 10_000_000;

  private static final String QUANTITY = "quantity";

  private final PatternEvaluator evaluator;
  private final PatternScope scope;

  ThingProperties(PatternEvaluator evaluator) {
    this.evaluator = evaluator;
    this.scope = evaluator.scope();
  }

  /** A property of a thing, and the formula that states it. */
  record Stated(ThingSource thing, String property) {
    Formula formula() {
      return thing.properties().get(property);
    }
  }

  /** All that is stated. */
  static List<Stated> all(PatternSource source) {
    return List.of(source.materials(), source.hardware()).stream()
        .flatMap(List::stream)
        .flatMap(thing -> thing.properties().keySet().stream().map(name -> new Stated(thing, name)))
        .filter(stated -> stated.formula() != null)
        .filter(stated -> !YesNoProperty.isStated(stated.formula()))
        .toList();
  }

  /**
   * Computes a property.
   *
   * @return its value
   * @throws FindingException when it can't be computed, or is longer than anything sold
   */
  Value value(Stated stated) {
    Value value = evaluator.property(stated.thing, stated.property);
    if (value instanceof Value.Quantity quantity) {
      boolean length = quantity.dimension().fits(Dimension.LENGTH);
      boolean bought = stated.property.equals(QUANTITY);
      if (length) {
        scope.checkReach(
            stated.formula(), quantity.amount(), bought ? MOST_BOUGHT : PatternScope.LONGEST);
      }
    }
    return value;
  }

  /**
   * Computes a stitch length.
   *
   * @return millimetres
   * @throws FindingException when it is no length
   */
  double length(Formula stitch) {
    return scope.length(stitch);
  }
}
