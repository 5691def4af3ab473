package org.lapmark.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.Listener;
import org.lapmark.publish.Outcome;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.TemplateFolder;
import org.lapmark.publish.request.Request;

/**
 * Publishes a pattern of many pieces in a process of bounded memory and says what it took: {@code
 * mvn -q -Pmemory test-compile exec:exec}, with {@code -Dpieces=200 -Dsizes=1 -Dheap=1g} for other
 * numbers. Ends in failure where the memory doesn't do or something is found.
 */
public final class MemoryReport {
  private MemoryReport() {}

  /**
   * Publishes.
   *
   * @param arguments how many pieces, and in how many sizes
   * @throws IOException when nothing can be written
   */
  public static void main(String[] arguments) throws IOException {
    ManyPieces many =
        new ManyPieces(Integer.parseInt(arguments[0]), Integer.parseInt(arguments[1]));
    Path home = Files.createTempDirectory("many");
    boolean whole;
    try {
      Path folder = Files.createDirectory(home.resolve("many-pieces"));
      many.write(folder);
      long begun = System.nanoTime();
      Outcome outcome =
          new Publisher(TemplateFolder.bundled())
              .publish(
                  List.of(folder),
                  new Request(List.of(), List.of(Paper.A4), home.resolve("out")),
                  new Listener() {})
              .get(0);
      double seconds = (System.nanoTime() - begun) / 1e9;
      outcome.failure().ifPresent(System.out::println);
      outcome
          .result()
          .findings()
          .sorted()
          .forEach(finding -> System.out.println(finding.code().id() + " " + finding.position()));
      whole = outcome.failure().isEmpty() && outcome.result().findings().sorted().isEmpty();
      System.out.printf(
          "%d pieces, sizes %d: %d files, %.1f s of wall time, %.0f MB resident at most, heap of %d"
              + " MB%n",
          many.pieces(),
          many.sizes(),
          outcome.result().written().size(),
          seconds,
          resident(),
          Runtime.getRuntime().maxMemory() >> 20);
    } finally {
      try (Stream<Path> files = Files.walk(home)) {
        files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
      }
    }
    if (!whole) {
      System.exit(1);
    }
  }

  /** The most that was resident in megabytes, or where that isn't told, what is used now. */
  private static double resident() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (Files.isReadable(status)) {
      for (String line : Files.readAllLines(status)) {
        if (line.startsWith("VmHWM:")) {
          return Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024;
        }
      }
    }
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1048576.0;
  }
}
