package org.lapmark.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A command through the launcher and through {@code java -jar}, the medians of some runs each.
 *
 * @param name what it is chosen by
 * @param arguments the command's arguments; <code>{out}</code> is where files go
 * @param again whether it runs over what is already published
 * @param most the most seconds of wall time
 * @param program the folder of launcher and jar
 * @param runs how many runs
 */
record CommandRow(String name, String arguments, boolean again, double most, Path program, int runs)
    implements Row {
  private static final double MOST_WITHOUT = 1.6;

  @Override
  public List<Measured> measure() throws IOException {
    try (Scratch scratch = new Scratch()) {
      Map<String, String> archives = Map.of("LAPMARK_ARCHIVES", scratch.missing("jsa").toString());
      List<String> launcher = List.of(program.resolve("lapmark").toString());
      List<String> jar = List.of("java", "-jar", program.resolve("lapmark.jar").toString());
      run(launcher, archives, scratch).whole(); // Leaves the archive, and what is published.
      List<ChildProcess> with = new ArrayList<>();
      List<ChildProcess> without = new ArrayList<>();
      for (int i = 0; i < runs; i++) {
        with.add(run(launcher, archives, scratch).whole());
        without.add(run(jar, Map.of(), scratch).whole());
      }
      double wall = median(with, ChildProcess::wall);
      double plain = median(without, ChildProcess::wall);
      return List.of(
          Measured.atMost(name, times(with), wall, most, " s"),
          Measured.atMost(
              name + ", java -jar",
              String.format(Locale.ROOT, "%s; %.2f x the launcher", times(without), plain / wall),
              plain / wall,
              MOST_WITHOUT,
              " x"));
    }
  }

  private ChildProcess run(List<String> program, Map<String, String> environment, Scratch scratch)
      throws IOException {
    Path output = again ? scratch.home().resolve("out") : scratch.missing("out");
    List<String> command = new ArrayList<>(program);
    for (String argument : arguments.split(" ")) {
      command.add(argument.replace("{out}", output.toString()));
    }
    return ChildProcess.run(command, environment);
  }

  private static String times(List<ChildProcess> runs) {
    return String.format(
        Locale.ROOT,
        "%.2f s, CPU %.2f s",
        median(runs, ChildProcess::wall),
        median(runs, ChildProcess::processor));
  }

  private static double median(List<ChildProcess> runs, ToDoubleFunction<ChildProcess> what) {
    return Processor.median(runs.stream().mapToDouble(what).toArray());
  }
}
