package org.lapmark.publish.product;

import java.util.List;
import java.util.function.Function;
import org.lapmark.document.companion.Companion;
import org.lapmark.grade.EvaluatedPattern;

/** The companion, which is for no paper: of all sizes, or of all that consist of the same. */
final class Companions extends Product {
  Companions() {
    super("companion");
  }

  @Override
  public List<Job> jobs(Run run) {
    return jobs(run, Companion::new);
  }

  /** Each figure can be drawn here that can be drawn in the instructions of its size. */
  @Override
  public List<Job> rehearsal(Run run) {
    return jobs(run, patterns -> new Companion(patterns).withoutFigures());
  }

  private List<Job> jobs(Run run, Function<List<EvaluatedPattern>, Companion> companion) {
    return run.groups().stream()
        .map(
            group ->
                Job.of(
                    bench ->
                        bench.file(
                            this,
                            group.purpose(),
                            group.names().isEmpty()
                                ? run.names().alone(".html")
                                : run.names().of(group.purpose(), ".html"),
                            companion.apply(group.patterns()))))
        .toList();
  }
}
