package org.lapmark.seam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ClippingTest {
  private static SeamPart band(double length) {
    return Sides.straight("band", length);
  }

  @Example
  void aBandIsClippedWhereItIsBentRoundABase() {
    SeamPart base = Sides.arc("base", 50, 180, true);
    List<Clipping> clips =
        Sides.seam(false, Sides.side(base), Sides.side(band(base.length()))).clippings();
    assertEquals(1, clips.size());
    Clipping clip = clips.get(0);
    assertEquals(1, clip.side());
    assertEquals(0, clip.from(), 1e-9);
    assertEquals(Math.PI * 50, clip.to(), 1e-6);
    assertEquals(50, clip.radius(), 1e-6);
    assertEquals(10, clip.spacing(), 1e-9, "the root of 2 mm times 50 mm");
    assertEquals(8, clip.depth(), 1e-9, "2 mm are left, 4 percent of 50 mm");
    assertEquals(16, clip.count(), "157 mm at 10 mm");
  }

  @Example
  void ofOppositeCurvesTheHollowOneIsClipped() {
    SeamPart round = Sides.arc("round", 120, 40, true);
    SeamPart hollow = Sides.arc("hollow", 120, 40, false);
    // The hollow edge is travelled clockwise around its own panel, with the inside outside the arc.
    SeamPart inner = Sides.part("hollow", hollow.path().orElseThrow(), true, List.of());
    List<Clipping> clips = Sides.seam(false, Sides.side(round), Sides.side(inner)).clippings();
    assertEquals(List.of(1), clips.stream().map(Clipping::side).toList());
    assertEquals(60, clips.get(0).radius(), 1e-6, "both curvatures add up");
  }

  @Example
  void equalCurvesAndGentleOnesNeedNoClips() {
    SeamPart round = Sides.arc("base", 50, 180, true);
    SeamPart lining = Sides.arc("lining", 50, 180, false);
    assertEquals(List.of(), Sides.seam(false, Sides.side(round), Sides.side(lining)).clippings());
    SeamPart gentle = Sides.arc("base", 251, 60, true);
    assertEquals(
        List.of(),
        Sides.seam(false, Sides.side(gentle), Sides.side(band(gentle.length()))).clippings(),
        "10 mm of allowance stretch by less than 4 percent");
    SeamPart less = Sides.arc("base", 249, 60, true);
    assertEquals(
        1, Sides.seam(false, Sides.side(less), Sides.side(band(less.length()))).clippings().size());
  }

  @Example
  void aTapeIsNotClipped() {
    SeamPart base = Sides.arc("base", 50, 90, true);
    SeamPart tape = SeamPart.ofLength("zip.length", base.length(), 1);
    assertEquals(List.of(), Sides.seam(false, Sides.side(base), Sides.side(tape)).clippings());
  }

  @Property(tries = 200)
  void whereverClipsAreTheyAreOfUse(@ForAll @DoubleRange(min = 4, max = 400) double radius) {
    SeamPart base = Sides.arc("base", radius, 120, true);
    for (Clipping clip :
        Sides.seam(false, Sides.side(base), Sides.side(band(base.length()))).clippings()) {
      double left = clip.allowance() - clip.depth();
      assertTrue(clip.depth() > 0 && left >= 2 - 1e-9);
      assertTrue(clip.spacing() >= 4 && clip.spacing() <= 20);
      if (radius > 50) {
        assertTrue(left / clip.radius() <= 0.04 + 1e-9, "what is left can stretch");
      }
      if (radius > 8 && radius < 200) {
        assertEquals(0.25, clip.spacing() * clip.spacing() / (8 * clip.radius()), 1e-6);
      }
    }
  }
}
