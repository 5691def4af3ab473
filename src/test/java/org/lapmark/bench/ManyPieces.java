package org.lapmark.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A pattern of any number of pieces and sizes, for measuring: every piece has curves, notches and a
 * shape of its own, and every one has a step with a figure.
 */
record ManyPieces(int pieces, int sizes) {
  private static final String[] COLUMNS = {"measure", "unit"};

  ManyPieces {
    if (pieces < 1 || sizes < 1) {
      throw new IllegalArgumentException(pieces + " pieces, " + sizes + " sizes");
    }
  }

  /** Writes the folder, which must be empty or missing. */
  void write(Path folder) throws IOException {
    Path panels = Files.createDirectories(folder.resolve("panels"));
    Path steps = Files.createDirectories(folder.resolve("steps"));
    Files.writeString(folder.resolve("sizes.csv"), table());
    Files.writeString(folder.resolve("pattern.yaml"), pattern());
    for (int i = 1; i <= pieces; i++) {
      Files.writeString(panels.resolve("p" + i + ".svg"), drawing(i));
      Files.writeString(steps.resolve("%04d.md".formatted(i)), step(i));
    }
  }

  private String table() {
    String names =
        IntStream.range(0, sizes).mapToObj(i -> ",S" + (i + 1)).collect(Collectors.joining());
    String widths =
        IntStream.range(0, sizes)
            .mapToObj(i -> String.format(Locale.ROOT, ",%.1f", width(i)))
            .collect(Collectors.joining());
    return String.join(",", COLUMNS) + names + "\nwide,mm" + widths + "\n";
  }

  /** From narrow to wide, in the middle always the same, so that many sizes aren't larger ones. */
  private double width(int size) {
    return 100 + 40 * (size + 0.5) / sizes;
  }

  private String pattern() {
    StringBuilder text =
        new StringBuilder(
            """
            format: 1
            title: Many pieces
            studio: Fellside Measure
            designer: Ann Example
            language: en-GB
            summary: As many pieces as are asked for.
            copyright: © 2026 Fellside Measure.
            units: metric first
            edition: {name: "1", date: 2026-11-02}
            making: {skill: Any., time: Long., machine: Any., needle: 80, thread: Polyester.}
            tools:
              shears: {name: shears, hazards: [blades]}
            materials:
              main: {name: cloth, texture: main, usable_width: 140 cm (55 in), margin: 0.1, thickness: 1 mm}
            panels:
            """);
    for (int i = 1; i <= pieces; i++) {
      text.append(
          "  p%d:\n    drawing: p%d.svg\n    scale: {width: wide, stretch: no}\n".formatted(i, i));
      text.append("    edges: {foot: [a, b], rim: [b, a]}\n");
      text.append("    notches: [{edge: rim, at: 0.3}, {edge: rim, at: 0.8}]\n");
    }
    text.append("pieces:\n");
    for (int i = 1; i <= pieces; i++) {
      text.append(
          "  - {number: %d, name: Part %d, panel: p%d, allowance: 10 mm, cut: [{material: main, count: 1}]}\n"
              .formatted(i, i, i));
    }
    return text.toString();
  }

  private static String drawing(int index) {
    double bulge = 40 + index % 60;
    return String.format(
        Locale.ROOT,
        """
        <svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="160mm" viewBox="0 0 120 160">
          <path id="outline" d="M 0 150 L 120 150 C 120 %1$.1f 90 %1$.1f 60 10 C 30 %2$.1f 0 %2$.1f 0 150 Z"/>
          <path id="grainline" d="M 60 120 V 60"/>
          <circle id="corner.a" cx="0" cy="150" r="1"/>
          <circle id="corner.b" cx="120" cy="150" r="1"/>
        </svg>
        """,
        bulge,
        bulge / 2 + 20);
  }

  private static String step(int index) {
    return """
        ---
        id: s%1$d
        title: Sew part %1$d
        stage: Sew
        uses: [shears]
        ---
        Cut [](piece:%1$d).

        ```figure
        caption: Part %1$d, wrong side up
        pieces:
        - piece: %1$d
          side: wrong
          show: [stitching, notches, grain]
        ```
        """
        .formatted(index);
  }
}
