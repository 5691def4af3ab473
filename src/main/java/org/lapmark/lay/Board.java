package org.lapmark.lay;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Collects what is drawn, and the boxes that lettering takes. */
final class Board {
  /** The role of plain lettering. */
  static final String LABEL = "lay-label";

  /** The angle of lettering that is read from the right. */
  static final double UPRIGHT = 270;

  /** Paper between lettering and what is beside it, in millimetres. */
  static final double AIR = 1.5;

  /** Paper around a drawing, in millimetres. */
  static final double EDGE = 0.4;

  /** Which part of the ascent capitals and figures reach, and of the descent small letters. */
  private static final double CAPITALS = 0.72;

  private static final double TAILS = 0.8;
  private static final double ARROW_LENGTH = 1.7;
  private static final double ARROW_HALF_WIDTH = 0.4;

  private final StyleSheet styles;
  private final LetteringMeasure lettering;
  private final List<Item> items = new ArrayList<>();
  private final List<Box> texts = new ArrayList<>();
  private Box bounds;

  Board(StyleSheet styles, LetteringMeasure lettering) {
    this.styles = styles;
    this.lettering = lettering;
  }

  /** An empty board for the same lettering. */
  Board another() {
    return new Board(styles, lettering);
  }

  List<Item> items() {
    return items;
  }

  /** The boxes of all lettering so far. */
  List<Box> texts() {
    return texts;
  }

  /** The box around everything so far. */
  Box bounds() {
    return bounds;
  }

  double width(String text, String role) {
    return lettering.width(text, styles.style(role));
  }

  double above(String role) {
    return lettering.ascent(styles.style(role)) * CAPITALS;
  }

  double height(String role) {
    Style style = styles.style(role);
    return lettering.ascent(style) * CAPITALS + lettering.descent(style) * TAILS;
  }

  void add(Item item, Box box) {
    items.add(item);
    bounds = bounds == null ? box : bounds.union(box);
  }

  /** Adds all of another board, moved. */
  void addAll(Board other, Point by) {
    Affine shift = Affine.translation(by.x(), by.y());
    other.items.forEach(item -> items.add(item.transformed(shift)));
    other.texts.forEach(box -> texts.add(box.moved(by)));
    Box box = other.bounds.moved(by);
    bounds = bounds == null ? box : bounds.union(box);
  }

  void shape(Path path, String role) {
    add(new Item.Shape(List.of(path), role), path.bounds());
  }

  void line(Point from, Point to, String role) {
    if (from.distance(to) > Path.JOIN_TOLERANCE) {
      shape(new Path(List.of(new Line(from, to))), role);
    }
  }

  /** An arrowhead whose tip is at a point. */
  void arrowhead(Point tip, Point direction, String role) {
    Point along = direction.unit();
    Point back = tip.minus(along.times(ARROW_LENGTH));
    Point side = along.quarterTurn().times(ARROW_HALF_WIDTH);
    shape(Path.polyline(List.of(tip, back.plus(side), back.minus(side), tip)), role);
  }

  /** One line of lettering whose box has a centre; turned by 0 or by 270 degrees. */
  void text(String text, Point centre, double angle, String role) {
    text(new Block(List.of(List.of(new Run(text, role)))), centre, angle);
  }

  /** A run of letters in one style. */
  record Run(String text, String role) {}

  /**
   * Lines of lettering, centred under each other.
   *
   * @param lines per line its runs
   */
  record Block(List<List<Run>> lines) {}

  double width(Block block) {
    return block.lines().stream().mapToDouble(this::lineWidth).max().orElse(0);
  }

  double height(Block block) {
    return block.lines().stream().mapToDouble(this::lineHeight).sum();
  }

  private double lineWidth(List<Run> line) {
    return line.stream().mapToDouble(run -> width(run.text(), run.role())).sum();
  }

  private double lineHeight(List<Run> line) {
    return line.stream().mapToDouble(run -> height(run.role())).max().orElse(0);
  }

  void text(Block block, Point centre, double angle) {
    Affine turn = Affine.rotation(angle);
    double y = -height(block) / 2;
    for (List<Run> line : block.lines()) {
      double x = -lineWidth(line) / 2;
      double baseline = y + line.stream().mapToDouble(run -> above(run.role())).max().orElse(0);
      for (Run run : line) {
        Point anchor = centre.plus(turn.applyVector(new Point(x, baseline)));
        add(
            new Item.Lettering(run.text(), anchor, Item.Alignment.START, angle, run.role()),
            Box.at(anchor.x(), anchor.y(), 0, 0));
        x += width(run.text(), run.role());
      }
      y += lineHeight(line);
    }
    Box box = box(centre, width(block), height(block), angle);
    texts.add(box);
    bounds = bounds.union(box);
  }

  static Box box(Point centre, double width, double height, double angle) {
    boolean upright = angle == 0 || angle == 180;
    double w = upright ? width : height;
    double h = upright ? height : width;
    return Box.at(centre.x() - w / 2, centre.y() - h / 2, w, h);
  }
}
