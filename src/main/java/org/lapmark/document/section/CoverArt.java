package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.piece.Piece;

/**
 * The picture on the cover: all pieces of the pattern in small, side by side on one ground line and
 * at one scale, with their numbers below.
 */
public final class CoverArt {
  private static final double GAP = 4;

  /** Room for half a line on the left, and for a narrow last piece's number on the right. */
  private static final double LEFT = 0.2;

  private static final double RIGHT = 1.6;
  private static final double NUMBER_BASELINE = 4.5;
  private static final double BELOW_NUMBER = 1;

  /** Beyond this, pieces would come out too narrow to be told apart. */
  private static final int MOST_PIECES = 24;

  private CoverArt() {}

  /**
   * Draws it.
   *
   * @param pieces the pieces in order
   * @param width the drawing's width in millimetres
   * @param height its greatest height in millimetres
   * @return the drawing, or nothing when there is no piece or there are too many
   */
  public static Optional<Drawing> of(List<Piece> pieces, double width, double height) {
    if (pieces.isEmpty() || pieces.size() > MOST_PIECES) {
      return Optional.empty();
    }
    List<Standing> row = pieces.stream().map(Standing::of).toList();
    double widths = row.stream().mapToDouble(piece -> piece.box.width()).sum();
    double tallest = row.stream().mapToDouble(piece -> piece.box.height()).max().orElseThrow();
    double captions = NUMBER_BASELINE + BELOW_NUMBER;
    double scale =
        Math.min(
            (width - LEFT - RIGHT - GAP * (pieces.size() - 1)) / widths,
            (height - LEFT - captions) / tallest);
    List<Item> items = new ArrayList<>();
    double ground = LEFT + tallest * scale;
    double left = LEFT;
    for (Standing piece : row) {
      Affine place =
          Affine.translation(left, ground)
              .after(Affine.scaling(scale, scale))
              .after(Affine.translation(-piece.box.minX(), -piece.box.maxY()))
              .after(piece.turn);
      items.add(new Item.Group(null, place, null, piece.outlines()));
      double middle = left + piece.box.width() * scale / 2;
      items.add(
          new Item.Lettering(
              Integer.toString(piece.number),
              new Point(middle, ground + NUMBER_BASELINE),
              Item.Alignment.MIDDLE,
              0,
              "cover-number"));
      left += piece.box.width() * scale + GAP;
    }
    return Optional.of(new Drawing(width, ground + captions, items));
  }

  /** A piece with a rectangle's long sides upright; no stitching line where it has no allowance. */
  private record Standing(int number, Affine turn, Box box, Path cutting, Path stitching) {
    public static Standing of(Piece piece) {
      Path cutting = piece.shape().cuttingLine().path();
      Box lying = cutting.bounds();
      boolean allowed = piece.shape().allowances().values().stream().anyMatch(a -> a > 0);
      boolean upright = piece.statedSize().isEmpty() || lying.height() >= lying.width();
      Affine turn = upright ? Affine.IDENTITY : Affine.rotation(90);
      return new Standing(
          piece.number(),
          turn,
          cutting.transformed(turn).bounds(),
          cutting,
          allowed ? piece.shape().panel().outline() : null);
    }

    List<Item> outlines() {
      Item outside = new Item.Shape(List.of(cutting), "cover-cutting");
      return stitching == null
          ? List.of(outside)
          : List.of(outside, new Item.Shape(List.of(stitching), "cover-stitching"));
    }
  }
}
