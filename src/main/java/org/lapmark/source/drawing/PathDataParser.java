package org.lapmark.source.drawing;

import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.source.drawing.text.NumberText;
import org.lapmark.source.key.KeyCode;

/**
 * Reads SVG path data (SVG 2, section 9.3): every command, absolute and relative, repeated
 * arguments without their letter, flags without separators. Stops at the first character that
 * doesn't fit.
 */
final class PathDataParser {
  /** Beyond this a number is no coordinate; relative ones can't add up to anything infinite. */
  private static final double LARGEST = 1e9;

  private final SourceText source;
  private final String text;
  private final PathSink sink;
  private final SegmentBudget budget;
  private int at;
  private Point current = new Point(0, 0);
  private Point start = current;
  private Point lastCubic;
  private Point lastQuadratic;

  private PathDataParser(SourceText source, PathSink sink, SegmentBudget budget) {
    this.source = source;
    this.text = source.text();
    this.sink = sink;
    this.budget = budget;
  }

  /**
   * Reads path data.
   *
   * @param source the data
   * @param sink takes the commands; those before a fault have been given to it
   * @param budget how many segments may still be read
   * @throws FindingException at the first character that doesn't fit
   */
  static void parse(SourceText source, PathSink sink, SegmentBudget budget) {
    budget.read(source);
    new PathDataParser(source, sink, budget).path();
  }

  /**
   * Reads a list of points, as of a polyline.
   *
   * @throws FindingException at the first character that doesn't fit
   */
  static void points(SourceText source, PathSink sink, SegmentBudget budget) {
    budget.read(source);
    PathDataParser parser = new PathDataParser(source, sink, budget);
    parser.skipSpace();
    boolean first = true;
    while (parser.at < parser.text.length()) {
      parser.count();
      Point point = parser.point(false);
      if (first) {
        sink.moveTo(point);
      } else {
        sink.lineTo(point);
      }
      first = false;
      parser.skipSeparator();
    }
  }

  private void path() {
    skipSpace();
    if (at < text.length() && text.charAt(at) != 'M' && text.charAt(at) != 'm') {
      throw fault("move", at, at + 1);
    }
    while (at < text.length()) {
      char letter = text.charAt(at);
      if ("MmZzLlHhVvCcSsQqTtAa".indexOf(letter) < 0) {
        throw fault(isNumberStart() ? "too_many_numbers" : "command", at, at + 1);
      }
      at++;
      boolean relative = Character.isLowerCase(letter);
      char command = Character.toUpperCase(letter);
      skipSpace();
      if (command == 'Z') {
        count();
        sink.close();
        current = start;
        forget();
        continue;
      }
      segment(command, relative);
      char next = command == 'M' ? 'L' : command;
      while (true) {
        int before = at;
        skipSeparator();
        if (!isNumberStart()) {
          if (text.substring(before, at).indexOf(',') >= 0) {
            throw fault("number", at, at + 1);
          }
          break;
        }
        segment(next, relative);
      }
    }
  }

  private void segment(char command, boolean relative) {
    count();
    switch (command) {
      case 'M' -> {
        current = point(relative);
        start = current;
        sink.moveTo(current);
        forget();
      }
      case 'L' -> line(point(relative));
      case 'H' -> {
        double x = number();
        line(new Point(relative ? current.x() + x : x, current.y()));
      }
      case 'V' -> {
        double y = number();
        line(new Point(current.x(), relative ? current.y() + y : y));
      }
      case 'C' -> {
        Point control1 = point(relative);
        skipSeparator();
        cubic(control1, relative);
      }
      case 'S' -> cubic(reflected(lastCubic), relative);
      case 'Q' -> {
        Point control = point(relative);
        skipSeparator();
        quadratic(control, point(relative));
      }
      case 'T' -> {
        Point control = reflected(lastQuadratic);
        quadratic(control, point(relative));
      }
      default -> arc(relative);
    }
  }

  private void line(Point to) {
    sink.lineTo(to);
    current = to;
    forget();
  }

  private void cubic(Point control1, boolean relative) {
    Point control2 = point(relative);
    skipSeparator();
    Point to = point(relative);
    sink.cubicTo(control1, control2, to);
    current = to;
    forget();
    lastCubic = control2;
  }

  private void quadratic(Point control, Point to) {
    sink.quadraticTo(control, to);
    current = to;
    forget();
    lastQuadratic = control;
  }

  private void arc(boolean relative) {
    double radiusX = number();
    skipSeparator();
    double radiusY = number();
    skipSeparator();
    double rotation = number();
    skipSeparator();
    boolean large = flag();
    skipSeparator();
    boolean clockwise = flag();
    skipSeparator();
    Point to = point(relative);
    sink.arcTo(radiusX, radiusY, rotation, large, clockwise, to);
    current = to;
    forget();
  }

  private void forget() {
    lastCubic = null;
    lastQuadratic = null;
  }

  private Point reflected(Point control) {
    return control == null ? current : current.plus(current.minus(control));
  }

  private void count() {
    if (!budget.take()) {
      throw budget.fault(source.position(at, at + 1));
    }
  }

  private Point point(boolean relative) {
    double x = number();
    skipSeparator();
    double y = number();
    return relative ? new Point(current.x() + x, current.y() + y) : new Point(x, y);
  }

  private boolean flag() {
    if (at < text.length() && (text.charAt(at) == '0' || text.charAt(at) == '1')) {
      return text.charAt(at++) == '1';
    }
    throw fault("flag", at, at + 1);
  }

  private double number() {
    int begin = at;
    int end = NumberText.end(text, at);
    if (end < 0) {
      throw fault("number", at, at + 1);
    }
    at = end;
    double number = Double.parseDouble(text.substring(begin, end));
    if (Math.abs(number) > LARGEST) {
      throw new FindingException(
          Finding.of(
              KeyCode.NUMBER_TOO_LARGE,
              source.position(begin, end),
              "text",
              text.substring(begin, Math.min(end, begin + 40))));
    }
    return number;
  }

  private boolean isNumberStart() {
    return at < text.length() && NumberText.end(text, at) >= 0;
  }

  private void skipSpace() {
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
  }

  private void skipSeparator() {
    skipSpace();
    if (at < text.length() && text.charAt(at) == ',') {
      at++;
      skipSpace();
    }
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
  }

  private FindingException fault(String problem, int from, int to) {
    boolean atEnd = from >= text.length();
    // Where the data ends too early, its last character is shown.
    int shown = atEnd ? Math.max(0, text.stripTrailing().length() - 1) : from;
    int end = atEnd ? shown + 1 : to;
    return new FindingException(
        Finding.of(
            DrawingCode.PATH_SYNTAX,
            source.position(shown, end),
            "problem",
            problem,
            "text",
            atEnd
                ? ""
                : text.substring(
                    from,
                    Character.isSurrogate(text.charAt(from))
                        ? Math.min(from + 2, text.length())
                        : from + 1),
            "end",
            atEnd ? "yes" : "no"));
  }
}
