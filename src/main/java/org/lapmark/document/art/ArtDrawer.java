package org.lapmark.document.art;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Ink;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Photograph;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.PrintedText;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.memory.Memory;
import org.lapmark.source.outside.ArtPart;
import org.lapmark.source.outside.ArtSource;
import org.lapmark.source.outside.OutsideCode;

/**
 * Makes drawings of the pictures that a pattern brings. A photograph is as large as there is room
 * for, but never so large that its pixels show; a line drawing keeps its size where there is room.
 */
public final class ArtDrawer {
  /** Pixels an inch of photographs on paper. */
  public static final double FOR_PAPER = 300;

  /** Pixels an inch, at the size on paper, of photographs for screens. */
  public static final double FOR_SCREEN = 150;

  /** With fewer pixels an inch, they would show. */
  private static final double FEWEST = 150;

  /** What of a letter's own margin may lie outside, in millimetres. */
  private static final double HAIR = 0.2;

  private static final double INCH = 25.4;
  private static final double POINTS = 72 / INCH;

  /** A result is remembered with so much weight for so many bytes. */
  private static final int BYTES = 100;

  private final double width;
  private final double height;
  private final double fineness;
  private final LetteringMeasure measure;
  private final Memory memory;

  /**
   * A drawer.
   *
   * @param width the greatest width in millimetres
   * @param height the greatest height in millimetres
   * @param fineness pixels an inch of photographs
   * @param measure the font in which line drawings are lettered
   * @param memory what remembers photographs
   */
  public ArtDrawer(
      double width, double height, double fineness, LetteringMeasure measure, Memory memory) {
    this.measure = measure;
    this.width = width;
    this.height = height;
    this.fineness = fineness;
    this.memory = memory;
  }

  /** What a photograph depends on. */
  private record Key(String hash, int turn, int across) {}

  /**
   * Draws a picture.
   *
   * @param path its path in the folder
   * @param pattern the pattern in the variant that its lettering follows
   * @param form how values are printed
   * @param findings where problems go
   * @return the drawing; nothing where there is none, which is reported here or elsewhere
   */
  public Optional<Drawing> draw(
      String path, EvaluatedPattern pattern, PrintForm form, Findings findings) {
    ArtSource art = pattern.source().outside().art().get(path);
    if (art instanceof ArtSource.Photo photo) {
      return photo(path, photo, findings);
    }
    return art instanceof ArtSource.LineArt lines
        ? Optional.of(lines(lines, pattern, form, findings))
        : Optional.empty();
  }

  private Optional<Drawing> photo(String path, ArtSource.Photo photo, Findings findings) {
    double across =
        Math.min(
            Math.min(width, height * photo.across() / photo.down()),
            photo.across() / FEWEST * INCH);
    int pixels = Math.max(1, Math.min(photo.across(), (int) Math.round(across / INCH * fineness)));
    // What can't be decoded is remembered, too: it is tried once.
    Optional<Photograph> made =
        memory.of(
            new Key(photo.file().hash(), photo.turn(), pixels),
            one -> 1 + one.map(photograph -> photograph.jpeg().length / BYTES).orElse(0),
            () -> made(photo, pixels));
    if (made.isEmpty()) {
      findings.add(OutsideCode.ART_BROKEN, photo.place(), "name", path);
      return Optional.empty();
    }
    double down = across * photo.down() / photo.across();
    return Optional.of(
        new Drawing(
            across, down, List.of(new Item.Photo(made.get(), new Box(0, 0, across, down)))));
  }

  private static Optional<Photograph> made(ArtSource.Photo photo, int pixels) {
    try {
      return Optional.of(Photographs.of(photo, pixels));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private Drawing lines(
      ArtSource.LineArt lines, EvaluatedPattern pattern, PrintForm form, Findings findings) {
    double scale = Math.min(1, Math.min(width / lines.width(), height / lines.height()));
    Affine map = Affine.scaling(scale, scale);
    List<Item> items = new ArrayList<>();
    for (ArtPart part : lines.parts()) {
      if (part instanceof ArtPart.Lines drawn) {
        List<Path> paths = drawn.paths().stream().map(path -> path.transformed(map)).toList();
        items.add(new Item.Inked(paths, scaled(drawn.ink(), scale)));
      } else if (part instanceof ArtPart.Words words) {
        PrintedText.of(words.text(), pattern, form, findings)
            .ifPresent(
                text -> {
                  Item.Words set = lettering(words, text.text(), map, scale);
                  items.add(set);
                  if (!fits(set, lines.width() * scale, lines.height() * scale)) {
                    findings.add(
                        OutsideCode.LINE_ART_CUT,
                        words.text().source().position(),
                        "text",
                        text.text(),
                        "size",
                        pattern.variant().size());
                  }
                });
      }
    }
    return new Drawing(lines.width() * scale, lines.height() * scale, items);
  }

  /** Whether lettering lies on a drawing from its first to its last letter. */
  private boolean fits(Item.Words words, double across, double down) {
    double length = measure.width(words.line().text(), words.style());
    double before =
        switch (words.line().alignment()) {
          case START -> 0;
          case MIDDLE -> length / 2;
          case END -> length;
        };
    Point along = Affine.rotation(words.line().angle()).applyVector(new Point(1, 0));
    Point start = words.line().anchor().minus(along.times(before));
    Point end = start.plus(along.times(length));
    return List.of(start, end).stream()
        .allMatch(
            point ->
                point.x() >= -HAIR
                    && point.y() >= -HAIR
                    && point.x() <= across + HAIR
                    && point.y() <= down + HAIR);
  }

  private static Item.Words lettering(ArtPart.Words words, String text, Affine map, double scale) {
    Point anchor = map.apply(words.anchor());
    return new Item.Words(
        new Item.Lettering(text, anchor, words.alignment(), words.angle(), "art"),
        words.size() * scale * POINTS,
        words.bold(),
        words.colour());
  }

  private static Ink scaled(Ink ink, double scale) {
    return new Ink(
        ink.fill(),
        ink.evenOdd(),
        ink.stroke(),
        ink.width() * scale,
        ink.dash().stream().map(length -> length * scale).toList(),
        ink.cap(),
        ink.join());
  }
}
