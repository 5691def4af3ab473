package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.pose.Pins;
import org.lapmark.figure.pose.Poses;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.Earlier;
import org.lapmark.figure.workpiece.Marks;
import org.lapmark.figure.workpiece.Measure;
import org.lapmark.figure.workpiece.NameTag;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.PosedBody;
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
 * @param unit what was assembled before, or null
 * @param length the zip's length from stop to stop, or null
 * @param cloth the material's id, or null for the first
 * @param side the side that faces the reader; null for that of the unit
 * @param reversed whether it is one of those cut with the paper face down
 * @param turn by how many degrees clockwise it is turned: a multiple of 90
 * @param edge the edge along which layers meet, or null
 * @param cropped how much of it is drawn from that edge on, or null for all
 * @param cutAway the side on which a layer is cut away to show those beneath, or null
 * @param poses how it lies where it doesn't lie flat
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
 * @param pins what holds it for a while
 * @param around a seam whose other side is shown round it, or null
 * @param earlier the unit as it was assembled, of which this is a further step, or null
 */
record View(
    SourceText piece,
    SourceText zip,
    SourceText trim,
    SourceText unit,
    Formula length,
    SourceText cloth,
    Side side,
    boolean reversed,
    int turn,
    SourceText edge,
    Formula cropped,
    Beside cutAway,
    Poses poses,
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
    List<Pins> pins,
    Around around,
    View earlier) {
  private static final Key<SourceText> PIECE = Key.of("piece", FigureForms.NUMBER);
  private static final Key<SourceText> ZIP = Key.of("zip", FigureForms.NAME);
  private static final Key<SourceText> TRIM = Key.of("trim", FigureForms.NAME);
  private static final Key<SourceText> UNIT = Key.of("unit", FigureForms.NAME);
  private static final Key<Formula> LENGTH = Key.of("length", FigureForms.LENGTH);
  private static final Key<SourceText> CLOTH = Key.of("cloth", FigureForms.NAME);
  private static final Key<Side> SIDE =
      Key.of("side", FigureForms.constant(Side.class)).unless("right");
  private static final Key<Boolean> REVERSED = Key.of("reversed", FigureForms.YES).unless("no");
  private static final Key<Integer> TURN = Key.of("turn", FigureForms.TURN).unless("0");
  static final Key<SourceText> EDGE = Key.of("edge", FigureForms.EDGE);
  static final Key<Formula> CROPPED = Key.of("cropped", FigureForms.LENGTH);
  static final Key<Beside> CUT_AWAY = Key.of("cut_away", FigureForms.constant(Beside.class));
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
  private static final Key<Entries<Pins>> PINS = Key.of("pins", Pins.LIST);
  private static final Key<Around> AROUND = Key.of("around", Around.FORM);
  static final Table TABLE =
      Table.of("view", PIECE, ZIP, TRIM, UNIT, LENGTH, CLOTH, SIDE, REVERSED, TURN, EDGE, CROPPED)
          .with(List.of(CUT_AWAY))
          .with(Poses.KEYS)
          .with(List.of(TURNED, SHOW, NAME, LINES, TACKS, LABELS, DIMENSIONS, THINGS, CLIPS, PINS))
          .with(List.of(AROUND))
          .oneOf(Choice.among(List.of(PIECE, ZIP, TRIM, UNIT)));

  /** What a zip, which has neither edges nor an allowance, can't have. */
  private static final List<Key<?>> NEEDS_PIECE =
      Stream.concat(
              Poses.KEYS.stream(),
              Stream.<Key<?>>of(
                  CROPPED, TURNED, SHOW, LINES, TACKS, LABELS, THINGS, CLIPS, PINS, AROUND))
          .toList();

  /** What is looked at of a zip. */
  private static final List<Key<?>> BESIDE_ZIP =
      List.of(LENGTH, SIDE, REVERSED, TURN, EDGE, CUT_AWAY, NAME, DIMENSIONS);

  /** What is looked at of a trim, which says itself how long it is. */
  private static final List<Key<?>> BESIDE_TRIM =
      BESIDE_ZIP.stream().<Key<?>>filter(key -> key != LENGTH).toList();

  /** What is looked at of a piece. */
  private static final List<Key<?>> BESIDE_PIECE =
      TABLE.keys().stream()
          .<Key<?>>filter(key -> !List.of(PIECE, ZIP, TRIM, UNIT, LENGTH).contains(key))
          .toList();

  /** What is looked at of a unit. */
  private static final List<Key<?>> BESIDE_UNIT =
      BESIDE_PIECE.stream().<Key<?>>filter(key -> key != CLOTH && key != REVERSED).toList();

  /** A view; null if where everything on it lies depends on something that can't be read. */
  static View read(Keys keys) {
    boolean whole = keys.one().equals(PIECE.name()) || keys.one().equals(UNIT.name());
    if (!whole) {
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
      if (keys.has(UNIT)) {
        keys.idle(UNIT, List.of(LENGTH, CLOTH, REVERSED), BESIDE_UNIT);
      } else {
        keys.idle(PIECE, List.of(LENGTH), BESIDE_PIECE);
      }
      Poses.exclude(keys, List.of(CUT_AWAY));
      if (keys.has(CROPPED)) {
        keys.need(EDGE);
      }
    }
    String named = keys.node(NAME) instanceof YamlNode.Text text ? text.text().text() : " ";
    if (named.isEmpty()) {
      keys.report(Faults.of(keys.node(NAME).position(), FigureCode.FIGURE_NAME_EMPTY), NAME);
    }
    View view =
        new View(
            keys.get(PIECE),
            keys.get(ZIP),
            keys.get(TRIM),
            keys.get(UNIT),
            keys.get(LENGTH),
            keys.get(CLOTH),
            keys.has(UNIT) ? keys.get(SIDE) : keys.or(SIDE, Side.RIGHT),
            keys.or(REVERSED, false),
            keys.or(TURN, 0),
            keys.get(EDGE),
            keys.get(CROPPED),
            keys.get(CUT_AWAY),
            Poses.read(keys),
            keys.all(TURNED),
            FigureForms.ordered(keys.all(SHOW), Shown.class),
            List.of("yes", "no", "").contains(named) ? null : keys.get(NAME),
            !named.equals("no"),
            keys.all(LINES),
            keys.all(TACKS),
            keys.all(LABELS),
            keys.all(DIMENSIONS),
            keys.all(THINGS),
            keys.all(CLIPS),
            keys.all(PINS),
            keys.get(AROUND),
            null);
    boolean amiss =
        keys.amiss(PIECE, ZIP, TRIM, UNIT, LENGTH, TURN, EDGE, CROPPED, CUT_AWAY, TURNED)
            || keys.amiss(Poses.KEYS.toArray(Key[]::new));
    return amiss ? null : view;
  }

  /** A piece and nothing else. */
  static View of(
      SourceText piece,
      SourceText cloth,
      Side side,
      List<SourceText> turned,
      List<SewnLine> lines) {
    return new View(
        piece,
        null,
        null,
        null,
        null,
        cloth,
        side,
        false,
        0,
        null,
        null,
        null,
        Poses.NONE,
        turned,
        FigureForms.ordered(List.of(), Shown.class),
        null,
        false,
        lines,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        null,
        null);
  }

  /** A unit that lies on something else, or is joined to it. */
  static View unit(View unit, Side side, List<SourceText> joined) {
    return new View(
            null,
            null,
            null,
            null,
            null,
            null,
            side,
            false,
            0,
            null,
            null,
            null,
            Poses.NONE,
            joined,
            FigureForms.ordered(List.of(), Shown.class),
            null,
            false,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            null,
            null)
        .after(unit);
  }

  /** What it shows in place of its unit: the unit's own view, and all that is stated here. */
  View after(View base) {
    List<SourceText> folded = new ArrayList<>(base.turned);
    folded.addAll(turned);
    List<Shown> all = new ArrayList<>(base.shown);
    all.addAll(shown);
    return new View(
        base.piece,
        base.zip,
        base.trim,
        null,
        base.length,
        base.cloth,
        side == null ? base.side : side,
        base.reversed,
        turn,
        edge == null ? base.edge : edge,
        cropped,
        cutAway,
        base.poses.then(poses),
        folded,
        FigureForms.ordered(all, Shown.class),
        name == null ? base.name : name,
        named,
        lines,
        tacks,
        labels,
        dimensions,
        things,
        clips,
        pins,
        around,
        base);
  }

  /** The same as it was assembled, lying with a side up, whole and without lettering. */
  View whole(Side up) {
    return new View(
        piece, zip, trim, null, length, cloth, up, reversed, 0, edge, null, null, poses, turned,
        shown, null, false, lines, tacks, List.of(), List.of(), things, clips, List.of(), around,
        earlier);
  }

  /**
   * All that lies on it, also from earlier steps; of a unit that is turned over what shows there.
   */
  List<Thing> allThings() {
    List<Thing> all = new ArrayList<>();
    if (earlier != null) {
      for (Thing thing : earlier.allThings()) {
        (earlier.side == side ? Optional.of(thing) : thing.turnedOver()).ifPresent(all::add);
      }
    }
    all.addAll(things);
    return all;
  }

  boolean isZip() {
    return piece == null;
  }

  /** Where it says what is shown. */
  SourceText what() {
    return unit != null ? unit : isZip() ? zip == null ? trim : zip : piece;
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
    if (earlier != null) {
      overlays.add(earlier(staging, subject, laid));
    }
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
    for (Pins one : pins) {
      staging
          .attempt(() -> one.stage(staging, subject.panel(), subject.allowances()))
          .ifPresent(
              held -> {
                subject.checkSeen(laid, one.edge().position(), held.places(laid));
                details.add(held);
              });
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
    if (!isZip()) {
      details.addAll(poses.details(staging, subject.piece().shape().panel()));
    }
    Marks marks =
        isZip()
            ? Marks.NONE
            : Marks.of(subject.panel(), shown, subject.allowances(), subject.turned());
    return new Workpiece(laid.lying(), said(staging, subject), overlays, marks, details, measures);
  }

  private String said(Staging staging, Subject subject) {
    if (isZip()) {
      return PieceNames.zip(side, staging);
    }
    if (earlier != null && name != null) {
      String called = staging.attempt(() -> staging.text(name)).orElse("");
      return PieceNames.unit(called, side, staging);
    }
    return PieceNames.said(subject.piece(), subject.material(), side, staging);
  }

  /** What was done to its unit, as it is seen from the side that faces the reader. */
  private Earlier earlier(Staging staging, Subject subject, PlacedBody laid) {
    View before = earlier.whole(side);
    Subject whole = Subjects.of(before, subject.within(), staging);
    PlacedBody uncut =
        new PlacedBody(new PosedBody(whole.body(), laid.lying().pose(), null), laid.map());
    List<Overlay> under = new ArrayList<>();
    if (earlier.earlier != null) {
      under.add(earlier.whole(side).earlier(staging, whole, uncut));
    }
    for (Thing thing : earlier.things) {
      (earlier.side == side ? Optional.of(thing) : thing.turnedOver())
          .flatMap(one -> staging.attempt(() -> one.stage(staging, whole, uncut)))
          .ifPresent(under::add);
    }
    List<Detail> done = new ArrayList<>();
    for (SewnLine line : earlier.lines) {
      staging
          .attempt(() -> line.done().stage(staging, whole, uncut))
          .ifPresent(staged -> done.add(staged.detail()));
    }
    for (Tack tack : earlier.tacks) {
      staging.attempt(() -> tack.done().stage(staging, whole, uncut)).ifPresent(done::add);
    }
    for (Clips one : earlier.clips) {
      staging
          .attempt(() -> one.stage(staging, whole, uncut))
          .flatMap(cuts -> cuts)
          .ifPresent(done::add);
    }
    return new Earlier(under, done);
  }

  private String words(Staging staging, Subject subject) {
    if (name != null) {
      return staging.text(name);
    }
    return isZip()
        ? PieceNames.zip(side, staging)
        : PieceNames.of(subject.piece(), subject.material(), subject.body().seen(side), staging);
  }

  private static List<Path> covers(Subject subject, List<Overlay> overlays) {
    List<Path> covers = new ArrayList<>();
    overlays.forEach(overlay -> covers.addAll(overlay.covers()));
    subject.body().flaps().forEach(flap -> covers.add(flap.shape()));
    return covers;
  }

  /** How deep it says to clip. */
  static List<Formula> clipDepths(List<View> views) {
    return views.stream().flatMap(view -> view.clips().stream()).map(Clips::depth).toList();
  }
}
