package org.lapmark.source.folder;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.lapmark.finding.Findings;
import org.lapmark.finding.InvisibleCharacters;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;

/**
 * The only way to a pattern folder's files. The folder is listed once; only plain files found there
 * can be read, so that no name in a source, whatever it looks like, leads out of the folder.
 * Symbolic links are reported and never followed. Names are in NFC, with forward slashes.
 */
public final class FolderFiles {
  /** What has to be a file to be read. */
  private static final Pattern FILES =
      Pattern.compile(
          "pattern\\.yaml|sizes\\.csv|(panels|art)/[^/]*\\.svg|translations/[^/]*/texts\\.yaml"
              + "|(translations/[^/]*/)?(steps|notes)/[^/]*\\.md");

  /** What has to be a folder. */
  private static final Pattern FOLDERS =
      Pattern.compile("panels|art|translations|(translations/[^/]*/)?(steps|notes)");

  private final String name;
  private final Path root;
  private final Limits limits;
  private final Findings findings;
  private final Map<String, Path> files = new TreeMap<>(CODE_POINTS);
  private final Set<String> refused = new TreeSet<>();
  private int seen;
  private long total;
  private boolean tooMuch;

  /** Text in the order of its code points, which differs from that of UTF-16 units. */
  static final Comparator<String> CODE_POINTS =
      (a, b) -> {
        int[] left = a.codePoints().toArray();
        int[] right = b.codePoints().toArray();
        return Arrays.compare(left, right);
      };

  /**
   * Lists a folder.
   *
   * @throws IOException when the folder itself can't be listed
   */
  public FolderFiles(Path folder, Limits limits, Findings findings) throws IOException {
    this.root = folder.toRealPath();
    Path given = folder.toAbsolutePath().normalize().getFileName();
    this.name =
        Normalizer.normalize(given == null ? "pattern" : given.toString(), Normalizer.Form.NFC);
    this.limits = limits;
    this.findings = findings;
    Findings found = new Findings();
    list(root, "", 0, found);
    if (seen > limits.files()) {
      // Which of them were seen depends on the file system; so none is read.
      files.clear();
      findings.add(
          FolderCode.TOO_MANY_FILES,
          Position.ofFile(name),
          "limit",
          Integer.toString(limits.files()));
    } else {
      findings.addAll(found);
    }
  }

  /** Whether the folder holds more than is read; then nothing of it is. */
  public boolean isTooMany() {
    return seen > limits.files();
  }

  /** The folder's name. */
  public String folderName() {
    return name;
  }

  /** A file's path as findings show it. */
  public String display(String path) {
    return name + "/" + path;
  }

  private void list(Path folder, String prefix, int depth, Findings found) throws IOException {
    List<Path> entries = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
      for (Path entry : stream) {
        // What begins with a dot belongs to tools: repositories, desktops.
        if (entry.getFileName().toString().startsWith(".")) {
          continue;
        }
        if (++seen > limits.files()) {
          return;
        }
        entries.add(entry);
      }
    } catch (DirectoryIteratorException e) {
      throw e.getCause();
    }
    entries.sort(Comparator.comparing(entry -> entry.getFileName().toString(), CODE_POINTS));
    for (Path entry : entries) {
      String raw = entry.getFileName().toString();
      String path = prefix + Normalizer.normalize(raw, Normalizer.Form.NFC);
      OptionalInt unseen = raw.codePoints().filter(FolderFiles::isUnseen).findFirst();
      if (unseen.isPresent()) {
        StringBuilder shown = new StringBuilder();
        path.codePoints().forEach(c -> shown.appendCodePoint(isUnseen(c) ? '?' : c));
        found.add(
            FolderCode.FILE_NAME_CONTROL,
            Position.ofFile(display(shown.toString())),
            "name",
            shown.toString(),
            "code",
            InvisibleCharacters.named(unseen.getAsInt()));
        continue;
      }
      BasicFileAttributes attributes;
      try {
        attributes =
            Files.readAttributes(entry, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      } catch (NoSuchFileException e) {
        continue;
      } catch (IOException e) {
        unreadable(path, e, found);
        continue;
      }
      boolean isFolder = attributes.isDirectory();
      if (attributes.isSymbolicLink()) {
        found.add(FolderCode.SYMBOLIC_LINK, Position.ofFile(display(path)), "name", path);
        refused.add(path);
      } else if ((isFolder ? FILES : FOLDERS).matcher(path).matches()) {
        unreadable(path, isFolder ? "folder" : "file", found);
      } else if (isFolder && !Files.isReadable(entry)) {
        unreadable(path, "denied", found);
      } else if (isFolder) {
        if (depth + 1 > limits.folderDepth()) {
          found.add(
              FolderCode.FOLDER_TOO_DEEP,
              Position.ofFile(display(path)),
              "name",
              path,
              "limit",
              Integer.toString(limits.folderDepth()));
        } else {
          list(entry, path + "/", depth + 1, found);
        }
      } else if (!attributes.isRegularFile()) {
        found.add(FolderCode.SPECIAL_FILE, Position.ofFile(display(path)), "name", path);
        refused.add(path);
      } else if (files.putIfAbsent(path, entry) != null) {
        found.add(FolderCode.FILE_NAME_TWICE, Position.ofFile(display(path)), "name", path);
      }
    }
  }

  private static boolean isUnseen(int point) {
    return point == '\t' || point == '\n' || InvisibleCharacters.of(point).isPresent();
  }

  private void unreadable(String path, IOException problem, Findings found) {
    unreadable(path, reason(problem), found);
  }

  private void unreadable(String path, String reason, Findings found) {
    refused.add(path);
    found.add(
        FolderCode.FILE_UNREADABLE, Position.ofFile(display(path)), "name", path, "reason", reason);
  }

  /** Why something can't be read, in the words of the finding. */
  static String reason(IOException problem) {
    if (problem instanceof AccessDeniedException) {
      return "denied";
    }
    return problem instanceof NoSuchFileException ? "gone" : "failed";
  }

  /**
   * Whether something of this name is there that can't be read, which has been reported: whoever
   * misses it needn't say so.
   */
  public boolean isRefused(String path) {
    return refused.contains(path);
  }

  /** Whether a file is there. */
  public boolean has(String path) {
    return files.containsKey(path);
  }

  /** The paths of all files, by code point. */
  public List<String> all() {
    return List.copyOf(files.keySet());
  }

  /**
   * The paths of a folder's files with an ending, in whatever letters, those of its subfolders too.
   */
  public List<String> alike(String folder, String ending) {
    return files.keySet().stream()
        .filter(
            path ->
                path.startsWith(folder)
                    && path.regionMatches(
                        true, path.length() - ending.length(), ending, 0, ending.length()))
        .toList();
  }

  /** The paths of a folder's own files with an ending, by code point. */
  public List<String> in(String folder, String ending) {
    List<String> paths = new ArrayList<>();
    for (String path : files.keySet()) {
      if (path.startsWith(folder)
          && path.endsWith(ending)
          && path.indexOf('/', folder.length()) < 0) {
        paths.add(path);
      }
    }
    return paths;
  }

  /**
   * The path of a file that the source names.
   *
   * @param folder the folder that it is looked for in, ending in a slash
   * @param reference the name as written
   * @param ending the ending of files that could have been meant
   * @param hints finds the file that was meant
   * @return the path, or null if there is none, which is then reported
   */
  public String resolve(String folder, SourceText reference, String ending, Hints hints) {
    String written = Normalizer.normalize(reference.text(), Normalizer.Form.NFC);
    boolean outside =
        written.startsWith("/")
            || written.indexOf('\\') >= 0
            || written.indexOf(':') >= 0
            || List.of(written.split("/", -1)).contains("..");
    if (outside) {
      findings.add(FolderCode.PATH_OUTSIDE, reference.position(), "name", written);
      return null;
    }
    String path = folder + written;
    if (has(path)) {
      return path;
    }
    if (isRefused(path)) {
      return null;
    }
    List<String> known =
        alike(folder, ending).stream().map(file -> file.substring(folder.length())).toList();
    hints.unknown(findings, FolderCode.FILE_MISSING, reference.position(), written, known);
    return null;
  }

  /**
   * A file's text, without byte order mark, its lines ended by LF.
   *
   * @return null if it can't be read as text, which is then reported
   */
  public SourceFile text(String path) {
    String shown = display(path);
    byte[] bytes = bytes(path, limits.fileBytes());
    if (bytes == null) {
      return null;
    }
    if (bytes.length > limits.fileBytes()) {
      findings.add(
          FolderCode.FILE_TOO_LARGE,
          Position.ofFile(shown),
          "name",
          path,
          "limit",
          Integer.toString(limits.fileBytes()));
      return null;
    }
    total += bytes.length;
    if (total > limits.totalBytes()) {
      if (!tooMuch) {
        tooMuch = true;
        findings.add(
            FolderCode.TOO_MUCH_TEXT,
            Position.ofFile(shown),
            "limit",
            Integer.toString(limits.totalBytes()));
      }
      return null;
    }
    return TextFile.read(shown, bytes, limits.lineLength(), findings);
  }

  /**
   * A file's bytes.
   *
   * @param most how many may be read: if there are more, one more is
   * @return null if it can't be read, which is then reported
   */
  public byte[] bytes(String path, int most) {
    try {
      Path file = files.get(path);
      // The folder may have changed since it was listed; a link put there now isn't followed
      // either.
      if (!file.toRealPath().startsWith(root)) {
        findings.add(FolderCode.SYMBOLIC_LINK, Position.ofFile(display(path)), "name", path);
        return null;
      }
      try (InputStream stream = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
        return stream.readNBytes(most + 1);
      }
    } catch (IOException e) {
      unreadable(path, e, findings);
      return null;
    }
  }
}
