package org.lapmark.source.variant;

import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Panel;

/**
 * What formulas come to in one variant, and where names lead on its panels. Whatever comes to
 * nothing usable is an {@link org.lapmark.finding.FindingException} at its place in the source.
 */
public interface VariantValues {
  /**
   * The size, for findings.
   *
   * @return its name
   */
  String size();

  /**
   * A length.
   *
   * @param formula the formula
   * @return millimetres, which may be below 0
   */
  double length(Formula formula);

  /**
   * A length above 0.
   *
   * @param formula the formula
   * @return millimetres
   */
  double positiveLength(Formula formula);

  /**
   * A place along a line: a length from its start, or a plain number as a fraction of it.
   *
   * @param formula the formula
   * @param whole the line's length in millimetres
   * @return millimetres from its start, which may lie beyond it
   */
  double along(Formula formula, double whole);

  /**
   * A number of marks in a row.
   *
   * @param formula the formula
   * @return 1 or more
   */
  int count(Formula formula);

  /**
   * The one line that the name of an edge or a chain stands for.
   *
   * @param panel the panel
   * @param name where it is named
   * @return the line
   */
  Path edge(Panel panel, SourceText name);

  /**
   * A corner of a panel.
   *
   * @param panel the panel
   * @param name where it is named
   * @return the point
   */
  Point corner(Panel panel, SourceText name);
}
