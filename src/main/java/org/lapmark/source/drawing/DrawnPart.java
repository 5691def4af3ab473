package org.lapmark.source.drawing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.KeyCode;

/**
 * One element of a shape.
 *
 * @param kind the element's name
 * @param attributes geometry by attribute name, those of {@code data-} attributes in place of the
 *     plain ones
 * @param placings of the elements around it, outermost first, and its own
 * @param extent of what its percentages are shares
 */
record DrawnPart(
    String kind,
    Map<String, AttributeText> attributes,
    List<Placing> placings,
    ViewportSize extent) {
  private static final Map<String, List<String>> GEOMETRY = geometry();

  /** Geometry attributes by element. */
  private static Map<String, List<String>> geometry() {
    Map<String, List<String>> map = new LinkedHashMap<>();
    map.put("path", List.of("d"));
    map.put("rect", List.of("x", "y", "width", "height", "rx", "ry"));
    map.put("circle", List.of("cx", "cy", "r"));
    map.put("ellipse", List.of("cx", "cy", "rx", "ry"));
    map.put("line", List.of("x1", "y1", "x2", "y2"));
    map.put("polyline", List.of("points"));
    map.put("polygon", List.of("points"));
    return Collections.unmodifiableMap(map);
  }

  static boolean isShape(String kind) {
    return GEOMETRY.containsKey(kind);
  }

  /** The attributes that state an element's geometry. */
  static List<String> geometry(String kind) {
    return GEOMETRY.get(kind);
  }

  boolean isBroken() {
    return attributes.values().stream().anyMatch(AttributeText::isBroken)
        || placings.stream().anyMatch(Placing::isBroken);
  }

  /**
   * Draws the shape.
   *
   * @param toMillimetres from user units
   * @param evaluator gives placeholders' numbers
   * @param computed whether a user unit is a millimetre
   * @param position where the shape's faults are reported
   * @throws FindingException at what can't be understood or computed
   */
  List<OutlineBuilder.Subpath> draw(
      Affine toMillimetres,
      Function<Formula, Double> evaluator,
      boolean computed,
      SegmentBudget budget,
      double largest,
      Position position) {
    Affine map = map(toMillimetres, evaluator, budget, position);
    OutlineBuilder builder = new OutlineBuilder(map, largest, position);
    SvgNumbers numbers = new SvgNumbers(attributes, evaluator, computed, extent);
    switch (kind) {
      case "path" -> {
        SourceText data = numbers.text("d");
        if (data != null) {
          PathDataParser.parse(data, builder, budget);
        }
      }
      case "polyline", "polygon" -> {
        SourceText points = numbers.text("points");
        if (points != null) {
          PathDataParser.points(points, builder, budget);
          if (kind.equals("polygon")) {
            builder.close();
          }
        }
      }
      case "line" -> {
        builder.moveTo(new Point(numbers.get("x1"), numbers.get("y1")));
        builder.lineTo(new Point(numbers.get("x2"), numbers.get("y2")));
      }
      case "rect" -> rectangle(numbers, builder);
      default -> ellipse(numbers, builder);
    }
    if (!kind.equals("path") && !kind.startsWith("poly")) {
      for (int i = 0; i < 8; i++) {
        if (!budget.take()) {
          throw budget.fault(position);
        }
      }
    }
    return builder.subpaths();
  }

  /**
   * The point that the shape marks: the centre of a circle, ellipse or rectangle, the middle of a
   * line, else where the path begins.
   *
   * @return null if the shape has no points at all
   */
  Point mark(
      Affine toMillimetres,
      Function<Formula, Double> evaluator,
      boolean computed,
      SegmentBudget budget,
      double largest,
      SourceText id) {
    SvgNumbers numbers = new SvgNumbers(attributes, evaluator, computed, extent);
    Point point;
    switch (kind) {
      case "circle", "ellipse" -> point = new Point(numbers.get("cx"), numbers.get("cy"));
      case "rect" ->
          point =
              new Point(
                  numbers.get("x") + numbers.get("width") / 2,
                  numbers.get("y") + numbers.get("height") / 2);
      case "line" ->
          point =
              new Point(
                  (numbers.get("x1") + numbers.get("x2")) / 2,
                  (numbers.get("y1") + numbers.get("y2")) / 2);
      default -> {
        List<OutlineBuilder.Subpath> subpaths =
            draw(toMillimetres, evaluator, computed, budget, largest, id.position());
        return subpaths.isEmpty() ? null : subpaths.get(0).start();
      }
    }
    if (!budget.take()) {
      throw budget.fault(id.position());
    }
    Point mapped = map(toMillimetres, evaluator, budget, id.position()).apply(point);
    if (!(Math.abs(mapped.x()) <= largest && Math.abs(mapped.y()) <= largest)) {
      throw new FindingException(
          Finding.of(KeyCode.NUMBER_TOO_LARGE, id.position(), "text", id.text()));
    }
    return mapped;
  }

  private Affine map(
      Affine toMillimetres,
      Function<Formula, Double> evaluator,
      SegmentBudget budget,
      Position position) {
    Affine map = toMillimetres;
    for (Placing placing : placings) {
      if (!(placing instanceof Placing.Fixed) && !budget.take()) {
        throw budget.fault(position);
      }
      map = map.after(placing.map(evaluator));
    }
    return map;
  }

  private void rectangle(SvgNumbers numbers, OutlineBuilder builder) {
    double x = numbers.get("x");
    double y = numbers.get("y");
    double width = numbers.positive("width");
    double height = numbers.positive("height");
    if (width == 0 || height == 0) {
      return;
    }
    boolean hasX = attributes.containsKey("rx");
    boolean hasY = attributes.containsKey("ry");
    double radiusX = numbers.positive(hasX ? "rx" : "ry");
    double radiusY = numbers.positive(hasY ? "ry" : "rx");
    double rx = Math.min(radiusX, width / 2);
    double ry = Math.min(radiusY, height / 2);
    double right = x + width;
    double bottom = y + height;
    builder.moveTo(new Point(x + rx, y));
    builder.lineTo(new Point(right - rx, y));
    builder.arcTo(rx, ry, 0, false, true, new Point(right, y + ry));
    builder.lineTo(new Point(right, bottom - ry));
    builder.arcTo(rx, ry, 0, false, true, new Point(right - rx, bottom));
    builder.lineTo(new Point(x + rx, bottom));
    builder.arcTo(rx, ry, 0, false, true, new Point(x, bottom - ry));
    builder.lineTo(new Point(x, y + ry));
    builder.arcTo(rx, ry, 0, false, true, new Point(x + rx, y));
    builder.close();
  }

  private void ellipse(SvgNumbers numbers, OutlineBuilder builder) {
    Point centre = new Point(numbers.get("cx"), numbers.get("cy"));
    double rx = numbers.positive(kind.equals("circle") ? "r" : "rx");
    double ry = numbers.positive(kind.equals("circle") ? "r" : "ry");
    if (rx == 0 || ry == 0) {
      return;
    }
    builder.moveTo(new Point(centre.x() + rx, centre.y()));
    for (int quarter = 0; quarter < 4; quarter++) {
      builder.add(new Arc(centre, rx, ry, 0, quarter * Math.PI / 2, Math.PI / 2));
    }
    builder.close();
  }
}
