package org.lapmark.figure.corner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.scene.PrintedLength;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A corner opened out, as numbers. The seam runs down from the origin.
 *
 * @param halves what lies on both sides of the seam
 * @param deep how far down it is drawn
 * @param goesOn whether that isn't all
 * @param line what is sewn across
 * @param now whether this step does it
 * @param length how long that is
 * @param turn by how many degrees clockwise all is turned
 * @param words a label of the line
 * @param seam the edge that is sewn in the seam
 * @param base the edge that is sewn in the seam below
 * @param isNotched whether the corner is cut out
 * @param isTrimmed whether its point is cut away
 */
record CornerScene(
    List<Half> halves,
    double deep,
    boolean goesOn,
    Optional<Path> line,
    boolean now,
    Optional<PrintedLength> length,
    int turn,
    Optional<String> words,
    String seam,
    String base,
    boolean isNotched,
    boolean isTrimmed)
    implements Scene {
  private static final double NEAR = 1e-4;

  /**
   * What lies on one side of the seam.
   *
   * @param shape its outline
   * @param flap the allowance of the seam, pressed open
   * @param raw where that ends, to the right of the seam; negative to its left
   * @param texture how its material is shown
   * @param side the side that faces the reader
   * @param grain by how many degrees clockwise it is turned
   * @param name its name
   * @param said its name in a sentence
   */
  record Half(
      Path shape,
      Optional<Path> flap,
      double raw,
      Texture texture,
      Side side,
      double grain,
      Optional<String> name,
      String said) {}

  @Override
  public void draw(Canvas canvas, double scale) {
    FlatInk ink = new FlatInk(canvas, scale);
    Affine map = Affine.rotation(turn).after(Affine.scaling(scale, scale));
    for (Half half : halves) {
      double grain = half.grain + turn;
      Path shape = half.shape.transformed(map);
      canvas.cloth(shape, half.texture, half.side, grain);
      half.flap.ifPresent(
          flap ->
              canvas.clothWithin(shape, flap.transformed(map), half.texture, Side.RIGHT, grain));
      if (half.flap.isPresent()) {
        Path raw = Path.polyline(List.of(new Point(half.raw, -deep), new Point(half.raw, deep)));
        ink.within(shape, List.of(raw.transformed(map)), "figure-outline");
      }
    }
    List<Point> ends = new ArrayList<>();
    for (Half half : halves) {
      outline(half.shape, map, ink, ends);
    }
    double top = halves.stream().mapToDouble(half -> begins(half.shape)).max().orElse(0);
    canvas.line(
        Path.polyline(List.of(new Point(0, top), new Point(0, deep))).transformed(map),
        "figure-outline");
    if (goesOn && ends.size() > 1) {
      Point left = ends.stream().min((a, b) -> Double.compare(a.x(), b.x())).orElseThrow();
      Point right = ends.stream().max((a, b) -> Double.compare(a.x(), b.x())).orElseThrow();
      ink.breakLine(map.apply(left), map.apply(right));
    }
    line.ifPresent(path -> sewn(path.transformed(map), ink));
    for (Half half : halves) {
      List<List<Point>> covers = new ArrayList<>();
      half.flap.ifPresent(flap -> covers.add(flap.transformed(map).flattened(FlatInk.FLATNESS)));
      half.name.ifPresent(
          name ->
              canvas.name(name, half.shape.transformed(map).flattened(FlatInk.FLATNESS), covers));
    }
    if (line.isPresent() && length.isPresent()) {
      Path path = line.get().transformed(map);
      Beside beside =
          switch (turn) {
            case 90 -> Beside.RIGHT;
            case 180 -> Beside.BELOW;
            case 270 -> Beside.LEFT;
            default -> Beside.ABOVE;
          };
      ink.dimension(length.get(), beside, path.start(), path.end(), canvas.bounds());
    }
  }

  private void sewn(Path path, FlatInk ink) {
    ink.canvas().line(path, now ? "figure-sew-now" : "figure-sew");
    words.ifPresent(
        text ->
            ink.canvas()
                .wish(
                    text,
                    List.of(path.atLength(path.length() * 0.8), path.atLength(path.length() * 0.2)),
                    null));
  }

  private static double begins(Path shape) {
    double begins = Double.POSITIVE_INFINITY;
    for (Point point : shape.flattened(FlatInk.FLATNESS)) {
      if (Math.abs(point.x()) < 0.1) {
        begins = Math.min(begins, point.y());
      }
    }
    return begins < Double.POSITIVE_INFINITY ? begins : 0;
  }

  /** What of an outline is neither the seam nor where the rest is left out. */
  private void outline(Path shape, Affine map, FlatInk ink, List<Point> ends) {
    List<Point> points = shape.flattened(FlatInk.FLATNESS);
    List<Path> drawn = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      boolean cut = Math.abs(a.y() - deep) < NEAR && Math.abs(b.y() - deep) < NEAR;
      boolean middle = Math.abs(a.x()) < NEAR && Math.abs(b.x()) < NEAR;
      if (cut) {
        ends.add(a);
        ends.add(b);
      } else if (!middle && !a.equals(b)) {
        drawn.add(Path.polyline(List.of(map.apply(a), map.apply(b))));
      }
    }
    ink.canvas().lines(drawn, "figure-outline");
  }

  @Override
  public List<String> inWords(Words sentences) {
    List<String> all = new ArrayList<>();
    all.add(
        sentences.word(
            isNotched ? "alt.corner.notched" : "alt.corner.pointed",
            "seam",
            sentences.edge(seam),
            "base",
            sentences.edge(base),
            "what",
            halves.get(0).said));
    if (!halves.get(1).said.equals(halves.get(0).said)) {
      all.add(sentences.word("alt.corner.other", "what", halves.get(1).said));
    }
    length.ifPresent(
        one ->
            all.add(
                sentences.word(now ? "alt.corner.sew" : "alt.corner.sewn", "length", one.text())));
    if (isTrimmed) {
      all.add(sentences.word("alt.corner.trimmed"));
    }
    return all;
  }
}
