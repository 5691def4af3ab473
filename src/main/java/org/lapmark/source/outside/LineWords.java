package org.lapmark.source.outside;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.lapmark.drawing.Ink;
import org.lapmark.drawing.Item;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.drawing.xml.XmlElement;
import org.lapmark.source.key.Reading;

/**
 * The lettering of a line drawing: a {@code text}, or each {@code tspan} in it that states a place
 * of its own, is a line, whose placeholders follow the size.
 */
final class LineWords {
  private static final double USUAL_SIZE = 16;
  private static final int BOLD = 600;

  private final Reading reading;
  private final LineStyles styles;
  private final LineInks inks;
  private final BiConsumer<XmlElement, String> unread;

  LineWords(
      Reading reading, LineStyles styles, LineInks inks, BiConsumer<XmlElement, String> unread) {
    this.reading = reading;
    this.styles = styles;
    this.inks = inks;
    this.unread = unread;
  }

  /** A line being gathered: where it stands, whose look it has, what it says. */
  private static final class Run {
    private final XmlElement element;
    private final Map<String, String> style;
    private final double x;
    private final double y;
    private final StringBuilder text = new StringBuilder();
    private final List<Integer> places = new ArrayList<>();
    private SourceFile file;

    Run(XmlElement element, Map<String, String> style, double x, double y) {
      this.element = element;
      this.style = style;
      this.x = x;
      this.y = y;
    }

    /** Adds words; blanks and new lines in a row are one blank. */
    void add(SourceText words) {
      file = words.file();
      for (int i = 0; i < words.text().length(); i++) {
        char c = words.text().charAt(i);
        boolean blank = c == ' ' || c == '\t' || c == '\n' || c == '\r';
        if (!blank || !text.isEmpty() && text.charAt(text.length() - 1) != ' ') {
          text.append(blank ? ' ' : c);
          places.add(words.offset(i));
        }
      }
    }

    SourceText source() {
      int length = text.length();
      if (length > 0 && text.charAt(length - 1) == ' ') {
        length--;
      }
      int[] offsets = new int[length + 1];
      for (int i = 0; i < length; i++) {
        offsets[i] = places.get(i);
      }
      offsets[length] = length == 0 ? 0 : offsets[length - 1] + 1;
      return SourceText.mapped(file, text.substring(0, length), offsets);
    }
  }

  void read(
      XmlElement element, Map<String, String> style, AffineTransform map, List<ArtPart> parts) {
    List<Run> runs = new ArrayList<>();
    runs.add(new Run(element, style, first(element, "x", 0), first(element, "y", 0)));
    gather(element, style, runs);
    for (Run run : runs) {
      if (run.file != null && !run.text.toString().isBlank()) {
        part(run, map, parts);
      }
    }
  }

  private void gather(XmlElement element, Map<String, String> style, List<Run> runs) {
    for (String attribute : List.of("dx", "rotate", "textLength")) {
      if (element.value(attribute) != null) {
        unread.accept(element, attribute);
      }
    }
    List<XmlElement> children = element.children();
    for (int i = 0; i <= children.size(); i++) {
      for (XmlElement.Run words : element.runs()) {
        if (words.before() == i) {
          runs.get(runs.size() - 1).add(words.text());
        }
      }
      if (i < children.size()) {
        child(children.get(i), style, runs);
      }
    }
  }

  private void child(XmlElement child, Map<String, String> style, List<Run> runs) {
    if (!child.localName().equals("tspan")) {
      if (!List.of("title", "desc").contains(child.localName())) {
        unread.accept(child, child.localName());
      }
      return;
    }
    Map<String, String> own = styles.of(child, style);
    Run last = runs.get(runs.size() - 1);
    if (child.value("x") != null || child.value("y") != null || child.value("dy") != null) {
      double y = first(child, "y", last.y) + first(child, "dy", 0, size(own));
      runs.add(new Run(child, own, first(child, "x", last.x), y));
    } else if (last.text.isEmpty()) {
      runs.set(runs.size() - 1, new Run(child, own, last.x, last.y));
    }
    gather(child, own, runs);
  }

  /** The first of the lengths that an attribute states. */
  private static double first(XmlElement element, String attribute, double otherwise) {
    return first(element, attribute, otherwise, USUAL_SIZE);
  }

  private static double first(XmlElement element, String attribute, double otherwise, double size) {
    SourceText text = element.value(attribute);
    if (text == null) {
      return otherwise;
    }
    String word = text.text().strip().split("[\\s,]+")[0];
    if (word.endsWith("em")) {
      return LineNumbers.length(word.substring(0, word.length() - 2))
              .orElseThrow(() -> LineShapes.fault(attribute, text))
          * size;
    }
    return LineNumbers.length(word).orElseThrow(() -> LineShapes.fault(attribute, text));
  }

  private static double size(Map<String, String> style) {
    return LineNumbers.length(style.getOrDefault("font-size", "")).orElse(USUAL_SIZE);
  }

  private void part(Run run, AffineTransform map, List<ArtPart> parts) {
    int colour = inks.colour(run.element, run.style, "fill", "black");
    TemplateText text = reading.template(run.source(), "text");
    if (text == null || colour == Ink.NONE) {
      return;
    }
    double[] place = {run.x, run.y};
    map.transform(place, 0, place, 0, 1);
    double angle = StrictMath.toDegrees(StrictMath.atan2(map.getShearY(), map.getScaleX()));
    parts.add(
        new ArtPart.Words(
            text,
            new Point(place[0], place[1]),
            switch (run.style.getOrDefault("text-anchor", "start")) {
              case "middle" -> Item.Alignment.MIDDLE;
              case "end" -> Item.Alignment.END;
              default -> Item.Alignment.START;
            },
            angle,
            size(run.style) * LineArtReader.scale(map),
            isBold(run.style.getOrDefault("font-weight", "")),
            colour));
  }

  private static boolean isBold(String weight) {
    return weight.startsWith("bold")
        || weight.matches("[1-9]00") && Integer.parseInt(weight) >= BOLD;
  }
}
