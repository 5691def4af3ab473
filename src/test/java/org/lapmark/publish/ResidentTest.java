package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.finding.Finding;
import org.lapmark.memory.Memory;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.Request;

/** A publisher that stays from one edit to the next gives what a new one would. */
class ResidentTest {
  private static final Path PATTERN =
      Path.of("src", "test", "resources", "org", "lapmark", "shelf", "larkspur-flap-pouch");

  private static final int EDITS = 3;
  private static final Pattern NUMBER = Pattern.compile("(?<![\\w.#-])[1-9][0-9]{1,2}(?![\\w.-])");
  private static final Pattern WORD = Pattern.compile("(?<=[a-z] )[a-z]{4,}(?= [a-z])");

  @TempDir Path scratch;

  /** What was published: every file by its path, and what was found. */
  private record Published(TreeMap<String, byte[]> files, List<Finding> findings) {}

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void remembersNothingWrong(long seed) throws IOException {
    Random random = new Random(seed);
    Path folder = scratch.resolve("edited");
    copy(folder);
    Memory memory = Publisher.newMemory();
    Publisher stays = new Publisher(TemplateFolder.bundled(), Optional.empty(), memory);
    Deque<Runnable> undone = new ArrayDeque<>();
    int withFiles = 0;
    for (int edit = 0; edit <= EDITS; edit++) {
      if (edit > 0) {
        // Every third edit takes the last one back, which is what is remembered best.
        if (edit % 3 == 0 && !undone.isEmpty()) {
          undone.pop().run();
        } else {
          undone.push(edit(folder, random));
        }
      }
      Published kept = publish(stays, folder, scratch.resolve("kept" + edit));
      Published made =
          publish(
              new Publisher(TemplateFolder.bundled(), Optional.empty(), Memory.none()),
              folder,
              scratch.resolve("made" + edit));
      assertEquals(made.findings(), kept.findings(), "edit " + edit);
      assertEquals(made.files().keySet(), kept.files().keySet(), "edit " + edit);
      made.files().forEach((name, bytes) -> assertArrayEquals(bytes, kept.files().get(name), name));
      withFiles += made.files().isEmpty() ? 0 : 1;
    }
    assertTrue(withFiles > EDITS / 2, "most edits can be published: " + withFiles);
    assertTrue(memory.size() > 0, "nothing was remembered");
  }

  private static void copy(Path to) throws IOException {
    try (Stream<Path> files = Files.walk(PATTERN)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = to.resolve(PATTERN.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
  }

  private static Published publish(Publisher publisher, Path folder, Path output)
      throws IOException {
    Result result = publisher.publish(folder, new Request(List.of(), List.of(Paper.A4), output));
    TreeMap<String, byte[]> files = new TreeMap<>();
    for (Path file : result.written()) {
      files.put(
          output.toAbsolutePath().relativize(file.toAbsolutePath()).toString(),
          Files.readAllBytes(file));
    }
    return new Published(files, result.findings().sorted());
  }

  /** Changes a number of the size table or of the pattern, or a word of a step. */
  private static Runnable edit(Path folder, Random random) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder)) {
      files =
          all.filter(file -> file.toString().matches(".*\\.(csv|md|yaml)"))
              .filter(Files::isRegularFile)
              .sorted()
              .toList();
    }
    while (true) {
      Path file = files.get(random.nextInt(files.size()));
      String text = Files.readString(file);
      boolean words = file.toString().endsWith(".md");
      List<MatchResult> places = (words ? WORD : NUMBER).matcher(text).results().toList();
      if (places.isEmpty()) {
        continue;
      }
      MatchResult place = places.get(random.nextInt(places.size()));
      String other =
          words
              ? "well"
              : Integer.toString(Integer.parseInt(place.group()) + 1 + random.nextInt(3));
      write(file, text.substring(0, place.start()) + other + text.substring(place.end()));
      return () -> write(file, text);
    }
  }

  private static void write(Path file, String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
