package org.lapmark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.NewerJava;
import org.lapmark.cli.console.Console;

/** The same source gives the same bytes, whoever publishes it, where and on which Java. */
class SameBytesTest {
  private static final String DEMO = "towpath-handlebar-bag";
  private static final long MOST_SECONDS = 300;

  @TempDir static Path home;

  private static Map<String, String> first;

  @BeforeAll
  static void publish() throws IOException {
    first = here("first");
    assertEquals(30, first.keySet().stream().filter(name -> name.endsWith(".pdf")).count());
    assertEquals(33, first.keySet().stream().filter(name -> name.endsWith(".svg")).count());
  }

  @Test
  void sameAgain() throws IOException {
    assertEquals(first, here("second"));
  }

  @Test
  void sameElsewhere() throws Exception {
    // Compiled otherwise than here, too: that must change no number, and takes half the time.
    Path java = javaOf(System.getProperty("java.home"));
    assertEquals(first, elsewhere("abroad", java, "-XX:TieredStopAtLevel=1"));
  }

  @Test
  void sameOnANewerJava() throws Exception {
    Optional<Path> newer = NewerJava.home();
    assumeTrue(newer.isPresent(), "no newer Java; .ci/newer-java finds or brings one");
    assertEquals(
        first, elsewhere("newer", javaOf(newer.get().toString()), "-XX:+TieredCompilation"));
  }

  private static Map<String, String> here(String name) throws IOException {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new ByteArrayOutputStream(), err, StandardCharsets.UTF_8, Path.of("").toAbsolutePath());
    Path output = home.resolve(name);
    int code =
        CommandRunner.run(
            new String[] {"publish", "content/" + DEMO, "--out", output.toString()},
            console,
            new Workshop.Real());
    assertEquals(0, code, err.toString(StandardCharsets.UTF_8));
    return hashes(output);
  }

  private static Map<String, String> elsewhere(String name, Path java, String compiling)
      throws Exception {
    Path output = home.resolve(name);
    Path talk = home.resolve(name + ".txt");
    List<String> command =
        List.of(
            java.toString(),
            "-Xmx1g",
            compiling,
            "-Duser.timezone=Pacific/Kiritimati",
            "-Duser.language=tr",
            "-Duser.country=TR",
            "-Dfile.encoding=ISO-8859-1",
            "-cp",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
            "org.lapmark.cli.Lapmark",
            "publish",
            "content/" + DEMO,
            "--out",
            output.toString());
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(talk.toFile()).start();
    boolean ended = process.waitFor(MOST_SECONDS, TimeUnit.SECONDS);
    if (!ended) {
      process.destroyForcibly();
    }
    String said = new String(Files.readAllBytes(talk), StandardCharsets.ISO_8859_1);
    assertTrue(ended, said);
    assertEquals(0, process.exitValue(), said);
    return hashes(output);
  }

  private static Path javaOf(String javaHome) {
    return Path.of(javaHome, "bin", "java");
  }

  private static Map<String, String> hashes(Path output) throws IOException {
    Map<String, String> hashes = new TreeMap<>();
    Path folder = output.resolve(DEMO);
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (file.endsWith(".lapmark-runs")) {
          continue; // It says by which program the files were made.
        }
        hashes.put(folder.relativize(file).toString(), hash(Files.readAllBytes(file)));
      }
    }
    return hashes;
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
