package org.lapmark.figure.corner;

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
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;

/**
 * What lies on one side of the seam in a corner that is opened out, in coordinates in which the
 * seam runs down from the origin.
 *
 * @param piece the piece
 * @param material its material
 * @param side the side that faces the reader
 * @param whole its outline, folded nowhere yet; the edges sewn in both seams lie on their seams
 * @param inner where it is folded at a notched-out corner; the origin where none is cut out
 * @param fold the direction in which the fold runs from there
 * @param away towards what is folded under, of length 1
 * @param turn by how many degrees the piece is turned
 * @param allowance how wide the allowance of the seam is
 * @param isNotched whether the corner is cut out
 */
record CornerHalf(
    Piece piece,
    String material,
    Side side,
    Path whole,
    Point inner,
    Point fold,
    Point away,
    double turn,
    double allowance,
    boolean isNotched) {
  static CornerHalf of(
      Staging staging,
      SourceText number,
      SourceText seam,
      SourceText base,
      SourceText cloth,
      Side side) {
    PatternNames names = staging.names();
    Piece piece = names.piece(number);
    Panel panel = piece.shape().panel();
    List<String> seams = names.line(panel, seam);
    List<String> bases = names.line(panel, base);
    List<String> order = panel.edges().stream().map(Edge::name).toList();
    int size = order.size();
    int behind = order.indexOf(seams.get(seams.size() - 1));
    int before = order.indexOf(seams.get(0));
    int onwards = Math.floorMod(order.indexOf(bases.get(0)) - behind, size);
    int back = Math.floorMod(before - order.indexOf(bases.get(bases.size() - 1)), size);
    boolean notched = onwards != 1 && back != 1;
    boolean forwards = notched ? isCutOut(panel, behind, onwards) : onwards == 1;
    if (notched && !forwards && !isCutOut(panel, before - back, back)) {
      throw Faults.of(
          base.position(),
          FigureCode.FIGURE_CORNER_APART,
          "seam",
          seam.text(),
          "base",
          base.text(),
          "number",
          number.text());
    }
    Path run = panel.line(order.get(forwards ? behind : before));
    Point corner = forwards ? run.end() : run.start();
    Point along = forwards ? run.tangentAtLength(run.length()).times(-1) : run.tangentAtLength(0);
    Path other =
        panel.line(order.get(Math.floorMod(forwards ? behind + onwards : before - back, size)));
    Point inner = corner;
    Point to =
        forwards ? other.tangentAtLength(0) : other.tangentAtLength(other.length()).times(-1);
    Point fold = along.plus(to).unit();
    Point under = to;
    if (notched) {
      Path beside = panel.line(order.get(Math.floorMod(forwards ? behind + 1 : before - 1, size)));
      Path below = panel.line(order.get(Math.floorMod(forwards ? behind + 2 : before - 2, size)));
      inner = forwards ? beside.end() : beside.start();
      Point back2 =
          forwards ? beside.tangentAtLength(beside.length()).times(-1) : beside.tangentAtLength(0);
      under = forwards ? below.tangentAtLength(0) : below.tangentAtLength(below.length()).times(-1);
      fold = back2.plus(under).unit().times(-1);
    }
    Point away = fold.quarterTurn();
    if (away.dot(under) < 0) {
      away = away.times(-1);
    }
    // Seen from the wrong side, all is mirrored.
    Point right = along.quarterTurn().times(side == Side.WRONG ? 1 : -1);
    Affine map =
        new Affine(
            right.x(), along.x(), right.y(), along.y(), -right.dot(corner), -along.dot(corner));
    Map<String, Double> allowances = new LinkedHashMap<>(piece.shape().allowances());
    double allowance = allowances.getOrDefault(order.get(forwards ? behind : before), 0.0);
    List<String> sewn = new ArrayList<>(seams);
    sewn.addAll(bases);
    String material = staging.attempt(() -> names.cloth(piece, cloth)).orElse("");
    Point up = map.applyVector(new Point(0, -1));
    return new CornerHalf(
        piece,
        material,
        side,
        Lines.outline(panel, allowances, sewn).transformed(map),
        map.apply(inner),
        map.applyVector(fold),
        map.applyVector(away).unit(),
        StrictMath.toDegrees(StrictMath.atan2(up.x(), -up.y())),
        allowance,
        notched);
  }

  /** Whether two edges lie between others and meet at a corner that points into the panel. */
  private static boolean isCutOut(Panel panel, int before, int apart) {
    if (apart != 3) {
      return false;
    }
    List<Edge> edges = panel.edges();
    Path first = edges.get(Math.floorMod(before + 1, edges.size())).path();
    Path next = edges.get(Math.floorMod(before + 2, edges.size())).path();
    return first.tangentAtLength(first.length()).cross(next.tangentAtLength(0)) < -0.1;
  }

  /** The same on the other side of the seam. */
  CornerHalf mirrored() {
    Affine over = Affine.scaling(-1, 1);
    return new CornerHalf(
        piece,
        material,
        side,
        whole.transformed(over),
        over.apply(inner),
        over.applyVector(fold),
        over.applyVector(away),
        -turn,
        allowance,
        isNotched);
  }

  /** On the side of the seam on which another one isn't. */
  CornerHalf across(CornerHalf other) {
    return reach() * other.reach() > 0 ? mirrored() : this;
  }

  /** To which side of the seam it lies. */
  private double reach() {
    return isNotched ? inner.x() : fold.x();
  }

  /** How far the fold runs aside for each millimetre that it runs down. */
  double slope() {
    return fold.x() / fold.y();
  }

  /** How far down it reaches. */
  double deepest() {
    return whole.bounds().maxY();
  }

  /** How far up it reaches. */
  double highest() {
    return folded(whole).bounds().minY();
  }

  private Path folded(Path shape) {
    return Lines.crop(shape, inner, away).path();
  }

  CornerScene.Half drawn(Staging staging, double deep, Optional<Double> top, boolean named) {
    Path shape = Lines.crop(whole, new Point(0, deep), new Point(0, 1)).path();
    if (top.isPresent()) {
      shape = Lines.crop(shape, new Point(0, top.get()), new Point(0, -1)).path();
    }
    shape = folded(shape);
    Optional<Path> flap = Optional.empty();
    if (side == Side.WRONG && allowance > 0) {
      Point out = new Point(Math.signum(reach()), 0);
      flap = Optional.of(Lines.crop(shape, out.times(allowance), out).path());
    }
    String said =
        staging
            .words()
            .word(
                "alt.piece",
                "number",
                Integer.toString(piece.number()),
                "name",
                piece.name(),
                "cloth",
                staging.cloths().nameAndSide(material, side));
    String name =
        staging
            .words()
            .word("piece.short", "number", Integer.toString(piece.number()), "name", piece.name());
    return new CornerScene.Half(
        shape,
        flap,
        allowance * Math.signum(reach()),
        staging.cloths().texture(material),
        side,
        turn,
        named ? Optional.of(name) : Optional.empty(),
        said);
  }
}
