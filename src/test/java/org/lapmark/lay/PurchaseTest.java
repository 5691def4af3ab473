package org.lapmark.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.lapmark.measure.print.PrintForm;

class PurchaseTest {
  private static final double EIGHTH = 114.3;

  @Property(tries = 300)
  void eachUnitIsTheLeastStepThatIsEnough(
      @ForAll @DoubleRange(min = 0, max = 20_000) double length,
      @ForAll @DoubleRange(min = 0, max = 1) double margin,
      @ForAll @DoubleRange(min = 0, max = 0.3) double shrinkage) {
    Purchase purchase = Purchase.of(length, margin, shrinkage);
    assertEquals(length * (1 + margin), purchase.exact() * (1 - shrinkage), 1e-6);
    assertTrue(purchase.metric() >= purchase.exact() - 1e-6);
    assertTrue(purchase.metric() < purchase.exact() + 100);
    assertEquals(0, purchase.metric() % 100);
    double yards = purchase.eighthsOfAYard() * EIGHTH;
    assertTrue(yards >= purchase.exact() - 1e-6);
    assertTrue(yards < purchase.exact() + EIGHTH);
  }

  @Test
  void neitherUnitIsRoundedFromTheOther() {
    // 40 cm rounded up would need four eighths of a yard; the length itself needs three.
    Purchase purchase = Purchase.of(342, 0, 0);
    assertEquals(400, purchase.metric());
    assertEquals(3, purchase.eighthsOfAYard());
  }

  @Test
  void wholeStepsAndTheNoiseAboveThemStay() {
    assertEquals(1300, Purchase.of(1300, 0, 0).metric());
    assertEquals(1300, Purchase.of(1300 + 1e-9, 0, 0).metric());
    assertEquals(1400, Purchase.of(1300.001, 0, 0).metric());
    assertEquals(8, Purchase.of(914.4, 0, 0).eighthsOfAYard());
    assertEquals(0, Purchase.of(0, 0.1, 0).metric());
  }

  @Test
  void whatCannotBeBoughtIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Purchase(1, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Purchase(-1, 0, 0));
  }

  @Test
  void amountsArePrintedInTheUnitsOfTheDocument() {
    Purchase purchase = Purchase.of(1250, 0.1, 0);
    assertEquals(
        "1.4\u00a0m or 1\u00a05/8\u00a0yd", amount(purchase, PrintForm.Units.METRIC_FIRST));
    assertEquals(
        "1\u00a05/8\u00a0yd or 1.4\u00a0m", amount(purchase, PrintForm.Units.INCHES_FIRST));
    assertEquals("1.4\u00a0m", amount(purchase, PrintForm.Units.METRIC));
    assertEquals("1\u00a05/8\u00a0yd", amount(purchase, PrintForm.Units.INCHES));
    assertEquals("70\u00a0cm", amount(Purchase.of(601, 0, 0), PrintForm.Units.METRIC));
  }

  private static String amount(Purchase purchase, PrintForm.Units units) {
    return new LayWords(Samples.writer().wording(Locale.UK), PrintForm.DEFAULT.with(units))
        .amount(purchase);
  }
}
