package org.lapmark.grade.scope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RootSearchTest {
  @Property(tries = 200)
  void findsTheSideOfASquare(@ForAll @DoubleRange(min = 0.01, max = 9_000) double area) {
    RootSearch root = RootSearch.of(x -> x * x - area, 0, 100, 0.01);
    assertTrue(root.found());
    assertFalse(root.several());
    assertEquals(Math.sqrt(area), root.at(), 1e-9);
  }

  @Property(tries = 200)
  void findsTheLeastOfSeveral(
      @ForAll @DoubleRange(min = 3, max = 40) double first,
      @ForAll @DoubleRange(min = 3, max = 40) double apart) {
    double second = first + apart;
    RootSearch root = RootSearch.of(x -> (x - first) * (x - second), 0, 100, 0.01);
    assertTrue(root.found());
    assertTrue(root.several());
    assertEquals(first, root.at(), 1e-9);
  }

  @Property(tries = 200)
  void findsWhatIsOnlyTouched(@ForAll @DoubleRange(min = 0.5, max = 99.5) double at) {
    RootSearch root = RootSearch.of(x -> (x - at) * (x - at), 0, 100, 1e-8);
    assertTrue(root.found());
    assertEquals(at, root.at(), 1e-4);
  }

  @Property(tries = 200)
  void findsTwoCrossingsBetweenTwoSamples(@ForAll @DoubleRange(min = 2, max = 98) double at) {
    RootSearch root = RootSearch.of(x -> (x - at) * (x - at) - 0.01, 0, 100, 1e-8);
    assertTrue(root.found());
    assertEquals(at - 0.1, root.at(), 1e-6);
    assertTrue(root.several());
  }

  @Property(tries = 200)
  void doesNotDependOnUnitOrOrigin(
      @ForAll @DoubleRange(min = 1, max = 90) double zero,
      @ForAll @DoubleRange(min = 0.1, max = 100) double unit,
      @ForAll @DoubleRange(min = -50, max = 50) double origin) {
    RootSearch plain = RootSearch.of(x -> x * x * x - zero * zero * zero, 0, 100, 1e-3);
    RootSearch moved =
        RootSearch.of(
            x -> {
              double inside = (x - origin) / unit;
              return inside * inside * inside - zero * zero * zero;
            },
            origin,
            origin + 100 * unit,
            1e-3);
    assertEquals(plain.at(), (moved.at() - origin) / unit, 1e-8);
  }

  @Test
  void saysHowCloseItCame() {
    RootSearch root = RootSearch.of(x -> (x - 30) * (x - 30) + 2, 0, 100, 0.01);
    assertFalse(root.found());
    assertEquals(30, root.at(), 1e-4);
    assertEquals(2, root.remaining(), 1e-6);
  }

  @Test
  void takesNoJumpForAZero() {
    RootSearch root = RootSearch.of(x -> x < 33.3 ? -1 : 2, 0, 100, 0.01);
    assertFalse(root.found());
    assertEquals(-1, root.remaining());
  }

  @Test
  void findsWhatLiesOnABoundOrBesideAGap() {
    assertEquals(0, RootSearch.of(x -> x, 0, 10, 0.01).at());
    assertEquals(10, RootSearch.of(x -> x - 10, 0, 10, 0.01).at());
    RootSearch root = RootSearch.of(x -> x < 20 ? Double.NaN : x - 40, 0, 100, 0.01);
    assertEquals(40, root.at(), 1e-9);
    assertFalse(RootSearch.of(x -> Double.NaN, 0, 10, 0.01).anywhere());
  }

  @Test
  void evaluatesTheSameEveryTimeAndNotForever() {
    List<Double> first = new ArrayList<>();
    List<Double> second = new ArrayList<>();
    for (List<Double> seen : List.of(first, second)) {
      RootSearch.of(
          x -> {
            seen.add(x);
            return StrictMath.sin(x * 1e5);
          },
          0,
          100,
          0.01);
    }
    assertEquals(first, second);
    assertTrue(first.size() < 2_100, first.size() + " evaluations");
  }
}
