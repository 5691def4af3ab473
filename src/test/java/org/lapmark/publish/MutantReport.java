package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * Works on many mutants in one process and says what they cost: {@code mvn -q -Pmutants
 * test-compile exec:java}, with {@code -Dmutants=20000 -Dpublished=2000} for other numbers.
 */
public final class MutantReport {
  private static final int MUTANTS = Integer.getInteger("mutants", 20_000);
  private static final int PUBLISHED = Integer.getInteger("published", 2_000);

  /** Which ones, so that several reports see different mutants. */
  private static final int FIRST = Integer.getInteger("first", 0);

  /** Of processor time, of a warm process. */
  private static final double MOST_SECONDS = 2;

  /** Before these the process isn't warm. */
  private static final int COLD = 300;

  private static final int TOLD = 500;

  private MutantReport() {}

  /**
   * Works on the mutants.
   *
   * @param arguments none
   * @throws IOException when the patterns can't be read or copied
   */
  public static void main(String[] arguments) throws IOException {
    Path home = Files.createTempDirectory("mutants");
    try {
      Mutants cold = new Mutants(Files.createDirectory(home.resolve("cold")), Double.MAX_VALUE);
      cold.run(FIRST - COLD, COLD, COLD / 20, done -> {});
      cold.failures().forEach(System.out::println);
      Mutants mutants = new Mutants(Files.createDirectory(home.resolve("warm")), MOST_SECONDS);
      mutants.run(
          FIRST,
          MUTANTS,
          PUBLISHED,
          done -> {
            mutants.untold().forEach(System.out::println);
            if (done % TOLD == 0 || done == MUTANTS) {
              System.out.println(done + " mutants: " + mutants.cost());
            }
          });
    } finally {
      try (Stream<Path> files = Files.walk(home)) {
        files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
      }
    }
  }
}
