package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.stage.PatternNames;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Body;
import org.lapmark.figure.workpiece.Cloth;
import org.lapmark.figure.workpiece.Cut;
import org.lapmark.figure.workpiece.Flap;
import org.lapmark.figure.workpiece.JoinedBody;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.Tape;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Panel;

/** Finds out what is drawn of views in one variant. */
final class Subjects {
  private Subjects() {}

  /** The piece or zip of a view. */
  static Subject of(View view, Staging staging) {
    return of(view, List.of(), staging);
  }

  /**
   * The same.
   *
   * @param within the units within which it lies
   */
  static Subject of(View view, List<String> within, Staging staging) {
    return view.isZip() ? zip(view, staging) : piece(view, within, staging);
  }

  private static Subject zip(View view, Staging staging) {
    PatternNames names = staging.names();
    SourceText id = view.zip() == null ? names.thing(names.trim(view.trim())) : view.zip();
    if (view.zip() != null) {
      names.hardware(id);
    }
    Tape tape =
        view.zip() == null
            ? tape(names, names.trim(view.trim()), id, view.side())
            : new Tape(
                staging.length(view.length(), 1, 5_000),
                names.property(id, "tape_width"),
                names.property(id, "visible_width"),
                view.side());
    return new Subject(
        names,
        null,
        null,
        id.text(),
        Map.of(),
        List.of(),
        view.side(),
        view.turn(),
        List.of(),
        List.of(),
        List.of(),
        tape);
  }

  private static Tape tape(PatternNames names, Trim trim, SourceText thing, Side side) {
    double visible = trim.visibleWidth().orElseGet(() -> names.property(thing, "visible_width"));
    return new Tape(trim.length(), names.property(thing, "tape_width"), visible, side);
  }

  private static Subject piece(View view, List<String> within, Staging staging) {
    PatternNames names = staging.names();
    Piece piece = names.piece(view.piece());
    Panel panel = view.poses().reshaped(staging, piece.shape().panel());
    List<SourceText> folded = new ArrayList<>(view.turned());
    for (Thing thing : view.allThings()) {
      if (thing.joinedTo() != null) {
        view.poses().requireUnfolded(staging);
        folded.add(thing.joinedTo());
      }
    }
    List<String> turned = new ArrayList<>();
    for (SourceText edge : folded) {
      staging.run(() -> turned.addAll(names.edges(panel, edge)));
    }
    String material = staging.attempt(() -> names.cloth(piece, view.cloth())).orElse("");
    Map<String, Double> stated = piece.shape().allowances();
    Map<String, Double> left = new LinkedHashMap<>(stated);
    turned.forEach(edge -> left.put(edge, 0.0));
    Path whole =
        turned.isEmpty() && panel.equals(piece.shape().panel())
            ? piece.shape().cuttingLine().path()
            : Lines.outline(panel, stated, turned);
    Path outline = whole;
    Optional<Cut> cut = Optional.empty();
    Optional<Cut> line = Optional.empty();
    if (view.cropped() != null && view.edge() != null) {
      Path edge = names.side(panel, view.edge());
      Point inward = Lines.inward(edge);
      double most = edge.atLength(edge.length() / 2).minus(farthest(whole, inward)).norm() * 4;
      double kept = staging.length(view.cropped(), 1, Math.max(most, 1));
      Point on = edge.atLength(edge.length() / 2).plus(inward.times(kept));
      line = Optional.of(new Cut("cropped", on, on.plus(inward.quarterTurn()), inward));
      Lines.Cropped cropped = Lines.crop(whole, on, inward);
      outline = cropped.path();
      if (cropped.from() != null) {
        cut = Optional.of(new Cut(Cut.CROPPED, cropped.from(), cropped.to(), inward));
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
    Subject flat =
        new Subject(
            names,
            piece,
            panel,
            material,
            left,
            turned,
            view.side(),
            view.turn(),
            List.of(),
            view.allThings(),
            within,
            view.poses().folded(staging, panel, cloth));
    List<Path> dark = new ArrayList<>();
    for (Thing thing : view.allThings()) {
      staging.attempt(() -> thing.dark(staging, flat)).ifPresent(dark::addAll);
    }
    Subject joined = flat.withDark(dark).with(joined(flat, line, staging));
    return joined.with(view.poses().rolled(staging, panel, joined.body()));
  }

  /** With what is sewn to its edges and reaches beyond them. */
  private static Body joined(Subject on, Optional<Cut> cropped, Staging staging) {
    List<Path> outlines = new ArrayList<>();
    for (Thing thing : on.things()) {
      if (thing.joinedTo() != null && thing instanceof PieceThing piece) {
        staging.attempt(() -> piece.joinedOutline(staging, on)).ifPresent(outlines::add);
      }
    }
    return outlines.isEmpty() ? on.body() : JoinedBody.of(on.body(), outlines, cropped);
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
}
