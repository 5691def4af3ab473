package org.lapmark.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Findings;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.print.FinestSteps;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintForm.Units;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.TemplateText;

/** What printed lengths come to when a maker reads them back, whatever they are. */
class RoundingTest {
  private static final PrintForm INCHES = PrintForm.DEFAULT.with(Units.INCHES);
  private static final PrintForm METRIC = PrintForm.DEFAULT.with(Units.METRIC);
  private static final double NOISE = 1e-6;

  private static String print(double length, String as, PrintForm form) {
    Scope scope = new ExampleScope().with("x", Quantity.length(length));
    TemplateText text = TemplateText.parse(ExampleScope.text("{x" + as + "}"), new Findings());
    return ((PrintedValue) text.print(scope, Variant.ofSize("M"), form).get(0)).text();
  }

  private static double read(String printed) {
    return Formula.parse(ExampleScope.text(printed.replace('\u2212', '-')))
        .amount(new ExampleScope(), Dimension.LENGTH);
  }

  /** Hundredths of a millimetre, so that thirty-seconds don't occur by chance. */
  private static double length(int hundredths) {
    return hundredths / 100.0;
  }

  @Property(tries = 600)
  void eachSideIsTheSafeOne(@ForAll @IntRange(min = 20, max = 200_000) int hundredths) {
    double length = length(hundredths);
    for (PrintForm form : new PrintForm[] {INCHES, METRIC, INCHES.ruled(), METRIC.metric(0.5)}) {
      assertTrue(read(print(length, " as at most", form)) <= length + NOISE);
      assertTrue(read(print(length, " as at least", form)) >= length - NOISE);
      assertTrue(read(form.printAtMost(length)) <= length + NOISE);
      assertTrue(read(form.printAtLeast(length)) >= length - NOISE);
    }
  }

  @Property(tries = 600)
  void noStepMovesALengthByMoreThanSixPerCent(
      @ForAll @IntRange(min = 1, max = 200_000) int hundredths) {
    double length = length(hundredths);
    for (PrintForm form : new PrintForm[] {INCHES, METRIC, new PrintForm(Units.INCHES, 5, 2)}) {
      for (String side : new String[] {"", " as at most", " as at least", " as in 1/4"}) {
        String printed = print(length, side, form);
        assertEquals(length, read(printed), 0.06 * length + NOISE, printed);
      }
    }
  }

  @Property(tries = 600)
  void inchesAreEighthsWhereTheyDoElseSixteenthsElseMillimetres(
      @ForAll @IntRange(min = 10, max = 20_000) int hundredths) {
    double length = length(hundredths);
    String printed = print(length, "", INCHES);
    int parts = 8;
    while (parts <= 16 && moved(length, parts) > 0.06 * length + 1e-9) {
      parts *= 2;
    }
    assertEquals(parts > 16, printed.endsWith("mm"), printed);
    if (parts <= 16) {
      double steps = read(printed) / (25.4 / parts);
      assertEquals(Math.rint(steps), steps, NOISE, printed);
      assertTrue(Math.abs(read(printed) - length) <= 25.4 / parts / 2 + NOISE, printed);
    }
  }

  private static double moved(double length, int parts) {
    double step = 25.4 / parts;
    return Math.abs(Math.rint(length / step) * step - length);
  }

  @Property(tries = 600)
  void whatIsLongerIsNeverPrintedAsShorter(
      @ForAll @IntRange(min = 10, max = 100_000) int hundredths,
      @ForAll @IntRange(min = 0, max = 400) int more) {
    double shorter = length(hundredths);
    double longer = length(hundredths + more);
    for (String side : new String[] {"", " as at most", " as at least"}) {
      for (PrintForm form : new PrintForm[] {INCHES, METRIC}) {
        String first = print(shorter, side, form);
        String second = print(longer, side, form);
        // Millimetres beside inches are exact to a tenth, and are compared with neither.
        if (first.endsWith("mm") == second.endsWith("mm")) {
          assertTrue(read(first) <= read(second) + NOISE, first + " " + second);
        }
      }
    }
  }

  @Property(tries = 600)
  void noDepthReachesTheSeam(
      @ForAll @DoubleRange(min = 3, max = 60) double allowance,
      @ForAll @DoubleRange(min = 0.2, max = 0.95) double share) {
    double depth = allowance * share;
    for (PrintForm form : new PrintForm[] {INCHES, METRIC, new PrintForm(Units.METRIC, 5, 4)}) {
      String printed = form.printDepth(depth, allowance);
      String seam = form.print(Quantity.length(allowance));
      assertTrue(read(printed) <= depth + NOISE, printed);
      if (printed.endsWith("mm") == seam.endsWith("mm")) {
        assertTrue(read(printed) < read(seam) - NOISE, printed + " in " + seam);
      }
    }
  }

  @Test
  void aClipThatRoundsToItsAllowanceIsLeftToMillimetres() {
    // Both are nearest to 1 in.
    assertEquals("1\u00a0in", INCHES.print(Quantity.length(26.9)));
    assertEquals("25\u00a0mm", INCHES.printDepth(25.9, 26.9));
  }

  @Test
  void aQuantityIsPrintedAtTheFinestStepThatAnyUseAsksFor() {
    ExampleScope scope = new ExampleScope().with("x", Quantity.length(240));
    FinestSteps.Gathering gathering = new FinestSteps.Gathering();
    gathering.inches(240, 16);
    PrintForm form = PrintForm.DEFAULT.with(gathering.all());
    assertEquals("240\u00a0mm (9\u00a01/2\u00a0in)", PrintForm.DEFAULT.print(Quantity.length(240)));
    assertEquals("240\u00a0mm (9\u00a07/16\u00a0in)", form.print(Quantity.length(240)));
    assertEquals("240\u00a0mm (9\u00a07/16\u00a0in)", form.printAtLeast(240));
    for (String text : new String[] {"{x}", "{x as in}", "{x as in 1/4}"}) {
      TemplateText parsed = TemplateText.parse(ExampleScope.text(text), new Findings());
      String printed =
          ((PrintedValue) parsed.print(scope, Variant.ofSize("M"), form).get(0)).text();
      assertTrue(printed.contains("9\u00a07/16"), printed);
    }
    assertEquals("241\u00a0mm (9\u00a01/2\u00a0in)", form.print(Quantity.length(241)));
  }

  @Test
  void lengthsThatDifferByAMillimetreAreToldApart() {
    FinestSteps.Gathering gathering = new FinestSteps.Gathering();
    for (double length : new double[] {30, 28, 103, 102.2}) {
      TemplateText text = TemplateText.parse(ExampleScope.text("{x}"), new Findings());
      gathering.placeholder(
          (TemplateText.Placeholder) text.parts().get(0),
          Quantity.length(length),
          PrintForm.DEFAULT);
    }
    gathering.printed(60);
    gathering.printed(61);
    PrintForm before = PrintForm.DEFAULT.with(gathering.all());
    assertEquals("30\u00a0mm (1\u00a01/8\u00a0in)", before.print(Quantity.length(30)));
    gathering.tellApart(PrintForm.DEFAULT);
    PrintForm form = PrintForm.DEFAULT.with(gathering.all());
    assertEquals("30\u00a0mm (1\u00a03/16\u00a0in)", form.print(Quantity.length(30)));
    assertEquals("28\u00a0mm (1\u00a01/8\u00a0in)", form.print(Quantity.length(28)));
    assertEquals("60\u00a0mm (2\u00a03/8\u00a0in)", form.print(Quantity.length(60)));
    assertEquals("61\u00a0mm (2\u00a03/8\u00a0in)", form.print(Quantity.length(61)));
    // Nearer to each other than a millimetre: eighths will do.
    assertEquals("103\u00a0mm (4\u00a0in)", form.print(Quantity.length(103)));
  }

  @Test
  void anExpressionIsRoundedToTheSideThatOneOfItsUsesStates() {
    ExampleScope scope = new ExampleScope().with("x", Quantity.length(9));
    FinestSteps.Gathering gathering = new FinestSteps.Gathering();
    TemplateText stated =
        TemplateText.parse(ExampleScope.text("{x * 2 as at most}"), new Findings());
    gathering.placeholder(
        (TemplateText.Placeholder) stated.parts().get(0), Quantity.length(18), PrintForm.DEFAULT);
    PrintForm form = INCHES.with(gathering.all());
    TemplateText text = TemplateText.parse(ExampleScope.text("{x*2}"), new Findings());
    assertEquals(
        "11/16\u00a0in",
        ((PrintedValue) text.print(scope, Variant.ofSize("M"), form).get(0)).text());
    assertEquals("3/4\u00a0in", INCHES.print(Quantity.length(18)));
  }

  @Test
  void inchesAreLeftOutWhereNoRulerHasThem() {
    assertEquals(Optional.empty(), PrintForm.DEFAULT.printInches(2));
    assertEquals(Optional.of("3/8\u00a0in"), PrintForm.DEFAULT.printInches(10));
    assertEquals(Optional.empty(), METRIC.printInches(10));
    assertFalse(PrintForm.DEFAULT.print(Quantity.length(2)).contains("in"));
  }
}
