package org.lapmark.print.piece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * Lines of text below each other, flush left, measured.
 *
 * @param rows the lines
 * @param width the widest line in millimetres
 * @param height all lines together in millimetres
 */
public record TextBlock(List<Row> rows, double width, double height) {
  /**
   * One line.
   *
   * @param text its text
   * @param role its style role
   * @param baseline how far its baseline lies below the block's top, in millimetres
   */
  record Row(String text, String role, double baseline) {}

  /**
   * A text before it is broken into lines.
   *
   * @param text the text
   * @param role its style role
   */
  public record Text(String text, String role) {}

  /** Breaks texts at spaces so that no line is wider than a limit unless one word is. */
  public static TextBlock of(
      List<Text> texts, double limit, StyleSheet styles, LetteringMeasure lettering) {
    List<Row> rows = new ArrayList<>();
    double width = 0;
    double y = 0;
    for (Text text : texts) {
      Style style = styles.style(text.role());
      for (String line : broken(text.text(), limit, style, lettering)) {
        rows.add(new Row(line, text.role(), y + lettering.ascent(style)));
        width = Math.max(width, lettering.width(line, style));
        y += lettering.ascent(style) + lettering.descent(style);
      }
    }
    return new TextBlock(List.copyOf(rows), width, y);
  }

  private static List<String> broken(
      String text, double limit, Style style, LetteringMeasure lettering) {
    List<String> lines = new ArrayList<>();
    if (lettering.width(text, style) <= limit) {
      return List.of(text);
    }
    String line = "";
    for (String word : text.trim().split(" +")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && lettering.width(longer, style) > limit) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** How wide the block is on paper, upright or turned, in millimetres. */
  public double across(boolean turned) {
    return turned ? height : width;
  }

  /** How high the block is on paper, upright or turned, in millimetres. */
  public double down(boolean turned) {
    return turned ? width : height;
  }

  /** The block as items, upright, its corner at a point. */
  public List<Item> at(double x, double y) {
    return in(Box.at(x, y, width, height), false);
  }

  /**
   * The block as items in a box: upright, or turned to be read from the right edge of the paper.
   */
  public List<Item> in(Box box, boolean turned) {
    List<Item> items = new ArrayList<>();
    for (Row row : rows) {
      Point anchor =
          turned
              ? new Point(box.minX() + row.baseline(), box.maxY())
              : new Point(box.minX(), box.minY() + row.baseline());
      items.add(
          new Item.Lettering(
              row.text(), anchor, Item.Alignment.START, turned ? 270 : 0, row.role()));
    }
    return items;
  }
}
