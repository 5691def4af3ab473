package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.FigureSource;
import org.lapmark.figure.read.FigureExamples;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.source.key.KeyWords;
import org.lapmark.source.key.Table;

/** The schema of figures and their page of the reference, as their tables of keys make them. */
class FigureTablesTest {
  private static final List<Table> ROOTS = List.of(FigureSource.TABLE);
  private static final String PAGE = "figures.md";

  private final KeyWords words = new KeyWords(FigureExamples.class);

  @Test
  void theSchemaIsThatOfTheTables() throws IOException {
    Kept.hold(
        "src/main/resources/org/lapmark/figure/read/figure.schema.json",
        new KeySchema(words).of("figure:1", "A figure: a block called figure", ROOTS));
  }

  @Test
  void thePageIsThatOfTheTables() throws IOException {
    Kept.hold("src/readme/reference/" + PAGE, introduction() + new KeyReference(words).of(ROOTS));
  }

  private static String introduction() throws IOException {
    return Files.readString(Path.of("src/test/resources/org/lapmark/source/reference/pages", PAGE));
  }

  @Test
  void theFiguresOnThePageAreDrawn() throws IOException {
    Matcher shown = Pattern.compile("(?s)```figure\n(.*?)```\n").matcher(introduction());
    Findings findings = new Findings();
    EvaluatedPattern bag = DemoFigures.pattern(DemoFigures.source(), "M");
    PrintForm form = bag.source().masthead().form();
    int figures = 0;
    for (; shown.find(); figures++) {
      assertTrue(
          FigureSource.parse(DemoFigures.block(shown.group(1)), findings)
              .flatMap(figure -> DemoFigures.drawer().draw(figure, bag, form, findings))
              .isPresent());
    }
    assertTrue(figures >= 2);
    assertEquals("", DemoFigures.said(findings));
  }
}
