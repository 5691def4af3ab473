package org.lapmark.print.join;

import java.util.Map;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.piece.TextBlock;
import org.lapmark.print.sheet.CuttingRoles;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;
import org.lapmark.source.JoinStyle;
import org.lapmark.wording.Wording;

/** What to do along each join, where there is room for words. */
public record JoinNotes(DraftSheet sheet) {
  /** How near to the line of a join its words may come, in millimetres. */
  private static final double NEAR = 0.8;

  /** The way of joining, as the words' keys have it. */
  public static String way(JoinStyle joins) {
    return switch (joins) {
      case OVERLAP -> "overlap";
      case BUTT -> "butt";
      case NO_TRIM -> "fold";
    };
  }

  public void draw() {
    // Edge to edge, nothing lies beyond the line: the words stand before it.
    int beyond = sheet.tiling().joins() != JoinStyle.BUTT ? 1 : -1;
    for (Join join : sheet.joins()) {
      Side first = new Side(join, sheet.on(join.first()), beyond);
      Side second = new Side(join, sheet.on(join.second()), -beyond);
      note(first, "tile.join.first.", named(second.tile()));
      note(second, "tile.join.second.", named(first.tile()));
    }
  }

  /** A tile's code, and whether it can be left out. */
  private String named(DraftTile tile) {
    String code = tile.cell().code();
    return tile.isBlank()
        ? sheet.setting().wording().text("tile.join.blank", Map.of("code", code))
        : code;
  }

  /**
   * Says on a tile which other one belongs to a join: with the number of cutting lines that cross,
   * or in a word or two; on the strip that joining hides, then on the other side of the line. There
   * is always a place: where ink leaves no room, the few words stand where they meet least of it.
   * The number stands by itself where it has no room beside the words; it is never left out.
   */
  private void note(Side side, String key, String other) {
    Wording wording = sheet.setting().wording();
    String text = wording.text(key + way(sheet.tiling().joins()), Map.of("code", other));
    int lines = JoinMarks.crossings(sheet.layout(), side.join(), CuttingRoles.ALONE).size();
    String count = lines == 0 ? "" : wording.text("tile.join.count", Map.of("count", lines));
    if (!count.isEmpty()
        && side.write(
            block(wording.text("tile.join.lines", Map.of("note", text, "lines", count))))) {
      return;
    }
    if (!side.write(block(text))) {
      side.writeAnywhere(block(wording.text("tile.join.few", Map.of("code", other))));
    }
    if (!count.isEmpty()) {
      side.writeAnywhere(block(count));
    }
  }

  private TextBlock block(String text) {
    return sheet.setting().line(text, "join-note");
  }

  /**
   * One side of a join on a tile.
   *
   * @param join the join
   * @param tile one of its tiles
   * @param way right of or below the line, 1, or left of or above it, -1
   */
  private record Side(Join join, DraftTile tile, int way) {
    /** Writes on this side; false where there is no room. */
    boolean write(TextBlock block) {
      Box strip = strip();
      Point middle =
          join.from()
              .towards(join.to(), 0.47)
              .plus(join.sideways() ? new Point(way * 2.4, 0) : new Point(0, way * 2.4));
      Optional<Box> found =
          tile.space()
              .part(strip)
              .finder(null, true)
              .find(across(block), down(block), middle, strip);
      found.ifPresent(box -> tile.write(block, box, join.sideways()));
      return found.isPresent();
    }

    /** Writes on either side, or where it covers least. */
    void writeAnywhere(TextBlock block) {
      if (!write(block) && !new Side(join, tile, -way).write(block)) {
        tile.write(
            block, tile.space().leastTaken(across(block), down(block), strip()), join.sideways());
      }
    }

    private double across(TextBlock block) {
      return join.sideways() ? block.height() : block.width();
    }

    private double down(TextBlock block) {
      return join.sideways() ? block.width() : block.height();
    }

    /** Where words stand, as far as the tile shows it. */
    private Box strip() {
      double low = Math.min(way * NEAR, way * JoinMark.RADIUS);
      double high = Math.max(way * NEAR, way * JoinMark.RADIUS);
      Point from = join.from();
      Box strip =
          join.sideways()
              ? new Box(from.x() + low, from.y(), from.x() + high, join.to().y())
              : new Box(from.x(), from.y() + low, join.to().x(), from.y() + high);
      return Cell.shared(strip, tile.cell().shown());
    }
  }
}
