package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;

/**
 * A shape with a role.
 *
 * @param role what it stands for
 * @param name the name behind the role's word, or the empty text
 * @param id the place of the id or label that states the role
 * @param parts its elements in file order, at least one
 */
record DrawnShape(Role role, String name, SourceText id, List<DrawnPart> parts) {
  DrawnShape {
    parts = List.copyOf(parts);
  }

  Position position() {
    return id.position();
  }

  /** Whether it is drawn as a circle or the like, whose middle is meant. */
  boolean isPoint() {
    return List.of("circle", "ellipse", "rect").contains(parts.get(0).kind());
  }

  boolean isBroken() {
    return parts.stream().anyMatch(DrawnPart::isBroken);
  }

  /**
   * Draws the shape.
   *
   * @param toMillimetres from user units
   * @param evaluator gives placeholders' numbers
   * @param computed whether a user unit is a millimetre
   * @throws FindingException at what can't be understood or computed
   */
  List<OutlineBuilder.Subpath> draw(
      Affine toMillimetres,
      Function<Formula, Double> evaluator,
      boolean computed,
      SegmentBudget budget,
      double largest) {
    List<OutlineBuilder.Subpath> all = new ArrayList<>();
    for (DrawnPart part : parts) {
      all.addAll(part.draw(toMillimetres, evaluator, computed, budget, largest, position()));
    }
    return all;
  }

  /**
   * The point that the shape marks: the centre of a circle, ellipse or rectangle, the middle of a
   * line, else where the path begins.
   *
   * @return null if the shape has no points at all
   */
  Point mark(
      Affine toMillimetres,
      Function<Formula, Double> evaluator,
      boolean computed,
      SegmentBudget budget,
      double largest) {
    return parts.get(0).mark(toMillimetres, evaluator, computed, budget, largest, id);
  }

  /** Checks what can be checked without values: with 1 for every placeholder. */
  void check(SegmentBudget budget, Findings findings) {
    if (isBroken()) {
      return;
    }
    try {
      draw(Affine.IDENTITY, formula -> 1.0, true, budget, Double.MAX_VALUE);
    } catch (FindingException e) {
      // Whether a length is negative can't be known yet.
      if (e.finding().code() != DrawingCode.ATTRIBUTE_WRONG) {
        findings.add(e.finding());
      }
    }
  }
}
