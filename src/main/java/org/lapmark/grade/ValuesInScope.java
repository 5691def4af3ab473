package org.lapmark.grade;

import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Panel;
import org.lapmark.source.variant.VariantValues;

/**
 * Answers what statements ask of a variant.
 *
 * @param scope the variant's values
 */
record ValuesInScope(PatternScope scope) implements VariantValues {
  @Override
  public String size() {
    return scope.size();
  }

  @Override
  public double length(Formula formula) {
    return scope.length(formula);
  }

  @Override
  public double positiveLength(Formula formula) {
    return scope.positiveLength(formula);
  }

  @Override
  public double along(Formula formula, double whole) {
    return scope.along(formula, whole);
  }

  @Override
  public int count(Formula formula) {
    return MarkCount.of(formula, scope);
  }

  @Override
  public Path edge(Panel panel, SourceText name) {
    return PatternScope.edge(panel, name);
  }

  @Override
  public Point corner(Panel panel, SourceText name) {
    return PatternScope.corner(panel, name);
  }
}
