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

  private static final int PUBLISHED = 8;

  /** Cold, and beside whatever else the machine does. */
  private static final double MOST_SECONDS = 10;

  private static final int ONE = Integer.getInteger("mutant", -1);

  @TempDir Path home;

  @Test
  void damagedPatternsGiveFindingsAndSoundOnesArePublished() throws IOException {
    Mutants mutants = new Mutants(home, MOST_SECONDS);
    if (ONE >= 0) {
      mutants.work(ONE, false, null);
      mutants.work(ONE, true, Path.of("build-output"));
    } else {
      mutants.run(0, MUTANTS, PUBLISHED, done -> {});
      assertTrue(mutants.withFindings() > MUTANTS / 4, "hardly any damage was noticed");
      assertTrue(mutants.drawn() > MUTANTS / 50, "hardly any was sound enough to be drawn");
      assertTrue(mutants.published() > PUBLISHED / 2, "hardly any was published");
    }
    assertEquals("", String.join("\n", mutants.failures()));
  }
}
