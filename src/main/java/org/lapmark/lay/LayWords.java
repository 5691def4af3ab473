package org.lapmark.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Box;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintForm.Units;
import org.lapmark.wording.Wording;

/**
 * What documents say about layouts and purchases.
 *
 * @param wording the document's words
 * @param form how its values are printed
 */
public record LayWords(Wording wording, PrintForm form) {
  private static final double METRE = 1000;
  private static final double EIGHTH_OF_A_YARD = 114.3;

  /**
   * Pieces that begin nearer to each other than this, in millimetres, are told across the cloth.
   */
  private static final double ABREAST = 20;

  /**
   * The heading of a layout: material and width.
   *
   * @param lay the layout
   * @return one line
   */
  public String title(Lay lay) {
    return wording.text(
        "lay.title", Map.of("material", lay.cloth().name(), "width", width(lay.width())));
  }

  /**
   * A width as stated, in the document's units.
   *
   * @param width the width
   * @return such as {@code 145 cm (57 in)}
   */
  public String width(ClothWidth width) {
    return LengthText.of(width.stated(), form);
  }

  /**
   * A length to buy, in the document's units. Each is enough by itself; they are no conversions of
   * each other.
   *
   * @param purchase the purchase
   * @return such as {@code 70 cm or 3/4 yd}
   */
  public String amount(Purchase purchase) {
    double metres = purchase.metric();
    String metric = LengthText.of(metres, metres < METRE ? "cm 10" : "m 0.1", form);
    String yards = LengthText.of(purchase.eighthsOfAYard() * EIGHTH_OF_A_YARD, "yd 1/8", form);
    Units units = form.units();
    if (units == Units.METRIC) {
      return metric;
    }
    if (units == Units.INCHES) {
      return yards;
    }
    return wording.text(
        "lay.pair",
        Map.of(
            "first", units.metricLeads() ? metric : yards,
            "second", units.metricLeads() ? yards : metric));
  }

  /**
   * What to buy for a layout, with what was added to the length used.
   *
   * @param lay the layout
   * @return a sentence or two
   */
  public String purchase(Lay lay) {
    return purchase(lay.purchase(), lay.length());
  }

  /**
   * What to buy of piece goods.
   *
   * @param goods the lengths
   * @return a sentence or two
   */
  public String purchase(PieceGoods goods) {
    return purchase(goods.purchase(), goods.total());
  }

  private String purchase(Purchase purchase, double used) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    arguments.put("amount", amount(purchase));
    arguments.put("used", LengthText.atLeast(used, form));
    arguments.put("margin", purchase.margin());
    arguments.put("hasMargin", purchase.margin() > 0 ? "yes" : "no");
    arguments.put("shrinkage", purchase.shrinkage());
    arguments.put("hasShrinkage", purchase.shrinkage() > 0 ? "yes" : "no");
    return wording.text("lay.purchase", arguments);
  }

  /**
   * A layout in words, for readers who can't see its drawing.
   *
   * @param lay the layout
   * @return sentences that name the pieces from the cut end on
   */
  public String alternative(Lay lay) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    arguments.put("material", lay.cloth().name());
    arguments.put("width", width(lay.width()));
    arguments.put("size", lay.variant().size());
    arguments.put("length", LengthText.atLeast(lay.length(), form));
    arguments.put("count", lay.placements().size());
    List<String> names = new ArrayList<>();
    for (Placement placement : inReadingOrder(lay)) {
      names.add(
          wording.text(
              "lay.alternative-piece",
              Map.of("mark", mark(placement), "name", placement.piece().name())));
    }
    arguments.put("pieces", String.join(wording.text("lay.alternative-between"), names));
    return wording.text("lay.alternative", arguments);
  }

  /** From the cut end on, and side by side from the first selvedge on. */
  private static List<Placement> inReadingOrder(Lay lay) {
    Map<Placement, Box> boxes = new LinkedHashMap<>();
    lay.placements().forEach(placement -> boxes.put(placement, placement.outline().bounds()));
    Comparator<Placement> along =
        Comparator.comparingDouble(placement -> Math.floor(boxes.get(placement).minX() / ABREAST));
    return lay.placements().stream()
        .sorted(along.thenComparingDouble(placement -> boxes.get(placement).minY()))
        .toList();
  }

  /**
   * A piece's number, with the sign of reversed pieces, and which length of a joined strip it is.
   */
  String mark(Placement placement) {
    return wording.text(
        "lay.mark",
        Map.of(
            "number", Integer.toString(placement.piece().number()),
            "reversed", placement.reversed() ? "yes" : "no",
            "part", placement.part(),
            "parts", placement.parts()));
  }
}
