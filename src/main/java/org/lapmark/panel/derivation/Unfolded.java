package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;

/**
 * A half panel opened at a straight edge: the whole has the half and its image, and the fold edge
 * is gone. An edge that ends on the fold is one edge with its image and keeps its name, unless said
 * otherwise; the image of any other edge or corner ends in {@code _mirrored}. A chain that ends on
 * the fold goes on over it, another has an image too. What is told: an edge that isn't square to
 * the fold, so that the whole has a corner, and notches, darts and pleats of the fold edge.
 */
public final class Unfolded implements Derivation {
  static final String ENDING = "_mirrored";

  /** How far a fold edge may stray from its chord, in millimetres. */
  private static final double STRAIGHT = 0.01;

  /** An edge that crosses the fold turns by at most this there, in degrees. */
  private static final double SMOOTH = 1;

  private final Panel half;
  private final Edge fold;
  private final List<String> apart;
  private final Affine mirror;

  /** The other edges, clockwise from the fold's end. */
  private final List<Edge> own = new ArrayList<>();

  /** The names of the images of the edges at the same places in {@link #own}. */
  private final List<String> images = new ArrayList<>();

  private final Map<String, String> cornerImages = new LinkedHashMap<>();

  /**
   * Opens a half.
   *
   * @param half the half
   * @param foldEdge the fold edge, straight within 0.01 mm
   * @param apart edges that end on the fold and stay apart from their images, which end in {@code
   *     _mirrored}; the corner between them keeps its name
   * @throws PanelException when the fold isn't straight or the half lies on both sides of it
   */
  public Unfolded(Panel half, String foldEdge, List<String> apart) {
    this.half = half;
    int at = Ring.index(half, foldEdge);
    this.fold = half.edges().get(at);
    this.apart = apart;
    int count = half.edges().size();
    if (count < 2) {
      throw PanelCode.UNFOLD_NOT_STRAIGHT.exception(
          "panel", half.name(), "edge", foldEdge, "apart", half.outline().bounds().width());
    }
    for (int i = 1; i < count; i++) {
      own.add(half.edges().get((at + i) % count));
    }
    Point start = fold.path().start();
    Point end = fold.path().end();
    this.mirror = Affine.mirror(start, end.minus(start));
    checkStraight();
    for (String name : apart) {
      if (!isFirst(name) && !isLast(name)) {
        throw PanelCode.UNFOLD_NOT_AT_FOLD.exception(
            "panel", half.name(), "edge", name, "fold", foldEdge);
      }
    }
    name();
  }

  private boolean isFirst(String name) {
    return own.get(0).name().equals(name);
  }

  private boolean isLast(String name) {
    return own.get(own.size() - 1).name().equals(name);
  }

  private void checkStraight() {
    Point start = fold.path().start();
    Point along = fold.path().end().minus(start).unit();
    double most = 0;
    double before = 0;
    boolean forwards = true;
    for (Point point : fold.path().flattened(STRAIGHT / 10)) {
      Point from = point.minus(start);
      most = Math.max(most, Math.abs(from.cross(along)));
      forwards &= from.dot(along) >= before - STRAIGHT;
      before = from.dot(along);
    }
    if (most > STRAIGHT || !forwards) {
      throw PanelCode.UNFOLD_NOT_STRAIGHT.exception(
          "panel", half.name(), "edge", fold.name(), "apart", most);
    }
    for (Edge edge : own) {
      for (Point point : edge.path().flattened(STRAIGHT)) {
        // Clockwise on paper the panel lies to the right of its edges.
        double beyond = -along.cross(point.minus(start));
        if (beyond > STRAIGHT) {
          throw PanelCode.UNFOLD_CROSSES_FOLD.exception(
              "panel", half.name(), "edge", edge.name(), "fold", fold.name(), "beyond", beyond);
        }
      }
    }
  }

  private void name() {
    Set<String> taken = new LinkedHashSet<>();
    Set<String> corners = new LinkedHashSet<>();
    own.forEach(edge -> taken.add(edge.name()));
    half.edges().forEach(edge -> corners.add(edge.from()));
    taken.addAll(half.chains().keySet());
    for (Edge edge : own) {
      String image = edge.name();
      if (!isWhole(edge)) {
        image = Ring.free(edge.name() + ENDING, ENDING, taken);
        taken.add(image);
      }
      images.add(image);
    }
    for (int i = 1; i < own.size(); i++) {
      String corner = own.get(i).from();
      String image = Ring.free(corner + ENDING, ENDING, corners);
      corners.add(image);
      cornerImages.put(corner, image);
    }
    cornerImages.put(fold.from(), fold.from());
    cornerImages.put(fold.to(), fold.to());
  }

  /** Whether an edge and its image are one edge across the fold. */
  private boolean isWhole(Edge edge) {
    return (isFirst(edge.name()) || isLast(edge.name())) && !apart.contains(edge.name());
  }

  private Path image(Edge edge) {
    return Ring.mirrored(edge.path(), mirror);
  }

  @Override
  public Panel derive(String name, Consumer<PanelException> notices) {
    List<Edge> edges = edges();
    Ring.check(name, edges);
    checkCorners(notices);
    return new Panel(name, edges, chains(edges), marks(notices));
  }

  private List<Edge> edges() {
    Edge first = own.get(0);
    Edge last = own.get(own.size() - 1);
    List<Edge> edges = new ArrayList<>();
    int count = own.size();
    if (count == 1) {
      Path image = image(first);
      if (isWhole(first)) {
        return List.of(new Edge(first.name(), fold.to(), fold.to(), join(first.path(), image)));
      }
      return List.of(
          first, new Edge(images.get(0), fold.from(), fold.to(), fitted(image, first.path())));
    }
    edges.add(
        isWhole(first)
            ? new Edge(
                first.name(),
                cornerImages.get(first.to()),
                first.to(),
                join(image(first), first.path()))
            : first);
    edges.addAll(own.subList(1, count - 1));
    edges.add(
        isWhole(last)
            ? new Edge(
                last.name(),
                last.from(),
                cornerImages.get(last.from()),
                join(last.path(), image(last)))
            : last);
    for (int i = count - 1; i >= 0; i--) {
      Edge edge = own.get(i);
      if (!isWhole(edge)) {
        edges.add(
            new Edge(
                images.get(i),
                cornerImages.get(edge.to()),
                cornerImages.get(edge.from()),
                image(edge)));
      }
    }
    return edges;
  }

  /** Two paths that meet on the fold; lines that go straight on are one line. */
  private static Path join(Path before, Path after) {
    Point start = after.start();
    List<Curve> curves = new ArrayList<>(Ring.between(before, before.start(), start).curves());
    List<Curve> rest = new ArrayList<>(after.curves());
    Curve last = curves.get(curves.size() - 1);
    if (last instanceof Line a
        && rest.get(0) instanceof Line b
        && a.tangent(0).dot(b.tangent(0)) > 0
        && Math.abs(a.tangent(0).cross(b.tangent(0))) < 1e-12) {
      curves.set(curves.size() - 1, new Line(a.start(), b.end()));
      rest.remove(0);
    }
    curves.addAll(rest);
    return new Path(curves);
  }

  private static Path fitted(Path image, Path around) {
    return Ring.between(image, around.end(), around.start());
  }

  private void checkCorners(Consumer<PanelException> notices) {
    Point along = fold.path().end().minus(fold.path().start()).unit();
    Edge first = own.get(0);
    Edge last = own.get(own.size() - 1);
    // Square to the fold an edge runs smoothly into its image.
    warn(first, first.path().curves().get(0).tangent(0), along, notices);
    Curve end = last.path().curves().get(last.path().curves().size() - 1);
    warn(last, end.tangent(1), along, notices);
  }

  private void warn(Edge edge, Point tangent, Point along, Consumer<PanelException> notices) {
    double turn =
        StrictMath.toDegrees(StrictMath.asin(Math.min(1, Math.abs(tangent.dot(along))))) * 2;
    if (turn > SMOOTH && isWhole(edge)) {
      notices.accept(
          PanelCode.UNFOLD_CORNER.exception(
              "panel", half.name(), "edge", edge.name(), "fold", fold.name(), "turn", turn));
    }
  }

  private Map<String, List<String>> chains(List<Edge> edges) {
    Map<String, List<String>> chains = new LinkedHashMap<>();
    half.chains()
        .forEach(
            (chain, members) -> {
              List<String> left =
                  members.stream().filter(name -> !name.equals(fold.name())).toList();
              List<String> across = new ArrayList<>();
              List<String> over = new ArrayList<>();
              boolean begins = left.stream().anyMatch(this::isFirst);
              boolean ends = left.stream().anyMatch(this::isLast);
              for (int i = own.size() - 1; i >= 0; i--) {
                if (left.contains(own.get(i).name())) {
                  over.add(images.get(i));
                }
              }
              if (begins && !(ends && left.size() < own.size())) {
                across.addAll(over);
                across.removeAll(left);
                across.addAll(left);
                if (ends) {
                  across.clear();
                  edges.forEach(edge -> across.add(edge.name()));
                }
              } else if (ends && !begins) {
                across.addAll(left);
                over.removeAll(left);
                across.addAll(over);
              } else if (!begins && !left.isEmpty()) {
                across.addAll(left);
                chains.put(chain + ENDING, over);
              }
              if (!across.isEmpty()) {
                chains.put(chain, across);
              }
            });
    return chains;
  }

  private List<Mark> marks(Consumer<PanelException> notices) {
    MarksUnfolded unfolded = new MarksUnfolded(half, fold, own, images, this::isWhole, notices);
    List<Mark> marks = new ArrayList<>();
    half.marks().forEach(mark -> marks.addAll(mark.place(unfolded)));
    return marks;
  }
}
