package org.lapmark.seam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class NotchMatchingTest {
  @Provide
  Arbitrary<double[]> places() {
    return Arbitraries.doubles()
        .between(1, 199)
        .ofScale(1)
        .list()
        .ofMaxSize(6)
        .map(list -> list.stream().mapToDouble(Double::doubleValue).sorted().distinct().toArray());
  }

  @Property(tries = 200)
  void aSideMeetsItself(@ForAll("places") double[] places) {
    SeamSide side = Sides.side(Sides.straight("a", 200, places));
    NotchMatching matching = NotchMatching.of(side, side, false);
    assertEquals(places.length, matching.pairs().size());
    assertTrue(matching.pairs().stream().allMatch(pair -> pair.difference() == 0));
    assertEquals(List.of(), matching.first());
    assertEquals(List.of(), matching.apart());
  }

  @Property(tries = 200)
  void whoMeetsWhomDoesNotDependOnWhoIsAsked(
      @ForAll("places") double[] one, @ForAll("places") double[] other) {
    SeamSide first = Sides.side(Sides.straight("a", 200, one));
    SeamSide second = Sides.side(Sides.straight("b", 200, other));
    NotchMatching there = NotchMatching.of(first, second, false);
    NotchMatching back = NotchMatching.of(second, first, false);
    assertEquals(there.pairs().size(), back.pairs().size());
    assertEquals(one.length, there.pairs().size() + there.first().size());
    assertEquals(other.length, there.pairs().size() + there.second().size());
  }

  @Property(tries = 200)
  void easeSpreadsEvenlyAndNeverTurnsBack(
      @ForAll("places") double[] places, @ForAll @DoubleRange(min = 0, max = 30) double ease) {
    double share = (200 + ease) / 200;
    double[] eased = java.util.Arrays.stream(places).map(at -> at * share).toArray();
    SeamSide longer = Sides.eased(ease, Sides.straight("a", 200 + ease, eased));
    SeamSide shorter = Sides.side(Sides.straight("b", 200, places));
    NotchMatching matching = NotchMatching.of(longer, shorter, false);
    assertEquals(places.length, matching.pairs().size());
    EaseSpread spread = new EaseSpread(200 + ease, 200, matching.pairs());
    double last = 0;
    for (int i = 0; i <= 100; i++) {
      double at = (200 + ease) * i / 100;
      double mapped = spread.of(at);
      assertTrue(mapped >= last - 1e-9, "falls at " + at);
      last = mapped;
    }
    assertEquals(0, spread.of(0), 1e-9);
    assertEquals(200, spread.of(200 + ease), 1e-9);
    EaseSpread back =
        new EaseSpread(200, 200 + ease, NotchMatching.of(shorter, longer, false).pairs());
    assertEquals(77, spread.of(back.of(77)), 1e-6);
  }

  @Example
  void easeMayLieAnywhereBetweenTwoNotches() {
    // A sleeve head: all 12 mm of ease between the two notches, none outside them.
    SeamSide head = Sides.eased(12, Sides.straight("sleeve", 312, 80, 232));
    SeamSide armhole = Sides.side(Sides.straight("body", 300, 80, 220));
    NotchMatching matching = NotchMatching.of(head, armhole, false);
    assertEquals(2, matching.pairs().size());
    EaseSpread spread = new EaseSpread(312, 300, matching.pairs());
    assertEquals(40, spread.of(40), 1e-9);
    assertEquals(150, spread.of(156), 1e-9);
  }

  @Example
  void moreThanTheEaseIsNotExplainedByIt() {
    SeamSide head = Sides.eased(12, Sides.straight("sleeve", 312, 95));
    SeamSide armhole = Sides.side(Sides.straight("body", 300, 80));
    NotchMatching matching = NotchMatching.of(head, armhole, false);
    assertEquals(List.of(), matching.pairs());
    assertEquals(1, matching.apart().size());
    assertEquals(3, matching.apart().get(0).difference(), 1e-9);
  }

  @Example
  void aNotchJustBeforeARingsEndMeetsOneJustBehindItsStart() {
    SeamSide one = Sides.side(Sides.straight("a", 200, 199.7));
    SeamSide other = Sides.side(Sides.straight("b", 200, 0.4));
    assertEquals(1, notches(NotchMatching.of(one, other, true)));
    assertEquals(0, notches(NotchMatching.of(one, other, false)));
  }

  private static long notches(NotchMatching matching) {
    return matching.pairs().stream()
        .filter(
            pair ->
                pair.first().kind() == SeamMark.Kind.NOTCH
                    && pair.second().kind() == SeamMark.Kind.NOTCH)
        .count();
  }
}
