package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.Marks;
import org.lapmark.figure.workpiece.Measure;
import org.lapmark.figure.workpiece.NameTag;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.Shown;
import org.lapmark.figure.workpiece.Workpiece;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/**
 * A piece or a zip as it lies in a picture.
 *
 * @param piece the piece's number, or null for a zip
 * @param zip the zip's id, or null for a piece
 * @param trim the name of a trim that is shown as a zip, or null
 * @param length the zip's length from stop to stop, or null
 * @param cloth the material's id, or null for the first
 * @param side the side that faces the reader
 * @param reversed whether it is one of those cut with the paper face down
 * @param turn by how many degrees clockwise it is turned: a multiple of 90
 * @param edge the edge along which layers meet, or null
 * @param cropped how much of it is drawn from that edge on, or null for all
 * @param cutAway the side on which a layer is cut away to show those beneath, or null
 * @param folds lines at which it is folded over, one after another
 * @param turned edges whose allowance is folded away
 * @param shown what else is drawn
 * @param name its name: the author's own; null for the computed one
 * @param named whether it is named at all
 * @param lines stitching and emphasised edges
 * @param tacks boxes and bars of stitches
 * @param labels labels
 * @param dimensions dimensions
 * @param things what lies on it
 * @param clips cuts into its allowance
 * @param around a seam whose other side is shown round it, or null
 */
record View(
    SourceText piece,
    SourceText zip,
    SourceText trim,
    Formula length,
    SourceText cloth,
    Side side,
    boolean reversed,
    int turn,
    SourceText edge,
    Formula cropped,
    Beside cutAway,
    List<Fold> folds,
    List<SourceText> turned,
    Set<Shown> shown,
    TemplateText name,
    boolean named,
    List<SewnLine> lines,
    List<Tack> tacks,
    List<Label> labels,
    List<Dimension> dimensions,
    List<Thing> things,
    List<Clips> clips,
    Around around) {
  private static final Key<SourceText> PIECE = Key.of("piece", FigureForms.NUMBER);
  private static final Key<SourceText> ZIP = Key.of("zip", FigureForms.NAME);
  private static final Key<SourceText> TRIM = Key.of("trim", FigureForms.NAME);
  private static final Key<Formula> LENGTH = Key.of("length", FigureForms.LENGTH);
  private static final Key<SourceText> CLOTH = Key.of("cloth", FigureForms.NAME);
  private static final Key<Side> SIDE =
      Key.of("side", FigureForms.constant(Side.class)).unless("right");
  private static final Key<Boolean> REVERSED = Key.of("reversed", FigureForms.YES).unless("no");
  private static final Key<Integer> TURN = Key.of("turn", FigureForms.TURN).unless("0");
  static final Key<SourceText> EDGE = Key.of("edge", FigureForms.EDGE);
  static final Key<Formula> CROPPED = Key.of("cropped", FigureForms.LENGTH);
  static final Key<Beside> CUT_AWAY = Key.of("cut_away", FigureForms.constant(Beside.class));
  private static final Key<Entries<Fold>> FOLDS = Key.of("folds", Fold.LIST);
  private static final Key<Entries<SourceText>> TURNED = Key.of("turned", FigureForms.EDGES);
  private static final Key<Entries<Shown>> SHOW =
      Key.of("show", FigureForms.each(FigureForms.constant(Shown.class)));
  private static final Key<TemplateText> NAME =
      Key.of("name", FigureForms.LABEL).unless("number, name, material and side");
  private static final Key<Entries<SewnLine>> LINES = Key.of("lines", SewnLine.LIST);
  private static final Key<Entries<Tack>> TACKS = Key.of("tacks", Tack.LIST);
  private static final Key<Entries<Label>> LABELS = Key.of("labels", Label.LIST);
  private static final Key<Entries<Dimension>> DIMENSIONS = Key.of("dimensions", Dimension.LIST);
  private static final Key<Entries<Thing>> THINGS = Key.of("things", Thing.LIST);
  private static final Key<Entries<Clips>> CLIPS = Key.of("clips", Clips.LIST);
  private static final Key<Around> AROUND = Key.of("around", Around.FORM);
  static final Table TABLE =
      Table.of(
              "view",
              PIECE,
              ZIP,
              TRIM,
              LENGTH,
              CLOTH,
              SIDE,
              REVERSED,
              TURN,
              EDGE,
              CROPPED,
              CUT_AWAY,
              FOLDS,
              TURNED,
              SHOW,
              NAME,
              LINES,
              TACKS,
              LABELS,
              DIMENSIONS,
              THINGS,
              CLIPS,
              AROUND)
          .oneOf(Choice.among(List.of(PIECE, ZIP, TRIM)));

  /** What a zip, which has neither edges nor an allowance, can't have. */
  private static final List<Key<?>> NEEDS_PIECE =
      List.of(CROPPED, FOLDS, TURNED, SHOW, LINES, TACKS, LABELS, THINGS, CLIPS, AROUND);

  /** What is looked at of a zip. */
  private static final List<Key<?>> BESIDE_ZIP =
      List.of(LENGTH, SIDE, REVERSED, TURN, EDGE, CUT_AWAY, NAME, DIMENSIONS);

  /** What is looked at of a trim, which says itself how long it is. */
  private static final List<Key<?>> BESIDE_TRIM =
      BESIDE_ZIP.stream().<Key<?>>filter(key -> key != LENGTH).toList();

  /** What is looked at of a piece. */
  private static final List<Key<?>> BESIDE_PIECE =
      TABLE.keys().stream()
          .<Key<?>>filter(key -> !List.of(PIECE, ZIP, TRIM, LENGTH).contains(key))
          .toList();

  /** A view; null if where everything on it lies depends on something that can't be read. */
  static View read(Keys keys) {
    if (!keys.one().equals(PIECE.name())) {
      Key<?> what = keys.has(ZIP) ? ZIP : TRIM;
      if (what == ZIP) {
        keys.need(LENGTH);
      }
      for (Key<?> key : NEEDS_PIECE) {
        if (keys.has(key)) {
          keys.report(
              Faults.of(
                  keys.node(key).position(), FigureCode.FIGURE_NEEDS_PIECE, "name", key.name()),
              what);
        }
      }
      keys.idle(what, List.of(CLOTH), BESIDE_ZIP);
      if (what == TRIM) {
        keys.idle(TRIM, List.of(LENGTH), BESIDE_TRIM);
      }
    } else {
      keys.idle(PIECE, List.of(LENGTH), BESIDE_PIECE);
      for (Key<?> key : List.<Key<?>>of(CROPPED, CUT_AWAY)) {
        if (keys.has(FOLDS) && keys.has(key)) {
          keys.report(
              Faults.of(
                  keys.node(key).position(),
                  FigureCode.FIGURE_KEYS_TOGETHER,
                  "names",
                  "folds’ and ‘" + key.name()),
              key);
        }
      }
      if (keys.has(CROPPED)) {
        keys.need(EDGE);
      }
    }
    String named = keys.node(NAME) instanceof YamlNode.Text text ? text.text().text() : "";
    View view =
        new View(
            keys.get(PIECE),
            keys.get(ZIP),
            keys.get(TRIM),
            keys.get(LENGTH),
            keys.get(CLOTH),
            keys.or(SIDE, Side.RIGHT),
            keys.or(REVERSED, false),
            keys.or(TURN, 0),
            keys.get(EDGE),
            keys.get(CROPPED),
            keys.get(CUT_AWAY),
            keys.all(FOLDS),
            keys.all(TURNED),
            FigureForms.ordered(keys.all(SHOW), Shown.class),
            List.of("yes", "no").contains(named) ? null : keys.get(NAME),
            !named.equals("no"),
            keys.all(LINES),
            keys.all(TACKS),
            keys.all(LABELS),
            keys.all(DIMENSIONS),
            keys.all(THINGS),
            keys.all(CLIPS),
            keys.get(AROUND));
    return keys.amiss(PIECE, ZIP, TRIM, LENGTH, TURN, EDGE, CROPPED, CUT_AWAY, FOLDS, TURNED)
        ? null
        : view;
  }

  boolean isZip() {
    return piece == null;
  }

  /** Where it says what is shown. */
  SourceText what() {
    return isZip() ? zip == null ? trim : zip : piece;
  }

  /** Whether something lies round its rim, on which lines are drawn. */
  boolean hasBand() {
    return things.stream().anyMatch(Thing::isBand);
  }

  /** The mirror image if it is seen from the side that isn't the paper's. */
  Affine mirror() {
    return side == Side.WRONG != reversed ? Affine.scaling(-1, 1) : Affine.IDENTITY;
  }

  /** From its own coordinates to a picture in which it lies by itself. */
  Affine facing() {
    return Affine.rotation(turn).after(mirror());
  }

  /** The edge along which it meets other layers. */
  SourceText seamEdge() {
    if (edge == null) {
      throw Faults.of(what().position(), FigureCode.FIGURE_KEY_MISSING, "name", "edge");
    }
    return edge;
  }

  /**
   * All that is shown on it.
   *
   * @param laid where it lies at the scale that is tried first
   */
  Workpiece stage(Staging staging, Subject subject, PlacedBody laid) {
    List<Overlay> overlays = new ArrayList<>();
    List<Detail> details = new ArrayList<>();
    List<Measure> measures = new ArrayList<>();
    for (Thing thing : things) {
      staging.attempt(() -> thing.stage(staging, subject, laid)).ifPresent(overlays::add);
    }
    for (SewnLine line : lines) {
      staging
          .attempt(() -> line.stage(staging, subject, laid))
          .ifPresent(
              staged -> {
                details.add(staged.detail());
                measures.addAll(staged.gaps());
              });
    }
    for (Tack tack : tacks) {
      staging.attempt(() -> tack.stage(staging, subject, laid)).ifPresent(details::add);
    }
    for (Clips one : clips) {
      staging
          .attempt(() -> one.stage(staging, subject, laid))
          .flatMap(cuts -> cuts)
          .ifPresent(details::add);
    }
    if (around != null) {
      staging.attempt(() -> around.stage(staging, subject)).ifPresent(details::add);
    }
    if (named) {
      staging
          .attempt(() -> words(staging, subject))
          .ifPresent(words -> details.add(new NameTag(words, covers(subject, overlays))));
    }
    for (Label label : labels) {
      staging.attempt(() -> label.stage(staging, subject, laid)).ifPresent(details::add);
    }
    for (Dimension dimension : dimensions) {
      staging.attempt(() -> dimension.stage(staging, subject, laid)).ifPresent(measures::add);
    }
    String said =
        isZip()
            ? PieceNames.zip(side, staging)
            : PieceNames.said(subject.piece(), subject.material(), side, staging);
    for (Fold fold : folds) {
      details.add(new FoldWords(Spoken.edge(fold.lifted().text(), staging)));
    }
    Marks marks =
        isZip()
            ? Marks.NONE
            : Marks.of(subject.panel(), shown, subject.allowances(), subject.turned());
    return new Workpiece(laid.lying(), said, overlays, marks, details, measures);
  }

  private String words(Staging staging, Subject subject) {
    if (name != null) {
      return staging.text(name);
    }
    return isZip()
        ? PieceNames.zip(side, staging)
        : PieceNames.of(subject.piece(), subject.material(), side, staging);
  }

  private static List<Path> covers(Subject subject, List<Overlay> overlays) {
    List<Path> covers = new ArrayList<>();
    overlays.forEach(overlay -> overlay.cover().ifPresent(covers::add));
    subject.body().flaps().forEach(flap -> covers.add(flap.shape()));
    return covers;
  }

  /** How deep it says to clip. */
  static List<Formula> clipDepths(List<View> views) {
    return views.stream().flatMap(view -> view.clips().stream()).map(Clips::depth).toList();
  }
}
