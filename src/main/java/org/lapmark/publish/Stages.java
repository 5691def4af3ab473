package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
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
   * What one thread needs to lay out and write documents in a language, with all pages or without
   * those that no line runs over.
   */
  Desk desk(Locale language, boolean blankPages);

  /** Lays out and writes documents, for one thread. */
  interface Desk {
    /** Arranges the pieces on a paper. */
    SheetPlan plan(GradedPattern pattern, Paper paper);

    /** What the instructions say, whatever the paper. */
    Manual manual(GradedPattern pattern, Findings findings);

    /** The same in large print. */
    Manual enlarged(Manual manual, Findings findings);

    /** The complete document. */
    byte[] complete(Manual manual, SheetPlan plan);

    /** The complete document without its tiles. */
    byte[] instructions(Manual manual, SheetPlan plan);

    /** The instructions of all sizes in one document. */
    byte[] allSizes(List<Manual> manuals, Paper paper, Findings findings);

    /** How the panels grow from size to size. */
    byte[] gradeReport(List<GradedPattern> patterns, Paper paper);

    /** The tiles alone. */
    byte[] tiles(GradedPattern pattern, SheetPlan plan);

    /** The cut file of one piece. */
    byte[] cutFile(GradedPattern pattern, Piece piece);

    /** The tiles of all sizes stacked, each size a layer; empty when no piece needs paper. */
    Optional<byte[]> nested(List<GradedPattern> patterns, Paper paper);

    /** The companion with every size. */
    byte[] companion(List<GradedPattern> patterns, Findings findings);
  }
}
