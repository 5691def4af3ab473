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
import org.lapmark.figure.workpiece.Crease;
import org.lapmark.figure.workpiece.Cut;
import org.lapmark.figure.workpiece.Flap;
import org.lapmark.figure.workpiece.FoldedCloth;
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
    return view.isZip() ? zip(view, staging) : piece(view, staging);
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
        id.text(),
        Map.of(),
        List.of(),
        view.side(),
        view.turn(),
        false,
        List.of(),
        tape);
  }

  private static Tape tape(PatternNames names, Trim trim, SourceText thing, Side side) {
    double visible = trim.visibleWidth().orElseGet(() -> names.property(thing, "visible_width"));
    return new Tape(trim.length(), names.property(thing, "tape_width"), visible, side);
  }

  private static Subject piece(View view, Staging staging) {
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
      Path edge = Subject.line(names, panel, view.edge());
      Point inward = Subject.inward(edge);
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
    return new Subject(
        names,
        piece,
        material,
        left,
        turned,
        view.side(),
        view.turn(),
        view.hasBand(),
        view.things(),
        folded(view, staging, panel, cloth));
  }

  /** Folded at its lines, one after another; a line that can't be folded at is left out. */
  private static Body folded(View view, Staging staging, Panel panel, Cloth flat) {
    List<Crease> creases = new ArrayList<>();
    Path lying = flat.outline();
    for (Fold fold : view.folds()) {
      Path before = lying;
      Optional<Crease> crease =
          staging.attempt(() -> fold.stage(staging, staging.names(), panel, before));
      crease.ifPresent(creases::add);
      lying = crease.map(one -> Lines.crop(before, one.on(), one.away()).path()).orElse(before);
    }
    return creases.isEmpty() ? flat : FoldedCloth.of(flat, creases);
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
