package org.lapmark.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Collects the findings of one pattern folder. The same finding is kept once. Not safe for use by
 * several threads at once: each stage that runs in parallel has a collector of its own, joined in a
 * fixed order.
 */
public final class Findings {
  /** How many findings of one folder are kept; further ones are only counted. */
  public static final int LIMIT = 500;

  private final List<Finding> kept = new ArrayList<>();
  private int leftOut;

  /**
   * Adds a finding.
   *
   * @param finding what was found
   */
  public void add(Finding finding) {
    if (kept.stream().anyMatch(other -> isSame(other, finding))) {
      return;
    }
    if (kept.size() < LIMIT) {
      kept.add(finding);
    } else {
      leftOut++;
    }
  }

  /** Equality, with what differs most often asked first: a line's text may be long. */
  private static boolean isSame(Finding one, Finding other) {
    return one.position().column() == other.position().column()
        && one.position().line() == other.position().line()
        && one.equals(other);
  }

  /**
   * Adds a finding with arguments given in turn.
   *
   * @param code the kind of problem
   * @param position where it stands
   * @param namesAndValues argument name, value, name, value …
   */
  public void add(FindingCode code, Position position, Object... namesAndValues) {
    add(Finding.of(code, position, namesAndValues));
  }

  /**
   * Adds all of another collector's findings.
   *
   * @param others the other collector
   */
  public void addAll(Findings others) {
    others.kept.forEach(this::add);
    leftOut += others.leftOut;
  }

  /**
   * Adds another collector's findings one by one. Those that it left out stay counted.
   *
   * @param others the other collector
   * @param change what becomes of each; nothing when it isn't to be added
   */
  public void addAll(Findings others, Function<Finding, Optional<Finding>> change) {
    others.sorted().forEach(finding -> change.apply(finding).ifPresent(this::add));
    leftOut += others.leftOut;
  }

  /**
   * Whether an error is among them.
   *
   * @return true when the folder cannot be published
   */
  public boolean hasErrors() {
    return kept.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
  }

  /**
   * All findings kept.
   *
   * @return by position, then code
   */
  public List<Finding> sorted() {
    return kept.stream().sorted(Finding.BY_POSITION).toList();
  }

  /**
   * How many findings were counted but not kept.
   *
   * @return the number beyond {@link #LIMIT}
   */
  public int leftOut() {
    return leftOut;
  }
}
