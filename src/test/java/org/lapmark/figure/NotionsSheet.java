package org.lapmark.figure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.lapmark.drawing.Drawing;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The specimen sheet of hardware and notions, written as SVG to be looked at: a folder, a size. */
final class NotionsSheet {
  private NotionsSheet() {}

  static PatternSource source() throws IOException {
    Findings findings = new Findings();
    PatternSource source =
        PatternReader.read(Path.of("src/test/resources/org/lapmark/specimens/notions"), findings);
    if (!findings.sorted().isEmpty()) {
      throw new IllegalStateException(DemoFigures.said(findings));
    }
    return source;
  }

  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    PatternSource source = source();
    EvaluatedPattern pattern = DemoFigures.pattern(source, arguments[1]);
    for (Map.Entry<String, SourceText> block : DemoFigures.blocks(source).entrySet()) {
      Findings findings = new Findings();
      Drawing drawing =
          FigureSource.parse(block.getValue(), findings)
              .flatMap(
                  figure ->
                      DemoFigures.drawer()
                          .draw(figure, pattern, source.masthead().form(), findings))
              .map(
                  figure -> {
                    System.out.println(block.getKey() + ": " + figure.alternative());
                    return figure.drawing();
                  })
              .orElse(null);
      System.out.print(DemoFigures.said(findings));
      if (drawing != null) {
        Files.writeString(folder.resolve(block.getKey() + ".svg"), Sketch.svg(drawing));
      }
    }
  }
}
