package org.lapmark.measure;

import java.util.Optional;

/** What a sign between two parts of a formula does. */
interface Operation {
  /**
   * What the whole comes to.
   *
   * @throws org.lapmark.finding.FindingException at the part that can't be computed
   */
  Value value(Operands sides, Evaluation in);

  /** The {@link Value#kind()} of the whole, as far as that shows without computing it. */
  Optional<String> kind(Operands sides, Kinds kinds);
}
