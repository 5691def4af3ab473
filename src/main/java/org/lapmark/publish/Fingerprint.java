package org.lapmark.publish;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lapmark.document.template.Templates;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.Request;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.outside.OutsideReader;

/**
 * A hash of all that the files of a run depend on: the pattern folder, the templates, what is asked
 * for, and the program. Equal hashes mean equal files; a folder that can't be read whole, or is too
 * large, has none.
 */
final class Fingerprint {
  /** Of larger files, which the program doesn't read, the size alone counts. */
  private static final int MOST_BYTES = Limits.STANDARD.fileBytes();

  private final MessageDigest digest;

  private Fingerprint() {
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /**
   * The hash of a run over one folder.
   *
   * @param folder the pattern folder
   * @param request what is asked for
   * @param papers the papers that are made
   * @param common what {@link #common} gives for the run
   * @return the hash, in hexadecimal; nothing if it can't be had
   */
  static Optional<String> of(Path folder, Request request, List<Paper> papers, String common) {
    Fingerprint of = new Fingerprint();
    of.add(common);
    of.add(folder.getFileName().toString());
    of.add(request.sizes());
    for (Paper paper : papers) {
      of.add(paper.id());
      of.add(paper.correction().across() + " " + paper.correction().down());
    }
    request.choices().forEach((name, choice) -> of.add(List.of(name, choice)));
    of.add(request.presentation().suffix());
    of.add(request.extras().stream().map(Extra::option).sorted().toList());
    of.add(request.pieces());
    try {
      of.addFiles(folder);
    } catch (IOException | UncheckedIOException e) {
      return Optional.empty(); // Whoever reads the folder says what is wrong with it.
    }
    return Optional.of(of.hash());
  }

  /** The hash of what the folders of a run have in common: the program and the templates. */
  static String common(String program, Templates templates) {
    Fingerprint of = new Fingerprint();
    of.add(program);
    of.add(templates.folder());
    templates
        .files()
        .forEach(
            (name, content) -> {
              of.add(name);
              of.add(content);
            });
    return of.hash();
  }

  private String hash() {
    return HexFormat.of().formatHex(digest.digest());
  }

  /** Each with its length, so that no two sequences of texts run together to the same bytes. */
  private void add(String text) {
    add(text.getBytes(StandardCharsets.UTF_8));
  }

  private void add(byte[] bytes) {
    for (int shift = 24; shift >= 0; shift -= 8) {
      digest.update((byte) (bytes.length >> shift));
    }
    digest.update(bytes);
  }

  private void add(List<String> texts) {
    add(Integer.toString(texts.size()));
    texts.forEach(this::add);
  }

  /** Names, kinds and contents of all that is in a folder, but for what begins with a dot. */
  private void addFiles(Path folder) throws IOException {
    Map<String, Path> files = new TreeMap<>();
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path inside, BasicFileAttributes attributes)
              throws IOException {
            if (!inside.equals(folder) && isHidden(inside)) {
              return FileVisitResult.SKIP_SUBTREE;
            }
            return take(inside, attributes);
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            return isHidden(file) ? FileVisitResult.CONTINUE : take(file, attributes);
          }

          private FileVisitResult take(Path path, BasicFileAttributes attributes)
              throws IOException {
            files.put(folder.relativize(path).toString().replace('\\', '/'), path);
            if (files.size() > Limits.STANDARD.files() || attributes.isSymbolicLink()) {
              throw new IOException("too much, or not plain");
            }
            return FileVisitResult.CONTINUE;
          }
        });
    for (Map.Entry<String, Path> file : files.entrySet()) {
      add(file.getKey());
      boolean plain = Files.isRegularFile(file.getValue(), LinkOption.NOFOLLOW_LINKS);
      add(plain ? "file" : "other");
      if (plain) {
        long size = Files.size(file.getValue());
        add(Long.toString(size));
        int most =
            file.getKey().startsWith(OutsideReader.FOLDER) ? OutsideReader.MOST_BYTES : MOST_BYTES;
        if (size <= most) {
          try (InputStream stream =
              Files.newInputStream(file.getValue(), LinkOption.NOFOLLOW_LINKS)) {
            add(stream.readNBytes(most + 1));
          }
        }
      }
    }
  }

  private static boolean isHidden(Path path) {
    return path.getFileName().toString().startsWith(".");
  }
}
