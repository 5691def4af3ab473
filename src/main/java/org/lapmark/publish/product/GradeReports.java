package org.lapmark.publish.product;

import java.util.List;
import org.lapmark.document.grading.GradeReportDocument;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.output.Purpose;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.RefusedException;
import org.lapmark.publish.request.Request;
import org.lapmark.source.PatternSource;

/** How the sizes grow, whatever is chosen; where every size is made. */
public final class GradeReports extends Product {
  /** Asks for it. */
  public static final Extra EXTRA =
      new Extra(
          "--with-grade-report",
          "The grade report as well, for designer and editor: every edge by size with increments, "
              + "and the sizes stacked on each other.") {
        @Override
        public void refuseUnfit(Request request, List<Paper> papers) {
          refuseUnread(request, papers);
        }

        @Override
        public void refuseUnfit(PatternSource source, Request request) {
          if (!request.sizes().isEmpty() && !request.sizes().containsAll(source.sizes().sizes())) {
            throw new RefusedException(
                "a grade report compares every size of ‘"
                    + source.folder()
                    + "’: leave out --size or --with-grade-report");
          }
        }
      };

  GradeReports() {
    super("grade-report", EXTRA);
  }

  @Override
  public List<Job> jobs(Run run) {
    if (!run.isEverySize()) {
      return List.of();
    }
    String choices =
        run.graded().stream()
            .map(made -> run.choices().get(made.variant()))
            .filter(words -> !words.isEmpty())
            .findFirst()
            .orElse("");
    return run.pages().stream()
        .map(
            paper -> {
              Purpose purpose = Purpose.ofSizes(List.of(), choices).on(paper);
              return Job.of(
                  bench ->
                      bench.file(
                          this,
                          purpose,
                          run.names().of(purpose, "-grade-report.pdf"),
                          new GradeReportDocument(run.graded(), paper)));
            })
        .toList();
  }
}
