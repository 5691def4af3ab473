package org.lapmark.panel.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;

class OpeningTest {
  private static PieceShape rectangle(String... folds) {
    Panel panel = PanelBuilder.rectangle("front", 100, 60, false);
    Map<String, Allowance> allowances = new LinkedHashMap<>();
    panel.edges().forEach(edge -> allowances.put(edge.name(), Allowance.of(10)));
    for (String fold : folds) {
      allowances.put(fold, Allowance.FOLD);
    }
    return PieceShape.of(panel, new Allowances(allowances, CornerShape.USUAL, Map.of()));
  }

  @Test
  void aNotchMayStandWhereAnEdgeMeetsTheFold() {
    Panel plain = PanelBuilder.rectangle("front", 100, 60, false);
    Map<String, Allowance> allowances = new LinkedHashMap<>();
    plain.edges().forEach(edge -> allowances.put(edge.name(), Allowance.of(10)));
    allowances.put("left", Allowance.FOLD);
    Panel panel =
        new Panel(
            "front",
            plain.edges(),
            plain.chains(),
            List.of(new Mark.Notch("top", 0, 1), new Mark.Notch("bottom", 100, 1)));
    PieceShape shape =
        PieceShape.of(panel, new Allowances(allowances, CornerShape.USUAL, Map.of()));
    List<Path> notches = shape.notches();
    assertEquals(2, notches.size());
    Box top = notches.get(0).bounds();
    Box bottom = notches.get(1).bounds();
    Box outline = panel.outline().bounds();
    assertEquals(outline.minX(), top.minX(), 1e-6);
    assertEquals(outline.minY() - 10, top.minY(), 1e-6);
    assertEquals(outline.minX(), bottom.minX(), 1e-6);
    assertEquals(outline.maxY() + 10, bottom.maxY(), 1e-6);
    // A slit would be hidden by the fold line: half a wedge stands beside it, 5 mm deep.
    assertEquals(2, top.width(), 1e-6);
    assertEquals(5, top.height(), 1e-6);
    assertEquals(2, bottom.width(), 1e-6);
  }

  @Test
  void aSlitInTheMiddleOfAHalvedPieceShowsBesideItsFold() {
    Panel plain = PanelBuilder.rectangle("front", 100, 60, false);
    Panel panel =
        new Panel(
            "front",
            plain.edges(),
            plain.chains(),
            List.of(new Mark.Notch("top", 50, 1), new Mark.Notch("bottom", 50, 1)));
    Map<String, Allowance> allowances = new LinkedHashMap<>();
    plain.edges().forEach(edge -> allowances.put(edge.name(), Allowance.of(10)));
    PieceShape shape =
        PieceShape.of(panel, new Allowances(allowances, CornerShape.USUAL, Map.of()));
    Box outline = panel.outline().bounds();
    double middle = outline.minX() + 50;
    FoldedHalf half = FoldedHalf.of(shape, "top", "bottom");
    assertEquals(2, half.notches().size());
    for (Path notch : half.notches()) {
      assertEquals(middle, notch.bounds().minX(), 1e-6);
      assertEquals(middle + 2, notch.bounds().maxX(), 1e-6);
      assertEquals(5, notch.bounds().height(), 1e-6);
    }
  }

  @Test
  void aPieceWithoutAFoldStaysAsItIs() {
    Path cut = rectangle().opened();
    assertEquals(120 * 80, cut.signedArea(), 1e-6);
  }

  @Test
  void aHalfOpensToTheWhole() {
    Path cut = rectangle("left").opened();
    assertEquals(2 * 110 * 80, cut.signedArea(), 1e-6);
    assertEquals(2 * (220 + 80), cut.length(), 1e-6);
    assertEquals(220, cut.bounds().width(), 1e-6);
  }

  @Test
  void aQuarterOpensTwice() {
    Path cut = rectangle("left", "bottom").opened();
    assertEquals(4 * 110 * 70, cut.signedArea(), 1e-6);
    assertEquals(220, cut.bounds().width(), 1e-6);
    assertEquals(140, cut.bounds().height(), 1e-6);
  }
}
