package org.lapmark.figure.seen;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.PathParser;

/**
 * A figure read back from its SVG.
 *
 * @param width in millimetres
 * @param height in millimetres
 * @param marks lines and areas from the bottom up
 * @param texts lettering
 * @param words what is said to those who can’t see it
 */
record SeenFigure(double width, double height, List<Mark> marks, List<Text> texts, String words) {
  private static final double FLAT = 0.03;
  private static final String FONT = "/fonts/ttf/SourceSansPro/SourceSansPro-Regular.ttf";
  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
  private static final Font LETTERS = letters();

  /** A straight stretch. */
  record Stretch(double x1, double y1, double x2, double y2) {
    boolean meets(Rectangle2D box) {
      return box.intersectsLine(x1, y1, x2, y2);
    }

    double length() {
      return Math.hypot(x2 - x1, y2 - y1);
    }
  }

  /**
   * A path that is stroked, filled or both.
   *
   * @param order its place from the bottom
   * @param fill 0 for black to 255 for white, -1 for none
   * @param stroke its grey, -1 for none
   * @param line its width
   * @param dash its dashes, as written
   * @param clips the shapes inside which alone it is seen
   */
  record Mark(
      int order, Shape shape, int fill, int stroke, double line, String dash, List<Shape> clips) {
    boolean isStroked() {
      return stroke >= 0 && line > 0;
    }

    boolean isIn(double x, double y) {
      return clips.stream().allMatch(clip -> clip.contains(x, y));
    }

    /** What it takes up at most, of its line half the width as well. */
    Rectangle2D bounds() {
      Rectangle2D box = null;
      for (Stretch one : stretches()) {
        Rectangle2D next = new Rectangle2D.Double();
        next.setFrameFromDiagonal(one.x1, one.y1, one.x2, one.y2);
        box = box == null ? next : box.createUnion(next);
      }
      if (box == null) {
        return new Rectangle2D.Double();
      }
      double half = isStroked() ? line / 2 : 0;
      box =
          new Rectangle2D.Double(
              box.getX() - half,
              box.getY() - half,
              box.getWidth() + 2 * half,
              box.getHeight() + 2 * half);
      for (Shape clip : clips) {
        box = box.createIntersection(exact(clip));
      }
      return box;
    }

    /** The bounds of a path itself; its own would have the points that guide its curves. */
    private static Rectangle2D exact(Shape clip) {
      Path2D flat = new Path2D.Double();
      flat.append(new FlatteningPathIterator(clip.getPathIterator(null), FLAT), false);
      return flat.getBounds2D();
    }

    List<Stretch> stretches() {
      List<Stretch> found = new ArrayList<>();
      PathIterator path = new FlatteningPathIterator(shape.getPathIterator(null), FLAT);
      double[] at = new double[6];
      double startX = 0;
      double startY = 0;
      double x = 0;
      double y = 0;
      for (; !path.isDone(); path.next()) {
        switch (path.currentSegment(at)) {
          case PathIterator.SEG_MOVETO -> {
            startX = at[0];
            startY = at[1];
          }
          case PathIterator.SEG_CLOSE -> {
            found.add(new Stretch(x, y, startX, startY));
            at[0] = startX;
            at[1] = startY;
          }
          default -> found.add(new Stretch(x, y, at[0], at[1]));
        }
        x = at[0];
        y = at[1];
      }
      return found;
    }
  }

  /**
   * A line of lettering.
   *
   * @param ink the box round its letters’ ink
   * @param halo the paper white round its letters
   */
  record Text(int order, String words, Rectangle2D ink, double halo) {}

  private static Font letters() {
    try (InputStream stream = SeenFigure.class.getResourceAsStream(FONT)) {
      return Font.createFont(Font.TRUETYPE_FONT, stream);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException(e);
    }
  }

  static SeenFigure read(String svg) {
    try {
      return new Reading().read(svg);
    } catch (XMLStreamException e) {
      throw new IllegalArgumentException(svg, e);
    }
  }

  /** One figure being read. */
  private static final class Reading {
    private final List<Mark> marks = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();
    private final Map<String, Shape> clips = new HashMap<>();
    private final Deque<List<Shape>> within = new ArrayDeque<>(List.of(List.of()));
    private String clip;
    private int order;
    private double width;
    private double height;
    private String words = "";
    private XMLStreamReader xml;

    SeenFigure read(String svg) throws XMLStreamException {
      XMLInputFactory factory = XMLInputFactory.newFactory();
      factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
      xml = factory.createXMLStreamReader(new StringReader(svg));
      while (xml.hasNext()) {
        int event = xml.next();
        if (event == XMLStreamReader.START_ELEMENT) {
          start(xml.getLocalName());
        } else if (event == XMLStreamReader.END_ELEMENT && xml.getLocalName().equals("g")) {
          within.pop();
        }
      }
      return new SeenFigure(width, height, marks, texts, words);
    }

    private void start(String name) throws XMLStreamException {
      switch (name) {
        case "svg" -> {
          String[] box = attribute("viewBox", "").split(" ");
          width = Double.parseDouble(box[2]);
          height = Double.parseDouble(box[3]);
        }
        case "title" -> xml.getElementText();
        case "desc" -> words = xml.getElementText();
        case "clipPath" -> clip = attribute("id", "");
        case "g" -> group(attribute("clip-path", ""));
        case "path" -> path();
        case "text" -> text();
        default -> throw new IllegalArgumentException("<" + name + ">");
      }
    }

    private void group(String stated) {
      List<Shape> all = new ArrayList<>(within.peek());
      if (!stated.isEmpty()) {
        all.add(clips.get(stated.substring("url(#".length(), stated.length() - 1)));
      }
      within.push(List.copyOf(all));
    }

    private void path() {
      boolean even = attribute("fill-rule", attribute("clip-rule", "")).equals("evenodd");
      Shape shape = shape(attribute("d", ""), even ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
      if (clip != null) {
        clips.put(clip, shape);
        clip = null;
        return;
      }
      marks.add(
          new Mark(
              order++,
              shape,
              grey(attribute("fill", "#000000")),
              grey(attribute("stroke", "none")),
              Double.parseDouble(attribute("stroke-width", "0")),
              attribute("stroke-dasharray", ""),
              within.peek()));
    }

    private static Shape shape(String data, int rule) {
      AWTPathProducer producer = new AWTPathProducer();
      producer.setWindingRule(rule);
      PathParser parser = new PathParser();
      parser.setPathHandler(producer);
      parser.parse(data);
      return producer.getShape();
    }

    private void text() throws XMLStreamException {
      double size = Double.parseDouble(attribute("font-size", ""));
      double wide = Double.parseDouble(attribute("textLength", ""));
      double x = Double.parseDouble(attribute("x", ""));
      double y = Double.parseDouble(attribute("y", ""));
      double halo = Double.parseDouble(attribute("stroke-width", "0")) / 2;
      String turned = attribute("transform", "");
      switch (attribute("text-anchor", "start")) {
        case "middle" -> x -= wide / 2;
        case "end" -> x -= wide;
        default -> {}
      }
      String said = xml.getElementText();
      if (!turned.isEmpty()) {
        throw new IllegalArgumentException("turned lettering: " + said);
      }
      GlyphVector glyphs = LETTERS.deriveFont(100f).createGlyphVector(EXACT, said);
      AffineTransform place = AffineTransform.getTranslateInstance(x, y);
      place.scale(wide / glyphs.getLogicalBounds().getWidth(), size / 100);
      Rectangle2D ink = place.createTransformedShape(glyphs.getVisualBounds()).getBounds2D();
      texts.add(new Text(order++, said, ink, halo));
    }

    private String attribute(String name, String otherwise) {
      String value = xml.getAttributeValue(null, name);
      return value == null ? otherwise : value;
    }

    private static int grey(String colour) {
      return switch (colour) {
        case "none" -> -1;
        case "#fff" -> 255;
        default -> Integer.parseInt(colour.substring(1, 3), 16);
      };
    }
  }
}
