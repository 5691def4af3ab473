package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.PosedBody;
import org.lapmark.figure.workpiece.Stack;
import org.lapmark.figure.workpiece.Workpiece;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Key;

/**
 * Layers lying on each other along a seam, the lowest first.
 *
 * @param views the layers
 */
public record Layers(List<View> views) implements Picture {
  private static final Key<Entries<View>> KEY =
      Key.of("layers", FigureForms.list(View.TABLE, View::read));

  /** Under the key {@code layers}. */
  public static final PictureKind KIND = new PictureKind(KEY, List.of(), Layers::read);

  /** A zip longer than its edge by no more than this, in millimetres, fits it. */
  private static final double LONGER = 0.5;

  private static Picture read(Keys keys) {
    List<View> views = keys.all(KEY);
    return keys.amiss(KEY) ? null : new Layers(views);
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
    if (subjects.size() < views.size()) {
      return new Stack(List.of());
    }
    List<PosedBody> lying = new ArrayList<>();
    for (int i = 0; i < views.size(); i++) {
      View view = shown.get(i);
      Affine pose =
          i == 0 ? view.facing() : onto(shown.get(0), subjects.get(0), view, subjects.get(i));
      lying.add(new PosedBody(subjects.get(i).body(), pose, view.cutAway()));
    }
    checkZips(staging, shown, subjects);
    List<PlacedBody> laid = Stack.lay(lying, scale);
    List<Workpiece> workpieces = new ArrayList<>();
    for (int i = 0; i < laid.size(); i++) {
      workpieces.add(shown.get(i).stage(staging, subjects.get(i), laid.get(i)));
    }
    return new Stack(workpieces);
  }

  /** Where a layer lies so that its edge meets the lowest layer's. */
  private static Affine onto(View lowest, Subject base, View view, Subject layer) {
    if (base.isZip()) {
      throw Faults.of(lowest.what().position(), FigureCode.FIGURE_NEEDS_PIECE, "name", "layers");
    }
    Path seam = base.line(lowest.seamEdge());
    Point inward = lowest.facing().applyVector(Lines.inward(seam)).unit();
    Point middle = lowest.facing().apply(middle(seam));
    if (layer.isZip()) {
      // The tape's edge lies level with the raw edge.
      double allowance = base.allowance(base.edges(lowest.seamEdge()).get(0));
      Point raw = middle.minus(inward.times(allowance));
      return new Affine(inward.y(), -inward.x(), inward.x(), inward.y(), raw.x(), raw.y());
    }
    Path edge = layer.line(view.seamEdge());
    Point own = view.mirror().applyVector(Lines.inward(edge));
    double cos = own.dot(inward);
    double sin = own.cross(inward);
    Affine turned = new Affine(cos, sin, -sin, cos, 0, 0).after(view.mirror());
    Point by = middle.minus(turned.apply(middle(edge)));
    return Affine.translation(by.x(), by.y()).after(turned);
  }

  private static Point middle(Path edge) {
    return edge.start().towards(edge.end(), 0.5);
  }

  /** A zip that is laid along an edge must not be longer than that; a trim was held to its own. */
  private static void checkZips(Staging staging, List<View> shown, List<Subject> subjects) {
    List<View> zips = shown.stream().filter(view -> view.zip() != null).toList();
    for (int i = 0; i < shown.size() && !zips.isEmpty(); i++) {
      if (subjects.get(i).isZip()) {
        continue;
      }
      SourceText edge = shown.get(i).seamEdge();
      double opening = subjects.get(i).line(edge).length();
      for (View zip : zips) {
        double length = staging.length(zip.length());
        if (length > opening + LONGER) {
          staging.notice(
              zip.length().text().position(),
              FigureCode.FIGURE_ZIP_TOO_LONG,
              "length",
              Staging.hundredth(length),
              "opening",
              Staging.hundredth(opening),
              "edge",
              edge.text(),
              "size",
              staging.size());
        }
      }
    }
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
