package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.stitching.Ends;
import org.lapmark.figure.stitching.Stitching;
import org.lapmark.geometry.Path;

/** What is said of stitching beside where it runs. */
final class Spoken {
  private Spoken() {}

  /** What an edge is called among other words. */
  static String edge(String name, Staging staging) {
    return staging.words().edge(name);
  }

  static List<Stitching.Said> of(
      SewnLine line, Staging staging, Subject on, SewnLine.Row row, double between) {
    List<Stitching.Said> said = new ArrayList<>();
    Extent extent = line.extent();
    if (extent.from() != null || extent.to() != null) {
      row.base()
          .ifPresent(
              base -> {
                Extent.Stretch whole = extent.whole(staging, base);
                said.add(
                    new Stitching.Said(
                        "alt.stitched.part",
                        List.of(
                            "from",
                            staging.printed(whole.from()),
                            "to",
                            staging.printed(whole.to()))));
              });
    }
    row.base().ifPresent(base -> gaps(line, staging, base, said));
    if (line.rows() > 1) {
      said.add(
          new Stitching.Said(
              "alt.stitched.rows",
              List.of("count", line.rows(), "distance", staging.printed(between))));
    }
    if (line.ends() != Ends.PLAIN) {
      said.add(
          new Stitching.Said(
              "alt.stitched.ends." + line.ends().name().toLowerCase(Locale.ROOT), List.of()));
    }
    if (line.direction() != Stitching.Direction.ANY) {
      said.add(
          new Stitching.Said(
              "alt.stitched.direction." + line.direction().name().toLowerCase(Locale.ROOT),
              List.of()));
    }
    return said;
  }

  private static void gaps(SewnLine line, Staging staging, Path base, List<Stitching.Said> said) {
    for (Extent.Stretch gap : line.extent().open(staging, base)) {
      said.add(
          new Stitching.Said("alt.stitched.gap", List.of("length", staging.printed(gap.length()))));
    }
  }
}
