package org.lapmark.publish.product;

import java.util.List;
import org.lapmark.document.companion.Companion;

/** The companion, which is for no paper: of all sizes, or of all that consist of the same. */
final class Companions extends Product {
  Companions() {
    super("companion");
  }

  @Override
  public List<Job> jobs(Run run) {
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
                            new Companion(group.patterns()))))
        .toList();
  }
}
