package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Piece;
import org.lapmark.measure.Variant;
import org.lapmark.packing.Search;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.cutting.CuttingLine;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.nest.Nest;
import org.lapmark.print.nest.NestArtist;
import org.lapmark.print.nest.NestedPiece;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.Layering;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.CuttingRoles;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.SheetSubject;
import org.lapmark.print.sheet.Tile;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** All sizes of a pattern on one sheet. */
class NestedTest {
  private static final String SMOCK = "src/test/resources/org/lapmark/publish/smock";
  private static final String HAT = "content/slipway-rain-hat";
  private static final String DEMO = "content/towpath-handlebar-bag";

  private final SheetPlanner planner = SamplePatterns.planner();

  static List<GradedPattern> graded(String folder) throws IOException {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(java.nio.file.Path.of(folder), findings);
    List<GradedPattern> patterns =
        source.sizes().sizes().stream()
            .map(size -> Grader.grade(source, Variant.ofSize(size), findings))
            .toList();
    assertEquals(List.of(), findings.sorted());
    return patterns;
  }

  /** A picture for a projector ends below the lowest name, not only below the lowest piece. */
  @ParameterizedTest
  @ValueSource(strings = {SMOCK, DEMO, HAT})
  void aProjectorShowsWholeNames(String folder) throws IOException {
    SheetPlan plan = planner.nested(graded(folder), Paper.PROJECTOR).sheet();
    int names = 0;
    for (Tile tile : plan.tiles()) {
      double reach = 0;
      for (Item item : flat(tile.page().items())) {
        if (item instanceof Item.Lettering words && words.role().contains("size-name")) {
          reach = Math.max(reach, words.anchor().y());
          names++;
        }
      }
      assertTrue(reach < tile.page().height(), reach + " of " + tile.page().height());
    }
    assertTrue(names > 20, names + " names");
  }

  private static List<Item> flat(List<Item> items) {
    List<Item> all = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        all.addAll(flat(group.items()));
      } else {
        all.add(item);
      }
    }
    return all;
  }

  @ParameterizedTest
  @ValueSource(strings = {SMOCK, DEMO})
  void stacksAreWithinTheirExtentAndAlongOneGrain(String folder) throws IOException {
    Nest nest = Nest.of(graded(folder));
    for (NestedPiece piece : nest.pieces()) {
      double largest = 0;
      Point grain = null;
      for (NestedPiece.Member member : piece.members()) {
        PieceArt art = PieceArt.of(new PlacedPiece(member.piece(), member.stack()));
        largest = Math.max(largest, art.polygon().getArea());
        assertTrue(
            PieceArt.shape(piece.extent()).buffer(0.2).contains(art.polygon()),
            piece.extent().name());
        // Foam has none.
        assertEquals(member.piece().hasGrain(), grain(art).isPresent(), piece.extent().name());
        if (grain(art).isPresent()) {
          Point along = grain(art).get();
          grain = grain == null ? along : grain;
          assertEquals(0, grain.cross(along), 1e-9);
          assertTrue(grain.dot(along) > 0);
        }
      }
      double area = PieceArt.shape(piece.extent()).getArea();
      assertTrue(area < 1.04 * largest, piece.extent().name() + " " + area / largest);
      assertFalse(piece.core().isEmpty());
    }
  }

  private static Optional<Point> grain(PieceArt art) {
    return art.strokes().stream()
        .filter(stroke -> stroke.role().equals("grainline"))
        .findFirst()
        .map(stroke -> stroke.path().end().minus(stroke.path().start()).unit());
  }

  @Test
  void aSizeDrawnAcrossIsTurnedToTheGrainOfTheOthers() {
    Piece piece = SamplePatterns.end(1, "End", 125, 140, 10);
    Affine turn = Affine.translation(30, -8).after(Affine.rotation(35));
    Piece across = turned(piece, turn);
    Nest nest =
        Nest.of(
            List.of(
                SamplePatterns.pattern("S", List.of(piece)),
                SamplePatterns.pattern("M", List.of(across))));
    NestedPiece.Member member = nest.pieces().get(0).members().get(1);
    Path once = piece.shape().cuttingLine().path();
    Path again = across.shape().cuttingLine().path().transformed(member.stack());
    for (double at = 0; at < again.length(); at += 5) {
      assertEquals(0, once.distance(again.atLength(at)), 1e-6);
    }
  }

  private static Piece turned(Piece piece, Affine turn) {
    PieceShape shape = piece.shape();
    return new Piece(
        piece.number(),
        piece.name(),
        new PieceShape(
            new Panel(
                shape.panel().name(),
                shape.panel().edges().stream()
                    .map(
                        edge ->
                            new Edge(
                                edge.name(), edge.from(), edge.to(), edge.path().transformed(turn)))
                    .toList(),
                Map.of(),
                shape.panel().marks().stream()
                    .filter(Mark.Grainline.class::isInstance)
                    .map(Mark.Grainline.class::cast)
                    .<Mark>map(
                        mark -> new Mark.Grainline(turn.apply(mark.from()), turn.apply(mark.to())))
                    .toList()),
            shape.allowances(),
            new CuttingLine(
                shape.cuttingLine().spans().stream()
                    .map(span -> new CuttingLine.Span(span.edge(), span.path().transformed(turn)))
                    .toList()),
            shape.notches().stream().map(notch -> notch.transformed(turn)).toList()),
        piece.cuts(),
        piece.statedSize());
  }

  @Test
  void piecesOfSomeSizesAreOnTheirLayersAlone() throws IOException {
    List<GradedPattern> patterns = graded(SMOCK);
    NestArtist artist = new NestArtist(planner.setting(), Nest.of(patterns));
    Map<Integer, PieceArt> art = new TreeMap<>();
    drawn(artist, Paper.A0).layout().art().forEach(one -> art.put(one.piece().number(), one));
    PieceArt gusset = art.get(4);
    assertEquals(List.of("Size 42", "Size 44"), artist.layering(gusset).any());
    assertTrue(
        gusset.strokes().stream()
            .allMatch(
                stroke ->
                    List.of("Size 42", "Size 44").containsAll(stroke.layering().any())
                        && !stroke.layering().any().isEmpty()));
    // The pocket is the same in all sizes: one cutting line, on no layer.
    PieceArt pocket = art.get(3);
    List<PieceArt.Stroke> lines =
        pocket.strokes().stream().filter(stroke -> stroke.role().startsWith("size-")).toList();
    assertEquals(1, lines.size());
    assertEquals(Layering.NONE, lines.get(0).layering());
    // Stitching lines are on a layer of their own besides that of their size.
    assertTrue(
        art.get(2).strokes().stream()
            .filter(stroke -> stroke.role().equals("stitching-line"))
            .allMatch(stroke -> stroke.layering().within().equals("Stitching lines")));
    for (int number : List.of(1, 2, 3, 4, 5)) {
      List<Path> grain =
          art.get(number).strokes().stream()
              .filter(stroke -> stroke.role().equals("grainline"))
              .map(PieceArt.Stroke::path)
              .toList();
      assertEquals(3, grain.size(), "a line and two arrows");
    }
  }

  private static SheetSubject.Drawn drawn(NestArtist artist, Paper paper) {
    Tiling tiling = Tiling.of(artist.pattern().source().masthead().joins());
    return artist.drawn(SheetLayout.of(artist.pieces(), paper, tiling, Search.DEFAULT), false);
  }

  @Test
  void labelsListWhatDiffersBySize() throws IOException {
    List<GradedPattern> patterns = graded(SMOCK);
    NestArtist artist = new NestArtist(planner.setting(), Nest.of(patterns));
    Piece pocket = artist.pieces().get(2);
    assertEquals(
        List.of("34, 36, 38: Cut 1 in linen", "40, 42, 44: Cut 2 in linen"),
        artist.label().cuts(pocket));
    assertEquals("34–44", artist.label().size(pocket));
    assertEquals("42, 44", artist.label().size(artist.pieces().get(3)));
    assertEquals(List.of("Cut 1 in linen"), artist.label().cuts(artist.pieces().get(0)));
    assertEquals(
        List.of("Half: place the dash-dotted edge on the fold", "Allowance 10\u00a0mm included"),
        artist.label().paper(artist.pieces().get(0)));
  }

  @Test
  void tilesNameTheSizesOnThem() throws IOException {
    NestedPlan plan = planner.nested(graded(SMOCK), Paper.A4);
    assertEquals(
        List.of(
            "Size 34", "Size 36", "Size 38", "Size 40", "Size 42", "Size 44", "Stitching lines"),
        plan.layers());
    assertEquals(List.of("Stitching lines"), plan.hidden());
    List<String> texts = plan.sheet().tiles().stream().map(Tile::alternative).toList();
    assertTrue(texts.stream().allMatch(text -> text.contains(" of sizes 34–44: ")));
    assertTrue(
        texts.stream().anyMatch(text -> text.contains("piece 4 (Gusset) in sizes 42, 44")),
        texts.toString());
    assertTrue(texts.stream().anyMatch(text -> text.contains("piece 1 (Front) in sizes 34–44")));
  }

  /** A name as it lies on the sheet. */
  private record Word(Item.Lettering item, Point centre, Point along, double half, double high) {
    boolean covers(Point point) {
      Point from = point.minus(centre);
      return Math.abs(from.dot(along)) < half && Math.abs(from.cross(along)) < high;
    }
  }

  private Word word(Item.Lettering item) {
    Style style = planner.styles().style(item.role());
    double angle = StrictMath.toRadians(item.angle());
    Point along = new Point(StrictMath.cos(angle), StrictMath.sin(angle));
    // Figures and capitals stand on the baseline and are two thirds of an em high.
    double high = style.fontSize() * 25.4 / 72 * 0.66 / 2;
    return new Word(
        item,
        item.anchor().minus(along.quarterTurn().times(high)),
        along,
        planner.lettering().width(item.text(), style) / 2,
        high);
  }

  @ParameterizedTest
  @ValueSource(strings = {SMOCK, DEMO})
  void everySizeIsNamedOftenAndNothingIsWrittenOnALine(String folder) throws IOException {
    for (Paper paper : List.of(Paper.A4, Paper.LETTER, Paper.A0)) {
      NestArtist artist = new NestArtist(planner.setting(), Nest.of(graded(folder)));
      SheetSubject.Drawn drawn = drawn(artist, paper);
      List<Word> words = new ArrayList<>();
      Map<Item, Layering> layers = new LinkedHashMap<>();
      for (SheetSubject.LineName name : drawn.names()) {
        if (name.item() instanceof Item.Lettering text) {
          words.add(word(text));
          layers.put(text, name.layering());
          assertTrue(text.angle() > -96 && text.angle() < 90, "upside down: " + text);
          assertTrue(
              name.cell().core().expanded(0.51).contains(name.box()), "on two tiles: " + text);
        }
      }
      for (int i = 0; i < words.size(); i++) {
        for (int k = 0; k < i; k++) {
          assertFalse(words.get(i).covers(words.get(k).centre()), words.get(i) + " on another");
        }
      }
      Map<String, Double> nameless = new TreeMap<>();
      for (PieceArt art : drawn.layout().art()) {
        for (PieceArt.Stroke stroke : art.strokes()) {
          if (!stroke.layering().within().isEmpty()) {
            continue;
          }
          double length = stroke.path().length();
          boolean own = stroke.role().startsWith(CuttingRoles.OWN);
          int steps = (int) Math.ceil(length);
          Box reach = stroke.path().bounds().expanded(3);
          List<Word> around = words.stream().filter(word -> reach.contains(word.centre())).toList();
          List<Word> same =
              words.stream()
                  .filter(word -> layers.get(word.item()).any().equals(stroke.layering().any()))
                  .toList();
          for (int i = 0; i <= steps; i++) {
            Point point = stroke.path().atLength(length * i / steps);
            for (Word word : around) {
              assertFalse(word.covers(point), word + " on " + stroke.role());
            }
            if (own) {
              double near =
                  same.stream()
                      .mapToDouble(word -> word.centre().distance(point))
                      .min()
                      .orElse(1e9);
              nameless.merge(stroke.layering().any().get(0), near, Math::max);
            }
          }
        }
      }
      // Wherever a maker stands on a line, her size's name is within a hand's breadth.
      nameless.forEach(
          (size, farthest) -> assertTrue(farthest < 75, folder + paper + size + " " + farthest));
      assertTrue(words.size() > 12);
    }
  }

  @Test
  void dashesAreOfDifferentKindsAndBeginWithTheLongest() {
    List<List<Double>> dashes = new ArrayList<>();
    for (int i = 1; i <= CuttingRoles.DASHES; i++) {
      for (String before : List.of("", "projector-", "projector-inverted-")) {
        List<Double> dash = planner.styles().style(before + CuttingRoles.OWN + i).dash();
        // Otherwise a line that runs on from tile to tile would change its dashes there.
        assertTrue(dash.stream().allMatch(part -> part <= dash.get(0)), before + i);
        assertEquals(0, dash.size() % 2);
      }
      dashes.add(planner.styles().style(CuttingRoles.OWN + i).dash());
    }
    assertEquals(CuttingRoles.DASHES, dashes.stream().distinct().count());
    assertTrue(planner.styles().style(CuttingRoles.COMMON).dash().isEmpty());
  }
}
