package org.lapmark.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Item.Alignment;
import org.lapmark.drawing.Style;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.paper.Correction;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.TextBlock;
import org.lapmark.print.piece.Typesetting;

/**
 * The page by which a maker proves that the printer keeps the scale. Everything lies inside a
 * window of 190 by 254 mm, the least that all papers have.
 *
 * <p>The card is the identification card ID-1 of ISO/IEC 7810: 85.60 by 53.98 mm, corners of radius
 * 3.18 mm.
 */
final class PrintingPage {
  private static final double WIDTH = 190;
  private static final double HEIGHT = 254;

  private static final double METRIC_SQUARE = 100;
  private static final double INCH_SQUARE = 76.2;
  private static final double CARD_WIDTH = 85.60;
  private static final double CARD_HEIGHT = 53.98;
  private static final double CARD_RADIUS = 3.18;

  private static final double END_TICK = 2.5;
  private static final double TICK = 1.2;
  private static final double TICK_STEP = 10;

  /** Where the bar down stands, and where the text column begins. */
  private static final double BAR_X = 3;

  private static final double LEFT = 15;

  private static final int[] MEASURED_ACROSS = {
    170, 172, 174, 175, 176, 177, 178, 179, 180, 181, 182, 183, 184
  };
  private static final int[] MEASURED_DOWN = {
    228, 230, 232, 234, 236, 237, 238, 239, 240, 241, 242, 243, 244
  };

  private final Typesetting setting;
  private final Paper paper;
  private final List<Item> items = new ArrayList<>();

  PrintingPage(Typesetting setting, Paper paper) {
    this.setting = setting;
    this.paper = paper;
  }

  Drawing draw() {
    words();
    double top = 46;
    metricSquare(LEFT, top);
    table(LEFT + METRIC_SQUARE + 8, top);
    double second = top + METRIC_SQUARE + 13;
    inchSquare(LEFT, second);
    card(WIDTH - 0.5 - CARD_WIDTH, second);
    barDown();
    barAcross();
    double x = paper.window().minX() + (paper.window().width() - WIDTH) / 2;
    double y = paper.window().minY() + (paper.window().height() - HEIGHT) / 2;
    Affine map = Affine.translation(x, y);
    List<Item> placed = new ArrayList<>();
    for (Item item : items) {
      placed.add(item.transformed(map));
    }
    return new Drawing(paper.width(), paper.height(), placed);
  }

  private String text(String key) {
    return setting.text(key);
  }

  private void words() {
    double y = 0;
    y += paragraph(LEFT, y, WIDTH - LEFT, text("paper.title"), "page-title") + 3;
    Style style = setting.style("page-text");
    double indent = setting.lettering().width("0.", style) + 2;
    for (int i = 1; i <= 3; i++) {
      letter(
          i + ".", LEFT, y + setting.lettering().ascent(style), Alignment.START, "page-text-bold");
      y += paragraph(LEFT + indent, y, WIDTH - LEFT - indent, how(i), "page-text") + 1.2;
    }
  }

  private String how(int i) {
    Correction correction = paper.correction();
    return i == 3 && paper.isCorrected()
        ? setting
            .wording()
            .text(
                "paper.how.corrected",
                Map.of("across", correction.across(), "down", correction.down()))
        : text("paper.how." + i);
  }

  /** Sets a paragraph and gives its height. */
  private double paragraph(double x, double y, double width, String text, String role) {
    TextBlock block = setting.block(text, role, width);
    items.addAll(block.at(x, y));
    return block.height();
  }

  private void letter(String text, double x, double y, Alignment alignment, String role) {
    items.add(new Item.Lettering(text, new Point(x, y), alignment, 0, role));
  }

  private void metricSquare(double x, double y) {
    square(x, y, METRIC_SQUARE, text("paper.square.metric"), text("paper.square.metric.note"));
  }

  private void inchSquare(double x, double y) {
    square(x, y, INCH_SQUARE, text("paper.square.inch"), text("paper.square.inch.note"));
  }

  private void square(double x, double y, double side, String name, String note) {
    items.add(new Item.Shape(List.of(Path.rectangle(Box.at(x, y, side, side))), "test-square"));
    letter(name, x + side / 2, y + side / 2 + 1, Alignment.MIDDLE, "square-size");
    letter(note, x + side / 2, y + side / 2 + 7, Alignment.MIDDLE, "page-text");
  }

  private void card(double x, double y) {
    double r = CARD_RADIUS;
    double right = x + CARD_WIDTH;
    double bottom = y + CARD_HEIGHT;
    double quarter = Math.PI / 2;
    List<Curve> curves =
        List.of(
            line(x + r, y, right - r, y),
            Arc.ofCircle(new Point(right - r, y + r), r, -quarter, quarter),
            line(right, y + r, right, bottom - r),
            Arc.ofCircle(new Point(right - r, bottom - r), r, 0, quarter),
            line(right - r, bottom, x + r, bottom),
            Arc.ofCircle(new Point(x + r, bottom - r), r, quarter, quarter),
            line(x, bottom - r, x, y + r),
            Arc.ofCircle(new Point(x + r, y + r), r, 2 * quarter, quarter));
    items.add(new Item.Shape(List.of(new Path(curves)), "card"));
    double margin = 7;
    TextBlock block =
        setting.block(
            List.of(
                new TextBlock.Text(text("paper.card.name"), "page-text-bold"),
                new TextBlock.Text(text("paper.card.note"), "page-text")),
            CARD_WIDTH - 2 * margin);
    double top = y + (CARD_HEIGHT - block.height()) / 2;
    items.addAll(block.at(x + margin, top));
  }

  private static Line line(double x1, double y1, double x2, double y2) {
    return new Line(new Point(x1, y1), new Point(x2, y2));
  }

  private static Path stroke(double x1, double y1, double x2, double y2) {
    return new Path(List.of(line(x1, y1, x2, y2)));
  }

  private void barDown() {
    double top = 2;
    items.add(
        new Item.Shape(
            List.of(
                stroke(BAR_X, top, BAR_X, top + Correction.DOWN),
                stroke(BAR_X - END_TICK, top, BAR_X + END_TICK, top),
                stroke(
                    BAR_X - END_TICK,
                    top + Correction.DOWN,
                    BAR_X + END_TICK,
                    top + Correction.DOWN)),
            "scale-bar"));
    List<Path> ticks = new ArrayList<>();
    for (double at = TICK_STEP; at < Correction.DOWN; at += TICK_STEP) {
      ticks.add(stroke(BAR_X - TICK, top + at, BAR_X + TICK, top + at));
    }
    items.add(new Item.Shape(ticks, "scale-bar-tick"));
    items.add(
        new Item.Lettering(
            text("paper.bar.down"),
            new Point(BAR_X + 5.5, top + Correction.DOWN / 2),
            Alignment.MIDDLE,
            270,
            "scale-bar-text"));
  }

  private void barAcross() {
    double y = HEIGHT - 3;
    double left = WIDTH - 1 - Correction.ACROSS;
    items.add(
        new Item.Shape(
            List.of(
                stroke(left, y, left + Correction.ACROSS, y),
                stroke(left, y - END_TICK, left, y + END_TICK),
                stroke(
                    left + Correction.ACROSS,
                    y - END_TICK,
                    left + Correction.ACROSS,
                    y + END_TICK)),
            "scale-bar"));
    List<Path> ticks = new ArrayList<>();
    for (double at = TICK_STEP; at < Correction.ACROSS; at += TICK_STEP) {
      ticks.add(stroke(left + at, y - TICK, left + at, y + TICK));
    }
    items.add(new Item.Shape(ticks, "scale-bar-tick"));
    letter(
        text("paper.bar.across"),
        left + Correction.ACROSS / 2,
        y - 3.6,
        Alignment.MIDDLE,
        "scale-bar-text");
  }

  private void table(double x, double top) {
    double width = WIDTH - x;
    double half = (width - 6) / 2;
    double y = top + paragraph(x, top, width, text("paper.table.title"), "page-text-bold") + 2;
    double end = column(x, y, half, "paper.table.across", Correction.ACROSS, MEASURED_ACROSS);
    column(x + half + 6, y, half, "paper.table.down", Correction.DOWN, MEASURED_DOWN);
    paragraph(x, end + 2.5, width, text("paper.table.note"), "table-text");
  }

  /** One bar's half of the table: what it measures, how far it is out, what cures it. */
  private double column(double x, double y, double width, String head, double bar, int[] measured) {
    double row = 5.4;
    double first = x + 6.5;
    double second = x + 17.5;
    double third = x + width;
    double baseline = y + 3.5;
    letter(text(head), x, baseline, Alignment.START, "table-head");
    baseline += row;
    letter(text("paper.table.measured"), first, baseline, Alignment.END, "table-text");
    letter(text("paper.table.error"), second, baseline, Alignment.END, "table-text");
    letter(text("paper.table.scale"), third, baseline, Alignment.END, "table-text");
    items.add(
        new Item.Shape(
            List.of(stroke(x, baseline + 1.6, x + width, baseline + 1.6)), "table-rule"));
    baseline += 1;
    for (int length : measured) {
      baseline += row;
      boolean right = length == bar;
      String role = right ? "table-bold" : "table-text";
      double error = 100 * (length - bar) / bar;
      double scale = 100 * bar / length;
      letter(
          setting.wording().text("paper.table.length", Map.of("length", length)),
          first,
          baseline,
          Alignment.END,
          role);
      letter(
          right
              ? text("paper.table.true")
              : setting.wording().text("paper.table.off", Map.of("error", error)),
          second,
          baseline,
          Alignment.END,
          role);
      letter(
          setting.wording().text("paper.table.percent", Map.of("percent", scale)),
          third,
          baseline,
          Alignment.END,
          role);
    }
    return baseline;
  }
}
