package org.lapmark.figure.flat;

import org.lapmark.figure.ink.Side;
import org.lapmark.figure.stage.Staging;
import org.lapmark.grade.piece.Piece;

/** How pieces are called in figures. */
final class PieceNames {
  private PieceNames() {}

  /** A piece by its number and name. */
  static String plain(Piece piece, Staging staging) {
    return staging
        .words()
        .word("piece.short", "number", Integer.toString(piece.number()), "name", piece.name());
  }

  /** A piece with its material and side, unless those go without saying. */
  static String of(Piece piece, String material, Side side, Staging staging) {
    if (piece.cuts().size() == 1 && !staging.cloths().texture(material).sided()) {
      return plain(piece, staging);
    }
    return withCloth("piece", piece, material, side, staging);
  }

  /** A piece with its material and side, in a sentence. */
  static String said(Piece piece, String material, Side side, Staging staging) {
    return withCloth("alt.piece", piece, material, side, staging);
  }

  private static String withCloth(
      String key, Piece piece, String material, Side side, Staging staging) {
    return staging
        .words()
        .word(
            key,
            "number",
            Integer.toString(piece.number()),
            "name",
            piece.name(),
            "cloth",
            staging.cloths().nameAndSide(material, side));
  }

  /** What was assembled, by the side that faces the reader. */
  static String unit(String name, Side side, Staging staging) {
    String key = side == Side.RIGHT ? "alt.unit.right" : "alt.unit.wrong";
    return staging.words().word(key, "name", name);
  }

  /** A zip, by the side that faces the reader. */
  static String zip(Side side, Staging staging) {
    return staging.words().word(side == Side.RIGHT ? "zip.face.up" : "zip.face.down");
  }

  /** What a view is called in the picture: as its author says, or what it is. */
  static String words(View view, Subject subject, Staging staging) {
    if (view.name() != null) {
      return staging.text(view.name());
    }
    return view.isZip()
        ? zip(view.side(), staging)
        : of(subject.piece(), subject.material(), subject.body().seen(view.side()), staging);
  }

  /** What a view is called in a sentence. */
  static String said(View view, Subject subject, Staging staging) {
    if (view.isZip()) {
      return zip(view.side(), staging);
    }
    if (view.earlier() != null && view.name() != null) {
      String called = staging.attempt(() -> staging.text(view.name())).orElse("");
      return unit(called, view.side(), staging);
    }
    return said(subject.piece(), subject.material(), view.side(), staging);
  }
}
