package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Arrangement;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.PosedBody;
import org.lapmark.figure.workpiece.Spread;
import org.lapmark.figure.workpiece.Workpiece;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Key;

/**
 * Pieces laid flat.
 *
 * @param arrangement how they lie
 * @param views the pieces
 */
public record Pieces(Arrangement arrangement, List<View> views) implements Picture {
  private static final Key<Entries<View>> KEY =
      Key.of("pieces", FigureForms.list(View.TABLE, Pieces::view));
  private static final Key<Arrangement> ARRANGE =
      Key.of("arrange", FigureForms.constant(Arrangement.class)).unless("row");

  /** Under the key {@code pieces}. */
  public static final PictureKind KIND = new PictureKind(KEY, List.of(ARRANGE), Pieces::read);

  private static Picture read(Keys keys) {
    Arrangement arrangement = keys.or(ARRANGE, Arrangement.ROW);
    List<View> views = keys.all(KEY);
    return views.isEmpty() ? null : new Pieces(arrangement, views);
  }

  private static View view(Keys keys) {
    View view = View.read(keys);
    String known = "edge with cropped";
    keys.idle(KEY, View.CUT_AWAY, known);
    if (!keys.has(View.CROPPED)) {
      keys.idle(KEY, View.EDGE, known);
    }
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
      Optional<Units.Staged> staged = staging.attempt(() -> Units.staged(view, staging));
      staged.ifPresent(one -> shown.add(one.view()));
      staged.ifPresent(one -> subjects.add(one.subject()));
    }
    List<PosedBody> lying = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      lying.add(new PosedBody(subjects.get(i).body(), shown.get(i).facing(), null));
    }
    List<PlacedBody> laid = arrangement.lay(lying, scale);
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
