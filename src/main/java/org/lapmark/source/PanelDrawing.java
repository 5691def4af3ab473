package org.lapmark.source;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;

/** A panel's SVG file as read: shapes, some of whose attributes may be placeholders. Immutable. */
public final class PanelDrawing {
  private final SourceFile file;

  PanelDrawing(SourceFile file) {
    this.file = file;
  }

  /**
   * The file.
   *
   * @return the SVG file
   */
  public SourceFile file() {
    return file;
  }

  /**
   * Whether an attribute has a placeholder; then a user unit is 1 mm.
   *
   * @return true for a computed panel
   */
  public boolean isComputed() {
    throw new UnsupportedOperationException();
  }

  /**
   * The shapes in one variant, in millimetres.
   *
   * @param evaluator gives a placeholder's exact number: millimetres, degrees or a plain number;
   *     throws {@link org.lapmark.finding.FindingException}
   * @param findings where problems go
   * @return the shapes, or null when there is no usable outline (which is then reported)
   */
  public Shapes resolve(Function<Formula, Double> evaluator, Findings findings) {
    throw new UnsupportedOperationException();
  }

  /**
   * What a drawing shows.
   *
   * @param outline the closed outline
   * @param corners named points, in file order
   * @param grainline two points, or null
   * @param placements named lines
   * @param foldLines named lines along which cloth is folded
   * @param drillPoints named points
   * @param notches points near the outline that state notches
   */
  public record Shapes(
      Path outline,
      Map<String, Point> corners,
      List<Point> grainline,
      Map<String, Path> placements,
      Map<String, Path> foldLines,
      Map<String, Point> drillPoints,
      List<Point> notches) {}
}
