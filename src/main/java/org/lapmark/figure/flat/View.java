package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Side;
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
 * @param work what lies on it and is done to it
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
    Work work,
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
  static final Table TABLE =
      Table.of("view", PIECE, ZIP, TRIM, UNIT, LENGTH, CLOTH, SIDE, REVERSED, TURN, EDGE, CROPPED)
          .with(List.of(CUT_AWAY))
          .with(Poses.KEYS)
          .with(List.of(TURNED, SHOW, NAME))
          .with(Work.KEYS)
          .oneOf(Choice.among(List.of(PIECE, ZIP, TRIM, UNIT)));

  /** What a zip, which has neither edges nor an allowance, can't have. */
  private static final List<Key<?>> NEEDS_PIECE =
      Stream.of(List.of(CROPPED), Poses.KEYS, List.of(TURNED, SHOW), Work.NEEDS_PIECE)
          .<Key<?>>flatMap(List::stream)
          .toList();

  /** What is looked at of a zip. */
  private static final List<Key<?>> BESIDE_ZIP =
      List.of(LENGTH, SIDE, REVERSED, TURN, EDGE, CUT_AWAY, NAME, Work.DIMENSIONS);

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
            Work.read(keys),
            null);
    boolean amiss =
        keys.amiss(PIECE, ZIP, TRIM, UNIT, LENGTH, TURN, EDGE, CROPPED, CUT_AWAY, TURNED)
            || keys.amiss(Poses.KEYS.toArray(Key[]::new));
    return amiss ? null : view;
  }

  /** The same under another name. */
  View called(TemplateText other) {
    return new View(
        piece, zip, trim, unit, length, cloth, side, reversed, turn, edge, cropped, cutAway, poses,
        turned, shown, other, named, work, earlier);
  }

  /** A piece and nothing else but stitching. */
  static View of(
      SourceText piece,
      SourceText cloth,
      Side side,
      List<SourceText> turned,
      List<SewnLine> lines) {
    return bare(piece, cloth, side, turned, Work.of(lines));
  }

  /** A unit that lies on something else, or is joined to it. */
  static View unit(View unit, Side side, List<SourceText> joined) {
    return bare(null, null, side, joined, Work.NONE).after(unit);
  }

  private static View bare(
      SourceText piece, SourceText cloth, Side side, List<SourceText> turned, Work work) {
    Set<Shown> shown = FigureForms.ordered(List.of(), Shown.class);
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
        shown,
        null,
        false,
        work,
        null);
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
        work,
        base);
  }

  /** The same after it was assembled, lying with a side up, whole and without lettering. */
  private View done(Side up) {
    return new View(
        piece,
        zip,
        trim,
        null,
        length,
        cloth,
        up,
        reversed,
        0,
        edge,
        null,
        null,
        poses,
        turned,
        shown,
        null,
        false,
        up == side ? work.done() : work.turnedOver().done(),
        earlier);
  }

  /**
   * All that lies on it, also from earlier steps; of a unit that is turned over what shows there.
   */
  List<Thing> allThings() {
    List<Thing> all = new ArrayList<>();
    if (earlier != null) {
      all.addAll(earlier.done(side).allThings());
    }
    all.addAll(work.things());
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
    if (earlier != null) {
      overlays.add(earlier.done(side).asBefore(staging, subject, laid));
    }
    overlays.addAll(work.overlays(staging, subject, laid));
    List<Detail> details = new ArrayList<>();
    List<Measure> measures = new ArrayList<>();
    work.stage(staging, subject, laid, details, measures);
    if (named) {
      staging
          .attempt(() -> PieceNames.words(this, subject, staging))
          .ifPresent(words -> details.add(new NameTag(words, covers(subject, overlays))));
    }
    work.stageWords(staging, subject, laid, details, measures);
    if (!isZip()) {
      details.addAll(poses.details(staging, subject.piece().shape().panel()));
    }
    Marks marks =
        isZip()
            ? Marks.NONE
            : Marks.of(subject.panel(), shown, subject.allowances(), subject.turned());
    return new Workpiece(
        laid.lying(), PieceNames.said(this, subject, staging), overlays, marks, details, measures);
  }

  /** What was done to it before, as it is seen now: also what a part of it doesn't show. */
  private Earlier asBefore(Staging staging, Subject subject, PlacedBody laid) {
    Subject whole = Subjects.of(this, subject.within(), staging);
    PlacedBody uncut =
        new PlacedBody(new PosedBody(whole.body(), laid.lying().pose(), null), laid.map());
    List<Overlay> under = new ArrayList<>();
    if (earlier != null) {
      under.add(earlier.done(side).asBefore(staging, whole, uncut));
    }
    under.addAll(work.overlays(staging, whole, uncut));
    List<Detail> done = new ArrayList<>();
    work.stage(staging, whole, uncut, done, new ArrayList<>());
    return new Earlier(under, done);
  }

  private static List<Path> covers(Subject subject, List<Overlay> overlays) {
    List<Path> covers = new ArrayList<>();
    overlays.forEach(overlay -> covers.addAll(overlay.covers()));
    subject.body().flaps().forEach(flap -> covers.add(flap.shape()));
    return covers;
  }

  /** How deep it says to clip. */
  static List<Formula> clipDepths(List<View> views) {
    return views.stream().flatMap(view -> view.work().clips().stream()).map(Clips::depth).toList();
  }
}
