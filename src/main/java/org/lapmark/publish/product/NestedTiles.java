package org.lapmark.publish.product;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.document.book.NestedTilesDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.manual.Look;
import org.lapmark.print.NestedPlan;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.output.Purpose;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.RefusedException;
import org.lapmark.publish.request.Request;
import org.lapmark.source.PatternSource;

/** Tiles of all sizes stacked; the tiles of one size are those of all, where there is but one. */
public final class NestedTiles extends Product {
  /** Asks for them. */
  public static final Extra EXTRA =
      new Extra(
          "--nested",
          "Tiles of all sizes stacked as well, each size a layer with a dash of its own, on every "
              + "paper that is made.") {
        @Override
        public void refuseUnfit(Request request, List<Paper> papers) {
          if (!(request.sizes().isEmpty() && request.choices().isEmpty())) {
            throw new RefusedException(
                "stacked tiles have every size with everything as by default: leave out --size and"
                    + " --option, or --nested");
          }
        }

        @Override
        public Optional<String> missing(PatternSource source) {
          return source.sizes().sizes().size() < 2
              ? Optional.of("no stacked tiles: there is one size, and its tiles are those of all")
              : Optional.empty();
        }
      };

  NestedTiles() {
    super("nested", EXTRA);
  }

  @Override
  boolean isOfPieces() {
    return true;
  }

  @Override
  public List<Job> jobs(Run run) {
    List<Job> jobs = new ArrayList<>();
    if (run.printed().size() > 1 && run.printed().size() >= run.source().sizes().sizes().size()) {
      for (Paper paper : run.papers()) {
        Purpose purpose = Purpose.ofSizes(List.of(), "").on(paper);
        String name = run.names().of(purpose, "-tiles.pdf");
        jobs.add(
            Job.of(
                bench -> {
                  NestedPlan plan = bench.desk().nested(run.printed(), paper);
                  if (plan.sheet().tiles().isEmpty()) {
                    bench.addEmptyStack(paper);
                    return List.of();
                  }
                  Plates plates = Plates.of(bench.desk().planner(Look.STANDARD));
                  return bench.file(
                      this,
                      purpose,
                      name,
                      new NestedTilesDocument(run.printed().get(0), plan, plates));
                }));
      }
    }
    return jobs;
  }
}
