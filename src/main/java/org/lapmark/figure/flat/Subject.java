package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.stage.PatternNames;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Piece;
import org.lapmark.panel.Panel;

/**
 * The piece or zip of a view in one variant, while it is found out what is shown on it.
 *
 * @param view as stated
 * @param names what names stand for
 * @param piece the piece, or null for a zip
 * @param material the material's or the zip's id
 * @param allowances allowances by edge; of turned edges 0
 * @param turned the names of edges turned in
 * @param body what is drawn
 */
record Subject(
    View view,
    PatternNames names,
    Piece piece,
    String material,
    Map<String, Double> allowances,
    List<String> turned,
    Body body) {
  static Subject ofZip(View view, Staging staging) {
    PatternNames names = staging.names();
    String id = names.hardware(view.zip());
    Tape tape =
        new Tape(
            staging.length(view.length(), 1, 5_000),
            names.property(view.zip(), "tape_width"),
            names.property(view.zip(), "visible_width"),
            view.side());
    return new Subject(view, names, null, id, Map.of(), List.of(), tape);
  }

  static Subject ofPiece(View view, Staging staging) {
    PatternNames names = staging.names();
    Piece piece = names.piece(view.piece());
    Panel panel = piece.shape().panel();
    List<String> turned = new ArrayList<>();
    for (SourceText edge : view.turned()) {
      staging.run(() -> turned.addAll(names.edges(panel, edge)));
    }
    String material = staging.attempt(() -> names.cloth(piece, view.cloth())).orElse("");
    Map<String, Double> stated = piece.shape().allowances();
    Map<String, Double> left = new LinkedHashMap<>(stated);
    turned.forEach(edge -> left.put(edge, 0.0));
    Path whole =
        turned.isEmpty()
            ? piece.shape().cuttingLine().path()
            : Lines.outline(panel, stated, turned);
    Path outline = whole;
    Optional<Cut> cut = Optional.empty();
    if (view.cropped() != null && view.edge() != null) {
      Path edge = line(names, panel, view.edge());
      Point inward = inward(edge);
      double most = edge.atLength(edge.length() / 2).minus(farthest(whole, inward)).norm() * 4;
      double kept = staging.length(view.cropped(), 1, Math.max(most, 1));
      Lines.Cropped cropped =
          Lines.crop(whole, edge.atLength(edge.length() / 2).plus(inward.times(kept)), inward);
      outline = cropped.path();
      if (cropped.from() != null) {
        cut = Optional.of(new Cut("cropped", cropped.from(), cropped.to(), inward));
      }
    }
    Cloth cloth =
        new Cloth(
            whole,
            outline,
            cut,
            staging.cloths().texture(material),
            view.side(),
            view.turn(),
            view.side() == Side.WRONG ? Flap.of(panel, stated, left, turned) : List.of());
    return new Subject(view, names, piece, material, left, turned, cloth);
  }

  private static Point farthest(Path outline, Point direction) {
    Point best = outline.start();
    for (Point point : outline.flattened(1)) {
      if (point.dot(direction) > best.dot(direction)) {
        best = point;
      }
    }
    return best;
  }

  Panel panel() {
    return piece.shape().panel();
  }

  /** The names of the edges that a reference stands for. */
  List<String> edges(SourceText reference) {
    return names.edges(panel(), reference);
  }

  /** The line of edges that follow one another. */
  Path line(SourceText reference) {
    return line(names, panel(), reference);
  }

  private static Path line(PatternNames names, Panel panel, SourceText reference) {
    Path path = null;
    for (String name : names.line(panel, reference)) {
      Path next = panel.line(name);
      path = path == null ? next : path.then(next);
    }
    return path;
  }

  /** The direction from an edge's chord into the panel, which lies on its right hand. */
  static Point inward(Path edge) {
    Point chord = edge.end().minus(edge.start());
    return (chord.norm() < 1e-6 ? edge.tangentAtLength(0) : chord.unit()).quarterTurn();
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
      double length = panel().line(name).length();
      if (left <= length + 1e-9) {
        return name;
      }
      left -= length;
    }
    return names.get(names.size() - 1);
  }

  /** Lines beside some edges. */
  List<Path> beside(List<String> edges, double outside) {
    return Lines.beside(panel(), allowances, edges, outside, turned);
  }

  /** Something of which nothing is seen isn't what its author meant. */
  void checkSeen(Laid laid, Position stated, List<Point> places) {
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
        piece == null ? material : Integer.toString(piece.number()),
        "key",
        cut.key());
  }
}
