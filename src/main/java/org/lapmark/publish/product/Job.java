package org.lapmark.publish.product;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.output.Manifest;

/**
 * Some files to be made by one thread.
 *
 * @param sheets the sheets that they need, if any: what needs the same is done together
 * @param work makes them
 */
public record Job(Optional<Sheets> sheets, Work work) {
  /** A variant arranged on a paper. */
  public record Sheets(Variant variant, Paper paper) {}

  /** Makes files. */
  @FunctionalInterface
  public interface Work {
    /** Makes files at a bench. */
    List<Manifest.Entry> at(Bench bench) throws IOException;
  }

  public static Job of(Work work) {
    return new Job(Optional.empty(), work);
  }

  static Job on(EvaluatedPattern pattern, Paper paper, Work work) {
    return new Job(Optional.of(new Sheets(pattern.variant(), paper)), work);
  }

  /** Sees whether the pieces can be arranged. */
  public static Job arranging(EvaluatedPattern pattern, Paper paper) {
    return on(
        pattern,
        paper,
        bench -> {
          bench.arrange(pattern, paper);
          return List.of();
        });
  }

  /** What is done together, in the order of the first of each. */
  public static List<Work> together(List<Job> jobs) {
    Map<Object, List<Work>> groups = new LinkedHashMap<>();
    for (Job job : jobs) {
      Object group = job.sheets.isPresent() ? job.sheets.get() : groups.size();
      groups.computeIfAbsent(group, key -> new ArrayList<>()).add(job.work);
    }
    return groups.values().stream().map(Job::all).toList();
  }

  private static Work all(List<Work> works) {
    return bench -> {
      List<Manifest.Entry> entries = new ArrayList<>();
      for (Work work : works) {
        entries.addAll(work.at(bench));
      }
      return entries;
    };
  }
}
