package org.lapmark.lay;

import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.source.ThingSource;

/** What is wrong with a property of a material or of hardware that has another kind of value. */
public final class PropertyFault {
  private PropertyFault() {}

  /**
   * A length without its unit is told as everywhere, anything else as what it should be.
   *
   * @param thing the material or hardware, which states the property
   * @param property the property's name
   * @param value what it comes to
   * @param expected {@code length}, {@code truth}, {@code amount} or {@code plain}
   * @param scope what names in it stand for
   */
  public static Finding of(
      ThingSource thing, String property, Value value, String expected, Scope scope) {
    Formula formula = thing.properties().get(property);
    if (expected.equals("length")
        && value instanceof Value.Quantity quantity
        && quantity.dimension() == Dimension.PLAIN) {
      FindingException missing =
          formula
              .withoutUnit(scope, Dimension.LENGTH)
              .orElseGet(() -> formula.unitMissing(Dimension.LENGTH));
      return missing.finding();
    }
    return Finding.of(
        LayCode.LAY_PROPERTY_KIND,
        formula.text().position(),
        "property",
        property,
        "material",
        thing.id().text(),
        "expected",
        expected);
  }
}
