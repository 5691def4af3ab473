package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Something flat with all that is shown on it.
 *
 * @param lying what it is and its pose
 * @param said what it is called where the picture is said in words
 * @param things what lies on it
 * @param marks what is marked on it
 * @param details what else is drawn on it, in order
 * @param dimensions its dimensions
 */
public record Workpiece(
    PosedBody lying,
    String said,
    List<Overlay> things,
    Marks marks,
    List<Detail> details,
    List<Measure> dimensions) {
  /** Between a dimension and the next piece, on paper. */
  private static final double APART = 3;

  /** The thing itself, and what lies on it. */
  public void base(PlacedBody laid, FlatInk ink) {
    things.forEach(thing -> thing.drawBehind(laid, ink));
    lying.body().draw(laid, ink);
    // What lies round the rim is part of the ground, on which marks are; what else lies on it
    // hides them.
    List<List<Point>> shapes = new ArrayList<>(Collections.nCopies(things.size(), List.of()));
    for (boolean ground : new boolean[] {true, false}) {
      for (int i = 0; i < things.size(); i++) {
        if (things.get(i).isGround() == ground) {
          shapes.set(i, things.get(i).draw(laid, ink).flattened(FlatInk.FLATNESS));
        }
      }
      if (ground) {
        marks.draw(laid, ink);
      }
    }
    for (int i = 0; i < shapes.size(); i++) {
      if (!things.get(i).name().isEmpty()) {
        List<List<Point>> covers = shapes.subList(i + 1, shapes.size());
        ink.canvas().name(things.get(i).name(), shapes.get(i), covers);
      }
    }
  }

  /** How far dimensions beside it reach on one side of the picture, in millimetres on paper. */
  double room(Beside side, Canvas canvas) {
    double room = 0;
    int rows = 0;
    for (Measure one : dimensions) {
      if (one.beside() == side) {
        double words = side.isLevel() ? canvas.lineHeight() : canvas.width(one.words());
        room = Math.max(room, words + Canvas.dimensionAt(rows++) + APART);
      }
    }
    return room;
  }

  /** What it takes up lying by itself, with what lies on it. */
  Box box(Affine facing) {
    Box box = lying.body().outline().transformed(facing).bounds();
    for (Overlay thing : things) {
      for (Path reach : thing.reach()) {
        Path seen = reach;
        for (Cut cut : lying.body().cuts()) {
          seen =
              seen.flattened(FlatInk.FLATNESS).stream().allMatch(cut::hides)
                  ? lying.body().outline()
                  : Lines.crop(seen, cut.from(), cut.away()).path();
        }
        box = box.union(seen.transformed(facing).bounds());
      }
    }
    return box;
  }

  public void details(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
    lying.body().drawFolded(laid, marks, ink);
    details.forEach(detail -> detail.draw(laid, above, ink));
  }

  public void dimensions(PlacedBody laid, Box shape, FlatInk ink) {
    dimensions.forEach(dimension -> dimension.draw(laid, shape, ink));
  }

  /** What lies on it and is done to it, in sentences. */
  public List<String> inWords(Words words) {
    List<String> sentences = new ArrayList<>();
    things.forEach(thing -> sentences.addAll(thing.inWords(words)));
    details.forEach(detail -> detail.inWords(words).ifPresent(sentences::add));
    return sentences;
  }
}
