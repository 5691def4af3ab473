package org.lapmark.grade.panel;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Rounded;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Variant;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.source.PanelSource.LinePlace;
import org.lapmark.source.PanelSource.StyleLineSource;

/** Draws the stated lines along which panels may be split. */
final class StyleLines {
  private final PatternScope scope;
  private final Variant variant;

  StyleLines(PatternScope scope, Variant variant) {
    this.scope = scope;
    this.variant = variant;
  }

  /**
   * A panel with its stated lines.
   *
   * @throws FindingException when one can't be drawn
   */
  Panel on(Panel panel, List<StyleLineSource> lines) {
    if (lines.isEmpty()) {
      return panel;
    }
    List<Mark> marks = new ArrayList<>(panel.marks());
    for (StyleLineSource line : lines) {
      Point from = place(panel, line.from());
      Point to = place(panel, line.to());
      double bow = line.bow() == null ? 0 : scope.length(line.bow());
      double chord = from.distance(to);
      if (!(chord > 1) || Math.abs(bow) > chord / 2) {
        throw new FindingException(
            Finding.of(
                GradeCode.STYLE_LINE_BOW,
                line.name().position(),
                "name",
                line.name().text(),
                "chord",
                Rounded.hundredth(chord),
                "bow",
                Rounded.hundredth(bow),
                "size",
                variant.size()));
      }
      marks.add(
          new LineMark.StyleLine(line.name().text(), new Path(List.of(curve(from, to, bow)))));
    }
    return new Panel(panel.name(), panel.edges(), panel.chains(), marks);
  }

  /**
   * A circle's arc whose middle lies to the left, for a sagitta s and a chord c, of (c²/4+s²)/2s.
   */
  private static Curve curve(Point from, Point to, double bow) {
    double chord = from.distance(to);
    if (bow == 0) {
      return new Line(from, to);
    }
    double radius = (chord * chord / 4 + bow * bow) / (2 * Math.abs(bow));
    return Arc.fromEndpoints(from, radius, radius, 0, false, bow > 0, to);
  }

  private Point place(Panel panel, LinePlace place) {
    Path line =
        panel.isOneLine(place.name().text())
            ? panel.line(place.name().text())
            : PatternScope.edge(panel, place.name());
    if (place.at() == null) {
      return line == null
          ? PatternScope.corner(panel, place.name())
          : line.atLength(line.length() / 2);
    }
    Path edge = PatternScope.edge(panel, place.name());
    double length = edge.length();
    double at = scope.along(place.at(), length);
    if (!(at >= 0 && at <= length + Path.JOIN_TOLERANCE)) {
      throw new FindingException(
          Finding.of(
              GradeCode.STYLE_LINE_BEYOND_EDGE,
              place.at().text().position(),
              "at",
              Rounded.hundredth(at),
              "edge",
              place.name().text(),
              "length",
              Rounded.hundredth(length),
              "size",
              variant.size()));
    }
    return edge.atLength(at);
  }
}
