package org.lapmark.document.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * How numbers and paths are written in SVG. Curves stay what they are: arcs are arcs and cubics
 * cubics.
 *
 * @param decimals how many places numbers are rounded to, halves away from zero
 */
record SvgNumbering(int decimals) {
  private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

  /** Below it, doubles are exact to far less than {@link #UNSURE}. */
  private static final double PLAIN = 1e9;

  private static final double UNSURE = 1e-6;

  /** Checks that numbers have a few decimals. */
  SvgNumbering {
    if (decimals < 0 || decimals >= POWERS.length) {
      throw new IllegalArgumentException("numbers with " + decimals + " decimals");
    }
  }

  /**
   * Path data.
   *
   * @param path the path
   * @param map what is applied to it first
   * @param data where it is written
   */
  void trace(Path path, Affine map, StringBuilder data) {
    point(data, 'M', map.apply(path.start()));
    for (Curve curve : path.curves()) {
      curve(curve.transformed(map), data);
    }
    if (path.isClosed()) {
      data.append('Z');
    }
  }

  private void curve(Curve curve, StringBuilder data) {
    if (curve instanceof Cubic cubic) {
      point(data, 'C', cubic.control1());
      point(data, ' ', cubic.control2());
      point(data, ' ', cubic.end());
    } else if (curve instanceof Arc arc) {
      // Ends are rounded: what is left of the centre's place in them is best up to a quarter
      // turn.
      int parts = (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) / (Math.PI / 2) - 1e-9));
      for (int i = 0; i < parts; i++) {
        arc(data, arc.part((double) i / parts, (i + 1.0) / parts));
      }
    } else {
      point(data, 'L', curve.end());
    }
  }

  private void arc(StringBuilder data, Arc arc) {
    data.append('A')
        .append(number(arc.radiusX()))
        .append(' ')
        .append(number(arc.radiusY()))
        .append(' ')
        .append(number(StrictMath.toDegrees(arc.rotation())))
        .append(" 0 ")
        .append(arc.sweep() > 0 ? "1" : "0");
    point(data, ' ', arc.end());
  }

  private void point(StringBuilder data, char command, Point point) {
    data.append(command).append(number(point.x())).append(' ').append(number(point.y()));
  }

  /**
   * Path data of one path by itself, without points that are there twice: curves that are shorter
   * than a number can say are left out, and a last straight line back to the beginning is left to
   * the command that closes the path.
   *
   * @param path the path
   * @return its data
   */
  String data(Path path) {
    StringBuilder data = new StringBuilder();
    point(data, 'M', path.start());
    int last = path.curves().size() - 1;
    boolean straightHome = path.isClosed() && path.curves().get(last) instanceof Line;
    double least = 0.5 * StrictMath.pow(10, -decimals);
    for (int i = 0; i <= last; i++) {
      Curve curve = path.curves().get(i);
      Box box = curve.bounds();
      boolean seen = box.width() > least || box.height() > least;
      if (seen && !(i == last && straightHome)) {
        curve(curve, data);
      }
    }
    if (path.isClosed()) {
      data.append('Z');
    }
    return data.toString();
  }

  /** Rounded, without zeros at the end. */
  String number(double value) {
    long power = POWERS[decimals];
    double scaled = Math.abs(value) * power;
    long whole = (long) scaled;
    double rest = scaled - whole;
    // Where a half may be meant, or there are too few digits behind the point, decimals decide.
    if (!(scaled < PLAIN) || Math.abs(rest - 0.5) < UNSURE) {
      return exactly(value);
    }
    long rounded = rest > 0.5 ? whole + 1 : whole;
    if (rounded == 0) {
      return "0";
    }
    StringBuilder text = new StringBuilder();
    if (value < 0) {
      text.append('-');
    }
    text.append(rounded / power);
    long places = rounded % power;
    if (places > 0) {
      text.append('.');
      for (long place = power / 10; places > 0; place /= 10) {
        text.append((char) ('0' + places / place));
        places %= place;
      }
    }
    return text.toString();
  }

  private String exactly(double value) {
    String text =
        BigDecimal.valueOf(value)
            .setScale(decimals, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString();
    return text.equals("-0") ? "0" : text;
  }
}
