package org.lapmark.figure.symbol;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

/**
 * Draws symbols on paper: bodies white with thin outlines, and what is fine where it can be read.
 */
public final class Pen {
  /** What is smaller on paper is drawn as its outline alone, in millimetres. */
  private static final double READABLE = 1.5;

  /** Details smaller on paper run together. */
  private static final double FINEST = 0.45;

  private static final String BODY = "figure-symbol";
  private static final String DETAIL = "figure-symbol-detail";
  private static final String SOLID = "figure-symbol-solid";

  private final Canvas canvas;
  private final UnaryOperator<Path> laid;
  private final double scale;
  private final boolean readable;

  /**
   * A pen for one symbol.
   *
   * @param laid from the symbol’s coordinates to paper
   * @param scale millimetres on paper for one of the symbol
   * @param size what the symbol takes up
   */
  public Pen(Canvas canvas, UnaryOperator<Path> laid, double scale, Box size) {
    this.canvas = canvas;
    this.laid = laid;
    this.scale = scale;
    this.readable = Math.min(size.width(), size.height()) * scale >= READABLE;
  }

  /** Whether more than the outline is drawn. */
  boolean isReadable() {
    return readable;
  }

  /** The distance that comes to so many millimetres on paper. */
  double onPaper(double millimetres) {
    return millimetres / scale;
  }

  /** A closed shape that hides what lies under it; one with holes hides it only round them. */
  void body(Path outline, Path... holes) {
    List<Path> paths = new ArrayList<>();
    paths.add(laid.apply(outline));
    for (Path hole : holes) {
      if (readable && shows(hole)) {
        paths.add(laid.apply(hole));
      }
    }
    canvas.lines(paths, BODY);
  }

  /** A thin line. */
  void detail(Path path) {
    if (readable && shows(path)) {
      canvas.line(laid.apply(path), DETAIL);
    }
  }

  /** Thin lines that are left out together. */
  void details(List<Path> paths) {
    if (readable && !paths.isEmpty()) {
      canvas.lines(paths.stream().map(laid).toList(), DETAIL);
    }
  }

  /** A small part in front of a body. */
  void part(Path path) {
    if (readable && shows(path)) {
      canvas.line(laid.apply(path), BODY);
    }
  }

  /** A hole or a slit, seen dark. */
  void solid(Path path) {
    if (readable && shows(path)) {
      canvas.line(laid.apply(path), SOLID);
    }
  }

  private boolean shows(Path path) {
    Box box = path.bounds();
    return Math.max(box.width(), box.height()) * scale >= FINEST;
  }
}
