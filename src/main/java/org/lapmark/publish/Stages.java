package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.packing.Effort;
import org.lapmark.publish.product.Desk;
import org.lapmark.source.PatternSource;

/**
 * The stages that a folder goes through, in the order of the methods. Every stage may end with a
 * {@link org.lapmark.finding.FindingException}.
 */
interface Stages {
  /** Reads a folder; null when nothing could be read. */
  PatternSource read(Path folder, Findings findings) throws IOException;

  /** Evaluates a pattern in one variant. */
  EvaluatedPattern grade(PatternSource source, Variant variant, Findings findings);

  /** Holds the variants of a pattern against each other. */
  default void across(List<EvaluatedPattern> patterns, Findings findings) {}

  /** The folder of templates that take the place of the program's own, if there is one. */
  default Optional<Path> templateFolder() {
    return Optional.empty();
  }

  /** Checks such templates by themselves. */
  default void checkTemplates(Findings findings) {}

  /** What is wrong with such templates when something has failed because of them. */
  default Optional<Finding> templateFault(Throwable failure) {
    return Optional.empty();
  }

  /**
   * A hash of what is the same for all folders: the program and its templates.
   *
   * @return nothing if it can't be told, so that nothing is known to be up to date
   */
  default Optional<String> common() {
    return Optional.empty();
  }

  /**
   * What one thread needs to lay out and write documents in a language, with all pages or without
   * those that no line runs over.
   *
   * @param effort how hard arrangements are searched for
   */
  Desk desk(Locale language, boolean blankPages, Effort effort);
}
