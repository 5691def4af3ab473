package org.lapmark.source.mark;

import java.util.List;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.source.key.Key;
import org.lapmark.source.variant.VariantValues;

/**
 * Where the places lead that a mark states.
 *
 * @param mark what is stated
 * @param panel the panel
 * @param values what formulas come to
 */
record MarkPlaces(MarkSource mark, Panel panel, VariantValues values) {
  /** The line that a key names. */
  Path edge(Key<SourceText> key) {
    return values.edge(panel, mark.get(key));
  }

  /** The point that two keys state: an edge, and a place on it. */
  Point on(Key<SourceText> edge, Key<Formula> place) {
    Path line = edge(edge);
    return line.atLength(along(place, mark.get(edge), line));
  }

  /** Millimetres from a line's start, on it. */
  double along(Key<Formula> key, SourceText edge, Path line) {
    Formula formula = mark.get(key);
    double at = values.along(formula, line.length());
    check(formula, at, edge, line);
    return Math.max(0, Math.min(line.length(), at));
  }

  /** Refuses a place beyond a line. */
  void check(Formula formula, double at, SourceText edge, Path line) {
    if (!(at >= -Path.JOIN_TOLERANCE && at <= line.length() + Path.JOIN_TOLERANCE)) {
      throw new FindingException(
          Finding.of(
              MarkCode.MARK_BEYOND_EDGE,
              formula.text().position(),
              "at",
              Rounded.hundredth(at),
              "edge",
              edge.text(),
              "length",
              Rounded.hundredth(line.length()),
              "size",
              values.size()));
    }
  }

  /** Whether a corner is where a line ends, and not where it begins; it has to be one of them. */
  boolean isAtEnd(SourceText corner, String line) {
    List<String> members = panel.chains().getOrDefault(line, List.of(line));
    String start = null;
    String end = null;
    for (String member : members) {
      for (Edge edge : panel.edges()) {
        if (edge.name().equals(member)) {
          start = start == null ? edge.from() : start;
          end = edge.to();
        }
      }
    }
    boolean atEnd = corner.text().equals(end);
    if (atEnd == corner.text().equals(start)) {
      throw new FindingException(
          Finding.of(
              MarkCode.MARK_TOWARDS,
              corner.position(),
              "corner",
              corner.text(),
              "edge",
              line,
              "start",
              start,
              "end",
              end));
    }
    return atEnd;
  }

  /** What is said of a mark that leaves its panel. */
  PanelException outside(Point at) {
    return PanelCode.MARK_OUTSIDE.exception(
        "panel", panel.name(), "mark", mark.name().text(), "x", at.x(), "y", at.y());
  }
}
