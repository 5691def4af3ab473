package org.lapmark.finding;

import java.util.List;
import java.util.Locale;

/**
 * A kind of problem. Each package that finds problems declares its codes in one enum that
 * implements this interface, and keeps their English beside it in a resource {@code
 * findings.properties}: {@code <id>.message} and {@code <id>.hint}, ICU message patterns with named
 * arguments.
 */
public interface FindingCode {
  /**
   * Its name among the codes of its enum.
   *
   * @return such as {@code MEASURE_CYCLE}
   */
  String name();

  /**
   * The stable name shown to users and listed in reports, such as {@code measure-cycle}.
   *
   * @return lower-case words joined by hyphens
   */
  default String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * How much a finding of this kind weighs.
   *
   * @return the severity
   */
  Severity severity();

  /**
   * What a finding of this kind misses, for kinds that say that something isn't known: a word for
   * what it is, such as {@code edge}, and the arguments that name it. Findings that miss the same
   * have one cause, whatever their kinds, and are told once.
   *
   * @return the word and the arguments' names; empty for other kinds
   */
  default List<String> subject() {
    return List.of();
  }

  /**
   * Whether another kind that misses the same says more, and is the one that is told.
   *
   * @return true for what only shows in some variants because of what else is wrong
   */
  default boolean yields() {
    return false;
  }
}
