package org.lapmark.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.PrintForm;
import org.lapmark.wording.Wording;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.PolygonExtracter;

/**
 * Draws layouts in small. The cloth lies along or across the page, whichever is larger; a long one
 * is broken into rows. A piece carries its number and, where there is room, its name; where there
 * is none, the number stands outside and a leader leads to the piece.
 *
 * @param wording the words on paper
 * @param styles the look of each role
 * @param lettering how wide words come out
 * @param form how values are printed
 */
public record LayDrawing(
    Wording wording, StyleSheet styles, LetteringMeasure lettering, PrintForm form) {
  private static final String LABEL = "lay-label";
  private static final String NUMBER = "lay-number";
  private static final String DIMENSION = "lay-dimension";
  private static final String GRAIN = "lay-grain";

  /** Pieces are never drawn larger than this. */
  private static final double LARGEST_SCALE = 0.2;

  private static final double LITTLE = 1.05;
  private static final int MOST_ROWS = 8;
  private static final double UPRIGHT = 270;
  private static final double AIR = 1.5;
  private static final double DIMENSION_OFF = 2.2;
  private static final double INSIDE = 0.7;
  private static final double HATCH = 1.6;
  private static final double ARROW = 11;
  private static final double DOT = 0.45;
  private static final double KEY_GAP = 5;
  private static final double EDGE = 0.4;
  private static final double FLATNESS = 0.02;

  /** Room kept for leaders when the scale is chosen. */
  private static final double LEADER_ROWS = 2;

  /**
   * Draws a layout.
   *
   * @param lay the layout
   * @param width the drawing's width in millimetres
   * @param height the height that the drawing should keep to; leaders and key may add to it
   * @return the drawing
   */
  public Drawing draw(Lay lay, double width, double height) {
    Sketch best = null;
    for (Sketch sketch : sketches(lay, width, height)) {
      // More rows than one only where pieces would otherwise be too small for their numbers.
      if (sketch.rows() > 1 && best.hasRoomForNumbers()) {
        break;
      }
      if (best == null || sketch.betterThan(best)) {
        best = sketch;
      }
    }
    return best.draw(width);
  }

  /** The ways to lay the cloth on the page: along it, in more and more rows, and across it. */
  private List<Sketch> sketches(Lay lay, double width, double height) {
    Board measure = new Board(styles, lettering);
    double text = measure.height(LABEL);
    double cloth = lay.width().usable();
    double dimension = text + DIMENSION_OFF + AIR;
    double room = width - dimension - 2 * EDGE - AIR;
    List<Sketch> sketches = new ArrayList<>();
    double turnedScale =
        Math.min(
            (width - 2 * (text + AIR) - dimension - 2 * EDGE) / cloth,
            (height - ARROW - dimension - LEADER_ROWS * (text + AIR)) / lay.length());
    Sketch turned = new Sketch(lay, true, cap(turnedScale), List.of(0.0, lay.length()), 0);
    for (int rows = 1; rows <= MOST_ROWS; rows++) {
      List<Double> breaks = breaks(lay, rows);
      double longest = 0;
      for (int i = 0; i < rows; i++) {
        longest = Math.max(longest, breaks.get(i + 1) - breaks.get(i));
      }
      double row = 2 * (text + AIR) + dimension + LEADER_ROWS * (text + AIR);
      double scale = Math.min(room / longest, (height / rows - row) / cloth);
      if (scale > 0 || rows == 1) {
        sketches.add(new Sketch(lay, false, cap(Math.max(scale, 0.005)), breaks, room));
      }
      if (rows == 1 && turnedScale > 0) {
        sketches.add(turned);
      }
    }
    return sketches;
  }

  private static double cap(double scale) {
    return Math.min(scale, LARGEST_SCALE);
  }

  /** Where rows end: near equal parts, where the fewest pieces are cut by it. */
  private static List<Double> breaks(Lay lay, int rows) {
    List<Double> breaks = new ArrayList<>();
    breaks.add(0.0);
    double part = lay.length() / rows;
    List<Box> boxes =
        lay.placements().stream().map(placement -> placement.outline().bounds()).toList();
    for (int i = 1; i < rows; i++) {
      double ideal = i * part;
      double best = ideal;
      long fewest = Long.MAX_VALUE;
      for (int step = 0; step <= 20; step++) {
        double at = ideal + (step % 2 == 0 ? 1 : -1) * ((step + 1) / 2) * part / 80;
        long cut = boxes.stream().filter(box -> box.minX() < at && box.maxX() > at).count();
        if (cut < fewest) {
          fewest = cut;
          best = at;
        }
      }
      breaks.add(best);
    }
    breaks.add(lay.length());
    return breaks;
  }

  /** A way to draw a layout. */
  private final class Sketch {
    private final Lay lay;
    private final boolean turned;
    private final double scale;
    private final List<Double> breaks;
    private final double room;
    private Board board = new Board(styles, lettering);
    private final LayWords words = new LayWords(wording, form);
    private final GeometryFactory factory = new GeometryFactory();
    private final double text = board.height(LABEL);
    private final Set<Integer> named = new LinkedHashSet<>();

    Sketch(Lay lay, boolean turned, double scale, List<Double> breaks, double room) {
      this.lay = lay;
      this.turned = turned;
      this.scale = scale;
      this.breaks = breaks;
      this.room = room;
    }

    int rows() {
      return breaks.size() - 1;
    }

    /** Larger by more than a little, or else lower. */
    boolean betterThan(Sketch other) {
      return scale > other.scale * LITTLE
          || (scale > other.scale / LITTLE && clothHeight() < other.clothHeight());
    }

    private double clothHeight() {
      return scale * (turned ? lay.length() : rows() * lay.width().usable());
    }

    boolean hasRoomForNumbers() {
      Affine map = Affine.scaling(scale, scale);
      return lay.placements().stream()
          .allMatch(
              placement -> {
                LabelFit fit = new LabelFit(polygon(placement.outline().transformed(map)));
                Board.Block number = number(placement);
                return fit.place(board.width(number) + INSIDE, board.height(number) + INSIDE)
                    .isPresent();
              });
    }

    Drawing draw(double width) {
      Board page = new Board(styles, lettering);
      for (int row = 0; row < rows(); row++) {
        // Each row is drawn by itself, since what stands above its cloth is known only then.
        board = new Board(styles, lettering);
        row(row);
        double y = row == 0 ? 0 : page.bounds().maxY() + 2 * AIR - board.bounds().minY();
        page.addAll(board, new Point(0, y));
      }
      board = page;
      if (rows() > 1) {
        String all =
            wording.text(
                "lay.length-in-all", Map.of("length", LengthText.atLeast(lay.length(), form)));
        double y = board.bounds().maxY() + 2 * AIR + text / 2;
        board.text(
            all, new Point(board.bounds().minX() + board.width(all, LABEL) / 2, y), 0, LABEL);
      }
      key(width);
      Box bounds = board.bounds();
      Affine shift = Affine.translation(EDGE - bounds.minX(), EDGE - bounds.minY());
      return new Drawing(
          Math.max(width, bounds.width() + 2 * EDGE),
          bounds.height() + 2 * EDGE,
          Moved.all(board.items(), shift));
    }

    private void row(int row) {
      double from = breaks.get(row);
      double to = breaks.get(row + 1);
      double across = lay.width().usable() * scale;
      double along = (to - from) * scale;
      Box cloth = turned ? Box.at(0, 0, across, along) : Box.at(0, 0, along, across);
      Affine map =
          turned
              ? new Affine(0, scale, -scale, 0, across, -from * scale)
              : new Affine(scale, 0, 0, scale, -from * scale, 0);
      board.shape(Path.rectangle(cloth), "lay-cloth");
      Map<Placement, Geometry> seen = new LinkedHashMap<>();
      List<Item> items = new ArrayList<>();
      Geometry window = factory.toGeometry(envelope(cloth));
      for (Placement placement : lay.placements()) {
        Path outline = placement.outline().transformed(map);
        if (!outline.bounds().overlaps(cloth.expanded(-Path.JOIN_TOLERANCE))) {
          continue;
        }
        Geometry whole = polygon(outline);
        boolean inside = cloth.expanded(1e-3).contains(outline.bounds());
        Geometry part = inside ? whole : areas(whole.intersection(window));
        if (part.getArea() > 0) {
          seen.put(placement, part);
          piece(placement, outline, items);
          fold(placement, map, items);
        }
      }
      Path clip = rows() > 1 ? Path.rectangle(cloth) : null;
      board.add(new Item.Group(clip, Affine.IDENTITY, null, items), cloth);
      edges(row, cloth);
      double[] leaders = labels(row, seen, cloth, map);
      lettering(row, cloth, leaders[0], leaders[1]);
    }

    /** Where a shape only touches the end of a row, lines and points come with the areas. */
    private Geometry areas(Geometry geometry) {
      return factory.buildGeometry(PolygonExtracter.getPolygons(geometry));
    }

    private void piece(Placement placement, Path outline, List<Item> items) {
      String role = placement.reversed() ? "lay-piece-reversed" : "lay-piece";
      items.add(new Item.Shape(List.of(outline), role));
      if (placement.reversed()) {
        Box box = outline.bounds();
        List<Path> lines = new ArrayList<>();
        for (double x = Math.ceil((box.minX() - box.height()) / HATCH) * HATCH;
            x < box.maxX();
            x += HATCH) {
          lines.add(
              new Path(
                  List.of(
                      new Line(
                          new Point(x, box.maxY()), new Point(x + box.height(), box.minY())))));
        }
        items.add(
            new Item.Group(
                outline, Affine.IDENTITY, null, List.of(new Item.Shape(lines, "lay-hatch"))));
        items.add(new Item.Shape(List.of(outline), "lay-outline"));
      }
    }

    /** Where a piece is folded whose paper is a half. */
    private void fold(Placement placement, Affine map, List<Item> items) {
      Affine place = map.after(placement.map());
      List<Path> folds =
          placement
              .piece()
              .half()
              .map(half -> List.of(new Path(List.of(half.fold()))))
              .orElse(placement.piece().shape().folds());
      folds.forEach(
          fold -> items.add(new Item.Shape(List.of(fold.transformed(place)), "lay-fold")));
    }

    private void edges(int row, Box cloth) {
      Point topLeft = new Point(cloth.minX(), cloth.minY());
      Point topRight = new Point(cloth.maxX(), cloth.minY());
      Point bottomLeft = new Point(cloth.minX(), cloth.maxY());
      Point bottomRight = new Point(cloth.maxX(), cloth.maxY());
      String selvedge = lay.cloth().hasGrain() ? "lay-selvedge" : "lay-frame";
      String first = row == 0 ? "lay-frame" : "lay-break";
      String last = row == rows() - 1 ? "lay-frame" : "lay-break";
      board.line(topLeft, turned ? topRight : bottomLeft, first);
      board.line(turned ? bottomLeft : topRight, bottomRight, last);
      board.line(topLeft, turned ? bottomLeft : topRight, selvedge);
      board.line(turned ? topRight : bottomLeft, bottomRight, selvedge);
    }

    private Board.Block number(Placement placement) {
      return new Board.Block(List.of(List.of(new Board.Run(words.mark(placement), NUMBER))));
    }

    /** The ways to write number and name, the fullest first. */
    private List<Board.Block> blocks(Placement placement) {
      Board.Run number = new Board.Run(words.mark(placement), NUMBER);
      String name = placement.piece().name();
      List<Board.Block> blocks = new ArrayList<>();
      blocks.add(
          new Board.Block(
              List.of(List.of(number, new Board.Run(" ", LABEL), new Board.Run(name, LABEL)))));
      blocks.add(new Board.Block(List.of(List.of(number), List.of(new Board.Run(name, LABEL)))));
      int middle = name.length() / 2;
      int space = -1;
      for (int i = name.indexOf(' '); i > 0; i = name.indexOf(' ', i + 1)) {
        if (space < 0 || Math.abs(i - middle) < Math.abs(space - middle)) {
          space = i;
        }
      }
      if (space > 0) {
        blocks.add(
            new Board.Block(
                List.of(
                    List.of(number),
                    List.of(new Board.Run(name.substring(0, space), LABEL)),
                    List.of(new Board.Run(name.substring(space + 1), LABEL)))));
      }
      return blocks;
    }

    /** A number outside the cloth and the pieces it leads to. */
    private record Leader(Board.Block block, List<Point> dots) {
      double x() {
        return dots.stream().mapToDouble(Point::x).average().orElseThrow();
      }
    }

    /** Labels the pieces of a row; tells how much room leaders took above and below the cloth. */
    private double[] labels(int row, Map<Placement, Geometry> seen, Box cloth, Affine map) {
      List<Leader> above = new ArrayList<>();
      List<Leader> below = new ArrayList<>();
      List<Leader> outside = new ArrayList<>();
      seen.forEach(
          (placement, part) -> {
            boolean whole = breaks.size() == 2 || share(placement, row) > 0.999;
            boolean main = whole || isMainRow(placement, row);
            LabelFit fit = new LabelFit(part);
            if (main && write(fit, blocks(placement))) {
              named.add(placement.piece().number());
            } else if (!write(fit, List.of(number(placement))) && main) {
              outside.add(new Leader(number(placement), List.of(fit.middle())));
            }
          });
      for (Leader leader : outside) {
        Point dot = leader.dots.get(0);
        double up = hits(dot, cloth.minY()) * cloth.height() + dot.y() - cloth.minY();
        double down = hits(dot, cloth.maxY()) * cloth.height() + cloth.maxY() - dot.y();
        (up <= down ? above : below).add(leader);
      }
      leaders(above, cloth, cloth.minY() - AIR - text / 2, cloth.minY());
      leaders(below, cloth, cloth.maxY() + AIR + text / 2, cloth.maxY());
      return new double[] {above.isEmpty() ? 0 : text + AIR, below.isEmpty() ? 0 : text + AIR};
    }

    private double share(Placement placement, int row) {
      Box box = placement.outline().bounds();
      double from = Math.max(box.minX(), breaks.get(row));
      double to = Math.min(box.maxX(), breaks.get(row + 1));
      return Math.max(0, to - from) / box.width();
    }

    private boolean isMainRow(Placement placement, int row) {
      int main = 0;
      for (int i = 1; i < rows(); i++) {
        if (share(placement, i) > share(placement, main) + 1e-9) {
          main = i;
        }
      }
      return main == row;
    }

    private boolean write(LabelFit fit, List<Board.Block> blocks) {
      for (double angle : new double[] {0, UPRIGHT}) {
        for (Board.Block block : blocks) {
          double w = board.width(block) + 2 * INSIDE;
          double h = board.height(block) + 2 * INSIDE;
          Optional<Point> centre = angle == 0 ? fit.place(w, h) : fit.place(h, w);
          if (centre.isPresent()) {
            board.text(block, centre.orElseThrow(), angle);
            return true;
          }
        }
      }
      return false;
    }

    /** How much lettering an upright line from a dot to the edge of the cloth would cross. */
    private long hits(Point dot, double edge) {
      double top = Math.min(dot.y(), edge);
      Box line = Box.at(dot.x() - DOT, top, 2 * DOT, Math.abs(edge - dot.y()));
      return board.texts().stream().filter(line::overlaps).count();
    }

    /** Neighbours with the same number share it. */
    private static List<Leader> shared(List<Leader> leaders) {
      List<Leader> sorted = new ArrayList<>(leaders);
      sorted.sort(Comparator.comparingDouble(Leader::x));
      List<Leader> shared = new ArrayList<>();
      for (Leader leader : sorted) {
        Leader last = shared.isEmpty() ? null : shared.get(shared.size() - 1);
        if (last != null && last.block.equals(leader.block)) {
          List<Point> dots = new ArrayList<>(last.dots);
          dots.addAll(leader.dots);
          shared.set(shared.size() - 1, new Leader(leader.block, dots));
        } else {
          shared.add(leader);
        }
      }
      return shared;
    }

    private void leaders(List<Leader> all, Box cloth, double y, double edge) {
      List<Leader> leaders = shared(all);
      double[] centres = new double[leaders.size()];
      double taken = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < centres.length; i++) {
        double half = board.width(leaders.get(i).block) / 2;
        centres[i] = Math.max(leaders.get(i).x(), taken + half);
        taken = centres[i] + half + AIR;
      }
      // Beyond the end of a cloth that lies along the page there is room.
      double limit = turned ? cloth.maxX() : Math.max(cloth.maxX(), room);
      for (int i = centres.length - 1; i >= 0; i--) {
        double half = board.width(leaders.get(i).block) / 2;
        centres[i] = Math.min(centres[i], limit - half);
        limit = centres[i] - half - AIR;
      }
      for (int i = 0; i < centres.length; i++) {
        Leader leader = leaders.get(i);
        Point start = new Point(centres[i], y + Math.signum(edge - y) * text / 2);
        for (Point dot : leader.dots) {
          board.line(start, dot, "lay-leader");
          board.shape(Path.circle(dot, DOT), "lay-dot");
        }
        board.text(leader.block, new Point(centres[i], y), 0);
      }
    }

    /** Selvedges, grain and dimensions around the cloth. */
    private void lettering(int row, Box cloth, double above, double below) {
      double topLine = cloth.minY() - above - AIR - text / 2;
      double bottomLine = cloth.maxY() + below + AIR + text / 2;
      boolean grain = lay.cloth().hasGrain();
      String selvedge = wording.text("lay.selvedge");
      double half = board.width(selvedge, LABEL) / 2;
      double along = (breaks.get(row + 1) - breaks.get(row));
      String length = LengthText.atLeast(along, form);
      String width = words.width(lay.width());
      if (turned) {
        double left = cloth.minX() - AIR - text / 2;
        double right = cloth.maxX() + AIR + text / 2;
        if (grain) {
          board.text(selvedge, new Point(left, cloth.centre().y()), UPRIGHT, LABEL);
          board.text(selvedge, new Point(right, cloth.centre().y()), UPRIGHT, LABEL);
          grainArrow(
              new Point(cloth.minX() + 1, cloth.minY() - above - AIR), new Point(0, -1), true);
          right += text + AIR;
        }
        upright(right - text / 2 - AIR, cloth.maxX(), cloth.minY(), cloth.maxY(), length, 1);
        level(cloth.maxY() + below, cloth.maxY(), cloth.minX(), cloth.maxX(), width);
        return;
      }
      if (grain) {
        board.text(selvedge, new Point(cloth.minX() + half, topLine), 0, LABEL);
        board.text(selvedge, new Point(cloth.minX() + half, bottomLine), 0, LABEL);
        if (row == 0) {
          grainArrow(
              new Point(cloth.minX() + 2 * half + KEY_GAP, topLine), new Point(-1, 0), false);
        }
        bottomLine += text + AIR;
      }
      level(bottomLine - text / 2 - AIR, cloth.maxY(), cloth.minX(), cloth.maxX(), length);
      upright(cloth.minX(), cloth.minX(), cloth.minY(), cloth.maxY(), width, -1);
    }

    /** An arrow along the grain with its word; from its start it points up the pieces. */
    private void grainArrow(Point start, Point up, boolean standing) {
      boolean oneWay = lay.cloth().oneWay();
      Point end = standing ? start.plus(up.times(ARROW / 1.4)) : start.minus(up.times(ARROW));
      Point head = standing ? end : start;
      Point tail = standing ? start : end;
      board.line(start, end, GRAIN);
      board.arrowhead(head, up, "lay-arrow");
      if (!oneWay) {
        board.arrowhead(tail, up.times(-1), "lay-arrow");
      }
      String word = wording.text(oneWay ? "lay.nap" : "lay.grain");
      double x = (standing ? start.x() : end.x()) + AIR + board.width(word, GRAIN) / 2;
      board.text(word, new Point(x, standing ? (start.y() + end.y()) / 2 : start.y()), 0, GRAIN);
    }

    /** A dimension below the cloth: outside a line, with witness lines from the cloth's edge. */
    private void level(double from, double edge, double x0, double x1, String value) {
      double y = from + DIMENSION_OFF;
      for (double x : new double[] {x0, x1}) {
        board.line(new Point(x, edge + 0.5), new Point(x, y + 0.8), DIMENSION);
      }
      board.line(new Point(x0, y), new Point(x1, y), DIMENSION);
      board.arrowhead(new Point(x0, y), new Point(-1, 0), "lay-arrow");
      board.arrowhead(new Point(x1, y), new Point(1, 0), "lay-arrow");
      double half = board.width(value, DIMENSION) / 2;
      double centre = Math.max((x0 + x1) / 2, x0 + half);
      board.text(value, new Point(centre, y + AIR / 2 + text / 2), 0, DIMENSION);
    }

    /** A dimension beside the cloth; outwards is 1 to the right and -1 to the left. */
    private void upright(
        double from, double edge, double y0, double y1, String value, double outwards) {
      double x = from + outwards * DIMENSION_OFF;
      for (double y : new double[] {y0, y1}) {
        board.line(
            new Point(edge + outwards * 0.5, y), new Point(x + outwards * 0.8, y), DIMENSION);
      }
      board.line(new Point(x, y0), new Point(x, y1), DIMENSION);
      board.arrowhead(new Point(x, y0), new Point(0, -1), "lay-arrow");
      board.arrowhead(new Point(x, y1), new Point(0, 1), "lay-arrow");
      double centre = x + outwards * (AIR / 2 + text / 2);
      board.text(value, new Point(centre, (y0 + y1) / 2), UPRIGHT, DIMENSION);
    }

    /** What isn't written inside the pieces, in lines below. */
    private void key(double width) {
      Map<Integer, String> names = new LinkedHashMap<>();
      boolean reversed = false;
      for (Placement placement : lay.placements()) {
        reversed |= placement.reversed();
        if (!named.contains(placement.piece().number())) {
          names.put(placement.piece().number(), placement.piece().name());
        }
      }
      List<String> entries = new ArrayList<>();
      names.forEach(
          (number, name) ->
              entries.add(
                  wording.text(
                      "lay.key-piece", Map.of("number", Integer.toString(number), "name", name))));
      if (reversed) {
        entries.add(wording.text("lay.key-reversed"));
      }
      double left = board.bounds().minX();
      double x = left;
      double y = board.bounds().maxY() + 2 * AIR + text / 2;
      for (String entry : entries) {
        double wide = board.width(entry, LABEL);
        if (x > left && x + wide > left + width - 2 * EDGE) {
          x = left;
          y += text + AIR / 2;
        }
        board.text(entry, new Point(x + wide / 2, y), 0, LABEL);
        x += wide + KEY_GAP;
      }
    }

    private Geometry polygon(Path path) {
      List<Point> points = path.flattened(FLATNESS);
      Coordinate[] ring = new Coordinate[points.size()];
      for (int i = 0; i < ring.length; i++) {
        ring[i] = new Coordinate(points.get(i).x(), points.get(i).y());
      }
      ring[ring.length - 1] = ring[0].copy();
      return factory.createPolygon(ring);
    }

    private static Envelope envelope(Box box) {
      return new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY());
    }
  }
}
