package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.figure.stage.Staging;
import org.lapmark.geometry.Box;
import org.lapmark.measure.Formula;

/**
 * Pieces laid flat.
 *
 * @param arrangement how they lie
 * @param views the pieces
 */
record Pieces(Arrangement arrangement, List<View> views) implements Picture {
  static final PictureKind KIND = new PictureKind("pieces", List.of("arrange"), Pieces::read);

  private static Picture read(Keys keys) {
    Arrangement arrangement = keys.constant("arrange", Arrangement.class, Arrangement.ROW);
    List<View> views = keys.all("pieces", View.KEYS, Pieces::view);
    return views.isEmpty() ? null : new Pieces(arrangement, views);
  }

  private static View view(Keys keys) {
    View view = View.read(keys);
    List<String> idle = keys.has("cropped") ? List.of("cut_away") : List.of("cut_away", "edge");
    keys.idle("pieces", idle, List.of("edge with cropped"));
    return view;
  }

  @Override
  public double largest() {
    return LARGEST;
  }

  @Override
  public Scene stage(Staging staging, double scale) {
    List<View> shown = new ArrayList<>();
    List<Subject> subjects = new ArrayList<>();
    for (View view : views) {
      Optional<Subject> subject = staging.attempt(() -> Subjects.of(view, staging));
      subject.ifPresent(one -> shown.add(view));
      subject.ifPresent(subjects::add);
    }
    List<Lying> lying = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      lying.add(new Lying(subjects.get(i).body(), shown.get(i).facing(), null));
    }
    List<Laid> laid = arrangement.lay(lying, scale);
    List<Workpiece> workpieces = new ArrayList<>();
    for (int i = 0; i < laid.size(); i++) {
      workpieces.add(shown.get(i).stage(staging, subjects.get(i), laid.get(i)));
    }
    return new Spread(arrangement, workpieces);
  }

  @Override
  public List<Formula> clipDepths() {
    return View.clipDepths(views);
  }

  @Override
  public boolean isFinishedArticle() {
    return false;
  }

  @Override
  public Picture unlettered() {
    return this;
  }

  /** Pieces that lie beside each other. */
  private record Spread(Arrangement arrangement, List<Workpiece> workpieces) implements Scene {
    @Override
    public void draw(Canvas canvas, double scale) {
      FlatInk ink = new FlatInk(canvas, scale);
      List<Laid> laid = arrangement.lay(workpieces.stream().map(Workpiece::lying).toList(), scale);
      // A zip lies under the strips that were turned away from it.
      for (boolean under : new boolean[] {true, false}) {
        for (int i = 0; i < laid.size(); i++) {
          if (arrangement.isUnder(laid.get(i)) == under) {
            workpieces.get(i).base(laid.get(i), ink);
          }
        }
      }
      for (Laid under : laid) {
        for (Laid cover : laid) {
          if (arrangement.isUnder(under) && !arrangement.isUnder(cover)) {
            canvas.within(cover.outline(), List.of(under.outline()), "figure-under");
          }
        }
      }
      Box shape = canvas.bounds();
      for (int i = 0; i < laid.size(); i++) {
        Laid one = laid.get(i);
        List<Laid> others = new ArrayList<>(laid);
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
}
