package org.lapmark.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.RecordedPublication;
import org.lapmark.publish.TemplateFolder;
import org.lapmark.publish.request.Papers;
import org.lapmark.publish.request.Request;

/**
 * A whole publication in a warm process, with nothing remembered, against the least that its
 * libraries need for the same: setting its HTML and writing its drawings. The least lacks what has
 * no such measure: cut files, companion, layouts, arranging, fonts of tiles, and page numbers.
 */
record FloorRow() implements Row {
  private static final Path PATTERN = Path.of("content", "towpath-handlebar-bag");
  private static final double MOST = 1.3;
  private static final int WARMED = 2;
  private static final int COUNTED = 3;

  @Override
  public String name() {
    return "whole publish against the floor";
  }

  @Override
  public List<Measured> measure() throws IOException {
    try (Scratch scratch = new Scratch()) {
      List<Paper> papers = Papers.USUAL;
      RecordedPublication recorded =
          RecordedPublication.of(
              PATTERN, new Request(List.of(), papers, scratch.missing("recorded")));
      BareRendering bare = BareRendering.of(recorded);
      double[] whole = new double[COUNTED];
      double[] setting = new double[COUNTED];
      double[] drawing = new double[COUNTED];
      for (int i = -WARMED; i < COUNTED; i++) {
        Request request = new Request(List.of(), papers, scratch.missing("out"));
        double made =
            Processor.seconds(
                () -> new Publisher(TemplateFolder.bundled()).publish(PATTERN, request));
        double set = Processor.seconds(bare::set);
        double drawn = Processor.seconds(bare::draw);
        if (i >= 0) {
          whole[i] = made;
          setting[i] = set;
          drawing[i] = drawn;
        }
      }
      double publish = Processor.median(whole);
      double set = Processor.median(setting);
      double drawn = Processor.median(drawing);
      return List.of(
          Measured.atMost(
              name(),
              String.format(
                  Locale.ROOT,
                  "%.2f x (CPU %.2f s; floor %.2f s: HTML of %d documents in one pass each %.2f s,"
                      + " %d drawings %.2f s; publishing takes %d passes)",
                  publish / (set + drawn),
                  publish,
                  set + drawn,
                  recorded.books().size(),
                  set,
                  bare.drawings(),
                  drawn,
                  recorded.passes()),
              publish / (set + drawn),
              MOST,
              " x"));
    }
  }
}
