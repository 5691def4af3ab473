package org.lapmark.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.locationtech.jts.geom.Geometry;

/**
 * Numbers and names of the pieces of one row. Where a piece has no room for its number, that stands
 * outside and a leader leads to the piece.
 *
 * @param words the words on paper
 * @param board where the row is drawn
 * @param rows the rows of the cloth
 * @param named gets the numbers of the pieces that are named
 * @param right how far right leaders' numbers may stand
 */
record LayLabels(LayWords words, Board board, LayRows rows, Set<Integer> named, double right) {
  private static final String NUMBER = "lay-number";

  /** Between lettering and the outline of its piece, in millimetres. */
  static final double INSIDE = 0.7;

  private static final double DOT = 0.45;

  private double text() {
    return board.height(Board.LABEL);
  }

  /** The room that leaders took above and below the cloth, in millimetres. */
  record Taken(double above, double below) {}

  static Board.Block number(LayWords words, Placement placement) {
    return new Board.Block(List.of(List.of(new Board.Run(words.mark(placement), NUMBER))));
  }

  /** The ways to write number and name, the fullest first. */
  private List<Board.Block> blocks(Placement placement) {
    Board.Run number = new Board.Run(words.mark(placement), NUMBER);
    String name = placement.piece().name();
    List<Board.Block> blocks = new ArrayList<>();
    blocks.add(
        new Board.Block(
            List.of(
                List.of(
                    number, new Board.Run(" ", Board.LABEL), new Board.Run(name, Board.LABEL)))));
    blocks.add(
        new Board.Block(List.of(List.of(number), List.of(new Board.Run(name, Board.LABEL)))));
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
                  List.of(new Board.Run(name.substring(0, space), Board.LABEL)),
                  List.of(new Board.Run(name.substring(space + 1), Board.LABEL)))));
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
  Taken write(int row, Map<Placement, Geometry> seen, Box cloth) {
    List<Leader> above = new ArrayList<>();
    List<Leader> below = new ArrayList<>();
    List<Leader> outside = new ArrayList<>();
    seen.forEach(
        (placement, part) -> {
          boolean main = rows.isMain(placement, row);
          LabelFit fit = new LabelFit(part);
          if (main && write(fit, blocks(placement))) {
            named.add(placement.piece().number());
          } else if (!write(fit, List.of(number(words, placement))) && main) {
            outside.add(new Leader(number(words, placement), List.of(fit.middle())));
          }
        });
    for (Leader leader : outside) {
      Point dot = leader.dots.get(0);
      double up = hits(dot, cloth.minY()) * cloth.height() + dot.y() - cloth.minY();
      double down = hits(dot, cloth.maxY()) * cloth.height() + cloth.maxY() - dot.y();
      (up <= down ? above : below).add(leader);
    }
    leaders(above, cloth, cloth.minY() - Board.AIR - text() / 2, cloth.minY());
    leaders(below, cloth, cloth.maxY() + Board.AIR + text() / 2, cloth.maxY());
    return new Taken(
        above.isEmpty() ? 0 : text() + Board.AIR, below.isEmpty() ? 0 : text() + Board.AIR);
  }

  private boolean write(LabelFit fit, List<Board.Block> blocks) {
    for (double angle : new double[] {0, Board.UPRIGHT}) {
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
      taken = centres[i] + half + Board.AIR;
    }
    double limit = right;
    for (int i = centres.length - 1; i >= 0; i--) {
      double half = board.width(leaders.get(i).block) / 2;
      centres[i] = Math.min(centres[i], limit - half);
      limit = centres[i] - half - Board.AIR;
    }
    for (int i = 0; i < centres.length; i++) {
      Leader leader = leaders.get(i);
      Point start = new Point(centres[i], y + Math.signum(edge - y) * text() / 2);
      for (Point dot : leader.dots) {
        board.line(start, dot, "lay-leader");
        board.shape(Path.circle(dot, DOT), "lay-dot");
      }
      board.text(leader.block, new Point(centres[i], y), 0);
    }
  }
}
