package org.lapmark.figure.flat;

import java.util.List;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/** Something that lies on a piece. */
sealed interface Thing permits PieceThing, BandThing, StripThing, AttachedThing {
  /** What a piece is stated by. */
  Key<SourceText> PIECE = Key.of("piece", FigureForms.NUMBER);

  /** What a band is stated by. */
  Key<SourceText> BAND = Key.of("band", FigureForms.EDGE);

  /** What a strip is stated by. */
  Key<Formula> LENGTH = Key.of("length", FigureForms.LENGTH);

  /** What is stated beside the seams. */
  Key<SourceText> ATTACHMENT = Key.of("attachment", FigureForms.NAME);

  Key<SourceText> CLOTH = Key.of("cloth", FigureForms.NAME);
  Key<Side> SIDE = Key.of("side", FigureForms.constant(Side.class)).unless("right");
  Key<Formula> WIDTH = Key.of("width", FigureForms.LENGTH);
  Key<Integer> TURN = Key.of("turn", FigureForms.TURN).unless("0");
  Key<Formula> CROPPED = Key.of("cropped", FigureForms.LENGTH);
  Key<TemplateText> NAME = Key.of("name", FigureForms.LABEL);

  /** The keys of all of them. */
  Table TABLE =
      Table.of(
              "thing",
              PIECE,
              BAND,
              CLOTH,
              SIDE,
              WIDTH,
              LENGTH,
              ATTACHMENT,
              Place.EDGE,
              Place.ALONG,
              Place.INSIDE,
              TURN,
              CROPPED,
              NAME)
          .oneOf(Choice.among(List.of(PIECE, BAND, LENGTH, ATTACHMENT)));

  /** Stated in a list. */
  Form<Entries<Thing>> LIST = FigureForms.list(TABLE, Thing::read);

  private static Thing read(Keys keys) {
    String kind = keys.one();
    // What isn’t looked at of a kind is read all the same, so that what is wrong with it is told.
    keys.get(WIDTH);
    keys.get(CROPPED);
    keys.get(TURN);
    if (kind.equals(PIECE.name())) {
      return PieceThing.read(keys);
    }
    if (kind.equals(ATTACHMENT.name())) {
      return AttachedThing.read(keys);
    }
    return kind.equals(BAND.name()) ? BandThing.read(keys) : StripThing.read(keys);
  }

  /** Whether it lies round the rim. */
  boolean isBand();

  Overlay stage(Staging staging, Subject on, PlacedBody laid);
}
