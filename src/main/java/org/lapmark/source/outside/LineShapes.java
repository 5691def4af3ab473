package org.lapmark.source.outside;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.AWTPolygonProducer;
import org.apache.batik.parser.AWTPolylineProducer;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.source.drawing.xml.XmlElement;

/** The paths that elements of a line drawing state; their texts are read by Batik’s parsers. */
final class LineShapes {
  /** The largest coordinate in millimetres; what is beyond is no picture. */
  private static final double FARTHEST = 100_000;

  /** The most segments of one drawing. */
  private static final int MOST_SEGMENTS = 100_000;

  /** The longest transform; each shape inside has to go through it again. */
  private static final int LONGEST_TRANSFORM = 1000;

  private int segments;

  /** Whether an element states a shape. */
  static boolean isShape(String name) {
    return List.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon")
        .contains(name);
  }

  /** The map that an element's own transform states. */
  static AffineTransform transform(XmlElement element) {
    SourceText text = element.value("transform");
    if (text == null || text.text().isBlank()) {
      return new AffineTransform();
    }
    if (text.text().length() > LONGEST_TRANSFORM) {
      throw fault("transform", text);
    }
    try {
      return AWTTransformProducer.createAffineTransform(new StringReader(text.text().strip()));
    } catch (ParseException e) {
      throw fault("transform", text);
    }
  }

  /** A shape's paths in the coordinates that a map takes it to. */
  List<Path> paths(XmlElement element, AffineTransform map) {
    Shape shape;
    try {
      shape = shape(element);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return shape == null ? List.of() : paths(shape.getPathIterator(map), element);
  }

  private static Shape shape(XmlElement element) throws IOException {
    switch (element.localName()) {
      case "path":
        return parsed(element, "d");
      case "polyline", "polygon":
        return parsed(element, "points");
      case "line":
        return new Line2D.Double(
            length(element, "x1"),
            length(element, "y1"),
            length(element, "x2"),
            length(element, "y2"));
      case "circle":
        double radius = length(element, "r");
        return oval(length(element, "cx"), length(element, "cy"), radius, radius);
      case "ellipse":
        return oval(
            length(element, "cx"),
            length(element, "cy"),
            length(element, "rx"),
            length(element, "ry"));
      default:
        return rectangle(element);
    }
  }

  private static Shape parsed(XmlElement element, String attribute) throws IOException {
    SourceText text = element.value(attribute);
    if (text == null || text.text().isBlank()) {
      return null;
    }
    StringReader reader = new StringReader(text.text().strip());
    try {
      return switch (element.localName()) {
        case "path" -> AWTPathProducer.createShape(reader, PathIterator.WIND_NON_ZERO);
        case "polygon" -> AWTPolygonProducer.createShape(reader, PathIterator.WIND_NON_ZERO);
        default -> AWTPolylineProducer.createShape(reader, PathIterator.WIND_NON_ZERO);
      };
    } catch (ParseException e) {
      throw fault(attribute, text);
    }
  }

  private static Shape oval(double x, double y, double across, double down) {
    return across > 0 && down > 0
        ? new Ellipse2D.Double(x - across, y - down, 2 * across, 2 * down)
        : null;
  }

  private static Shape rectangle(XmlElement element) {
    double x = length(element, "x");
    double y = length(element, "y");
    double width = length(element, "width");
    double height = length(element, "height");
    double across = length(element, element.value("rx") == null ? "ry" : "rx");
    double down = length(element, element.value("ry") == null ? "rx" : "ry");
    if (width <= 0 || height <= 0) {
      return null;
    }
    return across > 0 && down > 0
        ? new RoundRectangle2D.Double(
            x, y, width, height, Math.min(2 * across, width), Math.min(2 * down, height))
        : new Rectangle2D.Double(x, y, width, height);
  }

  /** A length that an attribute states in user units; 0 where there is none. */
  static double length(XmlElement element, String attribute) {
    SourceText text = element.value(attribute);
    if (text == null) {
      return 0;
    }
    return LineNumbers.length(text.text()).orElseThrow(() -> fault(attribute, text));
  }

  static FindingException fault(String attribute, SourceText text) {
    String written = text.text();
    return new FindingException(
        Finding.of(
            OutsideCode.LINE_ART_VALUE,
            text.position(),
            "attribute",
            attribute,
            "text",
            written.length() > 40 ? written.substring(0, 40) : written));
  }

  private List<Path> paths(PathIterator outline, XmlElement element) {
    List<Path> paths = new ArrayList<>();
    List<Curve> run = new ArrayList<>();
    Point start = new Point(0, 0);
    Point here = start;
    double[] n = new double[6];
    for (; !outline.isDone(); outline.next()) {
      int kind = outline.currentSegment(n);
      segments++;
      int points = points(kind);
      for (int i = 0; i < 2 * points; i++) {
        if (!(Math.abs(n[i]) <= FARTHEST) || segments > MOST_SEGMENTS) {
          throw new FindingException(
              Finding.of(
                  OutsideCode.LINE_ART_VALUE,
                  element.position(),
                  "attribute",
                  "size",
                  "text",
                  element.name()));
        }
      }
      Point last = points == 0 ? start : new Point(n[2 * points - 2], n[2 * points - 1]);
      switch (kind) {
        case PathIterator.SEG_MOVETO:
          finish(run, paths);
          start = last;
          break;
        case PathIterator.SEG_LINETO, PathIterator.SEG_CLOSE:
          if (!here.equals(last)) {
            run.add(new Line(here, last));
          }
          break;
        case PathIterator.SEG_QUADTO:
          run.add(Cubic.ofQuadratic(here, new Point(n[0], n[1]), last));
          break;
        default:
          run.add(new Cubic(here, new Point(n[0], n[1]), new Point(n[2], n[3]), last));
      }
      if (kind == PathIterator.SEG_CLOSE) {
        finish(run, paths);
      }
      here = last;
    }
    finish(run, paths);
    return paths;
  }

  /** How many points a segment is stated by. */
  private static int points(int kind) {
    return switch (kind) {
      case PathIterator.SEG_CLOSE -> 0;
      case PathIterator.SEG_QUADTO -> 2;
      case PathIterator.SEG_CUBICTO -> 3;
      default -> 1;
    };
  }

  private static void finish(List<Curve> run, List<Path> paths) {
    if (!run.isEmpty()) {
      paths.add(new Path(run));
      run.clear();
    }
  }
}
