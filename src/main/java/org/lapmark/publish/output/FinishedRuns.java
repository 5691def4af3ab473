package org.lapmark.publish.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which runs a pattern's output folder has seen through, by a hash of all that they depended on,
 * and what each left there and had to say. A run is up to date while every file of it is as it was
 * left.
 */
public final class FinishedRuns {
  /** The file in a pattern's output folder. */
  static final String NAME = ".lapmark-runs";

  private static final String HEAD = "lapmark-runs 2";
  private static final String RUN = "run";

  /** So many runs with other wishes are remembered, the latest last. */
  private static final int MOST = 24;

  private static final long MOST_BYTES = 4 << 20;

  /**
   * A file that a run left.
   *
   * @param hash the SHA-256 of its content, in hexadecimal
   * @param size bytes
   * @param name its name in the folder, with a slash where it lies in one inside
   */
  record Left(String hash, long size, String name) {
    boolean isIn(Path folder) throws IOException {
      Path file = folder.resolve(name);
      return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          && Files.size(file) == size
          && Manifest.hash(file).equals(hash);
    }
  }

  /** A run: the files that it left, and what it said. */
  record Finished(List<Left> files, ToldBefore told) {
    /** Copies the list. */
    Finished {
      files = List.copyOf(files);
    }
  }

  /**
   * A run that needn't be made again.
   *
   * @param files the files, sorted
   * @param told what it had to say
   */
  public record UpToDate(List<Path> files, ToldBefore told) {
    /** Copies the list. */
    public UpToDate {
      files = List.copyOf(files);
    }
  }

  private final Map<String, Finished> runs;

  private FinishedRuns(Map<String, Finished> runs) {
    this.runs = Collections.unmodifiableMap(new LinkedHashMap<>(runs));
  }

  /**
   * The files of a run that has been seen through, if all of them are as it left them.
   *
   * @param output the folder that has one folder a pattern
   * @param pattern what the pattern's output folder is called, or how its name begins
   * @param hash of all that the run depends on
   * @return the files and what was said; nothing if the run has to be made
   */
  public static Optional<UpToDate> upToDate(Path output, String pattern, String hash)
      throws IOException {
    if (!Files.isDirectory(output)) {
      return Optional.empty();
    }
    List<Path> folders = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(output)) {
      for (Path folder : stream) {
        String name = folder.getFileName().toString();
        if (name.startsWith("." + pattern)) {
          return Optional.empty(); // Something was broken off, and is repaired by publishing.
        }
        if (name.startsWith(pattern) && Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
          folders.add(folder);
        }
      }
    }
    for (Path folder : folders) {
      Finished run = of(folder).runs.get(hash);
      if (run != null) {
        return all(folder, run.files()).map(files -> new UpToDate(files, run.told()));
      }
    }
    return Optional.empty();
  }

  private static Optional<List<Path>> all(Path folder, List<Left> files) throws IOException {
    List<Path> paths = new ArrayList<>();
    for (Left file : files) {
      if (!file.isIn(folder)) {
        return Optional.empty();
      }
      paths.add(folder.resolve(file.name()));
    }
    paths.sort(null);
    return Optional.of(paths);
  }

  /** What is known of a folder; nothing when its list is missing or makes no sense. */
  static FinishedRuns of(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    Map<String, Finished> runs = new LinkedHashMap<>();
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST_BYTES) {
      return new FinishedRuns(runs);
    }
    String[] lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n", -1);
    if (!lines[0].equals(HEAD) || !lines[lines.length - 1].isEmpty()) {
      return new FinishedRuns(runs);
    }
    String run = null;
    for (int i = 1; i < lines.length - 1; i++) {
      String[] fields = lines[i].split("\t", -1);
      if (fields.length == 2 && fields[0].equals(RUN)) {
        run = fields[1];
        runs.put(run, new Finished(List.of(), ToldBefore.NOTHING));
      } else {
        Optional<Finished> more =
            run == null ? Optional.empty() : with(runs.get(run), lines[i], fields);
        if (more.isEmpty()) {
          return new FinishedRuns(Map.of());
        }
        runs.put(run, more.get());
      }
    }
    return new FinishedRuns(runs);
  }

  /** A run with one more line; nothing if it makes no sense. */
  private static Optional<Finished> with(Finished run, String line, String[] fields) {
    if (fields.length == 3 && fields[1].matches("[0-9]{1,18}") && Manifest.isPlace(fields[2])) {
      List<Left> files = new ArrayList<>(run.files());
      files.add(new Left(fields[0], Long.parseLong(fields[1]), fields[2]));
      return Optional.of(new Finished(files, run.told()));
    }
    return run.told().with(line).map(told -> new Finished(run.files(), told));
  }

  /**
   * The same with another run seen through.
   *
   * @param hash of all that it depended on; empty if that isn't known, so that it isn't remembered
   * @param own the files that it left
   * @param told what it had to say
   * @param all all files that stand in the folder now; runs of which one is gone are forgotten
   */
  FinishedRuns with(
      Optional<String> hash, List<Left> own, ToldBefore told, List<Manifest.Entry> all) {
    Map<String, String> known = new LinkedHashMap<>();
    all.forEach(entry -> known.put(entry.name(), entry.hash()));
    Map<String, Finished> next = new LinkedHashMap<>();
    runs.forEach(
        (run, finished) -> {
          if (finished.files().stream()
              .allMatch(file -> file.hash().equals(known.get(file.name())))) {
            next.put(run, finished);
          }
        });
    hash.filter(run -> told.isWritable())
        .ifPresent(
            run -> {
              next.remove(run);
              next.put(run, new Finished(own, told));
            });
    while (next.size() > MOST) {
      next.remove(next.keySet().iterator().next());
    }
    return new FinishedRuns(next);
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder(HEAD).append('\n');
    runs.forEach(
        (run, finished) -> {
          text.append(RUN).append('\t').append(run).append('\n');
          for (Left file : finished.files()) {
            text.append(file.hash())
                .append('\t')
                .append(file.size())
                .append('\t')
                .append(file.name())
                .append('\n');
          }
          finished.told().lines().forEach(line -> text.append(line).append('\n'));
        });
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
