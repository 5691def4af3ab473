package org.lapmark.figure.article;

import static org.lapmark.source.key.Choice.way;

import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.stage.TrimInSeam;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Panel;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * A zip of the finished article.
 *
 * @param trim the name of the trim that it is, which says the next three; or null
 * @param from where along the rim it begins, or null
 * @param to where it ends, or null
 * @param length from stop to stop, or null
 * @param open how far it is open, 0 to 1
 */
record ArticleZip(SourceText trim, Formula from, Formula to, Formula length, double open) {
  private static final Key<SourceText> TRIM = Key.of("trim", FigureForms.NAME);
  private static final Key<Formula> FROM = Key.of("from", FigureForms.PLACE);
  private static final Key<Formula> TO = Key.of("to", FigureForms.PLACE);
  private static final Key<Formula> LENGTH = Key.of("length", FigureForms.LENGTH);
  private static final Key<Double> OPEN = Key.of("open", FigureForms.SIMPLE_SHARE).unless("0");
  private static final Table TABLE =
      Table.of("opening", FROM, TO, LENGTH, TRIM, OPEN)
          .oneOf(Choice.of(way(FROM, TO, LENGTH), way(TRIM)));

  /** Stated as a map. */
  static final Form<ArticleZip> FORM = FigureForms.map(TABLE, ArticleZip::read);

  private static ArticleZip read(Keys keys) {
    if (keys.has(TRIM)) {
      keys.idle(TRIM, List.of(FROM, TO, LENGTH), List.of(OPEN));
    } else {
      keys.need(FROM, TO, LENGTH);
    }
    return keys.whole(
        new ArticleZip(
            keys.get(TRIM), keys.get(FROM), keys.get(TO), keys.get(LENGTH), keys.or(OPEN, 0.0)));
  }

  /**
   * The zip in one variant.
   *
   * @param panel the panel whose stitching line the rim is
   * @param across how far it is from side to side
   */
  Across stage(Staging staging, Panel panel, Path rim, double across) {
    if (trim != null) {
      TrimInSeam place = TrimInSeam.of(staging, trim, panel);
      return new Across(
          rim.nearestLength(place.from()),
          rim.nearestLength(place.to()),
          Math.min(across, staging.names().trim(trim).length()),
          open);
    }
    double first = staging.along(from, rim.length(), 0);
    double last = staging.along(to, rim.length(), 0);
    double stops = staging.length(length, 1, across);
    if (Math.abs(last - first) < Projection.GRAZING) {
      throw staging.empty(to, "zip");
    }
    return new Across(first, last, stops, open);
  }

  /**
   * A zip from side to side, in millimetres.
   *
   * @param from where along the rim it begins
   * @param to where it ends
   * @param stops from stop to stop
   * @param open how far it is open, 0 to 1
   */
  record Across(double from, double to, double stops, double open) {
    void draw(Path rim, double length, Projection view) {
      if (view.facing(rim.tangentAtLength((from + to) / 2)) <= 0) {
        return;
      }
      Canvas canvas = view.canvas();
      Path across = rim.part(Math.min(from, to), Math.max(from, to));
      canvas.shape(
          Projection.ring(across.transformed(view.at(0)), across.transformed(view.at(length))),
          "figure-tape");
      Point middle = rim.atLength((from + to) / 2);
      double first = (length - stops) / 2;
      double last = first + stops;
      double slider = last - stops * open;
      Point rear = rim.atLength(from);
      Point front = rim.atLength(to);
      for (Point edge : List.of(rear, front)) {
        view.line(0, length, edge, "figure-outline");
      }
      view.line(first, slider, middle, "figure-coil");
      if (open > 0) {
        double wide = 0.42;
        Point a = middle.towards(rear, 2 * wide);
        Point b = middle.towards(front, 2 * wide);
        double throat = slider + Math.min(stops * 0.12, 18);
        Path gap =
            Path.polyline(
                List.of(
                    view.project(slider, middle),
                    view.project(throat, a),
                    view.project(last, a),
                    view.project(last, b),
                    view.project(throat, b),
                    view.project(slider, middle)));
        canvas.shape(gap, "figure-gap");
        canvas.line(gap, "figure-layer");
      }
      for (double stop : new double[] {first, last}) {
        canvas.line(
            Path.polyline(
                List.of(
                    view.project(stop, middle.towards(rear, 0.6)),
                    view.project(stop, middle.towards(front, 0.6)))),
            "figure-stop");
      }
      double at = open > 0 ? slider : last - 5;
      Path body = view.quad(at - 4, at + 4, middle.towards(rear, 0.6), middle.towards(front, 0.6));
      canvas.shape(body, "figure-slider");
      Path pull = view.quad(at - 18, at - 3, middle.towards(rear, 0.3), middle.towards(front, 0.3));
      canvas.shape(pull, "figure-slider");
    }
  }
}
