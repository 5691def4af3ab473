package org.lapmark.figure.article;

import static org.lapmark.source.key.Choice.way;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.PatternNames;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Panel;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * Straps of the finished article.
 *
 * @param at places along the rim where they are caught
 * @param attachments their names where they are stated as attachments, which say the rest; or none
 * @param places distances of their middles from the left side
 * @param width their width, or null
 * @param cloth their material, or null
 */
record ArticleStraps(
    Formula at,
    List<SourceText> attachments,
    List<Formula> places,
    Formula width,
    SourceText cloth) {
  /** The thinnest bar that is shown, in millimetres. */
  static final double LEAST_BAR = 1;

  /** The thickest. */
  static final double MOST_BAR = 200;

  private static final Key<Formula> AT = Key.required("at", FigureForms.PLACE);
  private static final Key<Entries<Formula>> PLACES =
      Key.of("places", FigureForms.each(FigureForms.LENGTH));
  private static final Key<Formula> WIDTH = Key.of("width", FigureForms.LENGTH);
  private static final Key<SourceText> CLOTH = Key.of("cloth", FigureForms.NAME);
  private static final Key<Entries<SourceText>> ATTACHMENTS =
      Key.of("attachments", FigureForms.each(FigureForms.NAME));
  private static final Table TABLE =
      Table.of("straps", AT, PLACES, WIDTH, CLOTH, ATTACHMENTS)
          .oneOf(Choice.of(way(PLACES, WIDTH, CLOTH), way(ATTACHMENTS)));

  /** Stated as a map. */
  static final Form<ArticleStraps> FORM = FigureForms.map(TABLE, ArticleStraps::read);

  private static ArticleStraps read(Keys keys) {
    if (keys.has(ATTACHMENTS)) {
      keys.idle(ATTACHMENTS, List.of(PLACES, WIDTH, CLOTH), List.of(AT));
    } else {
      keys.need(PLACES, WIDTH, CLOTH);
    }
    return keys.whole(
        new ArticleStraps(
            keys.get(AT),
            keys.all(ATTACHMENTS),
            keys.all(PLACES),
            keys.get(WIDTH),
            keys.get(CLOTH)));
  }

  /**
   * The straps in one variant.
   *
   * @param bar the diameter of the bar that they hold, or null
   */
  Loops stage(Staging staging, Path rim, double length, Formula bar) {
    double diameter = bar == null ? 0 : staging.length(bar, LEAST_BAR, MOST_BAR);
    Point caught = rim.atLength(staging.along(at, rim.length(), 0));
    if (!attachments.isEmpty()) {
      return attached(staging, caught, diameter);
    }
    double wide = staging.length(width, 1, 500);
    Texture texture = staging.cloths().texture(staging.names().material(cloth));
    List<Double> middles = new ArrayList<>();
    places.forEach(place -> middles.add(staging.length(place, 0, length)));
    middles.sort(Double::compare);
    return new Loops(caught, middles, wide, texture, diameter);
  }

  /** Attachments as straps: as far from the left as on their panel, as wide as the first. */
  private Loops attached(Staging staging, Point caught, double diameter) {
    PatternNames names = staging.names();
    List<Double> middles = new ArrayList<>();
    for (SourceText name : attachments) {
      Attached strap = names.attached(name);
      Panel panel = staging.pattern().panels().get(strap.panel());
      middles.add(strap.point().x() - panel.outline().bounds().minX());
    }
    middles.sort(Double::compare);
    Attached first = names.attached(attachments.get(0));
    Texture texture = names.material(first).map(staging.cloths()::texture).orElse(Texture.OTHER);
    return new Loops(caught, middles, first.width(), texture, diameter);
  }

  /**
   * Straps as loops round a bar, which lies behind and above.
   *
   * @param caught the point of the rim at which they are caught
   * @param places distances of their middles from the left side, in order
   * @param width their width
   * @param texture how their material is shown
   * @param bar the bar's diameter, 0 for none
   */
  record Loops(Point caught, List<Double> places, double width, Texture texture, double bar) {
    /** How far the bar is seen beyond the article. */
    private static final double REACH = 34;

    void draw(double length, Projection view) {
      Canvas canvas = view.canvas();
      double radius = Math.max(4, bar / 2) + 1.5;
      Point centre = new Point(caught.x() - radius - 6, caught.y() - radius - 22);
      Path loop = loop(caught, centre, radius);
      Path round = Path.circle(centre, Math.max(1, bar / 2));
      double done = -REACH;
      boolean first = true;
      for (double place : places) {
        double from = place - width / 2;
        double to = place + width / 2;
        // Straps may lie side by side, or over each other.
        if (bar > 0 && from - done > Projection.GRAZING) {
          view.surface(round, done, from, Texture.MAIN, Side.WRONG);
          view.contours(round, done, from, first);
          first = false;
        }
        view.surface(loop, from, to, texture, Side.RIGHT);
        view.contours(loop, from, to, true);
        Path near = loop.transformed(view.at(to));
        canvas.shape(near, "figure-tape");
        canvas.line(near, "figure-outline");
        done = to;
      }
      if (bar > 0) {
        view.surface(round, done, length + REACH, Texture.MAIN, Side.WRONG);
        view.contours(round, done, length + REACH, false);
        Path end = round.transformed(view.at(length + REACH));
        canvas.shape(end, "figure-tape");
        canvas.line(end, "figure-outline");
      }
    }

    /** The line round a circle and a point outside it, clockwise. */
    private static Path loop(Point caught, Point centre, double radius) {
      Point away = caught.minus(centre);
      double distance = away.norm();
      double half = StrictMath.toDegrees(StrictMath.acos(Math.min(1, radius / distance)));
      List<Point> points = new ArrayList<>();
      points.add(caught);
      double sweep = 360 - 2 * half;
      int steps = 60;
      Point arm = away.unit().times(radius);
      for (int i = 0; i <= steps; i++) {
        points.add(centre.plus(Affine.rotation(half + sweep * i / steps).applyVector(arm)));
      }
      points.add(caught);
      return Path.polyline(points);
    }
  }
}
