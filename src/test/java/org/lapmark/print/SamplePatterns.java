package org.lapmark.print;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.cutting.CuttingLine;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.source.JoinStyle;
import org.lapmark.source.Masthead;
import org.lapmark.source.PatternSource;
import org.lapmark.source.SizeTable;
import org.lapmark.wording.Wording;

/** Pieces made by hand, and the words and styles that the program ships. */
final class SamplePatterns {
  private SamplePatterns() {}

  static SheetPlanner planner() {
    return new SheetPlanner(wording(), styles(), new FontBoxLettering());
  }

  static Wording wording() {
    Properties properties = new Properties();
    try (Reader reader =
        Files.newBufferedReader(
            java.nio.file.Path.of("templates/words/paper/en.properties"), StandardCharsets.UTF_8)) {
      properties.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, String> words = new TreeMap<>();
    properties.stringPropertyNames().forEach(key -> words.put(key, properties.getProperty(key)));
    return new Wording(Locale.UK, words);
  }

  static StyleSheet styles() {
    try {
      return StyleSheet.parse(
          Files.readString(java.nio.file.Path.of("templates/drawing/styles.properties")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static SourceText text(String text) {
    return SourceText.verbatim(new SourceFile("sample/pattern.yaml", text), 0, text.length());
  }

  static EvaluatedPattern pattern(String size, List<Piece> pieces) {
    return pattern(size, pieces, JoinStyle.OVERLAP);
  }

  static EvaluatedPattern pattern(String size, List<Piece> pieces, JoinStyle joins) {
    Masthead masthead =
        new Masthead(
            text("Towpath handlebar bag"),
            text("Heron & Halyard"),
            null,
            Locale.UK,
            null,
            null,
            PrintForm.DEFAULT,
            text("1"),
            LocalDate.of(2026, 10, 12),
            null,
            joins);
    PatternSource source =
        new PatternSource(
            "sample",
            masthead,
            new SizeTable(List.of(size), List.of()),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return new EvaluatedPattern(
        source, Variant.ofSize(size), Map.of(), Map.of(), pieces, List.of(), null);
  }

  static Point p(double x, double y) {
    return new Point(x, y);
  }

  /** A D-shaped outline, flat on the left, grown by a distance on all sides (roughly). */
  private static List<Curve> round(double depth, double height, double grow) {
    double h = height / 2 + grow;
    double left = -grow;
    double front = depth + grow;
    double radius = 25 + grow;
    double flat = Math.min(55, 0.45 * depth);
    double bulge = flat + 0.6 * (front - flat);
    radius = Math.min(radius, 0.8 * Math.min(h, flat + grow));
    return List.of(
        new Line(p(left, h - radius), p(left, -h + radius)),
        Arc.ofCircle(p(left + radius, -h + radius), radius, Math.PI, Math.PI / 2),
        new Line(p(left + radius, -h), p(flat, -h)),
        new Cubic(p(flat, -h), p(bulge, -h), p(front, -0.55 * h), p(front, 0)),
        new Cubic(p(front, 0), p(front, 0.55 * h), p(bulge, h), p(flat, h)),
        new Line(p(flat, h), p(left + radius, h)),
        Arc.ofCircle(p(left + radius, h - radius), radius, Math.PI / 2, Math.PI / 2));
  }

  static Piece end(int number, String name, double depth, double height, double allowance) {
    Path stitching = new Path(round(depth, height, 0));
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Grainline(p(depth / 2, -0.28 * height), p(depth / 2, 0.28 * height)));
    marks.add(new PointMark.DrillPoint("cord", p(depth * 0.8, 0)));
    List<Path> notches = List.of();
    if (allowance > 0) {
      notches =
          List.of(
              Path.polyline(List.of(p(-allowance, 0), p(-allowance + 5, 0))),
              Path.polyline(List.of(p(depth + allowance, 0), p(depth + allowance - 5, 0))));
    }
    return new Piece(
        number,
        name,
        new PieceShape(
            new Panel("end", List.of(new Edge("rim", "a", "a", stitching)), Map.of(), marks),
            Map.of("rim", allowance),
            new CuttingLine(
                List.of(new CuttingLine.Span("rim", new Path(round(depth, height, allowance))))),
            notches),
        List.of(
            new Cut("main", "cotton canvas, 400 g/m²", 2, 1),
            new Cut("lining", "ripstop nylon lining", 2, 1)),
        Optional.empty());
  }

  /** A piece of straight lines with one edge and no allowance, or one stated by its inner line. */
  static Piece straight(int number, String name, List<Point> cutting, List<Point> stitching) {
    List<Point> outer = closed(cutting);
    List<Point> inner = stitching == null ? outer : closed(stitching);
    double minX = inner.stream().mapToDouble(Point::x).min().orElseThrow();
    double minY = inner.stream().mapToDouble(Point::y).min().orElseThrow();
    double maxY = inner.stream().mapToDouble(Point::y).max().orElseThrow();
    return new Piece(
        number,
        name,
        new PieceShape(
            new Panel(
                name,
                List.of(new Edge("all", "a", "a", Path.polyline(inner))),
                Map.of(),
                List.of(
                    new Mark.Grainline(
                        p(minX + 6, minY + 0.1 * (maxY - minY)),
                        p(minX + 6, minY + 0.3 * (maxY - minY))))),
            Map.of("all", stitching == null ? 0.0 : 10.0),
            new CuttingLine(List.of(new CuttingLine.Span("all", Path.polyline(outer)))),
            List.of()),
        List.of(new Cut("main", "cotton canvas, 400 g/m²", 1, 0)),
        Optional.empty());
  }

  private static List<Point> closed(List<Point> points) {
    List<Point> closed = new ArrayList<>(points);
    closed.add(points.get(0));
    return closed;
  }

  static Piece rectangle(int number, String name, double width, double height) {
    return straight(
        number, name, List.of(p(0, 0), p(width, 0), p(width, height), p(0, height)), null);
  }

  static Piece hollow(int number, String name, double width, double height, double bar) {
    return straight(
        number,
        name,
        List.of(
            p(0, 0),
            p(bar, 0),
            p(bar, height - bar),
            p(width - bar, height - bar),
            p(width - bar, 0),
            p(width, 0),
            p(width, height),
            p(0, height)),
        null);
  }

  /** The patterns that the tests go through, by what they are. */
  static Map<String, EvaluatedPattern> all() {
    Map<String, EvaluatedPattern> all = new LinkedHashMap<>();
    double[][] sizes = {{110, 120}, {125, 140}, {140, 160}};
    String[] names = {"S", "M", "L"};
    for (int i = 0; i < 3; i++) {
      double d = sizes[i][0];
      double h = sizes[i][1];
      all.put(
          "bag " + names[i],
          pattern(
              names[i],
              List.of(
                  end(1, "End", d, h, 10),
                  end(5, "End interfacing", d, h, 0),
                  end(9, "End stiffener", d - 6, h - 6, 0))));
    }
    for (double scale : new double[] {0.15, 0.4, 1.6, 2.5, 4}) {
      all.put(
          "scaled " + scale,
          pattern(
              "M",
              List.of(
                  end(1, "End", 125 * scale, 140 * scale, 10),
                  end(2, "Pocket", 90 * scale, 110 * scale, 5))));
    }
    all.put("thin", pattern("One size", List.of(rectangle(1, "Facing strip", 20, 700))));
    all.put("thinner", pattern("One size", List.of(rectangle(1, "Loop", 4, 60))));
    all.put(
        "hollow",
        pattern("M", List.of(hollow(1, "Yoke", 420, 500, 45), rectangle(2, "Tab", 60, 40))));
    all.put(
        "large and small",
        pattern(
            "38",
            List.of(
                end(1, "Back", 420, 610, 15),
                hollow(2, "Front facing", 300, 420, 60),
                rectangle(3, "Pocket welt", 40, 180),
                rectangle(4, "Pocket bag", 180, 240),
                end(5, "Flap", 90, 120, 10),
                end(6, "Flap lining", 88, 118, 10),
                rectangle(7, "Strap end", 25, 60),
                rectangle(8, "Zip stop", 14, 30))));
    return all;
  }
}
