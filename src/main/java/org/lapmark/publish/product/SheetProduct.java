package org.lapmark.publish.product;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.document.Document;
import org.lapmark.grade.GradedPattern;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.output.Purpose;
import org.lapmark.publish.request.Extra;

/** A file for each variant on each paper. */
abstract class SheetProduct extends Product {
  private final String ending;

  SheetProduct(String kind, String ending) {
    super(kind);
    this.ending = ending;
  }

  SheetProduct(String kind, String ending, Extra extra) {
    super(kind, extra);
    this.ending = ending;
  }

  /** Whether it is made on such a paper. */
  abstract boolean isOn(Paper paper);

  /** The file; nothing where there is nothing to make it of. */
  abstract Optional<Document> document(Bench bench, Run run, GradedPattern pattern, SheetPlan plan);

  @Override
  public final List<Job> jobs(Run run) {
    List<Job> jobs = new ArrayList<>();
    for (GradedPattern pattern : run.printed()) {
      for (Paper paper : run.papers()) {
        if (isOn(paper)) {
          Purpose purpose = run.purpose(pattern).on(paper);
          jobs.add(
              Job.on(
                  pattern,
                  paper,
                  bench -> {
                    Optional<Document> document =
                        document(bench, run, pattern, bench.plan(pattern, paper));
                    return document.isEmpty()
                        ? List.of()
                        : bench.file(
                            this, purpose, run.names().of(purpose, ending), document.get());
                  }));
        }
      }
    }
    return jobs;
  }
}
