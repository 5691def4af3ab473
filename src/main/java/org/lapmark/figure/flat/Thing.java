package org.lapmark.figure.flat;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.symbol.Symbols;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/** Something that lies on a piece. */
sealed interface Thing
    permits PieceThing, BandThing, StripThing, AttachedThing, SymbolThing, TrimThing {
  /** What a piece is stated by. */
  Key<SourceText> PIECE = Key.of("piece", FigureForms.NUMBER);

  /** What was assembled before is stated by. */
  Key<SourceText> UNIT = Key.of("unit", FigureForms.NAME);

  /** What a band is stated by. */
  Key<SourceText> BAND = Key.of("band", FigureForms.EDGE);

  /** What a strip is stated by. */
  Key<Formula> LENGTH = Key.of("length", FigureForms.LENGTH);

  /** What is stated beside the seams. */
  Key<SourceText> ATTACHMENT = Key.of("attachment", FigureForms.NAME);

  /** What hardware is stated by. */
  Key<SourceText> HARDWARE = Key.of("hardware", FigureForms.NAME);

  /** What is sewn along an edge. */
  Key<SourceText> TRIM = Key.of("trim", FigureForms.NAME);

  /** What a buttonhole is stated by. */
  Key<Formula> BUTTONHOLE = Key.of("buttonhole", FigureForms.LENGTH);

  Key<Entries<SourceText>> TURNED = Key.of("turned", FigureForms.EDGES);
  Key<Entries<SewnLine>> LINES = Key.of("lines", SewnLine.LIST);
  Key<SourceText> OWN_EDGE = Key.of("own_edge", FigureForms.EDGE);
  Key<SourceText> JOINED = Key.of("joined", FigureForms.EDGE);

  Key<Boolean> WRAPPED = Key.of("wrapped", FigureForms.YES).unless("no");

  /** What is looked at of pieces and units alone. */
  List<Key<?>> OF_PIECES = List.of(TURNED, LINES, OWN_EDGE, JOINED);

  Key<SourceText> PART = Key.of("part", FigureForms.oneOf(Symbols.parts()));
  Key<Entries<Through>> THROUGH = Key.of("through", Through.LIST);
  Key<SourceText> CLOTH = Key.of("cloth", FigureForms.NAME);
  Key<Side> SIDE = Key.of("side", FigureForms.constant(Side.class)).unless("right");
  Key<Formula> WIDTH = Key.of("width", FigureForms.LENGTH);
  Key<Double> TURN = Key.of("turn", FigureForms.DEGREES).unless("0");
  Key<Formula> CROPPED = Key.of("cropped", FigureForms.LENGTH);
  Key<TemplateText> NAME = Key.of("name", FigureForms.LABEL);

  /** The keys of all of them. */
  Table TABLE =
      Table.of(
              "thing",
              PIECE,
              UNIT,
              BAND,
              HARDWARE,
              TRIM,
              BUTTONHOLE,
              CLOTH,
              SIDE,
              PART,
              WIDTH,
              LENGTH,
              ATTACHMENT,
              THROUGH)
          .with(Place.KEYS)
          .with(List.of(TURN, CROPPED, NAME))
          .with(List.of(WRAPPED))
          .with(OF_PIECES)
          .oneOf(
              Choice.of(
                  Choice.way(PIECE),
                  Choice.way(UNIT),
                  Choice.way(BAND),
                  Choice.way(HARDWARE),
                  Choice.way(HARDWARE, LENGTH),
                  Choice.way(LENGTH),
                  Choice.way(ATTACHMENT),
                  Choice.way(TRIM),
                  Choice.way(BUTTONHOLE)));

  /** Stated in a list. */
  Form<Entries<Thing>> LIST = FigureForms.list(TABLE, Thing::read);

  private static Thing read(Keys keys) {
    String kind = keys.one();
    // What isn’t looked at of a kind is read all the same, so that what is wrong with it is told.
    keys.get(WIDTH);
    keys.get(CROPPED);
    keys.get(TURN);
    keys.get(PART);
    keys.get(THROUGH);
    OF_PIECES.forEach(keys::get);
    keys.get(WRAPPED);
    if (kind.equals(HARDWARE.name()) || kind.equals(BUTTONHOLE.name())) {
      return SymbolThing.read(keys);
    }
    if (kind.equals(TRIM.name())) {
      return TrimThing.read(keys);
    }
    if (kind.equals(PIECE.name()) || kind.equals(UNIT.name())) {
      return PieceThing.read(keys);
    }
    if (kind.equals(ATTACHMENT.name())) {
      return AttachedThing.read(keys);
    }
    return kind.equals(BAND.name()) ? BandThing.read(keys) : StripThing.read(keys);
  }

  /** Where it is so dark that lines on it are drawn white. */
  default List<Path> dark(Staging staging, Subject on) {
    return List.of();
  }

  /** What is seen of it when the piece is turned over; nothing if it lies on the other side. */
  default Optional<Thing> turnedOver() {
    return Optional.empty();
  }

  /** The edge of the piece to which it is sewn so that it reaches beyond it, or null. */
  default SourceText joinedTo() {
    return null;
  }

  Overlay stage(Staging staging, Subject on, PlacedBody laid);
}
