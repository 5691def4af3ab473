package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
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
      for (int number = 0; number < Math.min(COLD, MUTANTS); number++) {
        cold.work(FIRST - 1 - number, number % 10 == 0, null);
      }
      Mutants mutants = new Mutants(Files.createDirectory(home.resolve("warm")), MOST_SECONDS);
      int told = 0;
      for (int number = 0; number < MUTANTS; number++) {
        // As many as are wanted, whatever share of the mutants can be published.
        boolean publishing = (long) mutants.published() * MUTANTS < (long) PUBLISHED * (number + 1);
        mutants.work(FIRST + number, publishing, null);
        List<String> failures = mutants.failures();
        for (; told < failures.size(); told++) {
          System.out.println(failures.get(told));
        }
        if ((number + 1) % TOLD == 0) {
          System.out.println((number + 1) + " mutants: " + mutants.cost());
        }
      }
      System.out.println(MUTANTS + " mutants: " + mutants.cost());
    } finally {
      try (Stream<Path> files = Files.walk(home)) {
        files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
      }
    }
  }
}
