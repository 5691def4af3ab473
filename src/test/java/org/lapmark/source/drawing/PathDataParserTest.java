package org.lapmark.source.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;

/** Path data that was printed reads back the same, in every way it may be written. */
class PathDataParserTest {
  /** Records commands as text. */
  private static final class Recorder implements PathSink {
    private final List<String> commands = new ArrayList<>();

    @Override
    public void moveTo(Point to) {
      commands.add("M " + shown(to));
    }

    @Override
    public void lineTo(Point to) {
      commands.add("L " + shown(to));
    }

    @Override
    public void quadraticTo(Point control, Point to) {
      commands.add("Q " + shown(control) + shown(to));
    }

    @Override
    public void cubicTo(Point control1, Point control2, Point to) {
      commands.add("C " + shown(control1) + shown(control2) + shown(to));
    }

    @Override
    public void arcTo(double rx, double ry, double rotation, boolean large, boolean cw, Point to) {
      commands.add(
          "A " + rx + " " + ry + " " + rotation + " " + large + " " + cw + " " + shown(to));
    }

    @Override
    public void close() {
      commands.add("Z");
    }

    private static String shown(Point point) {
      return (point.x() + 0.0) + " " + (point.y() + 0.0) + " ";
    }
  }

  private static List<String> read(String data) {
    Recorder recorder = new Recorder();
    PathDataParser.parse(text(data), recorder, new SegmentBudget(1000));
    return recorder.commands;
  }

  private static SourceText text(String data) {
    SourceFile file = new SourceFile("x.svg", data);
    return SourceText.verbatim(file, 0, data.length());
  }

  /** Eighths add up without rounding, so that relative forms must agree to the last bit. */
  private static double eighths(Random random) {
    return (random.nextInt(4001) - 2000) / 8.0;
  }

  @Property(tries = 200)
  void absoluteAndRelativeFormsAgree(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int n) {
    Random random = new Random(seed);
    List<String> expected = new ArrayList<>();
    Recorder recorder = new Recorder();
    StringBuilder data = new StringBuilder();
    Point current = new Point(eighths(random), eighths(random));
    Point start = current;
    Point control = null;
    char before = 'M';
    data.append('M').append(pair(current, null, random));
    recorder.moveTo(current);
    for (int i = 0; i < n; i++) {
      boolean relative = random.nextBoolean();
      Point from = relative ? current : null;
      Point a = new Point(eighths(random), eighths(random));
      Point b = new Point(eighths(random), eighths(random));
      Point to = new Point(eighths(random), eighths(random));
      char command = "LHVCSQTAZM".charAt(random.nextInt(10));
      data.append(relative ? Character.toLowerCase(command) : command);
      switch (command) {
        case 'L' -> {
          data.append(pair(to, from, random));
          recorder.lineTo(to);
        }
        case 'M' -> {
          data.append(pair(to, from, random));
          recorder.moveTo(to);
          start = to;
        }
        case 'H' -> {
          to = new Point(to.x(), current.y());
          data.append(number(to.x() - (relative ? current.x() : 0), random));
          recorder.lineTo(to);
        }
        case 'V' -> {
          to = new Point(current.x(), to.y());
          data.append(number(to.y() - (relative ? current.y() : 0), random));
          recorder.lineTo(to);
        }
        case 'C' -> {
          data.append(pair(a, from, random)).append(pair(b, from, random));
          data.append(pair(to, from, random));
          recorder.cubicTo(a, b, to);
          control = b;
        }
        case 'S' -> {
          Point first = "CS".indexOf(before) >= 0 ? current.plus(current.minus(control)) : current;
          data.append(pair(b, from, random)).append(pair(to, from, random));
          recorder.cubicTo(first, b, to);
          control = b;
        }
        case 'Q' -> {
          data.append(pair(a, from, random)).append(pair(to, from, random));
          recorder.quadraticTo(a, to);
          control = a;
        }
        case 'T' -> {
          Point first = "QT".indexOf(before) >= 0 ? current.plus(current.minus(control)) : current;
          data.append(pair(to, from, random));
          recorder.quadraticTo(first, to);
          control = first;
        }
        case 'A' -> {
          boolean large = random.nextBoolean();
          boolean clockwise = random.nextBoolean();
          double rx = Math.abs(eighths(random));
          data.append(number(rx, random)).append(number(3, random)).append(number(30, random));
          data.append(large ? '1' : '0');
          data.append(random.nextBoolean() ? "" : " ");
          data.append(clockwise ? '1' : '0');
          data.append(pair(to, from, random));
          recorder.arcTo(rx, 3, 30, large, clockwise, to);
        }
        default -> {
          to = start;
          recorder.close();
        }
      }
      current = to;
      before = command;
    }
    expected.addAll(recorder.commands);
    assertEquals(expected, read(data.toString()), data.toString());
  }

  private static String pair(Point point, Point from, Random random) {
    Point shown = from == null ? point : point.minus(from);
    return number(shown.x(), random)
        + (random.nextBoolean() ? "" : random.nextBoolean() ? ", " : "\n")
        + number(shown.y(), random);
  }

  /** A number in one of its forms, separated from what stands before it and behind it. */
  private static String number(double number, Random random) {
    String plain = new BigDecimal(number).toPlainString();
    String form =
        switch (random.nextInt(4)) {
          case 0 -> plain;
          case 1 -> new BigDecimal(number).movePointRight(2).toPlainString() + "e-2";
          case 2 -> number >= 0 ? "+" + plain : plain;
          default -> plain.replaceFirst("^(-?)0\\.", "$1.");
        };
    return " " + form + " ";
  }

  @Property(tries = 200)
  void anyTextIsReadOrRefusedAtOneOfItsCharacters(@ForAll long seed) {
    Random random = new Random(seed);
    String letters = "MmLlHhVvCcSsQqTtAaZz0123456789.,-+eE \n{x";
    StringBuilder data = new StringBuilder("M0 0");
    for (int i = random.nextInt(30); i > 0; i--) {
      data.append(letters.charAt(random.nextInt(letters.length())));
    }
    try {
      read(data.toString());
    } catch (FindingException e) {
      int column = e.finding().position().column();
      assertTrue(column >= 1, data.toString());
      assertTrue(e.finding().position().length() >= 1, data.toString());
      // What stands before the fault's line and column is read, or only ends too early.
      if (e.finding().code() == DrawingCode.PATH_SYNTAX
          && e.finding().arguments().get("end").equals("no")) {
        int at = text(data.toString()).file().offset(e.finding().position().line() - 1, column - 1);
        String good = data.substring(0, at);
        try {
          read(good);
        } catch (FindingException shorter) {
          assertEquals("yes", shorter.finding().arguments().get("end"), data + " | " + good);
        }
      }
    }
  }

  @Property(tries = 100)
  void numbersReadAsTheyAreWritten(@ForAll double number) {
    if (Math.abs(number) > 1e9 || Double.isNaN(number)) {
      return;
    }
    String data = "M" + number + " " + new BigDecimal(number).toPlainString();
    assertEquals(List.of("M " + (number + 0.0) + " " + (number + 0.0) + " "), read(data));
  }
}
