package org.lapmark.publish.product;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.document.book.SizesDocument;
import org.lapmark.document.manual.Manual;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.output.Purpose;

/**
 * The instructions of all sizes, or of all that consist of the same; those of one size are those of
 * all, where there is but one.
 */
final class SizesInstructions extends Product {
  SizesInstructions() {
    super("all-sizes");
  }

  @Override
  public List<Job> jobs(Run run) {
    List<Job> jobs = new ArrayList<>();
    for (Run.Group group : run.groups()) {
      Optional<List<Manual>> manuals = run.manuals(group.patterns());
      if (group.patterns().size() > 1 && manuals.isPresent()) {
        for (Paper paper : run.pages()) {
          Purpose purpose = group.purpose().on(paper);
          String name = run.names().of(purpose, "-instructions.pdf");
          SizesDocument document = new SizesDocument(manuals.get(), paper);
          jobs.add(Job.of(bench -> bench.file(this, purpose, name, document)));
        }
      }
    }
    return jobs;
  }
}
