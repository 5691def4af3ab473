package org.lapmark.measure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Value.NominalPair;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.Value.Truth;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;

class FormulaTest {
  private static Formula formula(String written) {
    return Formula.parse(ExampleScope.text(written));
  }

  @Test
  void eachFormulaHasItsValue() throws IOException {
    assertAll(
        FaultTable.rows("formula-values.txt").stream()
            .map(row -> () -> assertValue(row.expected(), row.written())));
  }

  private static void assertValue(String expected, String written) {
    Value value = formula(written).evaluate(new ExampleScope());
    if (value instanceof Truth truth) {
      assertEquals(expected, Boolean.toString(truth.holds()), written);
      return;
    }
    String[] parts = expected.split(" ");
    Quantity quantity = formula(written).quantity(new ExampleScope());
    assertEquals(Double.parseDouble(parts[0]), quantity.amount(), 1e-12, written);
    Dimension dimension =
        switch (parts[1]) {
          case "mm" -> Dimension.LENGTH;
          case "mm2" -> Dimension.AREA;
          case "deg" -> Dimension.ANGLE;
          case "count" -> Dimension.COUNT;
          default -> Dimension.PLAIN;
        };
    assertEquals(dimension, quantity.dimension(), written);
  }

  @Test
  void aChosenStockSizeKeepsBothItsNames() {
    Value chosen = formula("longest_up_to(zip.stock, 19 cm)").evaluate(new ExampleScope());
    assertEquals(new NominalPair(180, "18 cm", 7 * 25.4, "7 in"), chosen);
    assertEquals(chosen, formula("18 cm (7 in)").evaluate(new ExampleScope()));
    assertEquals(chosen, formula("min(20 cm (8 in), 7 in (18 cm))").evaluate(new ExampleScope()));
  }

  @Test
  void namesAreListedInOrder() {
    Formula formula = formula("if(flag, b + seam, a * length(end.rim)) + b - distance(x.p, y.q)");
    assertEquals(List.of("flag", "b", "seam", "a"), List.copyOf(formula.names()));
  }

  @Test
  void aFindingOfTheScopeStandsAtTheName() {
    String line = "  depth: seam + bepth";
    SourceFile file = new SourceFile("towel/pattern.yaml", "measures:\n" + line + "\n");
    int start = file.content().indexOf("seam");
    Formula formula = Formula.parse(SourceText.verbatim(file, start, start + 12));
    FindingException thrown =
        assertThrows(FindingException.class, () -> formula.evaluate(new ExampleScope()));
    assertEquals(new Position("towel/pattern.yaml", 2, 17, 5, line), thrown.finding().position());
  }

  @Test
  void anEquationCanBeWeighed() {
    assertFalse(formula("seam + cord").isEquation());
    assertFalse(formula("seam < cord").isEquation());
    assertTrue(formula("(length(end.rim) = seam)").isEquation());
    assertEquals(
        Quantity.length(439.89), formula("length(end.rim) = seam").imbalance(new ExampleScope()));
    assertThrows(IllegalStateException.class, () -> formula("seam").imbalance(new ExampleScope()));
  }

  @Test
  void anAmountMustBeOfTheDimensionAskedFor() {
    assertEquals(10, formula("seam").amount(new ExampleScope(), Dimension.LENGTH));
    assertEquals(1500, formula("cloth").amount(new ExampleScope(), Dimension.LENGTH));
    assertEquals(2, formula("2").amount(new ExampleScope(), Dimension.COUNT));
    FindingException plain =
        assertThrows(
            FindingException.class,
            () -> formula("1 + 2").amount(new ExampleScope(), Dimension.LENGTH));
    assertEquals(MeasureCode.FORMULA_UNIT_MISSING, plain.finding().code());
    assertTrue(formula("flag").holds(new ExampleScope()));
    assertThrows(FindingException.class, () -> formula("seam").holds(new ExampleScope()));
  }

  /** A formula built apart from the parser, with its value worked out on the way. */
  record Sum(String written, int binding, double amount, boolean length) {
    String within(int needed) {
      return binding < needed ? "(" + written + ")" : written;
    }
  }

  @Provide
  Arbitrary<Sum> plain() {
    Arbitrary<Sum> whole =
        Arbitraries.integers()
            .between(0, 99)
            .map(number -> new Sum(Integer.toString(number), 9, number, false));
    Arbitrary<Sum> eighths =
        Combinators.combine(
                Arbitraries.integers().between(1, 9), Arbitraries.integers().between(1, 7))
            .as((n, e) -> new Sum(n + " " + e + "/8", 9, n + e / 8.0, false));
    return sums(Arbitraries.oneOf(whole, eighths), 3);
  }

  @Provide
  Arbitrary<Sum> lengths() {
    Arbitrary<Sum> metric =
        Combinators.combine(Arbitraries.integers().between(0, 999), Arbitraries.of("mm", "cm", "m"))
            .as(
                (number, unit) ->
                    new Sum(
                        number / 10.0 + " " + unit,
                        9,
                        number / 10.0 * (unit.equals("mm") ? 1 : unit.equals("cm") ? 10 : 1000),
                        true));
    Arbitrary<Sum> inches =
        Arbitraries.integers()
            .between(1, 31)
            .map(n -> new Sum(n + "/16 in", 9, n / 16.0 * 25.4, true));
    return sums(Arbitraries.oneOf(metric, inches), 3);
  }

  private static Arbitrary<Sum> sums(Arbitrary<Sum> leaf, int depth) {
    if (depth == 0) {
      return leaf;
    }
    Arbitrary<Sum> part = sums(leaf, depth - 1);
    Arbitrary<Sum> factor =
        Arbitraries.integers().between(1, 9).map(n -> new Sum(Integer.toString(n), 9, n, false));
    return Arbitraries.frequencyOf(
        Tuple.of(1, leaf),
        Tuple.of(
            2, Combinators.combine(part, part).as((a, b) -> sum(a, "+", b, a.amount + b.amount))),
        Tuple.of(
            2, Combinators.combine(part, part).as((a, b) -> sum(a, "-", b, a.amount - b.amount))),
        Tuple.of(
            1,
            Combinators.combine(part, factor)
                .as((a, b) -> product(a, "/", b, a.amount / b.amount, a.length))),
        Tuple.of(
            1,
            Combinators.combine(factor, part)
                .as((a, b) -> product(a, "*", b, a.amount * b.amount, b.length))),
        Tuple.of(1, part.map(a -> new Sum("-" + a.within(7), 7, -a.amount, a.length))),
        Tuple.of(
            1,
            Combinators.combine(part, part)
                .as(
                    (a, b) ->
                        new Sum(
                            "max(" + a.written + ", " + b.written + ")",
                            9,
                            Math.max(a.amount, b.amount),
                            a.length))));
  }

  private static Sum sum(Sum a, String sign, Sum b, double amount) {
    return new Sum(a.within(5) + " " + sign + " " + b.within(6), 5, amount, a.length);
  }

  private static Sum product(Sum a, String sign, Sum b, double amount, boolean length) {
    return new Sum(a.within(6) + " " + sign + " " + b.within(7), 6, amount, length);
  }

  @Property(tries = 300)
  void plainSumsComeOut(@ForAll @From("plain") Sum sum) {
    assertSum(sum);
  }

  @Property(tries = 300)
  void sumsOfLengthsComeOut(@ForAll @From("lengths") Sum sum) {
    assertSum(sum);
  }

  private static void assertSum(Sum sum) {
    Quantity value = formula(sum.written).quantity(new ExampleScope());
    double margin = 1e-9 * Math.max(1, Math.abs(sum.amount));
    assertEquals(sum.amount, value.amount(), margin, sum.written);
    boolean right =
        sum.length ? value.dimension() == Dimension.LENGTH : value.dimension().isNumber();
    assertTrue(right, sum.written);
  }

  @Property(tries = 400)
  void noiseIsAFindingAtMost(@ForAll String noise) {
    survive(noise);
  }

  @Property(tries = 1000)
  void shuffledFormulasAreFindingsAtMost(@ForAll @From("shuffled") String noise) {
    survive(noise);
  }

  @Provide
  Arbitrary<String> shuffled() {
    return Arbitraries.of(
            "1",
            "0",
            "3/8",
            " ",
            "in",
            "mm",
            "seam",
            "flag",
            "zip.stock",
            "straps",
            "cloth",
            "(",
            ")",
            "[",
            "]",
            ",",
            "+",
            "-",
            "*",
            "/",
            "^",
            "<",
            "=",
            "!=",
            "and",
            "not ",
            "if(",
            "max(",
            "round(",
            "longest_up_to(",
            "length(",
            "end.rim",
            "25 mm (1 in)",
            "½",
            "°",
            ".5",
            "as",
            "{",
            "}",
            "\\",
            "999999999999",
            "sqrt(",
            "tan(",
            "90 deg")
        .list()
        .ofMaxSize(14)
        .map(parts -> String.join("", parts));
  }

  @Test
  void largeNoiseIsAFinding() {
    List<String> noise = new ArrayList<>();
    for (String part :
        List.of("(", "[", "-", "not ", "if(", "2^", "25 mm (", "1+", "{", "max(1,")) {
      noise.add(part.repeat(10_000));
      noise.add(part.repeat(1_999 / part.length()));
      noise.add(part.repeat(1_990 / part.length()) + "1");
    }
    noise.forEach(FormulaTest::survive);
    assertThrows(FindingException.class, () -> formula(noise.get(0)));
    assertThrows(FindingException.class, () -> formula(noise.get(1)));
  }

  private static void survive(String noise) {
    try {
      formula(noise).evaluate(new ExampleScope());
    } catch (FindingException e) {
      assertPlace(e.finding().position());
    }
    Findings findings = new Findings();
    TemplateText text = TemplateText.parse(ExampleScope.text(noise), findings);
    findings.sorted().forEach(finding -> assertPlace(finding.position()));
    try {
      text.print(new ExampleScope(), Variant.ofSize("M"), PrintForm.DEFAULT);
    } catch (FindingException e) {
      assertPlace(e.finding().position());
    }
  }

  private static void assertPlace(Position position) {
    assertTrue(position.line() >= 1 && position.length() >= 1);
    int points = position.lineText().codePointCount(0, position.lineText().length());
    assertTrue(position.column() >= 1 && position.column() <= points + 1, position.toString());
  }
}
