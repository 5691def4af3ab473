package org.lapmark.figure.pose;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Body;
import org.lapmark.figure.workpiece.Crease;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.FoldedCloth;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.RolledBody;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Panel;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * What of a piece is rolled up out of the way, from an edge on.
 *
 * @param edge the edge that lies inside the roll
 * @param inset how far inside that edge's stitching line the roll lies
 * @param clips how many clips hold the roll
 */
public record Rolled(SourceText edge, Formula inset, int clips) {
  private static final Key<SourceText> EDGE = Key.required("edge", FigureForms.EDGE);
  private static final Key<Formula> INSET = Key.required("inset", FigureForms.LENGTH);
  private static final Key<Integer> CLIPS = Key.of("clips", FigureForms.count(9)).unless("none");

  /** As a map. */
  static final Form<Rolled> FORM =
      FigureForms.map(Table.of("rolled", EDGE, INSET, CLIPS), Rolled::read);

  /** How thick cloth is that is rolled up by hand, in millimetres. */
  private static final double LOOSE = 1.5;

  private static final double THINNEST = 8;
  private static final double THICKEST = 36;

  private static Rolled read(Keys keys) {
    return keys.whole(new Rolled(keys.get(EDGE), keys.get(INSET), keys.or(CLIPS, 0)));
  }

  Body stage(Staging staging, Panel panel, Body before) {
    Path line = staging.names().side(panel, edge);
    Point in = Lines.inward(line);
    double deep = staging.length(inset, 1, 5_000);
    Crease crease = new Crease(line.start().plus(in.times(deep)), in.times(-1), 1);
    if (!FoldedCloth.parts(before.outline(), crease)) {
      throw Faults.of(edge.position(), FigureCode.FIGURE_FOLD_IMPOSSIBLE, "size", staging.size());
    }
    double thick = Math.sqrt(4 * LOOSE * deep / Math.PI);
    return RolledBody.of(before, crease, Math.max(THINNEST, Math.min(THICKEST, thick)), clips);
  }

  Detail words() {
    return new Said(edge.text(), clips);
  }

  /** Says it; the roll itself is drawn with the piece. */
  private record Said(String edge, int clips) implements Detail {
    @Override
    public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {}

    @Override
    public Optional<String> inWords(Words words) {
      return Optional.of(words.word("alt.rolled", "edge", words.edge(edge), "clips", clips));
    }
  }
}
