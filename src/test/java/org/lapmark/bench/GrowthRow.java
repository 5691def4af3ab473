package org.lapmark.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.Result;
import org.lapmark.publish.TemplateFolder;
import org.lapmark.publish.request.Request;

/**
 * How the processor time of publishing on one paper grows with a number, in a warm process: the
 * exponent is the slope of the logarithms by least squares.
 *
 * @param name what grows
 * @param patterns the patterns, from few to many
 * @param numbers what grows, in the same order
 */
record GrowthRow(String name, List<ManyPieces> patterns, List<Integer> numbers) implements Row {
  private static final double MOST = 1.1;
  private static final int ROUNDS = 2;
  private static final ManyPieces WARMING = new ManyPieces(20, 2);
  private static final int WARMED = 4;

  static GrowthRow ofPieces() {
    List<Integer> numbers = List.of(5, 10, 20, 50, 100, 200);
    return new GrowthRow(
        "growth with pieces", numbers.stream().map(n -> new ManyPieces(n, 1)).toList(), numbers);
  }

  static GrowthRow ofSizes() {
    List<Integer> numbers = List.of(1, 2, 4, 8, 16, 24);
    return new GrowthRow(
        "growth with sizes", numbers.stream().map(n -> new ManyPieces(10, n)).toList(), numbers);
  }

  @Override
  public List<Measured> measure() throws IOException {
    try (Scratch scratch = new Scratch()) {
      for (int i = 0; i < WARMED; i++) {
        seconds(WARMING, scratch);
      }
      double[] least = new double[numbers.size()];
      Arrays.fill(least, Double.POSITIVE_INFINITY);
      // The first round still compiles what only large patterns need.
      for (int round = 0; round < ROUNDS; round++) {
        for (int i = 0; i < least.length; i++) {
          least[i] = Math.min(least[i], seconds(patterns.get(i), scratch));
        }
      }
      double exponent = exponent(numbers.stream().mapToDouble(n -> n).toArray(), least);
      String found =
          IntStream.range(0, least.length)
              .mapToObj(i -> String.format(Locale.ROOT, "%d: %.2f s", numbers.get(i), least[i]))
              .collect(Collectors.joining(", "));
      return List.of(
          Measured.atMost(
              name,
              String.format(Locale.ROOT, "exponent %.2f (CPU, %s)", exponent, found),
              exponent,
              MOST,
              ""));
    }
  }

  private static double seconds(ManyPieces pattern, Scratch scratch) throws IOException {
    Path folder = Files.createDirectory(scratch.missing("many"));
    pattern.write(folder);
    Request request = new Request(List.of(), List.of(Paper.A4), scratch.missing("out"));
    List<Result> results = new ArrayList<>();
    double seconds =
        Processor.seconds(
            () -> results.add(new Publisher(TemplateFolder.bundled()).publish(folder, request)));
    if (results.get(0).written().isEmpty()) {
      throw new IllegalStateException(results.get(0).findings().sorted().toString());
    }
    return seconds;
  }

  /** The slope of the line through the logarithms that has the least squares. */
  static double exponent(double[] numbers, double[] times) {
    double[] x = Arrays.stream(numbers).map(Math::log).toArray();
    double[] y = Arrays.stream(times).map(Math::log).toArray();
    double middleX = Arrays.stream(x).average().orElseThrow();
    double middleY = Arrays.stream(y).average().orElseThrow();
    double together = 0;
    double alone = 0;
    for (int i = 0; i < x.length; i++) {
      together += (x[i] - middleX) * (y[i] - middleY);
      alone += (x[i] - middleX) * (x[i] - middleX);
    }
    return together / alone;
  }
}
