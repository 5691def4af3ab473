package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.print.Paper;
import org.lapmark.print.SheetPlan;
import org.lapmark.source.PatternSource;

/**
 * The stages that a folder goes through, in the order of the methods. Every stage may end with a
 * {@link org.lapmark.finding.FindingException}.
 */
interface Stages {
  /** Reads a folder; null when nothing could be read. */
  PatternSource read(Path folder, Findings findings) throws IOException;

  /** Evaluates a pattern in one variant. */
  GradedPattern grade(PatternSource source, Variant variant, Findings findings);

  /** Holds the variants of a pattern against each other. */
  default void across(List<GradedPattern> patterns, Findings findings) {}

  /** What one thread needs to lay out and write documents in a language. */
  Desk desk(Locale language);

  /** Lays out and writes documents, for one thread. */
  interface Desk {
    /** Arranges the pieces on a paper. */
    SheetPlan plan(GradedPattern pattern, Paper paper);

    /** The complete document. */
    byte[] complete(GradedPattern pattern, SheetPlan plan);

    /** The tiles alone. */
    byte[] tiles(GradedPattern pattern, SheetPlan plan);
  }
}
