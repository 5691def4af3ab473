package org.lapmark.publish;

import java.util.List;
import java.util.Objects;
import org.lapmark.grade.EvaluatedPattern;

/**
 * A folder evaluated for walking its seams or comparing its sizes.
 *
 * @param outcome findings and failure, with nothing written
 * @param patterns the pattern in each variant, with its seams; what couldn't be evaluated is
 *     missing
 */
public record EvaluatedFolder(Outcome outcome, List<EvaluatedPattern> patterns) {
  /** Copies the list. */
  public EvaluatedFolder {
    Objects.requireNonNull(outcome);
    patterns = List.copyOf(patterns);
  }
}
