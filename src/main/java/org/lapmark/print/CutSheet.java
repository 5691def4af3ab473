package org.lapmark.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.piece.CutGroup;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PieceLabel;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.piece.Typesetting;
import org.locationtech.jts.geom.Coordinate;

/**
 * Draws one piece for a machine that cuts or plots it: whole, also where paper shows a half for the
 * fold, since a machine cuts flat single layers.
 *
 * <p>Each kind of line is a group of its own, so that a machine can cut one, draw another and leave
 * out a third. What is cut comes last: a piece that is cut free may move.
 */
final class CutSheet {
  /** Paper around the piece, in millimetres. */
  static final double MARGIN = 5;

  /** How far from other lines lettering keeps. */
  private static final double CLEAR = 1.2;

  /** Lettering looks for room in so large a part of a piece. */
  private static final double MOST_SEARCHED = 400;

  private final Typesetting setting;
  private final GradedPattern pattern;
  private final Piece piece;

  CutSheet(Typesetting setting, GradedPattern pattern, Piece piece) {
    this.setting = setting;
    this.pattern = pattern;
    this.piece =
        new Piece(piece.number(), piece.name(), piece.shape(), piece.cuts(), piece.statedSize());
  }

  Drawing draw() {
    List<PieceArt.Stroke> strokes = strokes();
    Box box = piece.shape().bounds();
    for (PieceArt.Stroke stroke : strokes) {
      box = box.union(stroke.path().bounds());
    }
    Affine map = Affine.translation(MARGIN - box.minX(), MARGIN - box.minY());
    Map<CutGroup, List<Item>> groups = new LinkedHashMap<>();
    for (CutGroup group : CutGroup.values()) {
      groups.put(group, new ArrayList<>());
    }
    groups.get(CutGroup.TEXT).addAll(label(PieceArt.whole(new PlacedPiece(piece, map))));
    strokes.forEach(stroke -> add(groups, stroke.path().transformed(map), stroke.role()));
    List<Item> items = new ArrayList<>();
    groups.forEach(
        (group, lines) -> {
          if (!lines.isEmpty()) {
            items.add(new Item.Group(null, Affine.IDENTITY, group.id(), lines));
          }
        });
    return new Drawing(box.width() + 2 * MARGIN, box.height() + 2 * MARGIN, items);
  }

  /** All lines in the panel's coordinates, opened out where an edge lies on a fold. */
  private List<PieceArt.Stroke> strokes() {
    PieceShape shape = piece.shape();
    List<PieceArt.Stroke> strokes = new ArrayList<>();
    List<PieceArt.Stroke> grain = new ArrayList<>();
    for (PieceArt.Stroke stroke :
        PieceArt.whole(new PlacedPiece(piece, Affine.IDENTITY)).strokes()) {
      switch (CutGroup.of(stroke.role())) {
        case STITCHING_LINE, CUTTING_LINE -> {}
        case GRAINLINE -> grain.add(stroke);
        default -> strokes.add(stroke);
      }
    }
    for (Affine mirror : shape.mirrors()) {
      for (PieceArt.Stroke stroke : List.copyOf(strokes)) {
        strokes.add(new PieceArt.Stroke(stroke.path().transformed(mirror), stroke.role()));
      }
    }
    strokes.addAll(grain);
    // One line all round, also along edges that have no allowance: it is what is sewn.
    if (shape.allowances().values().stream().anyMatch(allowance -> allowance > 0)) {
      strokes.add(new PieceArt.Stroke(shape.openedStitching(), "stitching-line"));
    }
    strokes.add(new PieceArt.Stroke(shape.opened(), "cutting-line"));
    return strokes;
  }

  private static void add(Map<CutGroup, List<Item>> groups, Path path, String role) {
    groups.get(CutGroup.of(role)).add(new Item.Shape(List.of(path), role));
  }

  /** As much as fits inside, clear of all lines; nothing where not even the number has room. */
  private List<Item> label(PieceArt art) {
    Coordinate inner = art.polygon().getInteriorPoint().getCoordinate();
    Coordinate centre = art.polygon().getCentroid().getCoordinate();
    Box searched = around(inner, art.bounds());
    FreeSpace space = new FreeSpace(searched);
    for (PieceArt.Stroke stroke : art.strokes()) {
      if (stroke.path().bounds().expanded(CLEAR).overlaps(searched)) {
        space.takeLine(stroke.path().flattened(0.2), CLEAR);
      }
    }
    FreeSpace.Finder finder = space.finder(space.inside(art.outline()), true);
    PieceLabel label =
        new PieceLabel(setting, pattern) {
          @Override
          protected boolean isHalf(Piece shown) {
            return false;
          }
        };
    List<Supplier<PieceLabel.Form>> forms = new ArrayList<>(label.full(piece));
    forms.addAll(label.brief(piece));
    forms.addAll(label.number(piece));
    for (Supplier<PieceLabel.Form> each : forms) {
      PieceLabel.Form form = each.get();
      Optional<Box> place = finder.find(form.width(), form.height(), new Point(centre.x, centre.y));
      if (place.isPresent()) {
        return form.block().in(place.get(), form.turned());
      }
    }
    return List.of();
  }

  private static Box around(Coordinate inner, Box bounds) {
    double reach = MOST_SEARCHED / 2;
    return new Box(
        Math.max(bounds.minX(), inner.x - reach),
        Math.max(bounds.minY(), inner.y - reach),
        Math.min(bounds.maxX(), inner.x + reach),
        Math.min(bounds.maxY(), inner.y + reach));
  }
}
