package org.lapmark.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Compares what two versions of the program have published, file by file: PDF by what it holds,
 * anything else byte by byte. {@code mvn -q -Pcompare test-compile exec:java -Dbefore=DIR
 * -Dafter=DIR} prints the differences and fails if there are any.
 */
public final class OutputComparison {
  private static final int LINES_TOLD = 3;

  private final List<String> differences = new ArrayList<>();
  private int files;

  private OutputComparison() {}

  /**
   * Compares two folders.
   *
   * @param arguments the folder published before, and that published after
   * @throws IOException when something can't be read
   */
  public static void main(String[] arguments) throws IOException {
    OutputComparison comparison = new OutputComparison();
    comparison.compare(Path.of(arguments[0]), Path.of(arguments[1]));
    comparison.differences.forEach(System.out::println);
    System.out.printf(
        "%d files compared, %d differences%n", comparison.files, comparison.differences.size());
    if (!comparison.differences.isEmpty() || comparison.files == 0) {
      throw new IllegalStateException("What was published differs.");
    }
  }

  /**
   * What differs between two folders.
   *
   * @param before the one
   * @param after the other
   * @return one sentence a difference, which names the file and the place in it
   * @throws IOException when something can't be read
   */
  static List<String> differences(Path before, Path after) throws IOException {
    OutputComparison comparison = new OutputComparison();
    comparison.compare(before, after);
    return comparison.differences;
  }

  private void compare(Path before, Path after) throws IOException {
    List<String> names = names(before);
    List<String> now = names(after);
    for (String name : union(names, now)) {
      if (!now.contains(name)) {
        differences.add(name + ": not made any more");
      } else if (!names.contains(name)) {
        differences.add(name + ": new");
      } else {
        files++;
        compareFiles(name, before.resolve(name), after.resolve(name));
      }
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  private static List<String> union(List<String> one, List<String> other) {
    TreeSet<String> all = new TreeSet<>(one);
    all.addAll(other);
    return List.copyOf(all);
  }

  private void compareFiles(String name, Path before, Path after) throws IOException {
    if (Files.mismatch(before, after) < 0) {
      return;
    }
    if (!name.endsWith(".pdf")) {
      differences.add(name + ": " + firstDifference(lines(before), lines(after)));
      return;
    }
    Map<String, List<String>> was = PdfContents.of(before);
    Map<String, List<String>> is = PdfContents.of(after);
    for (String heading : union(List.copyOf(was.keySet()), List.copyOf(is.keySet()))) {
      List<String> one = was.getOrDefault(heading, List.of());
      List<String> other = is.getOrDefault(heading, List.of());
      if (!one.equals(other)) {
        differences.add(name + ", " + heading + ": " + firstDifference(one, other));
      }
    }
  }

  private static List<String> lines(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).lines().toList();
  }

  private static String firstDifference(List<String> one, List<String> other) {
    int at = 0;
    while (at < one.size() && at < other.size() && one.get(at).equals(other.get(at))) {
      at++;
    }
    return "line " + (at + 1) + "\n  - " + told(one, at) + "\n  + " + told(other, at);
  }

  private static String told(List<String> lines, int from) {
    return String.join(
        "\n    ",
        lines.subList(Math.min(from, lines.size()), Math.min(from + LINES_TOLD, lines.size())));
  }
}
