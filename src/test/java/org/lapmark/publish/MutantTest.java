package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A few mutants of all that {@link MutantReport} makes many of; {@code -Dmutant=4711} makes one
 * again and leaves what was damaged in {@code build-output}.
 */
class MutantTest {
  private static final int MUTANTS = 500;

  /** One in so many is published. */
  private static final int PUBLISHED = 12;

  /** Cold, and beside whatever else the machine does. */
  private static final double MOST_SECONDS = 10;

  private static final int ONE = Integer.getInteger("mutant", -1);

  @TempDir Path home;

  @Test
  void damagedPatternsGiveFindingsAndSoundOnesArePublished() throws IOException {
    Mutants mutants = new Mutants(home, MOST_SECONDS);
    if (ONE >= 0) {
      mutants.work(ONE, true, Path.of("build-output"));
    } else {
      for (int number = 0; number < MUTANTS; number++) {
        mutants.work(number, number % PUBLISHED == 0, null);
      }
      assertTrue(mutants.withFindings() > MUTANTS / 4, "hardly any damage was noticed");
      assertTrue(mutants.drawn() > MUTANTS / 50, "hardly any was sound enough to be drawn");
      assertTrue(mutants.published() > MUTANTS / PUBLISHED / 8, "hardly any was published");
    }
    assertEquals("", String.join("\n", mutants.failures()));
  }
}
