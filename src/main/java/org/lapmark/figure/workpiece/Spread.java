package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Box;

/**
 * Workpieces that lie beside each other.
 *
 * @param arrangement how they lie
 * @param workpieces the workpieces
 */
public record Spread(Arrangement arrangement, List<Workpiece> workpieces) implements Scene {
  @Override
  public void draw(Canvas canvas, double scale) {
    FlatInk ink = new FlatInk(canvas, scale);
    List<PlacedBody> laid = arrangement.lay(workpieces, canvas, scale);
    // A zip lies under the strips that were turned away from it.
    for (boolean under : new boolean[] {true, false}) {
      for (int i = 0; i < laid.size(); i++) {
        if (arrangement.isUnder(laid.get(i)) == under) {
          workpieces.get(i).base(laid.get(i), ink);
        }
      }
    }
    for (PlacedBody under : laid) {
      for (PlacedBody cover : laid) {
        if (arrangement.isUnder(under) && !arrangement.isUnder(cover)) {
          canvas.within(cover.outline(), List.of(under.outline()), "figure-under");
        }
      }
    }
    Box shape = canvas.bounds();
    for (int i = 0; i < laid.size(); i++) {
      PlacedBody one = laid.get(i);
      List<PlacedBody> others = new ArrayList<>(laid);
      others.remove(i);
      workpieces.get(i).details(one, arrangement.isUnder(one) ? others : List.of(), ink);
    }
    for (int i = 0; i < laid.size(); i++) {
      boolean joined = arrangement == Arrangement.JOINED;
      Box beside = joined ? shape : laid.get(i).outline().bounds();
      workpieces.get(i).dimensions(laid.get(i), beside, ink);
    }
  }

  @Override
  public List<String> inWords(Words words) {
    List<String> sentences = new ArrayList<>();
    for (Workpiece workpiece : workpieces) {
      sentences.add(words.word("alt.flat", "what", workpiece.said()));
      if (workpiece.marks().inner()) {
        sentences.add(words.word("alt.marks"));
      }
      sentences.addAll(workpiece.inWords(words));
    }
    return sentences;
  }
}
