package org.lapmark.document.svg;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import org.lapmark.drawing.Ink;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.text.Markup;

/** Writes parts of pictures that authors bring: only what is drawn, nothing that runs or leads. */
final class SvgArt {
  private static final String NONE = "none";

  private SvgArt() {}

  static void write(
      Item.Art art, Affine map, SvgNumbering numbers, LetteringMeasure lettering, Markup out) {
    if (art instanceof Item.Inked inked) {
      paths(inked, map, numbers, out);
    } else if (art instanceof Item.Words words) {
      words(words, map, numbers, lettering, out);
    } else if (art instanceof Item.Photo photo) {
      photo(photo, map, numbers, out);
    }
  }

  private static void paths(Item.Inked inked, Affine map, SvgNumbering numbers, Markup out) {
    Ink ink = inked.ink();
    StringBuilder data = new StringBuilder();
    inked.paths().forEach(path -> numbers.trace(path, map, data));
    boolean strokes = ink.strokes();
    boolean dashed = strokes && !ink.dash().isEmpty();
    out.empty(
        "path",
        "d",
        data.toString(),
        "fill",
        ink.fills() ? colour(ink.fill()) : NONE,
        "fill-rule",
        ink.fills() && ink.evenOdd() ? "evenodd" : null,
        "stroke",
        strokes ? colour(ink.stroke()) : null,
        "stroke-width",
        strokes ? numbers.number(ink.width()) : null,
        "stroke-dasharray",
        dashed ? String.join(" ", ink.dash().stream().map(numbers::number).toList()) : null,
        "stroke-linecap",
        strokes && ink.cap() != Ink.Cap.BUTT ? word(ink.cap()) : null,
        "stroke-linejoin",
        strokes && ink.join() != Ink.Join.MITER ? word(ink.join()) : null);
  }

  private static void words(
      Item.Words words, Affine map, SvgNumbering numbers, LetteringMeasure lettering, Markup out) {
    Item.Lettering line = words.line();
    if (line.text().isBlank()) {
      return;
    }
    Point turned = map.applyVector(Affine.rotation(line.angle()).applyVector(new Point(1, 0)));
    double angle = StrictMath.toDegrees(StrictMath.atan2(turned.y(), turned.x()));
    List<String> attributes =
        new ArrayList<>(
            SvgLettering.attributes(
                line, map.apply(line.anchor()), angle, words.style(), lettering, numbers));
    attributes.add("fill");
    attributes.add(colour(words.colour()));
    out.open("text", attributes.toArray(String[]::new));
    out.text(line.text()).close();
  }

  private static void photo(Item.Photo photo, Affine map, SvgNumbering numbers, Markup out) {
    Box place = photo.place();
    Point corner = map.apply(new Point(place.minX(), place.minY()));
    Point opposite = map.apply(new Point(place.maxX(), place.maxY()));
    out.empty(
        "image",
        "x",
        numbers.number(corner.x()),
        "y",
        numbers.number(corner.y()),
        "width",
        numbers.number(opposite.x() - corner.x()),
        "height",
        numbers.number(opposite.y() - corner.y()),
        "preserveAspectRatio",
        NONE,
        "href",
        "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(photo.photograph().jpeg()));
  }

  private static String colour(int rgb) {
    return String.format(Locale.ROOT, "#%06x", rgb);
  }

  private static String word(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT);
  }
}
