package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;

/** The marks of one half of a panel that the other half, when it is folded onto it, hasn't. */
final class MarksAlone {
  /** How far a mark of one half may lie from the image of the other's, in millimetres. */
  private static final double OFF_IMAGE = 1;

  private MarksAlone() {}

  /**
   * The marks of the half that isn't kept.
   *
   * @param panel the whole
   * @param kept the marks of the half that is kept, which is the first part
   * @param parts the halves
   * @param cut the name of the line between them
   * @param mirror the map that lays the second half on the first
   */
  static List<Mark> of(
      Panel panel, List<Mark> kept, Splitting.Parts parts, String cut, Affine mirror) {
    List<Mark> alone = new ArrayList<>();
    for (Mark mark : MarksOnPart.of(panel, parts.second(), cut, notice -> {})) {
      Optional<Point> place = mark.knownBy(edges(parts.second()));
      boolean paired =
          place.isEmpty()
              || kept.stream()
                  .filter(one -> one.kindName().equals(mark.kindName()))
                  .anyMatch(
                      one -> distance(one, parts.first(), mirror.apply(place.get())) <= OFF_IMAGE);
      if (!paired) {
        alone.add(mark);
      }
    }
    return alone;
  }

  private static Function<String, Path> edges(List<Edge> edges) {
    return name ->
        edges.stream()
            .filter(edge -> edge.name().equals(name))
            .map(Edge::path)
            .findFirst()
            .orElse(null);
  }

  /** A line may be drawn the other way round or longer: it has to run by the point. */
  private static double distance(Mark mark, List<Edge> half, Point point) {
    return mark.place(
        new Mark.Placing<>() {
          @Override
          public Double notch(Mark.Notch notch) {
            return known(notch);
          }

          @Override
          public Double intake(Intake intake) {
            return known(intake);
          }

          @Override
          public Double point(PointMark one) {
            return known(one);
          }

          @Override
          public Double line(LineMark line) {
            return line.path().distance(point);
          }

          @Override
          public Double grainline(Mark.Grainline grain) {
            return Double.POSITIVE_INFINITY;
          }

          private double known(Mark one) {
            return one.knownBy(edges(half)).orElseThrow().distance(point);
          }
        });
  }
}
