package org.lapmark.publish.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
  private static final Predicate<Manifest.Entry> ALL = entry -> true;

  private static final Map<String, String> NEW =
      Map.of("a.pdf", "new", "b.pdf", "new", "M-cut/1.svg", "new", "S-cut/1.svg", "new");

  private static final Set<String> OWN = Set.of(Manifest.NAME, FinishedRuns.NAME);
  private static final Optional<String> RUN = Optional.of("r1");

  @TempDir Path output;

  /** Stands for the end of the process: nothing of the program runs on after it. */
  private static final class Killed extends Error {
    private static final long serialVersionUID = 1L;
  }

  @Test
  void putsNewFilesInPlaceOfOldOnes() throws IOException {
    publish(Map.of("a.pdf", "1", "b.pdf", "1"), ALL, step -> {});
    publish(Map.of("a.pdf", "2"), ALL, step -> {});
    assertEquals(Map.of("a.pdf", "2"), files());
    assertNothingLeftOver();
  }

  @Test
  void carriesOverItsOwnFilesThatAreNotReplaced() throws IOException {
    publish(Map.of("a.pdf", "1", "b.pdf", "1"), ALL, step -> {});
    publish(Map.of("a.pdf", "2"), entry -> entry.name().equals("a.pdf"), step -> {});
    assertEquals(Map.of("a.pdf", "2", "b.pdf", "1"), files());
    // Still known for ours: a later run may replace it.
    publish(Map.of("b.pdf", "3"), ALL, step -> {});
    assertEquals(Map.of("b.pdf", "3"), files());
  }

  @Test
  void leavesForeignFilesAlone() throws IOException {
    publish(Map.of("a.pdf", "1"), ALL, step -> {});
    Files.writeString(target().resolve("notes.txt"), "mine");
    Files.createDirectories(target().resolve("proofs/old"));
    Files.writeString(target().resolve("proofs/old/p.pdf"), "mine too");
    Files.createSymbolicLink(target().resolve("link"), Path.of("nowhere"));
    publish(Map.of("c.pdf", "2"), ALL, step -> {});
    assertEquals("mine", Files.readString(target().resolve("notes.txt")));
    assertEquals("mine too", Files.readString(target().resolve("proofs/old/p.pdf")));
    assertTrue(Files.isSymbolicLink(target().resolve("link")));
    assertFalse(Files.exists(target().resolve("a.pdf")));
    assertEquals("2", Files.readString(target().resolve("c.pdf")));
    assertNothingLeftOver();
  }

  @Test
  void keepsItsOwnFileThatSomebodyChanged() throws IOException {
    publish(Map.of("a.pdf", "1", "b.pdf", "1"), ALL, step -> {});
    Files.writeString(target().resolve("b.pdf"), "annotated");
    publish(Map.of("a.pdf", "2"), ALL, step -> {});
    assertEquals(Map.of("a.pdf", "2", "b.pdf", "annotated"), files());
    publish(Map.of("b.pdf", "3"), ALL, step -> {});
    assertEquals(Map.of("b.pdf", "3", "b.changed-1.pdf", "annotated"), files());
    Files.writeString(target().resolve("b.pdf"), "annotated again");
    publish(Map.of("b.pdf", "4"), ALL, step -> {});
    assertEquals(
        Map.of("b.pdf", "4", "b.changed-1.pdf", "annotated", "b.changed-2.pdf", "annotated again"),
        files());
    assertNothingLeftOver();
  }

  @Test
  void refusesToReplaceWhatIsNoPlainFolder() throws IOException {
    Path elsewhere = Files.createDirectory(output.resolve("elsewhere"));
    Files.createSymbolicLink(target(), elsewhere);
    assertThrows(FileSystemException.class, () -> publish(Map.of("a.pdf", "1"), ALL, step -> {}));
    assertTrue(Files.isSymbolicLink(target()));
    Files.delete(target());
    Files.writeString(target(), "a file");
    assertThrows(FileSystemException.class, () -> publish(Map.of("a.pdf", "1"), ALL, step -> {}));
    assertEquals("a file", Files.readString(target()));
    Files.delete(target());
    Files.createSymbolicLink(output.resolve(".tote.new"), elsewhere);
    assertThrows(FileSystemException.class, () -> publish(Map.of("a.pdf", "1"), ALL, step -> {}));
    assertEquals(List.of(), list(elsewhere));
  }

  @Test
  void neverDeletesSiblingsThatAreNotItsOwn() throws IOException {
    Path fresh = Files.createDirectory(output.resolve(".tote.new"));
    Files.writeString(fresh.resolve("diary.pdf"), "mine");
    assertThrows(FileSystemException.class, () -> publish(Map.of("a.pdf", "1"), ALL, step -> {}));
    assertEquals("mine", Files.readString(fresh.resolve("diary.pdf")));
    Files.createFile(fresh.resolve(".lapmark-draft"));
    Files.createDirectory(fresh.resolve("more"));
    assertThrows(FileSystemException.class, () -> publish(Map.of("a.pdf", "1"), ALL, step -> {}));
    assertEquals("mine", Files.readString(fresh.resolve("diary.pdf")));
  }

  @Test
  void carriesOverFoldersAndLeavesForeignFilesInThem() throws IOException {
    publish(Map.of("M-cut/1.svg", "1", "L-cut/1.svg", "1"), ALL, step -> {});
    Files.writeString(target().resolve("M-cut/mine.svg"), "mine");
    publish(Map.of("M-cut/2.svg", "2"), entry -> entry.name().startsWith("M-cut"), step -> {});
    assertEquals(Map.of("M-cut/2.svg", "2", "M-cut/mine.svg", "mine", "L-cut/1.svg", "1"), files());
    // A folder of somebody else's is shared.
    Files.createDirectories(target().resolve("S-cut"));
    Files.writeString(target().resolve("S-cut/mine.svg"), "mine");
    publish(Map.of("S-cut/1.svg", "3"), ALL, step -> {});
    assertEquals(
        Map.of("M-cut/mine.svg", "mine", "S-cut/mine.svg", "mine", "S-cut/1.svg", "3"), files());
    assertNothingLeftOver();
  }

  @Test
  void neverWritesOrDeletesThroughLinks() throws IOException {
    publish(Map.of("M-cut/1.svg", "1"), ALL, step -> {});
    Path elsewhere = output.resolve("elsewhere");
    Files.move(target().resolve("M-cut"), elsewhere);
    Files.createSymbolicLink(target().resolve("M-cut"), elsewhere);
    assertThrows(
        FileSystemException.class, () -> publish(Map.of("M-cut/1.svg", "2"), ALL, step -> {}));
    assertEquals("1", Files.readString(elsewhere.resolve("1.svg")));
    publish(Map.of("a.pdf", "2"), ALL, step -> {});
    assertEquals("1", Files.readString(elsewhere.resolve("1.svg")));
    assertTrue(Files.isSymbolicLink(target().resolve("M-cut")));
    assertNothingLeftOver();
  }

  @Test
  void aFailureLeavesTheLastGoodOutput() throws IOException {
    publish(Map.of("a.pdf", "1"), ALL, step -> {});
    assertThrows(
        IllegalStateException.class,
        () ->
            publish(
                Map.of("a.pdf", "2"),
                ALL,
                step -> {
                  if (step.equals("list")) {
                    throw new IllegalStateException();
                  }
                }));
    assertEquals(Map.of("a.pdf", "1"), files());
    assertNothingLeftOver();
  }

  @Test
  void aRunBrokenOffAnywhereIsRepaired() throws IOException {
    List<String> steps = new ArrayList<>();
    prepare();
    publish(NEW, this::replaced, steps::add);
    assertTrue(
        steps.containsAll(List.of("retire", "replace", "clear", "remove")), steps.toString());
    Map<String, String> after = files();
    assertEquals(
        Map.of(
            "a.pdf", "new",
            "b.pdf", "new",
            "kept.pdf", "old",
            "notes.txt", "mine",
            "M-cut/1.svg", "new",
            "M-cut/notes.txt", "mine",
            "S-cut/1.svg", "new"),
        after);
    clearAway();
    for (String last : steps) {
      prepare();
      Map<String, String> before = files();
      assertThrows(
          Killed.class,
          () ->
              publishUnguarded(
                  NEW,
                  step -> {
                    if (step.equals(last)) {
                      throw new Killed();
                    }
                  }));
      new OutputFolder(output, "tote", "1", step -> {}).repair();
      Map<String, String> repaired = files();
      boolean swapped = steps.indexOf(last) > steps.indexOf("replace");
      assertEquals(swapped ? after : before, repaired, "broken off before " + last);
      assertNothingLeftOver();
      publish(NEW, this::replaced, step -> {});
      assertEquals(after, files(), "again after being broken off before " + last);
      assertNothingLeftOver();
      clearAway();
    }
  }

  private boolean replaced(Manifest.Entry entry) {
    return !entry.name().equals("kept.pdf");
  }

  private void prepare() throws IOException {
    Map<String, String> old = new TreeMap<>();
    for (String name :
        List.of("a.pdf", "gone.pdf", "kept.pdf", "M-cut/1.svg", "M-cut/2.svg", "L-cut/1.svg")) {
      old.put(name, "old");
    }
    publish(old, ALL, step -> {});
    Files.writeString(target().resolve("notes.txt"), "mine");
    Files.writeString(target().resolve("M-cut/notes.txt"), "mine");
  }

  private void publish(
      Map<String, String> content, Predicate<Manifest.Entry> replaced, Checkpoint checkpoint)
      throws IOException {
    OutputFolder folder = new OutputFolder(output, "tote", "1", checkpoint);
    folder.repair();
    try (OutputFolder.Draft draft = folder.draft()) {
      draft.publish(write(draft, content), replaced, RUN, ToldBefore.NOTHING);
    }
  }

  private void publishUnguarded(Map<String, String> content, Checkpoint checkpoint)
      throws IOException {
    OutputFolder folder = new OutputFolder(output, "tote", "1", checkpoint);
    folder.repair();
    OutputFolder.Draft draft = folder.draft();
    draft.publish(write(draft, content), this::replaced, RUN, ToldBefore.NOTHING);
  }

  private static List<Manifest.Entry> write(OutputFolder.Draft draft, Map<String, String> content)
      throws IOException {
    List<Manifest.Entry> entries = new ArrayList<>();
    for (Map.Entry<String, String> file : new TreeMap<>(content).entrySet()) {
      entries.add(
          draft.write(
              file.getKey(),
              "M",
              "a4",
              "complete",
              "",
              file.getValue().getBytes(StandardCharsets.UTF_8)));
    }
    return entries;
  }

  private Path target() {
    return output.resolve("tote");
  }

  private Map<String, String> files() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(target())) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        if (!OWN.contains(file.getFileName().toString())) {
          String name = target().relativize(file).toString().replace('\\', '/');
          files.put(name, Files.readString(file));
        }
      }
    }
    return files;
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> children = Files.list(folder)) {
      return children.sorted().toList();
    }
  }

  private void assertNothingLeftOver() throws IOException {
    for (Path path : list(output)) {
      assertFalse(path.getFileName().toString().startsWith(".tote"), path.toString());
    }
  }

  private void clearAway() throws IOException {
    try (Stream<Path> all = Files.walk(target())) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
    assertFalse(Files.exists(target(), LinkOption.NOFOLLOW_LINKS));
  }
}
