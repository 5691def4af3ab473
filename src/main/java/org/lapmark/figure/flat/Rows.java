package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.stitching.StitchKind;
import org.lapmark.figure.stitching.Stitching;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;

/** Where rows of stitching run. */
final class Rows {
  private Rows() {}

  /** Beside edges. */
  static SewnLine.Row alongEdges(SewnLine line, Staging staging, Subject on, double further) {
    if (line.distance() == null && line.kind().filter(Rows::isBesideTheSeam).isPresent()) {
      throw Faults.of(line.place(), FigureCode.FIGURE_KEY_MISSING, "name", "distance");
    }
    List<String> names = new ArrayList<>();
    line.lines().forEach(one -> names.addAll(on.edges(one)));
    double apart =
        line.distance() == null || line.kind().isEmpty()
            ? 0
            : staging.length(line.distance(), 0, 500);
    double outside = line.outside(apart, on.allowance(names.get(0))) - further;
    List<Path> paths = new ArrayList<>();
    for (Path path : on.beside(names, outside)) {
      paths.add(SewnLine.whole(path, outside, on));
    }
    SourceText first = line.lines().get(0);
    if (paths.isEmpty()) {
      throw Faults.of(
          first.position(),
          FigureCode.FIGURE_LINE_IMPOSSIBLE,
          "value",
          Staging.hundredth(Math.abs(outside)),
          "edge",
          first.text(),
          "size",
          staging.size());
    }
    double allowance = on.piece().shape().allowances().getOrDefault(names.get(0), 0.0);
    String told = staging.printed(line.distance() == null ? allowance : apart);
    String edge =
        staging
            .words()
            .list(line.lines().stream().map(one -> Spoken.edge(bare(on, one), staging)).toList());
    Optional<Path> base =
        line.lines().size() == 1 && on.panel().isOneLine(bare(on, first))
            ? Optional.of(on.line(first))
            : Optional.empty();
    return new SewnLine.Row(base, paths, -outside, said(line, "", edge, told));
  }

  /** Of what never runs on the stitching line it has to be said where it does. */
  private static boolean isBesideTheSeam(StitchKind kind) {
    return switch (kind) {
      case BASTE, TOPSTITCH, ZIGZAG, GATHER -> true;
      case SEW, RUNNING, SLIP, WHIP, LADDER, TACKS -> false;
    };
  }

  private static String bare(Subject on, SourceText reference) {
    String name = reference.text();
    String prefix = on.panel().name() + ".";
    return name.startsWith(prefix) ? name.substring(prefix.length()) : name;
  }

  /** On a placement line. */
  static SewnLine.Row alongMark(
      SewnLine line, Staging staging, SourceText stated, Path mark, double further) {
    double distance = line.distance() == null ? 0 : staging.length(line.distance(), 0, 500);
    double inside = distance + further;
    Path row = inside > 0 ? beside(line, staging, stated, mark, inside) : mark;
    String name = stated.text().replace('_', ' ');
    return new SewnLine.Row(
        Optional.of(mark),
        List.of(row),
        inside > 0 ? inside * Lines.handOf(mark) : 0,
        said(line, ".mark", name, staging.printed(distance)));
  }

  /** On several placement lines, none of which places are counted along. */
  static SewnLine.Row alongMarks(SewnLine line, Staging staging, List<Path> marks, double further) {
    List<SewnLine.Row> rows = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      rows.add(alongMark(line, staging, line.lines().get(i), marks.get(i), further));
    }
    List<String> names = line.lines().stream().map(one -> one.text().replace('_', ' ')).toList();
    String distance =
        staging.printed(line.distance() == null ? 0 : staging.length(line.distance(), 0, 500));
    return new SewnLine.Row(
        Optional.empty(),
        rows.stream().flatMap(row -> row.paths().stream()).toList(),
        0,
        said(line, ".mark", staging.words().list(names), distance));
  }

  private static Path beside(
      SewnLine line, Staging staging, SourceText stated, Path mark, double inside) {
    Position place = line.distance() == null ? line.place() : line.distance().text().position();
    return Lines.insideOf(mark, inside)
        .orElseThrow(
            () ->
                Faults.of(
                    place,
                    FigureCode.FIGURE_LINE_IMPOSSIBLE,
                    "value",
                    Staging.hundredth(inside),
                    "edge",
                    stated.text(),
                    "size",
                    staging.size()));
  }

  private static Stitching.Said said(SewnLine line, String where, String edge, String distance) {
    String kind = line.kind().map(StitchKind::word).orElse("edge");
    return new Stitching.Said("alt." + kind + where, List.of("edge", edge, "distance", distance));
  }
}
