package org.lapmark.panel.cutting;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;

/**
 * Where a piece is cut: the stitching line moved outwards by each edge's own allowance.
 *
 * @param spans the parts in order, clockwise on paper, each ending where the next begins
 */
public record CuttingLine(List<Span> spans) {
  /** Copies the list. */
  public CuttingLine {
    spans = List.copyOf(spans);
  }

  /**
   * A part of the cutting line.
   *
   * @param edge the name of the edge it belongs to
   * @param path the part
   */
  public record Span(String edge, Path path) {}

  /**
   * The whole cutting line.
   *
   * @return a closed path, clockwise on paper
   */
  public Path path() {
    List<Curve> curves = new ArrayList<>();
    spans.forEach(span -> curves.addAll(span.path().curves()));
    return new Path(curves);
  }
}
