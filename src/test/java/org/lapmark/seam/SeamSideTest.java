package org.lapmark.seam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class SeamSideTest {
  @Provide
  Arbitrary<SeamPart> part() {
    Arbitrary<Double> length = Arbitraries.doubles().between(5, 300).ofScale(2);
    Arbitrary<List<Double>> shares =
        Arbitraries.doubles().between(0.05, 0.95).ofScale(2).list().ofMaxSize(3);
    Arbitrary<String> panel = Arbitraries.of("front", "back", "gusset");
    Arbitrary<SeamPart> edge =
        Combinators.combine(panel, length, shares)
            .as(
                (name, millimetres, places) ->
                    Sides.straight(
                        name,
                        millimetres,
                        places.stream()
                            .sorted()
                            .mapToDouble(share -> share * millimetres)
                            .toArray()));
    return Arbitraries.oneOf(
        edge, edge, length.map(millimetres -> SeamPart.ofLength("zip.width", millimetres, 1)));
  }

  @Provide
  Arbitrary<SeamSide> side() {
    return part().list().ofMinSize(1).ofMaxSize(5).map(SeamSide::of);
  }

  @Property(tries = 200)
  void walkedForwardsAndBackwardsItIsTheSame(@ForAll("side") SeamSide side) {
    SeamSide back = side.reversed();
    double whole = side.length();
    assertEquals(whole, back.length(), 1e-9);
    List<SeamMark> there = side.marks(false);
    List<SeamMark> again = back.marks(false);
    assertEquals(there.size(), again.size());
    for (int i = 0; i < there.size(); i++) {
      SeamMark mirrored = again.get(there.size() - 1 - i);
      assertEquals(there.get(i).at(), whole - mirrored.at(), 1e-6);
    }
    assertMarks(there, back.reversed().marks(false));
  }

  @Property(tries = 200)
  void splittingAPartChangesNothing(
      @ForAll("side") SeamSide side, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    List<SeamPart> parts = new ArrayList<>();
    for (SeamPart part : side.parts()) {
      double cut = share * part.length();
      if (part.path().isPresent()) {
        parts.add(part.stretch(0, cut));
        parts.add(part.stretch(cut, part.length()));
      } else {
        parts.add(part);
      }
    }
    SeamSide split = SeamSide.of(parts);
    assertEquals(side.length(), split.length(), 1e-9);
    assertMarks(side.marks(false), split.marks(false));
    assertMarks(side.marks(true), split.marks(true));
  }

  @Property(tries = 200)
  void aRingStartedElsewhereIsTheSameRing(
      @ForAll("side") SeamSide side, @ForAll @DoubleRange(min = -2, max = 3) double turns) {
    double whole = side.length();
    double from = turns * whole;
    SeamSide turned = side.startingAt(from);
    assertEquals(whole, turned.length(), 1e-6);
    SeamSide back = turned.startingAt(-from);
    List<SeamMark> expected = side.marks(true);
    List<SeamMark> found = back.marks(true);
    for (SeamMark mark : expected) {
      assertTrue(
          found.stream()
              .anyMatch(
                  other -> {
                    double apart = Math.abs(other.at() - mark.at());
                    return other.kind() == mark.kind()
                        && Math.min(apart, Math.abs(apart - whole)) < 1e-6;
                  }),
          () -> mark + " in " + found);
    }
  }

  @Property(tries = 200)
  void notchPlacesAddUp(@ForAll("side") SeamSide side) {
    double before = 0;
    List<Double> expected = new ArrayList<>();
    for (SeamPart part : side.parts()) {
      for (SeamPart.Notch notch : part.notches()) {
        expected.add(before + notch.at());
      }
      before += part.length();
    }
    List<Double> found =
        side.marks(false).stream()
            .filter(mark -> mark.kind() == SeamMark.Kind.NOTCH)
            .map(SeamMark::at)
            .toList();
    for (double at : expected) {
      assertTrue(found.stream().anyMatch(other -> Math.abs(other - at) < 2e-6));
    }
    assertTrue(found.size() <= expected.size());
  }

  @Example
  void aPanelsEdgesThatFollowEachOtherHaveNoJoinBetweenThem() {
    SeamPart first = Sides.straight("end", 100);
    SeamPart rest = first.stretch(40, 100);
    SeamSide side = Sides.side(first.stretch(0, 40), rest, Sides.straight("other", 20));
    List<SeamMark> marks = side.marks(false);
    assertEquals(1, marks.size());
    assertEquals(100, marks.get(0).at(), 1e-9);
    assertEquals(2, side.marks(true).size(), "the ring's end joins its start");
  }

  @Example
  void aPartInWhichARingStartsIsNamedOnce() {
    SeamPart round = Sides.arc("end", 30, 360, true);
    assertEquals(List.of("end.edge"), Sides.side(round).startingAt(50).members());
    assertEquals(2, Sides.side(round).startingAt(50).parts().size());
  }

  @Example
  void aSeamThatReadsTheSameFromBothEndsCanBeTurned() {
    SeamSide even = Sides.side(Sides.straight("a", 100, 30, 70));
    SeamSide odd = Sides.side(Sides.straight("a", 100, 30, 60));
    SeamSide plain = Sides.side(Sides.straight("b", 100));
    assertTrue(Sides.seam(false, even, plain).isTurnable());
    assertFalse(Sides.seam(false, odd, plain).isTurnable());
    assertFalse(Sides.seam(true, even, plain).isTurnable());
  }

  private static void assertMarks(List<SeamMark> expected, List<SeamMark> found) {
    assertEquals(expected.size(), found.size(), () -> expected + " and " + found);
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i).at(), found.get(i).at(), 1e-6);
      assertEquals(expected.get(i).kind(), found.get(i).kind());
    }
  }
}
