package org.lapmark.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Path;
import org.lapmark.grade.panel.SeamAssembler;
import org.lapmark.grade.piece.CornerAngle;
import org.lapmark.panel.ClosedLine;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.seam.Joint;
import org.lapmark.source.SeamSource;

/**
 * Finds where two parts of a side meet end to end and are sewn to each other by another seam, and
 * adds up the two panels' angles there. Sewn together they make one edge, which goes straight on
 * where the angles come to 180 degrees, and has a dent or a peak where they don't.
 */
final class JointFinder {
  private final SeamAssembler assembler;
  private final List<SeamSource> seams;

  JointFinder(SeamAssembler assembler, List<SeamSource> seams) {
    this.assembler = assembler;
    this.seams = seams;
  }

  /** An end of a part: the panel's corner there, by the edges before and after it. */
  private record End(Panel panel, Edge before, Edge after, String neighbour, boolean clockwise) {
    /** The same corner of the same copy, sewn on in one direction: the outline just goes on. */
    boolean isSame(End other) {
      return panel.name().equals(other.panel.name())
          && before.equals(other.before)
          && clockwise == other.clockwise;
    }

    double angle() {
      return CornerAngle.innerAngle(before, after);
    }
  }

  List<Joint> joints(SeamSource seam) {
    List<Joint> joints = new ArrayList<>();
    for (int side = 0; side < seam.sides().size(); side++) {
      List<Optional<SeamAssembler.Stretch>> stretches = assembler.stretches(seam, side);
      List<SeamSource.Member> members = seam.sides().get(side).members();
      int count = stretches.size();
      List<Double> lengths = assembler.lengths(seam, side);
      double whole = lengths.stream().mapToDouble(Double::doubleValue).sum();
      double at = -assembler.start(seam, side, whole);
      for (int i = 0; i < count; i++) {
        int before = (i + count - 1) % count;
        if (i > 0 || seam.closed()) {
          Optional<End> ending = stretches.get(before).flatMap(one -> end(one, true));
          Optional<End> beginning = stretches.get(i).flatMap(one -> end(one, false));
          if (ending.isPresent()
              && beginning.isPresent()
              && !ending.get().isSame(beginning.get())
              && isJoined(seam, ending.get(), beginning.get())) {
            joints.add(
                new Joint(
                    side,
                    members.get(before).text().text(),
                    members.get(i).text().text(),
                    whole > 0 ? at - whole * Math.floor(at / whole) : at,
                    ending.get().angle() + beginning.get().angle()));
          }
        }
        at += lengths.get(i);
      }
    }
    return joints;
  }

  /** The corner at an end of a stretch; nothing if it ends within an edge. */
  private static Optional<End> end(SeamAssembler.Stretch stretch, boolean asSewnLast) {
    Panel panel = stretch.panel();
    List<Edge> ring = panel.edges();
    List<String> names = ring.stream().map(Edge::name).toList();
    boolean atLineEnd = asSewnLast == stretch.clockwise();
    double whole = ClosedLine.of(panel, stretch.line()).length();
    List<String> edges = stretch.edges();
    if (atLineEnd) {
      if (stretch.to() < whole - Path.JOIN_TOLERANCE) {
        return Optional.empty();
      }
      int last = names.indexOf(edges.get(edges.size() - 1));
      Edge next = ring.get((last + 1) % ring.size());
      return Optional.of(new End(panel, ring.get(last), next, next.name(), stretch.clockwise()));
    }
    if (stretch.from() > Path.JOIN_TOLERANCE) {
      return Optional.empty();
    }
    int first = names.indexOf(edges.get(0));
    Edge previous = ring.get((first + ring.size() - 1) % ring.size());
    return Optional.of(
        new End(panel, previous, ring.get(first), previous.name(), stretch.clockwise()));
  }

  private boolean isJoined(SeamSource seam, End one, End other) {
    for (SeamSource join : seams) {
      if (join == seam) {
        continue;
      }
      for (int i = 0; i < join.sides().size(); i++) {
        for (int j = 0; j < join.sides().size(); j++) {
          if (i != j && has(join.sides().get(i), one) && has(join.sides().get(j), other)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean has(SeamSource.Side side, End end) {
    return side.members().stream()
        .anyMatch(
            member -> {
              String text = member.text().text();
              int dot = text.indexOf('.');
              if (dot < 0 || !text.substring(0, dot).equals(end.panel.name())) {
                return false;
              }
              String line = text.substring(dot + 1);
              return end.panel.chains().getOrDefault(line, List.of(line)).contains(end.neighbour);
            });
  }
}
