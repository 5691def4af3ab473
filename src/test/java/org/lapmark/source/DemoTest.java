package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.source.drawing.PanelDrawing;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.read.PatternReader;

class DemoTest {
  private static final Path DEMO = Path.of("content", "towpath-handlebar-bag");

  @Test
  void theDemoReadsWithoutFindings() throws Exception {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(DEMO, findings);
    assertEquals(
        List.of(),
        findings.sorted().stream()
            .map(finding -> finding.position() + " " + FindingText.message(finding))
            .toList());
    assertEquals("towpath-handlebar-bag", source.folder());
    assertEquals(List.of("S", "M", "L"), source.sizes().sizes());
    assertEquals(3, source.sizes().rows().size());
    assertEquals(Value.Quantity.length(140), source.sizes().rows().get(1).values().get("M"));
    assertEquals(
        "[18 cm (7 in), 20 cm (8 in), 23 cm (9 in), 25 cm (10 in), 30 cm (12 in)]",
        source.hardware().get(0).properties().get("stock_lengths").text().text());
    assertEquals(11, source.pieces().size());
    assertEquals(14, source.steps().size());
    assertTrue(source.steps().get(0).body().text().startsWith("Cut every piece"));
  }

  @Test
  void aFoldedTextKnowsItsPlaces() throws Exception {
    PatternSource source = PatternReader.read(DEMO, new Findings());
    SourceText summary = source.masthead().summary().source();
    int at = summary.text().indexOf("the top");
    assertEquals(10, summary.position(at, at + 3).line());
    assertEquals(3, summary.position(at, at + 3).column());
  }

  @Test
  void theComputedPanelResolvesInEverySize() throws Exception {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(DEMO, findings);
    ShapeSource.Drawn drawn =
        assertInstanceOf(ShapeSource.Drawn.class, source.panels().get(0).shape());
    assertTrue(drawn.drawing().isComputed());
    double[] rims = {390.45, 449.89, 509.47};
    double[] heights = {120, 140, 160};
    double[] depths = {110, 125, 140};
    for (int i = 0; i < 3; i++) {
      Map<String, Double> values = new LinkedHashMap<>();
      values.put("bag_height", heights[i]);
      values.put("bag_depth", depths[i]);
      values.put("corner_radius", 25.0);
      values.put("straight", 55.0);
      values.put("rear_flat", heights[i] - 50);
      PanelDrawing.Shapes shapes =
          drawn.drawing().resolve(formula -> number(formula, values), findings);
      assertEquals(rims[i], shapes.outline().length(), 0.005);
      assertTrue(shapes.outline().isClosed());
      assertEquals(
          new Point(0, values.get("rear_flat") / 2), shapes.points(Role.CORNER).get("rear_low"));
      assertEquals(1, shapes.marks(Role.GRAINLINE).size());
    }
    assertEquals(List.of(), findings.sorted());
  }

  private static double number(Formula formula, Map<String, Double> values) {
    Value value =
        formula.evaluate(
            new Scope() {
              @Override
              public Value value(SourceText name) {
                return Value.Quantity.length(values.get(name.text()));
              }

              @Override
              public Value geometry(SourceText function, List<SourceText> references) {
                throw new UnsupportedOperationException();
              }
            });
    return ((Value.Quantity) value).amount();
  }
}
