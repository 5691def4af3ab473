package org.lapmark.lay;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.template.Templates;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.piece.StatedSize;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.cutting.CuttingLine;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.source.Masthead;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.SizeTable;
import org.lapmark.source.ThingSource;

/** Patterns made by hand: materials from formulas, pieces from outlines. */
final class Samples {
  static final String FILE = "ferry-tote/pattern.yaml";
  static final String CANVAS = "canvas";

  private final List<ThingSource> materials = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private final List<PieceSource> sources = new ArrayList<>();

  /** A material; properties are given in turn, name, formula, name, formula. */
  Samples material(String id, String name, String... properties) {
    Map<String, Formula> formulas = new LinkedHashMap<>();
    for (int i = 0; i < properties.length; i += 2) {
      formulas.put(properties[i], Formula.parse(source(properties[i + 1])));
    }
    materials.add(
        new ThingSource(source(id), TemplateText.parse(source(name), new Findings()), formulas));
    return this;
  }

  Samples piece(String name, Path outline, Point grain, Cut... cuts) {
    return piece(name, outline, grain, Optional.empty(), cuts);
  }

  Samples rectangle(String name, double width, double height, Cut... cuts) {
    return piece(
        name,
        Path.rectangle(Box.at(0, 0, width, height)),
        new Point(0, 1),
        Optional.of(new StatedSize(width, height, false)),
        cuts);
  }

  Samples bias(String name, double width, double height, Cut... cuts) {
    return piece(
        name,
        Path.rectangle(Box.at(0, 0, width, height)),
        new Point(1, 1),
        Optional.of(new StatedSize(width, height, true)),
        cuts);
  }

  private Samples piece(
      String name, Path outline, Point grain, Optional<StatedSize> size, Cut... cuts) {
    int number = pieces.size() + 1;
    Point middle = outline.bounds().centre();
    List<Mark> marks =
        grain == null
            ? List.of()
            : List.of(new Mark.Grainline(middle.minus(grain), middle.plus(grain)));
    Panel panel =
        new Panel(
            name.toLowerCase(Locale.ROOT).replace(' ', '_'),
            List.of(new Edge("outline", "a", "a", outline)),
            Map.of(),
            marks);
    PieceShape shape =
        new PieceShape(
            panel,
            Map.of("outline", 0.0),
            new CuttingLine(List.of(new CuttingLine.Span("outline", outline))),
            List.of());
    pieces.add(new Piece(number, name, shape, List.of(cuts), size));
    sources.add(
        new PieceSource(
            number,
            new Position(FILE, 10 + number, 5, 1, "number: " + number),
            TemplateText.parse(source(name), new Findings()),
            source(panel.name()),
            null,
            List.of(),
            List.of()));
    return this;
  }

  static Cut cut(String material, int count, int reversed) {
    return new Cut(material, "heavy " + material, count, reversed);
  }

  EvaluatedPattern pattern() {
    PatternSource source =
        new PatternSource(
            "ferry-tote",
            new Masthead(
                source("Ferry tote"),
                source("Tide & Table"),
                null,
                Locale.UK,
                null,
                null,
                PrintForm.DEFAULT,
                source("1"),
                LocalDate.of(2027, 4, 2),
                null),
            new SizeTable(List.of("M"), List.of()),
            materials,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            sources,
            List.of(),
            List.of());
    return new EvaluatedPattern(
        source, Variant.ofSize("M"), Map.of(), Map.of(), pieces, List.of(), new Nothing());
  }

  /** A half disc with a straight top, as of a bag's end. */
  static Path halfDisc(double radius, double drop) {
    Point a = new Point(-radius, 0);
    Point b = new Point(radius, 0);
    Point c = new Point(radius, drop);
    Point d = new Point(-radius, drop);
    return new Path(
        List.of(
            new Line(a, b),
            new Line(b, c),
            new Arc(new Point(0, drop), radius, radius, 0, 0, Math.PI),
            new Line(d, a)));
  }

  static SourceText source(String text) {
    return SourceText.verbatim(new SourceFile(FILE, text), 0, text.length());
  }

  static DocumentWriter writer() {
    java.nio.file.Path folder = java.nio.file.Path.of("templates");
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<java.nio.file.Path> paths = Files.walk(folder)) {
      for (java.nio.file.Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new DocumentWriter(new Templates(files));
  }

  /** Nothing has a name. */
  private record Nothing() implements Scope {
    @Override
    public Value value(SourceText name) {
      throw new IllegalStateException(name.text());
    }

    @Override
    public Value geometry(SourceText function, List<SourceText> references) {
      throw new IllegalStateException(function.text());
    }
  }
}
