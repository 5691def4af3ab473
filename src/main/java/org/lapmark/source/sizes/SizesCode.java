package org.lapmark.source.sizes;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with the table of sizes. */
public enum SizesCode implements FindingCode {
  /** A quoted cell that isn't closed. */
  CSV_SYNTAX,
  /** The size table lacks a column. */
  SIZES_COLUMN_MISSING,
  /** The size table has no size. */
  SIZES_NONE,
  /** A size stands twice. */
  SIZE_DUPLICATE,
  /** Not a name for a size. */
  SIZE_NAME_WRONG,
  /** A base measure stands twice. */
  MEASURE_DUPLICATE,
  /** A unit that isn't known. */
  UNIT_UNKNOWN,
  /** A size has no value. */
  CELL_MISSING,
  /** A value that isn't a number. */
  CELL_NOT_NUMBER,
  /** A fraction that a spreadsheet has turned into a date. */
  CELL_DATE,
  /** A number whose comma or point can be read in two ways. */
  CELL_AMBIGUOUS,
  /** A spreadsheet's formula or error. */
  CELL_FORMULA,
  /** A count that isn't whole. */
  CELL_NOT_WHOLE,
  /** A value in a column without a size. */
  CELL_WITHOUT_SIZE,
  /** Two cells of a row stand in each other's columns. */
  CELLS_SWAPPED,
  /** A length that is many times larger or smaller than those of the sizes beside it. */
  SIZE_ROW_ASTRAY,
  /** A row whose unit makes its lengths longer than anything sewn, alone among all rows. */
  SIZE_ROW_UNIT(Severity.WARNING),
  /** A row of the size table that rises and falls. */
  SIZE_ROW_TURNS(Severity.WARNING),
  /** A row of the size table that grows far more at one place than at all others. */
  SIZE_ROW_JUMPS(Severity.WARNING),
  /** Sizes whose columns don't stand in their order. */
  SIZES_OUT_OF_ORDER(Severity.WARNING);

  private final Severity severity;

  SizesCode() {
    this(Severity.ERROR);
  }

  SizesCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
