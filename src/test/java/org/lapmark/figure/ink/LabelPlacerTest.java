package org.lapmark.figure.ink;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.lapmark.figure.DemoFigures;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

class LabelPlacerTest {
  private static final Box FRAME = Box.at(0, 0, 165, 90);
  private static final Box SHAPE = Box.at(45, 20, 70, 50);

  private static Canvas canvas() {
    Canvas canvas = DemoFigures.canvas();
    canvas.line(Path.rectangle(SHAPE), "figure-outline");
    return canvas;
  }

  private static Optional<List<PlacedLabel>> place(Canvas canvas) {
    return place(canvas, Double.POSITIVE_INFINITY, new DearestFirst());
  }

  private static Optional<List<PlacedLabel>> place(
      Canvas canvas, double most, DearestFirst dearest) {
    return new LabelPlacer(canvas, FRAME)
        .place(canvas.wishes().stream().map(wish -> wish.anchors().get()).toList(), most, dearest);
  }

  @Property(tries = 60)
  void whatLabelsMayCostAndTheirOrderOnlyLeaveOutWhatCostsMore(
      @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = 0, max = 1) Double> places,
      @ForAll @DoubleRange(min = 0.3, max = 1.5) double share) {
    Canvas canvas = canvas();
    Path outline = Path.rectangle(SHAPE);
    for (int i = 0; i < places.size(); i++) {
      Point anchor = outline.atLength(places.get(i) * outline.length());
      canvas.wish("a label, number " + i, List.of(anchor), i % 3 == 0 ? SHAPE::contains : null);
    }
    Optional<List<PlacedLabel>> free = place(canvas);
    DearestFirst dearest = new DearestFirst();
    assertEquals(free, place(canvas, Double.POSITIVE_INFINITY, dearest));
    assertEquals(free, place(canvas, Double.POSITIVE_INFINITY, dearest));
    double average =
        free.stream().flatMap(List::stream).mapToDouble(PlacedLabel::cost).average().orElse(20);
    Optional<List<PlacedLabel>> bounded = place(canvas, share * average, dearest);
    if (share >= 1) {
      assertEquals(free, bounded);
    } else {
      assertTrue(bounded.isEmpty() || bounded.equals(free));
    }
    assertEquals(Optional.empty(), place(canvas, -1, dearest));
  }

  @Property(tries = 60)
  void labelsOfPointsApartAreKeptApart(
      @ForAll @Size(min = 2, max = 8) List<@DoubleRange(min = 0, max = 1) Double> places) {
    Canvas canvas = canvas();
    Path outline = Path.rectangle(SHAPE);
    for (int i = 0; i < places.size(); i++) {
      double at = (i + 0.8 * places.get(i)) / places.size() * outline.length();
      canvas.wish("a label, number " + i, List.of(outline.atLength(at)), null);
    }
    List<PlacedLabel> placed = place(canvas).orElseThrow();
    assertEquals(places.size(), placed.size());
    for (int i = 0; i < placed.size(); i++) {
      Box box = placed.get(i).box();
      assertTrue(FRAME.contains(box));
      assertTrue(
          canvas.lines().stream().noneMatch(line -> Polygons.crosses(box, line.from(), line.to())));
      for (int j = 0; j < i; j++) {
        assertFalse(placed.get(i).box().overlaps(placed.get(j).box()));
        assertFalse(placed.get(i).conflicts(placed.get(j)));
      }
    }
  }

  @Test
  void aNameStandsOnItsShapeWithoutLeader() {
    Canvas canvas = canvas();
    canvas.wish("Rear strip", List.of(SHAPE.centre()), SHAPE::contains);
    PlacedLabel placed = place(canvas).orElseThrow().get(0);
    assertEquals(null, placed.start());
    assertTrue(SHAPE.contains(placed.box()));
    assertTrue(placed.box().centre().distance(SHAPE.centre()) < 2);
  }

  @Test
  void aNameTooLongForItsShapeStandsBesideIt() {
    Canvas canvas = canvas();
    Box small = Box.at(130, 40, 4, 4);
    canvas.line(Path.rectangle(small), "figure-outline");
    canvas.wish("Rear strip", List.of(small.centre()), small::contains);
    PlacedLabel placed = place(canvas).orElseThrow().get(0);
    assertEquals(small.centre(), placed.anchor());
    assertFalse(placed.box().overlaps(small));
  }

  @Test
  void moreLabelsThanThereIsRoomForAreRefused() {
    Canvas canvas = canvas();
    List<Point> anchor = List.of(new Point(45, 45));
    for (int i = 0; i < 60; i++) {
      canvas.wish("a label that is rather long, number " + i, new ArrayList<>(anchor), null);
    }
    assertTrue(place(canvas).isEmpty());
  }
}
