package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.PlacedBody;
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
 * A line on a piece.
 *
 * @param kind what it is
 * @param edges the edges it follows
 * @param distance from the raw edge when basted, from the turned edge when topstitched; null for
 *     the stitching line
 * @param now whether this step does it
 * @param text a label, or null
 */
record SewnLine(
    Kind kind, List<SourceText> edges, Formula distance, boolean now, TemplateText text) {
  private static final Key<Entries<SourceText>> SEW = Key.of("sew", FigureForms.EDGES);
  private static final Key<Entries<SourceText>> BASTE = Key.of("baste", FigureForms.EDGES);
  private static final Key<Entries<SourceText>> TOPSTITCH = Key.of("topstitch", FigureForms.EDGES);
  private static final Key<Entries<SourceText>> EDGE = Key.of("edge", FigureForms.EDGES);
  private static final Key<Formula> DISTANCE = Key.of("distance", FigureForms.LENGTH);
  private static final Key<Boolean> NOW = Key.of("now", FigureForms.YES).unless("yes");
  private static final Key<TemplateText> TEXT = Key.of("text", FigureForms.LABEL);
  private static final Table TABLE =
      Table.of("line", SEW, BASTE, TOPSTITCH, EDGE, DISTANCE, NOW, TEXT)
          .oneOf(Choice.among(List.of(SEW, BASTE, TOPSTITCH, EDGE)));

  /** Stated in a list. */
  static final Form<Entries<SewnLine>> LIST = FigureForms.list(TABLE, SewnLine::read);

  /** What a line is. */
  enum Kind {
    SEW(SewnLine.SEW),
    BASTE(SewnLine.BASTE),
    TOPSTITCH(SewnLine.TOPSTITCH),
    EDGE(SewnLine.EDGE);

    private final Key<Entries<SourceText>> key;

    Kind(Key<Entries<SourceText>> key) {
      this.key = key;
    }

    private String word() {
      return key.name();
    }

    /** How far outside the stitching line it runs. */
    private double outside(double distance, double allowance) {
      return switch (this) {
        case EDGE -> allowance;
        case BASTE -> allowance - distance;
        case SEW, TOPSTITCH -> -distance;
      };
    }
  }

  private static SewnLine read(Keys keys) {
    Kind kind = Kind.valueOf(keys.one().toUpperCase(Locale.ROOT));
    if (kind == Kind.BASTE || kind == Kind.TOPSTITCH) {
      keys.need(DISTANCE);
    } else if (kind == Kind.EDGE) {
      keys.idle(EDGE, List.of(DISTANCE), List.of(NOW, TEXT));
    }
    return keys.whole(
        new SewnLine(
            kind, keys.all(kind.key), keys.get(DISTANCE), keys.or(NOW, true), keys.get(TEXT)));
  }

  Detail stage(Staging staging, Subject on, PlacedBody laid) {
    List<String> names = new ArrayList<>();
    edges.forEach(one -> names.addAll(on.edges(one)));
    boolean emphasis = kind == Kind.EDGE;
    double apart = distance == null || emphasis ? 0 : staging.length(distance, 0, 500);
    double outside = kind.outside(apart, on.allowance(names.get(0)));
    List<Path> paths = new ArrayList<>();
    for (Path path : on.beside(names, outside)) {
      paths.add(outside < 0 && !path.isClosed() ? Lines.extended(path, on.deepest()) : path);
    }
    SourceText first = edges.get(0);
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
    String told = "";
    if (!emphasis) {
      double allowance = on.piece().shape().allowances().getOrDefault(names.get(0), 0.0);
      told = staging.printed(distance == null ? allowance : apart);
    }
    boolean haloed = on.banded();
    String edge = first.text().replace('_', ' ');
    Sewing bare = new Sewing(kind, paths, now, haloed, edge, told, Optional.empty());
    // Where layers are cut away, what is sewn through them is drawn all the same.
    List<Point> points = new ArrayList<>();
    bare.on(laid).forEach(path -> points.addAll(path.flattened(FlatInk.FLATNESS)));
    on.checkSeen(emphasis ? laid : laid.uncut(), first.position(), points);
    if (text == null) {
      return bare;
    }
    if (bare.anchors(laid, bare.on(laid)).isEmpty() && !laid.cuts().isEmpty()) {
      throw on.leftOut(text.source().position(), laid.cuts().get(0));
    }
    Optional<String> words = Optional.of(staging.text(text));
    return new Sewing(kind, paths, now, haloed, edge, told, words);
  }

  /**
   * A line as it is drawn.
   *
   * @param kind what it is
   * @param paths where it runs
   * @param now whether this step does it
   * @param haloed whether it stands out from what lies round the rim
   * @param edge the first edge that it follows
   * @param distance how far it is from that edge, as printed
   * @param words its label
   */
  private record Sewing(
      Kind kind,
      List<Path> paths,
      boolean now,
      boolean haloed,
      String edge,
      String distance,
      Optional<String> words)
      implements Detail {
    private List<Path> on(PlacedBody laid) {
      return paths.stream().map(path -> path.transformed(laid.map())).toList();
    }

    @Override
    public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
      List<Path> drawn = on(laid);
      String role = "figure-" + kind.word() + (now ? "-now" : "");
      if (kind == Kind.EDGE) {
        ink.canvas().lines(seen(laid, drawn), role);
      } else {
        if (haloed) {
          ink.canvas().within(laid.outline(), drawn, "figure-line-halo");
        }
        ink.within(laid.whole(), drawn, role);
      }
      if (words.isPresent()) {
        List<Point> anchors = anchors(laid, drawn);
        // Without any allowance the line runs along the rim, inside of nothing.
        ink.canvas().wish(words.get(), anchors.isEmpty() ? rim(laid, drawn) : anchors, null);
      }
    }

    private List<Point> anchors(PlacedBody laid, List<Path> drawn) {
      if (kind == Kind.EDGE) {
        return rim(laid, drawn);
      }
      List<Point> outline = laid.polygon();
      return places(drawn).stream().filter(point -> Polygons.inside(outline, point)).toList();
    }

    private static List<Point> rim(PlacedBody laid, List<Path> drawn) {
      return places(drawn).stream().filter(point -> !laid.hides(point)).toList();
    }

    private static List<Point> places(List<Path> drawn) {
      List<Point> places = new ArrayList<>();
      for (Path path : drawn) {
        double length = path.length();
        for (int i = 1; i < 12; i++) {
          places.add(path.atLength(length * i / 12));
        }
      }
      return places;
    }

    /** The parts of lines that aren't left out. */
    private static List<Path> seen(PlacedBody laid, List<Path> paths) {
      if (laid.cuts().isEmpty()) {
        return paths;
      }
      List<Path> seen = new ArrayList<>();
      for (Path path : paths) {
        List<Point> run = new ArrayList<>();
        // Steps short enough for the place where the rest is left out.
        int steps = (int) Math.max(1, Math.ceil(path.length() / 0.25));
        for (int i = 0; i <= steps; i++) {
          Point point = path.atLength(path.length() * i / steps);
          if (!laid.hides(point)) {
            run.add(point);
          }
          if (run.size() > 1 && (i == steps || laid.hides(point))) {
            seen.add(Path.polyline(run));
          }
          if (laid.hides(point)) {
            run.clear();
          }
        }
      }
      return seen;
    }

    @Override
    public Optional<String> inWords(Words sentences) {
      if (kind == Kind.EDGE) {
        return Optional.empty();
      }
      return Optional.of(sentences.word("alt." + kind.word(), "edge", edge, "distance", distance));
    }
  }
}
