package org.lapmark.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Whether so much memory does: both demos from the jar, and many pieces in many sizes. */
record MemoryRow(Path program) implements Row {
  private static final int PIECES = 200;
  private static final int SIZES = 6;

  @Override
  public String name() {
    return "memory";
  }

  @Override
  public List<Measured> measure() throws IOException {
    try (Scratch scratch = new Scratch()) {
      List<Measured> lines = new ArrayList<>();
      lines.add(
          line(
              "memory, both demos",
              "-Xmx512m",
              ChildProcess.run(
                  List.of(
                      "java",
                      "-Xmx512m",
                      "-jar",
                      program.resolve("lapmark.jar").toString(),
                      "publish",
                      "content/towpath-handlebar-bag",
                      "content/slipway-rain-hat",
                      "--out",
                      scratch.missing("out").toString()),
                  Map.of())));
      lines.add(
          line(
              "memory, " + PIECES + " pieces x " + SIZES + " sizes",
              "-Xmx1g",
              ChildProcess.run(
                  List.of(
                      "java",
                      "-Xmx1g",
                      "-cp",
                      System.getProperty("java.class.path"),
                      MemoryReport.class.getName(),
                      Integer.toString(PIECES),
                      Integer.toString(SIZES)),
                  Map.of())));
      return lines;
    }
  }

  private static Measured line(String what, String heap, ChildProcess run) {
    String last = run.told().lines().reduce("", (before, line) -> line);
    String found =
        "ended with %d after %.1f s, CPU %.1f s".formatted(run.exit(), run.wall(), run.processor());
    boolean report = last.contains("resident");
    return new Measured(
        what, report ? found + "; " + last : found, heap + " suffices", run.exit() == 0);
  }
}
