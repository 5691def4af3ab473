package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;

/**
 * Workpieces that lie on each other.
 *
 * @param workpieces the workpieces, the lowest first
 */
public record Stack(List<Workpiece> workpieces) implements Scene {
  /** How far each layer is moved on paper, down and right, so that the lower ones are seen. */
  private static final double STAGGER = 2.5;

  /** Where things lie on paper at a scale. */
  public static List<PlacedBody> lay(List<PosedBody> all, double scale) {
    boolean level =
        all.stream().anyMatch(lying -> lying.cutAway() != null || lying.body().isPeeled());
    List<PlacedBody> laid = new ArrayList<>();
    for (PosedBody lying : all) {
      double moved = level ? 0 : STAGGER * laid.size();
      Affine map = Affine.scaling(scale, scale).after(lying.pose());
      PlacedBody one = new PlacedBody(lying, Affine.translation(moved, moved).after(map));
      int above = all.size() - 1 - laid.size();
      laid.add(lying.cutAway() == null ? one : one.cutAway(above));
    }
    return laid;
  }

  @Override
  public void draw(Canvas canvas, double scale) {
    FlatInk ink = new FlatInk(canvas, scale);
    List<PlacedBody> laid = lay(workpieces.stream().map(Workpiece::lying).toList(), scale);
    for (int i = 0; i < laid.size(); i++) {
      workpieces.get(i).base(laid.get(i), ink);
      for (PlacedBody below : laid.subList(0, i)) {
        canvas.within(laid.get(i).outline(), List.of(below.outline()), "figure-under");
      }
      workpieces.get(i).details(laid.get(i), laid.subList(i + 1, laid.size()), ink);
    }
    Box shape = canvas.bounds();
    for (int i = 0; i < laid.size(); i++) {
      workpieces.get(i).dimensions(laid.get(i), shape, ink);
    }
  }

  @Override
  public List<String> inWords(Words words) {
    List<String> sentences = new ArrayList<>();
    sentences.add(words.word("alt.layers", "count", workpieces.size()));
    for (int i = 0; i < workpieces.size(); i++) {
      String said = workpieces.get(i).said();
      sentences.add(words.word("alt.layer", "number", i + 1, "what", said));
    }
    workpieces.forEach(workpiece -> sentences.addAll(workpiece.inWords(words)));
    return sentences;
  }
}
