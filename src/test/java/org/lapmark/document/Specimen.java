package org.lapmark.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.lapmark.document.book.Plates;
import org.lapmark.document.template.Templates;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Cut;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.grade.StatedSize;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.Scope;
import org.lapmark.measure.TemplateText;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.cutting.CuttingLine;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.lapmark.source.FinishedSource;
import org.lapmark.source.Masthead;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.SizeTable;
import org.lapmark.wording.Wording;

/** A small pattern made by hand, with sheets of plain drawings. */
public final class Specimen implements Plates {
  static final String FILE = "harbour-roll/pattern.yaml";
  static final Position HERE = Position.ofFile(FILE);

  private final Paper paper;
  private final Locale language;

  Specimen(Paper paper, Locale language) {
    this.paper = paper;
    this.language = language;
  }

  /** The templates as they lie in the source tree. */
  public static Templates templates() {
    Path folder = Path.of("templates");
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Templates(files);
  }

  /** The styles of the templates and those of this specimen's drawings. */
  static StyleSheet styles(DocumentWriter writer) {
    Map<String, Style> styles = new LinkedHashMap<>(writer.styles().styles());
    styles.put("specimen-line", new Style(0.35, List.of(), 0, -1, 0, false, 0));
    styles.put("specimen-dashed", new Style(0.3, List.of(2.0, 1.0), 0.3, -1, 0, false, 0));
    styles.put("specimen-area", new Style(0.25, List.of(), 0, 0.92, 0, false, 0));
    styles.put("specimen-text", new Style(0, List.of(), 0, -1, 10, false, 0.4));
    styles.put("specimen-bold", new Style(0, List.of(), 0, -1, 14, true, 0));
    return new StyleSheet(styles);
  }

  static TemplateText text(String text) {
    SourceText source = source(text);
    return TemplateText.parse(source, new Findings());
  }

  static SourceText source(String text) {
    return SourceText.verbatim(new SourceFile(FILE, text), 0, text.length());
  }

  GradedPattern pattern() {
    return pattern("Harbour roll for the office");
  }

  GradedPattern pattern(String title) {
    Masthead masthead =
        new Masthead(
            source(title),
            source("Tide & Table"),
            source("Ines Calloway"),
            language,
            text(
                "A roll of nine pockets for knives & brushes, {roll_width} wide, tied with one"
                    + " strap."),
            text("© 2027 Tide & Table. Sew as many as you like, sell up to fifty a year."),
            new PrintForm(PrintForm.Units.METRIC_FIRST, 1, 8),
            source("2"),
            LocalDate.of(2027, 3, 9),
            text("The strap is now cut from webbing."));
    List<PieceSource> stated = new ArrayList<>();
    for (Piece piece : pieces()) {
      stated.add(
          new PieceSource(
              piece.number(),
              HERE,
              text(piece.name()),
              source("panel"),
              null,
              List.of(),
              List.of()));
    }
    PatternSource source =
        new PatternSource(
            "harbour-roll",
            masthead,
            new SizeTable(List.of("M"), List.of()),
            List.of(),
            List.of(),
            List.of(),
            List.of(
                new FinishedSource(text("Width, rolled out"), text("{roll_width}"), null),
                new FinishedSource(text("Height, flap up"), text("{roll_height}"), null)),
            List.of(),
            stated,
            List.of(),
            List.of());
    return new GradedPattern(
        source,
        Variant.ofSize("M"),
        Map.of(),
        Map.of(),
        pieces(),
        List.of(),
        new Lengths(Map.of("roll_width", 449.89, "roll_height", 315.2)));
  }

  public static List<Piece> pieces() {
    return List.of(
        new Piece(
            1,
            "Body",
            shape(300, 180, 40),
            List.of(new Cut("main", "waxed cotton", 2, 1), new Cut("lining", "ticking", 1, 0)),
            Optional.empty()),
        new Piece(
            4,
            "Pocket",
            shape(220, 120, 20),
            List.of(new Cut("main", "waxed cotton", 3, 0)),
            Optional.empty()),
        new Piece(
            7,
            "Binding",
            shape(35, 900, 0),
            List.of(new Cut("lining", "ticking", 2, 0)),
            Optional.of(new StatedSize(35, 900, true))));
  }

  /** A rectangle with its lower right corner rounded, and a parallel cutting line 10 mm outside. */
  static PieceShape shape(double width, double height, double radius) {
    org.lapmark.geometry.Path stitching = rounded(Box.at(0, 0, width, height), radius);
    org.lapmark.geometry.Path cutting =
        rounded(Box.at(-10, -10, width + 20, height + 20), radius == 0 ? 0 : radius + 10);
    Panel panel =
        new Panel("panel", List.of(new Edge("outline", "a", "a", stitching)), Map.of(), List.of());
    return new PieceShape(
        panel,
        Map.of("outline", 10.0),
        new CuttingLine(List.of(new CuttingLine.Span("outline", cutting))),
        List.of());
  }

  private static org.lapmark.geometry.Path rounded(Box box, double radius) {
    if (radius == 0) {
      return org.lapmark.geometry.Path.rectangle(box);
    }
    Point topLeft = new Point(box.minX(), box.minY());
    Point topRight = new Point(box.maxX(), box.minY());
    Point bottomLeft = new Point(box.minX(), box.maxY());
    Point before = new Point(box.maxX(), box.maxY() - radius);
    Point after = new Point(box.maxX() - radius, box.maxY());
    Point centre = new Point(box.maxX() - radius, box.maxY() - radius);
    Curve corner = new Arc(centre, radius, radius, 0, 0, Math.PI / 2);
    return new org.lapmark.geometry.Path(
        List.of(
            new Line(topLeft, topRight),
            new Line(topRight, before),
            corner,
            new Line(after, bottomLeft),
            new Line(bottomLeft, topLeft)));
  }

  SheetPlan plan() {
    List<PlacedPiece> placed = new ArrayList<>();
    pieces().stream()
        .filter(piece -> piece.statedSize().isEmpty())
        .forEach(piece -> placed.add(new PlacedPiece(piece, Affine.IDENTITY)));
    List<Tile> tiles = new ArrayList<>();
    for (int row = 0; row < 2; row++) {
      for (int column = 0; column < 2; column++) {
        String code = "" + (char) ('A' + row) + (column + 1);
        Box window =
            Box.at(column * 178.0, row * 242.0, paper.window().width(), paper.window().height());
        tiles.add(
            new Tile(
                code,
                column,
                row,
                window,
                page(code, row + column == 0),
                row == 0 ? List.of(1) : List.of(1, 4),
                "Tile " + code + " with part of the body"));
      }
    }
    return new SheetPlan(paper, 2, 2, placed, tiles);
  }

  /** A tile: its code, a dashed curve in a clip on a layer, and on the first one a square. */
  private Drawing page(String code, boolean first) {
    Box window = paper.window();
    List<Item> items = new ArrayList<>();
    org.lapmark.geometry.Path frame = org.lapmark.geometry.Path.rectangle(window);
    items.add(new Item.Shape(List.of(frame), "specimen-dashed"));
    Curve wave =
        new Cubic(new Point(-20, 0), new Point(60, 120), new Point(140, -120), new Point(220, 10));
    items.add(
        new Item.Group(
            frame,
            Affine.translation(window.minX(), window.centre().y()).after(Affine.rotation(5)),
            "Size M",
            List.of(
                new Item.Shape(
                    List.of(new org.lapmark.geometry.Path(List.of(wave))), "specimen-line"),
                new Item.Lettering(
                    "Body, cut 2", new Point(40, 20), Item.Alignment.START, 0, "specimen-text"))));
    if (first) {
      items.add(new Item.Shape(List.of(square()), "specimen-line"));
    }
    items.add(
        new Item.Lettering(
            code,
            new Point(window.minX() + 3, window.minY() + 7),
            Item.Alignment.START,
            0,
            "specimen-bold"));
    return new Drawing(paper.width(), paper.height(), items);
  }

  /** 100 mm to a side, away from round numbers. */
  static org.lapmark.geometry.Path square() {
    return org.lapmark.geometry.Path.rectangle(Box.at(37.123, 41.337, 100, 100));
  }

  @Override
  public Drawing pageMap(SheetPlan plan, Map<String, Integer> pages, double width, double height) {
    List<Item> items = new ArrayList<>();
    double cell = Math.min(width / plan.columns(), height / plan.rows());
    for (Tile tile : plan.tiles()) {
      Box box = Box.at(tile.column() * cell, tile.row() * cell, cell, cell);
      items.add(new Item.Shape(List.of(org.lapmark.geometry.Path.rectangle(box)), "specimen-area"));
      items.add(
          new Item.Lettering(
              tile.code() + ", page " + pages.get(tile.code()),
              box.centre(),
              Item.Alignment.MIDDLE,
              0,
              "specimen-text"));
    }
    return new Drawing(plan.columns() * cell, plan.rows() * cell, items);
  }

  @Override
  public Drawing printingPage(Paper of) {
    return new Drawing(
        of.width(),
        of.height(),
        List.of(
            new Item.Shape(List.of(square()), "specimen-line"),
            new Item.Lettering(
                "10 cm", new Point(87, 90), Item.Alignment.MIDDLE, 0, "specimen-bold")));
  }

  private static DocumentWriter writer() {
    return new DocumentWriter(templates());
  }

  @Override
  public Wording wording() {
    return writer().wording(language);
  }

  @Override
  public StyleSheet styles() {
    return styles(writer());
  }

  /** Lengths by name. */
  private record Lengths(Map<String, Double> millimetres) implements Scope {
    @Override
    public Value value(SourceText name) {
      return Value.Quantity.length(millimetres.get(name.text()));
    }

    @Override
    public Value geometry(SourceText function, List<SourceText> references) {
      throw new IllegalStateException();
    }
  }
}
