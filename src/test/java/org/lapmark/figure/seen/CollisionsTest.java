package org.lapmark.figure.seen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.publish.Listener;
import org.lapmark.publish.Outcome;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.TemplateFolder;
import org.lapmark.publish.request.Request;

/** In no published figure does anything stand in something else’s way. */
class CollisionsTest {
  private static final String TEXT =
      "<text x='%s' y='%s' font-size='3' textLength='12' lengthAdjust='spacingAndGlyphs'"
          + " fill='#000000' stroke='#fff' stroke-width='1'>rear strip</text>";
  private static final String WORDS = TEXT.formatted(20, 20);
  private static final String RING =
      "<path d='M18 20 A2 2 0 0 1 22 20 A2 2 0 0 1 18 20 Z' fill='#ffffff' stroke='#000000'"
          + " stroke-width='0.16'/><text x='20' y='21' font-size='3' text-anchor='middle'"
          + " textLength='1.5' lengthAdjust='spacingAndGlyphs' fill='#000000'>1</text>";

  static List<Path> folders() throws IOException {
    return Shown.folders();
  }

  @ParameterizedTest
  @MethodSource("folders")
  void noFigureOfAPatternHasAny(Path folder) throws IOException {
    List<Shown.One> shown = new Shown(folder).all(List.of(Shown.Cut.values()));
    assertFalse(shown.isEmpty());
    List<String> found = new ArrayList<>();
    for (Shown.One one : shown) {
      SeenFigure figure = SeenFigure.read(one.svg());
      assertTrue(figure.texts().size() + figure.marks().size() > 2, one.name());
      collisions(figure).forEach(line -> found.add(one.name() + ": " + line));
    }
    assertEquals("", String.join("\n", found));
  }

  @Test
  void noOperationHasAny() throws IOException {
    List<String> found = new ArrayList<>();
    for (Shown.One one : Shown.operations()) {
      collisions(SeenFigure.read(one.svg())).forEach(line -> found.add(one.name() + ": " + line));
    }
    assertEquals("", String.join("\n", found));
  }

  /** What is judged is what is written: the figures of a companion, as a reader opens it. */
  @Test
  void theCompanionHasTheFiguresThatAreJudged(@TempDir Path home) throws IOException {
    Path folder = Shown.folders().get(6);
    Outcome outcome =
        new Publisher(TemplateFolder.bundled())
            .publish(List.of(folder), new Request(List.of(), List.of(), home), new Listener() {})
            .get(0);
    Path page =
        outcome.result().written().stream()
            .filter(path -> path.toString().endsWith(".html"))
            .findFirst()
            .orElseThrow();
    String html = Files.readString(page, StandardCharsets.UTF_8);
    List<String> drawn = new ArrayList<>();
    Matcher svg =
        Pattern.compile("(?s)<svg [^>]*aria-labelledby=\"figure-\\d.*?</svg>").matcher(html);
    while (svg.find()) {
      SeenFigure figure = SeenFigure.read(svg.group().replace("&nbsp;", "\u00a0"));
      assertEquals(List.of(), collisions(figure));
      drawn.add(ink(svg.group()));
    }
    List<Shown.One> judged = new Shown(folder).all(List.of(Shown.Cut.SCREEN, Shown.Cut.NARROW));
    assertFalse(drawn.isEmpty());
    assertTrue(judged.stream().map(one -> ink(one.svg())).toList().containsAll(drawn));
  }

  /** All paths and texts, without ids. */
  private static String ink(String svg) {
    return svg.substring(svg.indexOf("</desc>")).replaceAll("figure-[\\w-]*clip", "clip");
  }

  private static List<String> collisions(SeenFigure figure) {
    return Collisions.of(figure, Looks.texture());
  }

  private static String planted(String... parts) {
    return "<svg viewBox='0 0 80 40'>" + String.join("", parts) + "</svg>";
  }

  private static List<String> kinds(String... parts) {
    return collisions(SeenFigure.read(planted(parts))).stream()
        .map(line -> line.substring(0, line.indexOf(':')))
        .toList();
  }

  private static String line(String data, String more) {
    return "<path d='" + data + "' fill='none' stroke='#000000' stroke-width='0.25' " + more + "/>";
  }

  private static String leader(double x1, double y1, double x2, double y2) {
    return line("M" + x1 + " " + y1 + "L" + x2 + " " + y2, "")
        + "<path d='M"
        + (x2 - 0.5)
        + " "
        + y2
        + "A0.5 0.5 0 0 1 "
        + (x2 + 0.5)
        + " "
        + y2
        + "A0.5 0.5 0 0 1 "
        + (x2 - 0.5)
        + " "
        + y2
        + "Z' fill='#000000'/>";
  }

  @ParameterizedTest
  @CsvSource({"20, 23.5, 0", "20, 21.5, 1", "32.5, 20, 0", "31.5, 20, 1"})
  void textsThatMeetAreFound(double x, double y, int count) {
    assertEquals(count, kinds(WORDS, TEXT.formatted(x, y)).size());
  }

  @Test
  void aLineThroughTextIsFoundUnlessItIsHiddenThere() {
    String through = line("M10 19L40 19", "stroke-dasharray='2 1'");
    String sheet = "<path d='M15 10L50 10L50 30L15 30Z' fill='#dbdbdb'/>";
    assertEquals(List.of("text on line"), kinds(through, WORDS));
    assertEquals(List.of("text on line"), kinds(sheet, through, WORDS));
    assertEquals(List.of(), kinds(through, sheet, WORDS));
    assertEquals(List.of(), kinds(line("M10 22L40 22", ""), WORDS));
    assertEquals(List.of("text on line"), kinds(line("M10 21L40 21", ""), WORDS));
  }

  @Test
  void aClippedLineIsFoundOnlyWhereItIsSeen() {
    String clip = "<clipPath id='c'><path d='M%d 0L80 0L80 40L%d 40Z'/></clipPath>";
    String group = "<g clip-path='url(#c)'>" + line("M10 19L60 19", "") + "</g>";
    assertEquals(List.of("text on line"), kinds(clip.formatted(25, 25), group, WORDS));
    assertEquals(List.of(), kinds(clip.formatted(40, 40), group, WORDS));
  }

  @Test
  void aTextureMustNotReachLetters() {
    String dots =
        "<clipPath id='c'><path d='M0 0L80 0L80 40L0 40Z'/></clipPath><g clip-path='url(#c)'>"
            + "<path d='M0 19L80 19' fill='none' stroke='#000000' stroke-width='%s'"
            + " stroke-dasharray='%s'/></g>";
    String stated = Looks.stated().getProperty("figure-lining-texture.stroke");
    String dash = Looks.stated().getProperty("figure-lining-texture.dash");
    String texture = dots.formatted(stated, dash);
    String bare = WORDS.replace("stroke-width='1'", "stroke-width='0'");
    assertEquals(List.of(), kinds(texture, WORDS));
    assertEquals(List.of("text on texture"), kinds(texture, bare));
    assertEquals(List.of("text on texture"), kinds(WORDS, texture));
  }

  @Test
  void textOnADarkAreaIsFound() {
    String area = "<path d='M15 10L25 10L25 30L15 30Z' fill='%s'/>";
    assertEquals(List.of("text on dark"), kinds(area.formatted("#333333"), WORDS));
    assertEquals(List.of(), kinds(area.formatted("#dbdbdb"), WORDS));
  }

  @Test
  void leadersThatCrossAreFound() {
    assertEquals(List.of("leader on leader"), kinds(leader(5, 5, 15, 15), leader(15, 5, 5, 15)));
    assertEquals(List.of(), kinds(leader(5, 5, 15, 15), leader(15, 5, 25, 15)));
  }

  @Test
  void aLeaderThroughTextIsFoundAndItsOwnIsNot() {
    assertEquals(List.of("text on line"), kinds(leader(10, 19, 40, 19.5), WORDS));
    assertEquals(List.of(), kinds(leader(26, 20.9, 26, 30), WORDS));
    assertEquals(List.of("leader on text"), kinds(RING, leader(10, 21.6, 40, 21.6)));
    assertEquals(List.of(), kinds(RING, leader(22, 20, 40, 20)));
  }

  @Test
  void aLeaderThatCantBeToldFromALineIsFound() {
    String line = line("M5 5L45 5", "");
    assertEquals(List.of("leader along line"), kinds(line, leader(10, 5.1, 20, 5.2)));
    assertEquals(List.of(), kinds(line, leader(10, 6, 20, 6)));
    assertEquals(List.of(), kinds(line, leader(10, 2, 20, 8)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"M-1 5L10 5", "M10 5L79.95 5", "M10 38C10 42 20 42 20 38"})
  void whatLeavesTheBoxIsFound(String data) {
    assertEquals(List.of("outside"), kinds(line(data, "")));
  }

  @Test
  void textThatLeavesTheBoxIsFound() {
    assertEquals(List.of("outside"), kinds(TEXT.formatted(70, 20)));
    assertEquals(List.of(), kinds(TEXT.formatted(67, 20)));
    assertEquals(List.of(), kinds(line("M10 5L79.8 5", "")));
    assertEquals(List.of(), kinds(line("M10 35C10 40 20 40 20 35", "")));
  }
}
