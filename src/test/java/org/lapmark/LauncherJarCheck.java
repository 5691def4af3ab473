package org.lapmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher beside the built jar: it starts sooner, and says nothing that Java says of that. */
class LauncherJarCheck {
  private static final Path LAUNCHER = Path.of("build-output", "lapmark").toAbsolutePath();
  private static final long MOST_SECONDS = 120;

  @TempDir Path home;
  private Path archives;
  private Path pattern;

  @BeforeEach
  void prepare() throws IOException {
    archives = home.resolve("archives");
    pattern = Files.createDirectory(home.resolve("tag"));
    Files.writeString(pattern.resolve("sizes.csv"), "measure,unit,S,M\nlong,mm,60,80\n");
    Files.writeString(
        pattern.resolve("pattern.yaml"),
        """
        format: 1
        title: Tag
        studio: Reed & Rye
        language: en-GB
        edition: {name: "1", date: 2026-03-01}
        materials:
          felt: {name: felt, usable_width: 45 cm (18 in), no_grain: true}
        panels:
          tag: {rectangle: {width: long, height: 30 mm}}
        pieces:
          - {number: 1, name: Tag, panel: tag, allowance: 3 mm, printed: true,
             cut: [{material: felt, count: 1}]}
        """);
  }

  /** What a start said and how it ended. */
  private record Said(int code, String out, String err) {}

  private final class Start {
    private final Process process;
    private final Path out;
    private final Path err;

    Start(Map<String, String> environment, String... arguments) throws IOException {
      this.out = Files.createTempFile(home, "out", ".txt");
      this.err = Files.createTempFile(home, "err", ".txt");
      List<String> command = new ArrayList<>(List.of(LAUNCHER.toString()));
      command.addAll(List.of(arguments));
      ProcessBuilder builder =
          new ProcessBuilder(command)
              .directory(home.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile());
      builder.environment().remove("LAPMARK_JAVA_OPTIONS");
      builder.environment().put("LAPMARK_ARCHIVES", archives.toString());
      builder.environment().putAll(environment);
      this.process = builder.start();
    }

    Said end() throws IOException, InterruptedException {
      assertTrue(process.waitFor(MOST_SECONDS, TimeUnit.SECONDS), "it hangs");
      return new Said(
          process.exitValue(),
          Files.readString(out, StandardCharsets.UTF_8),
          Files.readString(err, StandardCharsets.UTF_8));
    }
  }

  private Said publish(Map<String, String> environment, String out) throws Exception {
    Said said = new Start(environment, "publish", "tag", "--size", "S", "--out", out).end();
    assertEquals(0, said.code(), said.err());
    assertTrue(said.out().lines().count() > 3, said.out());
    assertTrue(said.out().lines().allMatch(line -> line.startsWith(out + "/tag/")), said.out());
    return said;
  }

  private List<String> kept() throws IOException {
    if (!Files.isDirectory(archives)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(archives)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /** How many of the program's classes came out of an archive. */
  private long fromArchive(String out) throws Exception {
    Path log = home.resolve(out + ".log");
    publish(Map.of("LAPMARK_JAVA_OPTIONS", "-Xlog:class+load:file=" + log), out);
    try (Stream<String> lines = Files.lines(log)) {
      return lines
          .filter(line -> line.contains("org.lapmark.") && line.contains("shared objects file"))
          .count();
    }
  }

  @Test
  void theFirstRunThatMakesSomethingLeavesAnArchiveThatLaterOnesUse() throws Exception {
    Said help = new Start(Map.of(), "--help").end();
    assertEquals(0, help.code());
    assertEquals(List.of(), kept());
    publish(Map.of(), "one");
    List<String> first = kept();
    assertEquals(1, first.size(), first.toString());
    assertTrue(fromArchive("two") > 300);
    // Nothing is made, and nothing is learnt.
    publish(Map.of(), "two");
    assertEquals(first, kept());
  }

  @Test
  void worksWithoutAPlaceForArchives() throws Exception {
    Files.writeString(home.resolve("file"), "in the way");
    publish(Map.of("LAPMARK_ARCHIVES", home.resolve("file/archives").toString()), "one");
    publish(Map.of("LAPMARK_ARCHIVES", ""), "two");
    assertEquals(List.of(), kept());
  }

  @Test
  void worksWithAnArchiveThatIsDamaged() throws Exception {
    publish(Map.of(), "one");
    Path archive = archives.resolve(kept().get(0));
    Files.delete(archive);
    Files.writeString(archive, "no archive");
    Said said = publish(Map.of(), "two");
    assertTrue(said.err().lines().allMatch(line -> line.startsWith("lapmark: ")), said.err());
  }

  @Test
  void twoFirstRunsAtOnceDoNotDisturbEachOther() throws Exception {
    Start one = new Start(Map.of(), "publish", "tag", "--size", "S", "--out", "one");
    Start two = new Start(Map.of(), "publish", "tag", "--size", "M", "--out", "two");
    assertEquals(0, one.end().code());
    assertEquals(0, two.end().code());
    assertEquals(1, kept().size(), kept().toString());
    assertTrue(fromArchive("three") > 300);
  }

  @Test
  void anotherJavaHasAnArchiveOfItsOwn() throws Exception {
    assumeTrue(NewerJava.home().isPresent(), "no newer Java; .ci/newer-java finds or brings one");
    publish(Map.of(), "one");
    publish(Map.of("JAVA_HOME", NewerJava.home().get().toString()), "two");
    assertEquals(2, kept().size(), kept().toString());
  }

  @Test
  void isCalledThroughALinkAndTellsHowItEnded() throws Exception {
    Path link = Files.createSymbolicLink(home.resolve("linked"), LAUNCHER);
    Process process =
        new ProcessBuilder(link.toString(), "check", "nowhere")
            .directory(home.toFile())
            .redirectErrorStream(true)
            .redirectOutput(home.resolve("linked.txt").toFile())
            .start();
    assertTrue(process.waitFor(MOST_SECONDS, TimeUnit.SECONDS), "it hangs");
    assertNotEquals(0, process.exitValue());
    assertTrue(Files.readString(home.resolve("linked.txt")).startsWith("lapmark: "));
  }
}
