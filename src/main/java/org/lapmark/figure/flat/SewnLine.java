package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.stitching.Ends;
import org.lapmark.figure.stitching.StitchKind;
import org.lapmark.figure.stitching.Stitching;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.Measure;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * A line on a piece: stitching along edges or along a placement line, or edges that stand out.
 *
 * @param kind the stitch; nothing for edges that stand out
 * @param lines the edges that it follows, or a placement line
 * @param distance from the raw edge when basted, from the turned edge when topstitched; null for
 *     the stitching line
 * @param extent how much of it is sewn
 * @param rows how many rows there are, the further ones inside
 * @param apart the distance from row to row, or null for the usual one
 * @param ends what is done where it begins and ends
 * @param direction which way it is sewn
 * @param now whether this step does it
 * @param text a label, or null
 * @param place where it is stated
 */
record SewnLine(
    Optional<StitchKind> kind,
    List<SourceText> lines,
    Formula distance,
    Extent extent,
    int rows,
    Formula apart,
    Ends ends,
    Stitching.Direction direction,
    boolean now,
    TemplateText text,
    Position place) {
  private static final Key<Entries<SourceText>> SEW = Key.of("sew", FigureForms.SEWN);
  private static final Key<Entries<SourceText>> BASTE = Key.of("baste", FigureForms.SEWN);
  private static final Key<Entries<SourceText>> TOPSTITCH = Key.of("topstitch", FigureForms.SEWN);
  private static final Key<Entries<SourceText>> ZIGZAG = Key.of("zigzag", FigureForms.SEWN);
  private static final Key<Entries<SourceText>> GATHER = Key.of("gather", FigureForms.SEWN);
  private static final Key<Entries<SourceText>> HAND = Key.of("hand", FigureForms.SEWN);
  private static final Key<Entries<SourceText>> EDGE = Key.of("edge", FigureForms.EDGES);
  private static final Key<String> STITCH =
      Key.of("stitch", FigureForms.words("running", "slip", "whip", "ladder", "tacks"))
          .unless("running");
  private static final Key<Formula> DISTANCE = Key.of("distance", FigureForms.LENGTH);
  private static final Key<Integer> ROWS = Key.of("rows", FigureForms.count(6)).unless("1");
  private static final Key<Formula> APART = Key.of("apart", FigureForms.LENGTH).unless("6 mm");
  private static final Key<Ends> ENDS =
      Key.of("ends", FigureForms.constant(Ends.class)).unless("plain");
  private static final Key<Stitching.Direction> DIRECTION =
      Key.of("direction", FigureForms.constant(Stitching.Direction.class)).unless("any");
  private static final Key<Boolean> NOW = Key.of("now", FigureForms.YES).unless("yes");
  private static final Key<TemplateText> TEXT = Key.of("text", FigureForms.LABEL);
  private static final List<Key<Entries<SourceText>>> KINDS =
      List.of(SEW, BASTE, TOPSTITCH, ZIGZAG, GATHER, HAND, EDGE);

  /** From row to row, in millimetres. */
  private static final double USUALLY_APART = 6;

  /** What is looked at of stitching alone. */
  private static final List<Key<?>> OF_STITCHING =
      List.of(DISTANCE, Extent.FROM, Extent.TO, Extent.GAPS, ROWS, APART, ENDS, DIRECTION);

  private static final Table TABLE =
      Table.of("line")
          .with(KINDS)
          .with(List.of(STITCH))
          .with(OF_STITCHING)
          .with(List.of(NOW, TEXT))
          .oneOf(Choice.among(KINDS));

  /** Stated in a list. */
  static final Form<Entries<SewnLine>> LIST = FigureForms.list(TABLE, SewnLine::read);

  private static SewnLine read(Keys keys) {
    String one = keys.one();
    Key<Entries<SourceText>> lines =
        KINDS.stream().filter(key -> key.name().equals(one)).findFirst().orElseThrow();
    Optional<StitchKind> kind = Optional.empty();
    // What isn’t looked at is read all the same, so that what is wrong with it is told.
    String stitch = keys.or(STITCH, "running");
    if (lines == EDGE) {
      keys.idle(EDGE, OF_STITCHING, List.of(NOW, TEXT));
    } else if (lines == HAND) {
      kind = Optional.of(kind(stitch));
    } else {
      kind = Optional.of(kind(one));
    }
    if (lines != HAND) {
      keys.idle(lines, List.of(STITCH), OF_STITCHING);
    }
    int rows = keys.or(ROWS, 1);
    if (rows == 1 && !keys.amiss(ROWS)) {
      keys.idle(lines, List.of(APART), List.of(ROWS));
    }
    return keys.whole(
        new SewnLine(
            kind,
            keys.all(lines),
            keys.get(DISTANCE),
            Extent.read(keys),
            rows,
            keys.get(APART),
            keys.or(ENDS, Ends.PLAIN),
            keys.or(DIRECTION, Stitching.Direction.ANY),
            keys.or(NOW, true),
            keys.get(TEXT),
            keys.position()));
  }

  /** The same after the step that does it. */
  SewnLine done() {
    return new SewnLine(
        kind,
        lines,
        distance,
        extent,
        rows,
        apart,
        ends,
        Stitching.Direction.ANY,
        false,
        null,
        place);
  }

  private static StitchKind kind(String word) {
    return StitchKind.valueOf(word.toUpperCase(Locale.ROOT));
  }

  /** What it comes to: what is drawn, and the lengths of gaps. */
  record Staged(Detail detail, List<Measure> gaps) {
    /** Copies the list. */
    Staged {
      gaps = List.copyOf(gaps);
    }
  }

  Staged stage(Staging staging, Subject on, PlacedBody laid) {
    Row first = row(staging, on, 0);
    if (kind.isEmpty()) {
      return new Staged(edges(staging, on, laid, first), List.of());
    }
    List<Path> runs = new ArrayList<>();
    double between = apart == null ? USUALLY_APART : staging.length(apart, 0.5, 200);
    for (int i = 0; i < rows; i++) {
      runs.addAll(sewn(staging, i == 0 ? first : row(staging, on, i * between)));
    }
    List<Stitching.Named> named = new ArrayList<>();
    List<Measure> gaps = new ArrayList<>();
    List<Stitching.Said> said = new ArrayList<>();
    said.add(first.said);
    said.addAll(Spoken.of(this, staging, on, first, between));
    if (!extent.gaps().isEmpty()) {
      gaps(staging, on, laid, first, named, gaps);
    }
    Optional<String> words = Optional.ofNullable(text).map(staging::text);
    Stitching stitching =
        new Stitching(kind.get(), runs, ends, direction, now, on.dark(), words, named, said);
    // Where layers are cut away, what is sewn through them is drawn all the same.
    on.checkSeen(laid.uncut(), lines.get(0).position(), stitching.points(laid.uncut()));
    if (text != null && stitching.anchors(laid).isEmpty() && !laid.cuts().isEmpty()) {
      throw on.leftOut(text.source().position(), laid.cuts().get(0));
    }
    return new Staged(stitching, gaps);
  }

  private Detail edges(Staging staging, Subject on, PlacedBody laid, Row row) {
    Optional<String> words = Optional.ofNullable(text).map(staging::text);
    EmphasisedEdges edges = new EmphasisedEdges(row.paths, now, words);
    on.checkSeen(laid, lines.get(0).position(), edges.points(laid));
    if (text != null && edges.anchors(laid).isEmpty() && !laid.cuts().isEmpty()) {
      throw on.leftOut(text.source().position(), laid.cuts().get(0));
    }
    return edges;
  }

  /**
   * A row of it.
   *
   * @param base the line along which places are counted; nothing where there are several
   * @param paths where it runs as a whole
   * @param inside how far to the right of the base
   * @param said a sentence about it
   */
  record Row(Optional<Path> base, List<Path> paths, double inside, Stitching.Said said) {
    Row {
      paths = List.copyOf(paths);
    }
  }

  private Row row(Staging staging, Subject on, double further) {
    List<Path> marked =
        kind.isEmpty()
            ? List.of()
            : lines.stream().flatMap(one -> on.placement(one).stream()).toList();
    if (marked.size() == 1 && lines.size() == 1) {
      return Rows.alongMark(this, staging, lines.get(0), marked.get(0), further);
    }
    if (!marked.isEmpty() && marked.size() == lines.size()) {
      return Rows.alongMarks(this, staging, marked, further);
    }
    return Rows.alongEdges(this, staging, on, further);
  }

  /** How far outside the stitching line it runs. */
  double outside(double apart, double allowance) {
    if (kind.isEmpty()) {
      return allowance;
    }
    return switch (kind.get()) {
      case BASTE, GATHER, ZIGZAG -> allowance - apart;
      case SEW, TOPSTITCH, RUNNING, SLIP, WHIP, LADDER, TACKS -> -apart;
    };
  }

  private List<Path> sewn(Staging staging, Row row) {
    if (extent.isAll()) {
      return row.paths;
    }
    Path base =
        row.base.orElseThrow(
            () ->
                Faults.of(
                    extent.stated(), FigureCode.FIGURE_EXTENT_OF_SEVERAL, "size", staging.size()));
    List<Path> sewn = new ArrayList<>();
    for (Extent.Stretch stretch : extent.sewn(staging, base)) {
      Extent.part(base, row.paths.get(0), row.inside, stretch).ifPresent(sewn::add);
    }
    return sewn;
  }

  private void gaps(
      Staging staging,
      Subject on,
      PlacedBody laid,
      Row row,
      List<Stitching.Named> named,
      List<Measure> measures) {
    Path base = row.base.orElseThrow();
    List<Extent.Stretch> open = extent.open(staging, base);
    for (int i = 0; i < open.size(); i++) {
      Extent.Stretch gap = open.get(i);
      Extent.Gap stated = extent.gaps().get(i);
      Point middle =
          base.atLength(gap.middle())
              .plus(base.tangentAtLength(gap.middle()).quarterTurn().times(row.inside));
      if (stated.text() != null) {
        named.add(new Stitching.Named(staging.text(stated.text()), middle));
      }
      if (stated.measured()) {
        measures.add(
            Dimension.along(
                staging, on, laid, stated.from().text().position(), base, lines.get(0), gap));
      }
    }
  }

  /** Beside one another, several edges; also what is drawn out straight at its ends. */
  static Path whole(Path path, double outside, Subject on) {
    return outside < 0 && !path.isClosed() ? Lines.extended(path, on.deepest()) : path;
  }
}
