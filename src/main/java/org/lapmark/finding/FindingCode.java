package org.lapmark.finding;

/**
 * A kind of problem. Each package that finds problems declares its codes in one enum that
 * implements this interface, and keeps their English beside it in a resource {@code
 * findings.properties}: {@code <id>.message} and {@code <id>.hint}, ICU message patterns with named
 * arguments.
 */
public interface FindingCode {
  /**
   * The stable name shown to users and listed in reports, such as {@code measure-cycle}.
   *
   * @return lower-case words joined by hyphens
   */
  String id();

  /**
   * How much a finding of this kind weighs.
   *
   * @return the severity
   */
  Severity severity();
}
