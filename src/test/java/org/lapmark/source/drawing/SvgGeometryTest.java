package org.lapmark.source.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.key.Reading;

class SvgGeometryTest {
  private static PanelDrawing.Shapes shapes(String root, String body) {
    Findings findings = new Findings();
    PanelDrawing.Shapes shapes = shapes(root, body, findings);
    for (Finding finding : findings.sorted()) {
      // Only what is to be told of its size, and that is true.
      assertEquals(DrawingCode.SVG_SIZE, finding.code());
      Box box = shapes.outline().bounds();
      assertEquals(box.width(), number(finding, "width"), 0.005);
      assertEquals(box.height(), number(finding, "height"), 0.005);
    }
    return shapes;
  }

  private static double number(Finding finding, String argument) {
    return Double.parseDouble((String) finding.arguments().get(argument));
  }

  private static PanelDrawing.Shapes shapes(String root, String body, Findings findings) {
    SourceFile file =
        new SourceFile(
            "x.svg", "<svg xmlns='http://www.w3.org/2000/svg' " + root + ">" + body + "</svg>");
    PanelDrawing drawing = SvgReader.read(file, new Reading(Limits.STANDARD, findings));
    return drawing == null ? null : drawing.resolve(formula -> 7.0, findings);
  }

  private static void near(double x, double y, Point point) {
    assertEquals(x, point.x(), 1e-9);
    assertEquals(y, point.y(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "25.4mm, 25.4",
    "2.54cm, 25.4",
    "1in, 25.4",
    "96px, 25.4",
    "96, 25.4",
    "72pt, 25.4",
    "6pc, 25.4"
  })
  void theRootsSizeAndViewBoxGiveTheScale(String width, double millimetres) {
    PanelDrawing.Shapes shapes =
        shapes(
            "width='" + width + "' height='" + width + "' viewBox='10 20 100 100'",
            "<rect id='outline' x='10' y='20' width='100' height='50'/>");
    Box box = shapes.outline().bounds();
    assertEquals(0, box.minX(), 1e-9);
    assertEquals(0, box.minY(), 1e-9);
    assertEquals(millimetres, box.maxX(), 1e-9);
    assertEquals(millimetres / 2, box.maxY(), 1e-9);
  }

  @Test
  void withoutAViewBoxAUserUnitIsAPixel() {
    assertEquals(
        25.4,
        shapes("", "<rect id='outline' width='96' height='1in'/>").outline().bounds().maxY(),
        1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "xMidYMid,           10, 0, 1",
    "xMinYMid meet,       0, 0, 1",
    "xMaxYMax,           20, 0, 1",
    "xMidYMin slice,      0, 0, 3",
    "xMidYMax slice,      0, -20, 3"
  })
  void theAspectRatioIsPreserved(String aspect, double x, double y, double scale) {
    PanelDrawing.Shapes shapes =
        shapes(
            "width='30mm' height='10mm' viewBox='0 0 10 10' preserveAspectRatio='" + aspect + "'",
            "<rect id='outline' width='10' height='10'/>");
    Box box = shapes.outline().bounds();
    assertEquals(x, box.minX(), 1e-9);
    assertEquals(y, box.minY(), 1e-9);
    assertEquals(10 * scale, box.width(), 1e-9);
    assertEquals(10 * scale, box.height(), 1e-9);
  }

  @Test
  void noneStretches() {
    Box box =
        shapes(
                "width='30mm' height='10mm' viewBox='0 0 10 10' preserveAspectRatio='none'",
                "<circle id='outline' r='5' cx='5' cy='5'/>")
            .outline()
            .bounds();
    assertEquals(30, box.width(), 1e-9);
    assertEquals(10, box.height(), 1e-9);
  }

  private static final String MM = "width='100mm' height='100mm' viewBox='0 0 100 100'";
  private static final String OUTLINE = "<rect id='outline' width='9' height='9'/>";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "translate(1 2)|4|6",
        "translate(5)|8|4",
        "scale(2)|6|8",
        "scale(2,3)|6|12",
        "rotate(90)|-4|3",
        "rotate(90 3 3)|2|3",
        "skewX(45)|7|4",
        "skewY(45)|3|7",
        "matrix(1 2 3 4 5 6)|20|28",
        "translate(1 0) scale(2)|7|8",
        "scale(2)translate(1,0)|8|8"
      })
  void transformsApply(String transform, double x, double y) {
    String corner = "<circle id='corner.a' cx='3' cy='4'/>";
    near(
        x,
        y,
        shapes(MM, OUTLINE + "<g transform='" + transform + "'>" + corner + "</g>")
            .points(Role.CORNER)
            .get("a"));
  }

  @Test
  void nestedTransformsApplyFromTheInsideOut() {
    String body =
        OUTLINE
            + "<g transform='translate(10 0)'><g transform='scale(2)'>"
            + "<line id='drill.a' x1='0' y1='0' x2='2' y2='4' transform='rotate(180)'/></g></g>";
    near(8, -4, shapes(MM, body).points(Role.DRILL).get("a"));
  }

  @Test
  void everyShapeIsRead() {
    assertEquals(
        2 * 10 + 2 * 4 + 2 * Math.PI * 3,
        shapes(MM, "<rect id='outline' width='16' height='10' rx='3'/>").outline().length(),
        1e-6);
    assertEquals(
        shapes(MM, "<rect id='outline' width='16' height='10' rx='9' ry='2'/>").outline().length(),
        shapes(MM, "<rect id='outline' width='16' height='10' rx='8' ry='2'/>").outline().length(),
        1e-9);
    assertEquals(
        2 * Math.PI * 5, shapes(MM, "<circle id='outline' r='5'/>").outline().length(), 1e-6);
    assertEquals(
        Math.PI * 5 * 3,
        shapes(MM, "<ellipse id='outline' rx='5' ry='3'/>").outline().signedArea(),
        1e-6);
    assertEquals(
        12, shapes(MM, "<polygon id='outline' points='0,0 3 0,3,4'/>").outline().length(), 1e-9);
    PanelDrawing.Shapes shapes =
        shapes(
            MM,
            OUTLINE
                + "<polyline id='placement.pocket' points='0 0 3 0 3 4'/>"
                + "<line id='grainline' x1='1' y1='2' x2='1' y2='8'/>"
                + "<path id='foldline.middle' d='m1 1 q1 1 2 0 t2 0'/>"
                + "<rect id='notch.a' x='2' y='2' width='2' height='4'/>"
                + "<path id='drill.b' d='M5 6h1'/>");
    assertEquals(7, shapes.lines(Role.PLACEMENT).get("pocket").length(), 1e-9);
    assertFalse(shapes.lines(Role.PLACEMENT).get("pocket").isClosed());
    Path grainline = shapes.lines(Role.GRAINLINE).get("");
    assertEquals(new Point(1, 2), grainline.start());
    assertEquals(new Point(1, 8), grainline.end());
    near(5, 1, shapes.lines(Role.FOLDLINE).get("middle").end());
    near(3, 4, shapes.points(Role.NOTCH).get("a"));
    near(5, 6, shapes.points(Role.DRILL).get("b"));
  }

  @Test
  void flagsNeedNoSeparators() {
    assertEquals(
        2 * Math.PI * 5,
        shapes(MM, "<path id='outline' d='M0 0a5,5 0 1110,0 5,5 0 11-10,0z'/>").outline().length(),
        1e-6);
  }

  @Test
  void aPlaceholderMakesAUserUnitAMillimetre() {
    PanelDrawing.Shapes shapes =
        shapes(
            "width='1in' height='1in' viewBox='-5 -5 3 3'",
            "<rect id='outline' width='9' height='9' data-width='{a}' data-height='20'/>"
                + "<circle id='corner.a' cx='2cm' cy='3'/>");
    assertEquals(new Box(0, 0, 7, 20), shapes.outline().bounds());
    near(20, 3, shapes.points(Role.CORNER).get("a"));
  }

  @Test
  void placeholdersDontRunIntoTheirNeighbours() {
    assertEquals(
        new Point(1, 7), shapes(MM, "<path id='outline' data-d='M1{a}h3v3z'/>").outline().start());
    assertEquals(
        new Point(7, 7),
        shapes(MM, "<path id='outline' data-d='M{a}{a}h3v3z'/>").outline().start());
  }

  @Test
  void aSmallGapIsClosedByMovingAnEnd() {
    for (String d :
        List.of(
            "M0 0H10V10H0V0.03",
            "M0 0H10V10H0C0 5 0 3 0 0.03",
            "M0 0H10V10A10 10 0 0 1 0.03 0",
            "M0 0C0 0 5 0 10 0V10A10 10 0 0 1 0.03 0",
            "M0 0A20 20 0 0 1 10 0V10A10 10 0 0 1 0.03 0",
            "M0 0H10V10H0V0.03Z")) {
      Findings findings = new Findings();
      PanelDrawing.Shapes shapes = shapes(MM, "<path id='outline' d='" + d + "'/>", findings);
      assertNotNull(shapes, d);
      assertTrue(shapes.outline().isClosed(), d);
      assertEquals(
          List.of(DrawingCode.OUTLINE_GAP_CLOSED),
          findings.sorted().stream().map(finding -> finding.code()).toList(),
          d);
    }
  }

  @Test
  void segmentsWithoutLengthDropOut() {
    assertEquals(
        4,
        shapes(MM, "<path id='outline' d='M0 0H0H9L9 0V9C9 9 9 9 9 9H0A3 3 0 0 1 0 9Z'/>")
            .outline()
            .curves()
            .size());
  }

  @Test
  void copiesArePlacedAndTransformed() {
    String body =
        OUTLINE
            + "<defs><circle id='dot' cx='1' cy='2' r='1' transform='scale(2)'/>"
            + "<g id='pair' transform='translate(1 0)'><use href='#dot' y='3'/></g>"
            + "<g id='marks'><circle id='drill.inner' cx='4' cy='5'/></g></defs>"
            + "<use id='drill.a' href='#dot'/>"
            + "<use id='drill.b' href='#pair' x='10' transform='rotate(90)'/>"
            + "<g transform='translate(0 50)'>"
            + "<use xmlns:l='http://www.w3.org/1999/xlink' l:href='#marks' x='1'/></g>";
    PanelDrawing.Shapes shapes = shapes(MM, body);
    near(2, 4, shapes.points(Role.DRILL).get("a"));
    near(-7, 13, shapes.points(Role.DRILL).get("b"));
    near(5, 55, shapes.points(Role.DRILL).get("inner"));
  }

  @Test
  void innerDrawingsAndSymbolsHaveViewportsOfTheirOwn() {
    String body =
        OUTLINE
            + "<svg x='10' y='20' width='40' height='20' viewBox='0 0 10 10'>"
            + "<circle id='drill.a' cx='10' cy='50%'/></svg>"
            + "<svg x='1' y='2'><circle id='drill.b' cx='3' cy='4'/></svg>"
            + "<symbol id='s' viewBox='5 5 10 10' preserveAspectRatio='none'>"
            + "<circle id='dot' cx='10' cy='10'/></symbol>"
            + "<use id='drill.c' href='#s' x='1' y='1' width='20' height='40'/>"
            + "<use id='drill.d' href='#s'/>";
    PanelDrawing.Shapes shapes = shapes(MM, body);
    near(10 + 10 + 20, 30, shapes.points(Role.DRILL).get("a"));
    near(4, 6, shapes.points(Role.DRILL).get("b"));
    near(11, 21, shapes.points(Role.DRILL).get("c"));
    near(50, 50, shapes.points(Role.DRILL).get("d"));
  }

  @Test
  void sharesAreOfTheViewport() {
    PanelDrawing.Shapes shapes =
        shapes(
            "width='30mm' height='40mm' viewBox='0 0 30 40'",
            "<rect id='outline' width='100%' height='50%'/><circle id='drill.a' cx='10%' cy='10%'/>");
    assertEquals(new Box(0, 0, 30, 20), shapes.outline().bounds());
    near(3, 4, shapes.points(Role.DRILL).get("a"));
    assertEquals(
        2 * Math.PI * 5,
        shapes(
                "width='30mm' height='40mm' viewBox='0 0 30 40'",
                "<circle id='outline' r='" + 500 / Math.sqrt(1250) + "%'/>")
            .outline()
            .length(),
        1e-6);
  }

  @Test
  void aComputedDrawingPlacesCopiesByFormulas() {
    PanelDrawing.Shapes shapes =
        shapes(
            MM,
            OUTLINE
                + "<defs><circle id='dot' cx='1' r='1'/></defs>"
                + "<g data-transform='translate({a} 1)'>"
                + "<use id='drill.a' href='#dot' data-x='{a}' y='2'/></g>");
    near(15, 3, shapes.points(Role.DRILL).get("a"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<g id='outline'><path d='M0 0H9'/><path d='M9 9V0'/><path d='M0 9H9M0 0V9'/></g>",
        "<path id='outline' d='M0 0H9M0 9V0M9 9V0M0 9H9'/>",
        "<g id='outline'><g transform='scale(9)'><path d='M0 0H1V1'/></g><path d='M9 9H0V0'/></g>",
        "<g id='l1' xmlns:p='q' p:label='outline'><rect width='9' height='9' id='outline'/></g>",
        "<switch><g requiredExtensions='x'/><g><rect width='9' height='9' id='outline'/></g></switch>",
        "<g id='r' visibility='hidden'><rect id='a' width='9' height='9' visibility='visible' x='0'"
            + " data-name='outline'/></g>"
      })
  void outlinesInPartsAndLayersAreRead(String body) {
    PanelDrawing.Shapes shapes = shapes(MM, body);
    assertEquals(new Box(0, 0, 9, 9), shapes.outline().bounds());
    assertEquals(36, shapes.outline().length(), 1e-9);
    assertTrue(shapes.outline().isClosed());
  }

  @Test
  void gapsBetweenPartsAreClosed() {
    Findings findings = new Findings();
    PanelDrawing.Shapes shapes =
        shapes(
            MM,
            "<g id='outline'><path d='M0 0H9.03'/><path d='M9 9V0.04'/><path d='M9 9H0V0'/></g>",
            findings);
    assertTrue(shapes.outline().isClosed());
    assertEquals(1, findings.sorted().size());
    assertEquals(DrawingCode.OUTLINE_GAP_CLOSED, findings.sorted().get(0).code());
    assertEquals("0.05", findings.sorted().get(0).arguments().get("gap"));
    assertEquals(1, findings.sorted().get(0).arguments().get("count"));
  }

  @Test
  void aCopyOfWhatIsDrawnIsOnlyShown() {
    Findings findings = new Findings();
    PanelDrawing.Shapes shapes =
        shapes(MM, "<use href='#outline' transform='scale(-1 1)'/>" + OUTLINE, findings);
    assertEquals(new Box(0, 0, 9, 9), shapes.outline().bounds());
    assertEquals(
        List.of(DrawingCode.SVG_IGNORED),
        findings.sorted().stream().map(finding -> finding.code()).toList());
  }
}
