package org.lapmark.measure;

import java.util.List;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with a formula or a placeholder. */
public enum MeasureCode implements FindingCode {
  /** Nothing is written. */
  FORMULA_EMPTY,
  /** More characters than {@link Formula#MAX_LENGTH}. */
  FORMULA_TOO_LONG,
  /** More nested brackets, signs or powers than {@link Formula#MAX_DEPTH}. */
  FORMULA_TOO_DEEP,
  /** A character that the language doesn't have. */
  FORMULA_UNEXPECTED_CHARACTER,
  /** A sign that other notations use for something that is written differently here. */
  FORMULA_OTHER_SIGN,
  /** Something stands where it makes no sense. */
  FORMULA_OUT_OF_PLACE,
  /** The formula ends where a value should follow. */
  FORMULA_UNFINISHED,
  /** A bracket is never closed. */
  FORMULA_BRACKET_UNCLOSED,
  /** A bracket is closed that was never opened. */
  FORMULA_BRACKET_UNOPENED,
  /** A word that can't be a name. */
  FORMULA_NAME,
  /** A word after a number that is no unit. */
  FORMULA_UNKNOWN_UNIT,
  /** A word before a bracket that is no function. */
  FORMULA_UNKNOWN_FUNCTION,
  /** A function has too few or too many arguments. */
  FORMULA_ARGUMENT_COUNT,
  /** A geometry function was given something else than the name of a panel, edge or corner. */
  FORMULA_REFERENCE,
  /** A comma between digits. */
  FORMULA_DECIMAL_COMMA,
  /** A fraction that isn't one. */
  FORMULA_FRACTION,
  /** Brackets after a quantity don't hold its counterpart in the other system. */
  FORMULA_PAIR,
  /** The two lengths of a pair can't be names of the same thing. */
  FORMULA_PAIR_FAR_APART,
  /** A list has something else in it than pairs. */
  FORMULA_STOCK_ENTRY,
  /** No stock size is short enough. */
  FORMULA_NO_STOCK_SIZE,
  /** A plain number where a length, an area or an angle is needed. */
  FORMULA_UNIT_MISSING,
  /** A number is stated without a unit, and used where one is needed. */
  MEASURE_UNIT_MISSING,
  /** Two kinds that can't be added or compared. */
  FORMULA_UNLIKE_DIMENSIONS,
  /** A product, quotient or power of a kind that isn't known here. */
  FORMULA_NO_SUCH_DIMENSION,
  /** A value of one kind where another is needed. */
  FORMULA_WRONG_KIND,
  /** An option or the size is compared with something that it can't be. */
  FORMULA_CHOICE_UNKNOWN,
  /** The name of a size or a choice that begins with a digit, and isn't quoted. */
  FORMULA_CHOICE_UNQUOTED,
  /** Two values to choose from that are of different kinds. */
  FORMULA_UNLIKE_BRANCHES,
  /** A division by zero. */
  FORMULA_DIVISION_BY_ZERO,
  /** A function has no value for this argument. */
  FORMULA_NO_VALUE,
  /** A step that isn't above zero. */
  FORMULA_STEP,
  /** A result too large to be a number. */
  FORMULA_TOO_LARGE,
  /** A brace is never closed. */
  PLACEHOLDER_UNCLOSED,
  /** A brace is closed that was never opened. */
  PLACEHOLDER_UNOPENED,
  /** Nothing stands in the braces. */
  PLACEHOLDER_EMPTY,
  /** What follows {@code as} is no form. */
  PLACEHOLDER_UNKNOWN_FORM,
  /** A value can't be printed in the form asked for. */
  PLACEHOLDER_UNLIKE_FORM,
  /** A value that isn't nothing would be printed as nothing. */
  PLACEHOLDER_ROUNDS_TO_ZERO;

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }

  @Override
  public List<String> subject() {
    return switch (this) {
      case MEASURE_UNIT_MISSING -> List.of("unit", "stated");
      case FORMULA_CHOICE_UNKNOWN -> List.of("choice", "option", "choice");
      default -> List.of();
    };
  }
}
