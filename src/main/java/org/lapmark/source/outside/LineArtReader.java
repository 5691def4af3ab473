package org.lapmark.source.outside;

import java.awt.geom.AffineTransform;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.source.drawing.xml.ActiveParts;
import org.lapmark.source.drawing.xml.XmlElement;
import org.lapmark.source.drawing.xml.XmlParser;
import org.lapmark.source.key.Reading;

/**
 * Reads a line drawing that an author brings, as paths and lettering. What would run or fetch
 * something is refused; what isn't shown is said. No entity is expanded, nothing is asked for.
 */
final class LineArtReader {
  /** What draws nothing where it stands. */
  private static final Set<String> SILENT =
      new TreeSet<>(
          List.of(
              "defs",
              "symbol",
              "title",
              "desc",
              "metadata",
              "style",
              "linearGradient",
              "radialGradient",
              "clipPath",
              "marker",
              "pattern",
              "mask",
              "filter",
              "view"));

  private static final List<String> GROUPS = List.of("g", "svg", "a", "switch", "symbol");

  /** Properties that change what is seen and aren't followed. */
  private static final List<String> UNREAD =
      List.of(
          "clip-path",
          "mask",
          "filter",
          "marker",
          "marker-start",
          "marker-mid",
          "marker-end",
          "transform");

  private final Reading reading;
  private final List<ArtPart> parts = new ArrayList<>();
  private final Map<String, XmlElement> ids = new LinkedHashMap<>();
  private final Deque<XmlElement> copying = new ArrayDeque<>();
  private final LineShapes shapes = new LineShapes();
  private LineStyles styles;
  private LineInks inks;
  private int drawn;

  LineArtReader(Reading reading) {
    this.reading = reading;
  }

  /**
   * Reads a drawing.
   *
   * @throws FindingException when it can't be read as one
   */
  ArtSource read(SourceFile file) {
    XmlElement root = XmlParser.read(file, reading.limits());
    if (!isSvg(root) || !root.localName().equals("svg")) {
      throw new FindingException(
          Finding.of(OutsideCode.LINE_ART_EMPTY, root.position(), "reason", "root"));
    }
    int before = reading.findings().sorted().size();
    register(root);
    if (reading.findings().sorted().size() > before) {
      return new ArtSource.Broken();
    }
    styles = new LineStyles(root);
    inks = new LineInks(reading.findings());
    View view = view(root);
    Map<String, String> style = styles.of(root, Map.of());
    for (XmlElement child : root.children()) {
      element(child, style, view.map);
    }
    if (parts.isEmpty()) {
      throw new FindingException(
          Finding.of(OutsideCode.LINE_ART_EMPTY, root.position(), "reason", "nothing"));
    }
    return new ArtSource.LineArt(view.width, view.height, parts);
  }

  private static boolean isSvg(XmlElement element) {
    return element.namespace().equals(ActiveParts.SVG);
  }

  /** Takes ids, and reports all that would run or lead elsewhere. */
  private void register(XmlElement element) {
    if (element.value("id") != null) {
      ids.putIfAbsent(element.value("id").text(), element);
    }
    for (ActiveParts.Part part : ActiveParts.of(element)) {
      reading.findings().add(OutsideCode.LINE_ART_ACTIVE, part.place(), "name", part.name());
    }
    element.children().forEach(this::register);
  }

  /** The size in millimetres, and the map from user units to it. */
  private record View(double width, double height, AffineTransform map) {}

  private View view(XmlElement root) {
    OptionalDouble width = size(root, "width");
    OptionalDouble height = size(root, "height");
    SourceText written = root.value("viewBox");
    List<Double> box = written == null ? List.of() : LineNumbers.lengths(written.text());
    if (written != null && (box.size() != 4 || box.get(2) <= 0 || box.get(3) <= 0)) {
      throw LineShapes.fault("viewBox", written);
    }
    if (box.isEmpty() && (width.isEmpty() || height.isEmpty())) {
      throw new FindingException(
          Finding.of(OutsideCode.LINE_ART_EMPTY, root.position(), "reason", "size"));
    }
    double w;
    double h;
    if (width.isEmpty() && height.isEmpty()) {
      w = box.get(2);
      h = box.get(3);
    } else if (box.isEmpty()) {
      w = width.getAsDouble();
      h = height.getAsDouble();
    } else {
      w = width.orElseGet(() -> height.getAsDouble() * box.get(2) / box.get(3));
      h = height.orElseGet(() -> width.getAsDouble() * box.get(3) / box.get(2));
    }
    double mm = LineNumbers.MILLIMETRE;
    if (!(w * mm >= 1 && h * mm >= 1 && w * mm <= 10_000 && h * mm <= 10_000)) {
      throw new FindingException(
          Finding.of(OutsideCode.LINE_ART_EMPTY, root.position(), "reason", "size"));
    }
    AffineTransform map = AffineTransform.getScaleInstance(mm, mm);
    if (!box.isEmpty()) {
      double scale = Math.min(w / box.get(2), h / box.get(3));
      map.translate((w - scale * box.get(2)) / 2, (h - scale * box.get(3)) / 2);
      map.scale(scale, scale);
      map.translate(-box.get(0), -box.get(1));
    }
    return new View(w * mm, h * mm, map);
  }

  private static OptionalDouble size(XmlElement root, String attribute) {
    SourceText text = root.value(attribute);
    if (text == null || text.text().strip().endsWith("%") || text.text().strip().equals("auto")) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(LineShapes.length(root, attribute));
  }

  private void element(XmlElement element, Map<String, String> around, AffineTransform outer) {
    String name = element.localName();
    if (!isSvg(element) || SILENT.contains(name)) {
      return;
    }
    draw(element, around, outer);
  }

  private void draw(XmlElement element, Map<String, String> around, AffineTransform outer) {
    String name = element.localName();
    if (++drawn > reading.limits().xmlElements()) {
      throw new FindingException(Finding.of(OutsideCode.LINE_ART_COPIES, element.position()));
    }
    Map<String, String> style = styles.of(element, around);
    if (style.getOrDefault("display", "").equals("none")) {
      return;
    }
    for (String unread : UNREAD) {
      if (!style.getOrDefault(unread, "none").equals("none")) {
        unread(element, unread);
      }
    }
    // Opacity of a group holds for all in it, as if nothing in it lay on each other.
    String opacity = style.get("opacity");
    if (opacity != null) {
      style.put(LineInks.OPACITY, inks.opacity(style, opacity));
    }
    AffineTransform map = new AffineTransform(outer);
    map.concatenate(LineShapes.transform(element));
    if (GROUPS.contains(name)) {
      if (element.value("viewBox") != null) {
        unread(element, "viewBox");
      }
      for (XmlElement child : element.children()) {
        element(child, style, map);
      }
    } else if (name.equals("use")) {
      copy(element, style, map);
    } else if (name.equals("text")) {
      if (inks.isVisible(style)) {
        new LineWords(reading, styles, inks, this::unread).read(element, style, map, parts);
      }
    } else if (LineShapes.isShape(name)) {
      List<Path> paths = shapes.paths(element, map);
      if (!paths.isEmpty() && inks.isVisible(style)) {
        inks.of(element, style, scale(map))
            .ifPresent(ink -> parts.add(new ArtPart.Lines(paths, ink)));
      }
    } else {
      unread(element, name);
    }
  }

  /** By how much a map enlarges. */
  static double scale(AffineTransform map) {
    return Math.sqrt(Math.abs(map.getDeterminant()));
  }

  private void unread(XmlElement element, String name) {
    reading.findings().add(OutsideCode.LINE_ART_UNREAD, element.position(), "name", name);
  }

  private void copy(XmlElement use, Map<String, String> style, AffineTransform map) {
    SourceText link = use.value("href") == null ? use.value("xlink:href") : use.value("href");
    XmlElement original = link == null ? null : ids.get(link.text().strip().replaceFirst("#", ""));
    if (original == null) {
      unread(use, "use");
      return;
    }
    if (copying.contains(original)) {
      throw new FindingException(Finding.of(OutsideCode.LINE_ART_COPIES, use.position()));
    }
    copying.push(original);
    map.translate(LineShapes.length(use, "x"), LineShapes.length(use, "y"));
    draw(original, style, map);
    copying.pop();
  }
}
