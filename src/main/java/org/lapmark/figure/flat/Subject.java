package org.lapmark.figure.flat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.stage.PatternNames;
import org.lapmark.figure.workpiece.Body;
import org.lapmark.figure.workpiece.Cut;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Panel;

/**
 * A piece or zip in one variant, while it is found out what is shown on it.
 *
 * @param names what names stand for
 * @param piece the piece, or null for a zip
 * @param panel what the piece is cut from, as it lies; null for a zip
 * @param material the material's or the zip's id
 * @param allowances allowances by edge; of turned edges 0
 * @param turned the names of edges turned in
 * @param side the side that faces the reader
 * @param turn by how many degrees clockwise it is turned
 * @param dark where something lies on it that is so dark that lines are drawn white there
 * @param things what lies on it
 * @param within the units within which it lies, one inside another
 * @param body what is drawn
 */
record Subject(
    PatternNames names,
    Piece piece,
    Panel panel,
    String material,
    Map<String, Double> allowances,
    List<String> turned,
    Side side,
    int turn,
    List<Path> dark,
    List<Thing> things,
    List<String> within,
    Body body) {
  Subject with(Body other) {
    return new Subject(
        names, piece, panel, material, allowances, turned, side, turn, dark, things, within, other);
  }

  Subject withDark(List<Path> where) {
    return new Subject(
        names, piece, panel, material, allowances, turned, side, turn, where, things, within, body);
  }

  boolean isZip() {
    return piece == null;
  }

  /** The names of the edges that a reference stands for. */
  List<String> edges(SourceText reference) {
    return names.edges(panel, reference);
  }

  /** The names of an edge, or of those of a chain; none if the panel has neither. */
  List<String> edgeNames(String name) {
    if (panel.chains().containsKey(name)) {
      return panel.chains().get(name);
    }
    return panel.edges().stream().map(edge -> edge.name()).filter(name::equals).toList();
  }

  /** What is attached to its panel. */
  Attached attached(SourceText name) {
    Attached attached = names.attached(name);
    if (!panel.equals(piece.shape().panel())) {
      // Where it lies is known of the panel as it is cut, not of one that is drawn up.
      throw Faults.of(
          name.position(),
          FigureCode.FIGURE_KEYS_TOGETHER,
          "names",
          "gathered’ and ‘" + name.text());
    }
    if (!attached.panel().equals(panel.name())) {
      throw Faults.of(
          name.position(),
          FigureCode.FIGURE_ATTACHED_ELSEWHERE,
          "name",
          name.text(),
          "place",
          PatternNames.place(name),
          "panel",
          attached.panel(),
          "number",
          Integer.toString(piece.number()));
    }
    return attached;
  }

  /** An attachment, if it is one of the things that are shown on it. */
  Optional<AttachedThing> shown(String attachment) {
    for (Thing thing : things) {
      if (thing instanceof AttachedThing one && one.attachment().text().equals(attachment)) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  /** The line of edges that follow one another. */
  Path line(SourceText reference) {
    return names.path(panel, reference);
  }

  /** A placement line of the panel; nothing if none is called so, or an edge is. */
  Optional<Path> placement(SourceText reference) {
    String name = reference.text();
    if (panel.chains().containsKey(name)
        || panel.edges().stream().anyMatch(edge -> edge.name().equals(name))) {
      return Optional.empty();
    }
    return panel.placementLine(name);
  }

  double allowance(String edge) {
    return allowances.getOrDefault(edge, 0.0);
  }

  /** The greatest allowance. */
  double deepest() {
    return allowances.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  /** Which of the edges that a reference stands for is at a place along them. */
  String edgeAt(SourceText reference, double at) {
    double left = at;
    List<String> names = edges(reference);
    for (String name : names) {
      double length = panel.line(name).length();
      if (left <= length + 1e-9) {
        return name;
      }
      left -= length;
    }
    return names.get(names.size() - 1);
  }

  /** Lines beside some edges. */
  List<Path> beside(List<String> edges, double outside) {
    return Lines.beside(panel, allowances, edges, outside, turned);
  }

  /** Something of which nothing is seen isn't what its author meant. */
  void checkSeen(PlacedBody laid, Position stated, List<Point> places) {
    for (Cut cut : laid.cuts()) {
      if (places.stream().allMatch(cut::hides)) {
        throw leftOut(stated, cut);
      }
    }
  }

  FindingException leftOut(Position stated, Cut cut) {
    return Faults.of(
        stated,
        FigureCode.FIGURE_LEFT_OUT,
        "number",
        isZip() ? material : Integer.toString(piece.number()),
        "key",
        cut.key());
  }
}
