package org.lapmark.publish.output;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * The folder with one pattern's files, replaced as a whole.
 *
 * <p>New files are completed in the sibling {@code .<pattern>.new}. Then the folder is renamed to
 * {@code .<pattern>.old}, the new one takes its place, what isn't ours moves over from the old one,
 * and our own files in the old one are deleted. {@link #repair} finishes or takes back whatever was
 * broken off between two of these steps. All of this happens under the {@link OutputLock}.
 */
public final class OutputFolder {
  private static final String MARK = ".lapmark-draft";

  private final Path target;
  private final Path fresh;
  private final Path old;
  private final String edition;
  private final Checkpoint checkpoint;

  /**
   * The folder of a pattern.
   *
   * @param output the folder that it is in
   * @param pattern its name
   * @param edition the edition that is written; files of others stay
   * @param checkpoint stands between the steps
   */
  public OutputFolder(Path output, String pattern, String edition, Checkpoint checkpoint) {
    this.edition = edition;
    this.target = output.resolve(pattern);
    this.fresh = output.resolve("." + pattern + ".new");
    this.old = output.resolve("." + pattern + ".old");
    this.checkpoint = checkpoint;
  }

  /** Brings the folder into order after a run that was broken off. */
  public void repair() throws IOException {
    for (Path folder : List.of(target, fresh, old)) {
      if (exists(folder) && !Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
        throw new FileSystemException(
            folder.toString(), null, "it isn't a plain folder; move it away and publish again");
      }
    }
    if (exists(old)) {
      if (exists(target)) {
        clear();
      } else {
        Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
      }
    }
    if (exists(fresh)) {
      discard();
    }
  }

  /** Begins a new content of the folder; {@link #repair} must have been called. */
  public Draft draft() throws IOException {
    Files.createDirectory(fresh);
    Files.createFile(fresh.resolve(MARK));
    return new Draft();
  }

  /** The new content while it is being completed. Its files may be written by several threads. */
  public final class Draft implements Receiver, AutoCloseable {
    private boolean published;

    private Draft() {}

    /** Writes a file. */
    @Override
    public Manifest.Entry write(
        String name, String size, String paper, String kind, String choices, byte[] content)
        throws IOException {
      checkpoint.before("write " + name);
      Files.createDirectories(fresh.resolve(name).getParent());
      Files.write(fresh.resolve(name), content, StandardOpenOption.CREATE_NEW);
      return new Manifest.Entry(name, Manifest.hash(content), size, paper, kind, choices, edition);
    }

    /**
     * Puts the new content in the folder's place. A file of ours that somebody changed and that is
     * made anew is kept under another name.
     *
     * @param entries the files written
     * @param replaced which of our own earlier files go away; the others are carried over
     * @param run a hash of all that the files depend on; nothing if that isn't known
     * @param told what the run has to say beside the files
     * @return what was kept under another name: that name by the file's
     */
    public SortedMap<String, String> publish(
        List<Manifest.Entry> entries,
        Predicate<Manifest.Entry> replaced,
        Optional<String> run,
        ToldBefore told)
        throws IOException {
      SortedMap<String, String> aside = new TreeMap<>();
      Set<String> names = new LinkedHashSet<>();
      entries.forEach(entry -> names.add(entry.name()));
      List<Manifest.Entry> all = new ArrayList<>(entries);
      if (exists(target)) {
        Manifest before = Manifest.of(target);
        refuseOtherEditions(names, before);
        refuseForeign(names, before);
        aside.putAll(setAside(names, before));
        for (Manifest.Entry entry : before.entries()) {
          Path file = target.resolve(entry.name());
          if (names.contains(entry.name()) || !exists(file)) {
            continue;
          }
          if (!before.owns(target, entry.name())) {
            all.add(entry); // It stays, and is known for ours that was changed.
          } else if (!replaced.test(entry)) {
            checkpoint.before("carry " + entry.name());
            carry(file, fresh.resolve(entry.name()));
            all.add(entry);
          }
        }
      }
      checkpoint.before("list");
      Files.write(
          fresh.resolve(Manifest.NAME), new Manifest(all).bytes(), StandardOpenOption.CREATE_NEW);
      List<FinishedRuns.Left> left = new ArrayList<>();
      for (Manifest.Entry entry : entries) {
        long size = Files.size(fresh.resolve(entry.name()));
        left.add(new FinishedRuns.Left(entry.hash(), size, entry.name()));
      }
      Files.write(
          fresh.resolve(FinishedRuns.NAME),
          FinishedRuns.of(target).with(run, left, told, all).bytes(),
          StandardOpenOption.CREATE_NEW);
      Files.delete(fresh.resolve(MARK));
      swap();
      published = true;
      return aside;
    }

    @Override
    public void close() throws IOException {
      if (!published && exists(fresh)) {
        discard();
      }
    }
  }

  /** New files may take the place of our own, changed or not, but of no other. */
  private void refuseForeign(Set<String> names, Manifest before) throws IOException {
    for (String name : names) {
      Path file = target.resolve(name);
      Path folder = file.getParent();
      boolean blocked = exists(folder) && !Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS);
      boolean ours = before.lists(name) && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
      if (blocked || exists(file) && !ours) {
        throw new FileSystemException(
            (blocked ? folder : file).toString(),
            null,
            "it was put there by somebody else; move it away and publish again");
      }
    }
  }

  /** Gives files of ours that somebody changed, and that are made anew, another name. */
  private SortedMap<String, String> setAside(Set<String> names, Manifest before)
      throws IOException {
    SortedMap<String, String> aside = new TreeMap<>();
    for (String name : names) {
      if (exists(target.resolve(name)) && !before.owns(target, name)) {
        int dot = name.lastIndexOf('.');
        String other = null;
        for (int i = 1; other == null || exists(target.resolve(other)); i++) {
          other = name.substring(0, dot) + ".changed-" + i + name.substring(dot);
        }
        checkpoint.before("set aside " + name);
        Files.move(target.resolve(name), target.resolve(other), StandardCopyOption.ATOMIC_MOVE);
        aside.put(name, other);
      }
    }
    return aside;
  }

  /** Of two editions whose files would have the same names, neither may take the other's place. */
  private void refuseOtherEditions(Set<String> names, Manifest before) throws IOException {
    for (Manifest.Entry entry : before.entries()) {
      boolean other = !entry.edition().isEmpty() && !entry.edition().equals(edition);
      if (other && names.contains(entry.name()) && before.owns(target, entry.name())) {
        throw new FileSystemException(
            target.resolve(entry.name()).toString(),
            null,
            "it belongs to edition ‘"
                + entry.edition()
                + "’; give the edition or the size another name, or move the file away");
      }
    }
  }

  private static void carry(Path from, Path to) throws IOException {
    Files.createDirectories(to.getParent());
    try {
      Files.createLink(to, from);
    } catch (UnsupportedOperationException | FileSystemException e) {
      Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
    }
  }

  private void swap() throws IOException {
    checkpoint.before("retire");
    // An ordinary end of the program (Ctrl-C) waits until one of both contents is in place again.
    EndDelay delay = EndDelay.begin();
    try {
      boolean retired = exists(target);
      if (retired) {
        Files.move(target, old, StandardCopyOption.ATOMIC_MOVE);
      }
      checkpoint.before("replace");
      try {
        Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (IOException e) {
        if (retired) {
          Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
        }
        throw e;
      }
      checkpoint.before("clear");
      if (retired) {
        clear();
      }
    } finally {
      delay.end();
    }
  }

  /** Moves what isn't ours from the old folder to the new one, then deletes the old one. */
  private void clear() throws IOException {
    Manifest before = Manifest.of(old);
    for (Path child : children(old)) {
      String name = child.getFileName().toString();
      if (name.equals(Manifest.NAME) || name.equals(FinishedRuns.NAME)) {
        continue;
      }
      // Folders are ours as far as their files are; a foreign one moves as a whole.
      boolean shared =
          Files.isDirectory(child, LinkOption.NOFOLLOW_LINKS)
              && (before.hasFolder(name)
                  || Files.isDirectory(target.resolve(name), LinkOption.NOFOLLOW_LINKS));
      if (!shared) {
        clear(name, before);
        continue;
      }
      for (Path file : children(child)) {
        clear(name + "/" + file.getFileName(), before);
      }
      checkpoint.before("clear folder " + name);
      Files.delete(child);
    }
    Files.deleteIfExists(old.resolve(FinishedRuns.NAME));
    checkpoint.before("clear list");
    Files.deleteIfExists(old.resolve(Manifest.NAME));
    checkpoint.before("remove");
    Files.delete(old);
  }

  private void clear(String name, Manifest before) throws IOException {
    checkpoint.before("clear " + name);
    Path file = old.resolve(name);
    if (before.owns(old, name)) {
      Files.delete(file);
    } else if (exists(target.resolve(name))) {
      throw new FileSystemException(
          file.toString(), null, "it isn't Lapmark's; move it away and publish again");
    } else {
      Files.createDirectories(target.resolve(name).getParent());
      Files.move(file, target.resolve(name), StandardCopyOption.ATOMIC_MOVE);
    }
  }

  /** Deletes a draft: a folder that has its mark, or its list, or nothing in it. */
  private void discard() throws IOException {
    List<Path> files = new ArrayList<>();
    List<Path> folders = new ArrayList<>();
    for (Path child : children(fresh)) {
      String name = child.getFileName().toString();
      if (name.endsWith(FileNames.CUT_FOLDER)
          && Files.isDirectory(child, LinkOption.NOFOLLOW_LINKS)) {
        folders.add(child);
        files.addAll(children(child));
      } else {
        files.add(child);
      }
    }
    boolean ours =
        files.isEmpty() || exists(fresh.resolve(MARK)) || exists(fresh.resolve(Manifest.NAME));
    for (Path file : files) {
      String name = file.getFileName().toString();
      boolean draft =
          isDocument(name)
              || file.getParent().equals(fresh)
                  && (name.equals(Manifest.NAME)
                      || name.equals(FinishedRuns.NAME)
                      || name.equals(MARK));
      if (!ours || !draft || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
        throw new FileSystemException(
            file.toString(), null, "it isn't Lapmark's; move it away and publish again");
      }
    }
    for (Path file : files) {
      // Mark and list go last, so that a folder half deleted is still known for a draft.
      if (isDocument(file.getFileName().toString())) {
        Files.delete(file);
      }
    }
    for (Path folder : folders) {
      Files.delete(folder);
    }
    Files.deleteIfExists(fresh.resolve(FinishedRuns.NAME));
    Files.deleteIfExists(fresh.resolve(Manifest.NAME));
    Files.deleteIfExists(fresh.resolve(MARK));
    Files.delete(fresh);
  }

  private static boolean isDocument(String name) {
    return name.endsWith(".pdf") || name.endsWith(".html") || name.endsWith(".svg");
  }

  private static List<Path> children(Path folder) throws IOException {
    List<Path> children = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
      stream.forEach(children::add);
    }
    children.sort(null);
    return children;
  }

  private static boolean exists(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }
}
