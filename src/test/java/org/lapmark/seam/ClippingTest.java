package org.lapmark.seam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

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
    SeamPart less = Sides.arc("base", 201, 60, true);
    assertEquals(
        List.of(),
        Sides.seam(false, Sides.side(less), Sides.side(band(less.length()))).clippings(),
        "clips of less than 2 mm");
    SeamPart tighter = Sides.arc("base", 199, 60, true);
    List<Clipping> clips =
        Sides.seam(false, Sides.side(tighter), Sides.side(band(tighter.length()))).clippings();
    assertEquals(1, clips.size());
    assertEquals(10 - 0.04 * 199, clips.get(0).depth(), 1e-6);
  }

  @Example
  void depthsKeepWithinTheNarrowestAllowance() {
    SeamPart base = Sides.arc("base", 30, 180, true);
    SeamPart wide = band(base.length());
    double half = base.length() / 2;
    SeamPart changing =
        new SeamPart(
            wide.panel(),
            wide.name(),
            wide.path(),
            true,
            wide.length(),
            List.of(6.0, 10.0),
            List.of(),
            1,
            wide.folds(),
            List.of(new SeamPart.Margin(half, 10), new SeamPart.Margin(base.length(), 6)));
    List<Clipping> clips = Sides.seam(false, Sides.side(base), Sides.side(changing)).clippings();
    assertEquals(List.of(8.0, 4.0), clips.stream().map(Clipping::depth).toList());
    assertEquals(half, clips.get(0).to(), 1.01);
    SeamSide back = Sides.side(changing.reversed());
    assertEquals(
        List.of(4.0, 8.0),
        Sides.seam(false, Sides.side(base), back).clippings().stream()
            .map(Clipping::depth)
            .toList());
    SeamPart narrow =
        new SeamPart(
            wide.panel(),
            wide.name(),
            wide.path(),
            true,
            wide.length(),
            List.of(3.0),
            List.of(),
            1);
    assertEquals(
        List.of(),
        Sides.seam(false, Sides.side(base), Sides.side(narrow)).clippings(),
        "1 mm deep");
  }

  private static SeamPart bent(String panel, boolean clockwise, Point... points) {
    return Sides.part(panel, Path.polyline(List.of(points)), clockwise, List.of());
  }

  @Example
  void atASharpCornerTheOtherSideIsClippedOnce() {
    SeamPart front = bent("front", true, new Point(0, 0), new Point(100, 0), new Point(100, 60));
    WalkedSeam seam = Sides.seam(false, Sides.side(front), Sides.side(band(160)));
    assertEquals(1, seam.clippings().size());
    Clipping clip = seam.clippings().get(0);
    assertTrue(clip.isCorner());
    assertEquals(1, clip.side());
    assertEquals(100, clip.from(), 1e-9);
    assertEquals(90, clip.turn(), 1e-9);
    assertEquals(9, clip.depth(), 1e-9, "1 mm is left");
    assertEquals(1, clip.count());
    assertEquals(List.of(), seam.unmarkedCorners(), "a side without any notch is left alone");
    WalkedSeam notched =
        Sides.seam(false, Sides.side(front), Sides.side(Sides.straight("band", 160, 30)));
    assertEquals(List.of(clip), notched.unmarkedCorners());
    WalkedSeam marked =
        Sides.seam(false, Sides.side(front), Sides.side(Sides.straight("band", 160, 30, 100)));
    assertEquals(List.of(), marked.unmarkedCorners());
    assertEquals(1, marked.clippings().size());
  }

  @Example
  void aCornerThatIsCutInIsClippedItself() {
    SeamPart hollow = bent("front", true, new Point(0, 0), new Point(100, 0), new Point(100, -60));
    List<Clipping> clips = Sides.seam(false, Sides.side(hollow), Sides.side(band(160))).clippings();
    assertEquals(List.of(0), clips.stream().map(Clipping::side).toList());
    assertEquals(90, clips.get(0).turn(), 1e-9);
  }

  @Example
  void cornersThatLieOnEachOtherNeedNoClipAndJoinsOpenByThemselves() {
    SeamPart front = bent("front", true, new Point(0, 0), new Point(100, 0), new Point(100, 60));
    SeamPart lining =
        bent("lining", false, new Point(0, 0), new Point(100, 0), new Point(100, -60));
    assertEquals(List.of(), Sides.seam(false, Sides.side(front), Sides.side(lining)).clippings());
    SeamSide joined = Sides.side(Sides.straight("long", 100), Sides.straight("short", 60));
    assertEquals(List.of(), Sides.seam(false, Sides.side(front), joined).clippings());
  }

  @Example
  void aCurveOfAFewMillimetresIsSewnAsACorner() {
    Path corner =
        new Path(
            List.of(
                new org.lapmark.geometry.Line(new Point(0, 0), new Point(100, 0)),
                org.lapmark.geometry.Arc.ofCircle(
                    new Point(100, 1), 1, StrictMath.toRadians(-90), StrictMath.toRadians(90)),
                new org.lapmark.geometry.Line(new Point(101, 1), new Point(101, 60))));
    SeamPart front = Sides.part("front", corner, true, List.of());
    List<Clipping> clips =
        Sides.seam(false, Sides.side(front), Sides.side(band(front.length()))).clippings();
    assertEquals(1, clips.size());
    assertTrue(clips.get(0).isCorner());
    assertEquals(101, clips.get(0).from(), 1.5);
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
      assertTrue(clip.depth() >= 2 && left >= 2 - 1e-9);
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
