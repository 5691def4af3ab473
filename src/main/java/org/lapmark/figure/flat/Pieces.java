package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Arrangement;
import org.lapmark.figure.workpiece.Laid;
import org.lapmark.figure.workpiece.Lying;
import org.lapmark.figure.workpiece.Spread;
import org.lapmark.figure.workpiece.Workpiece;
import org.lapmark.measure.Formula;

/**
 * Pieces laid flat.
 *
 * @param arrangement how they lie
 * @param views the pieces
 */
public record Pieces(Arrangement arrangement, List<View> views) implements Picture {
  /** Under the key {@code pieces}. */
  public static final PictureKind KIND =
      new PictureKind("pieces", List.of("arrange"), Pieces::read);

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
}
