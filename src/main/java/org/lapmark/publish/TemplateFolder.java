package org.lapmark.publish;

import com.ibm.icu.text.Normalizer2;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lapmark.document.template.Templates;

/** Reads templates: those that come with the program, or a folder that replaces them. */
public final class TemplateFolder {
  private static final String INSIDE = "org/lapmark/templates";
  private static final int MOST_FILES = 1000;
  private static final long MOST_BYTES = 32L << 20;

  private TemplateFolder() {}

  /**
   * The templates that come with the program, from its jar or its folder of classes.
   *
   * @return the templates
   * @throws IOException when they can't be read
   */
  public static Templates bundled() throws IOException {
    CodeSource source = TemplateFolder.class.getProtectionDomain().getCodeSource();
    if (source == null) {
      throw new IOException("the program can't find its own templates");
    }
    Path home;
    try {
      home = Path.of(source.getLocation().toURI());
    } catch (URISyntaxException | IllegalArgumentException e) {
      throw new IOException("the program can't find its own templates", e);
    }
    return inside(home);
  }

  /** The templates in a folder of classes, or in a jar. */
  static Templates inside(Path home) throws IOException {
    if (Files.isDirectory(home)) {
      return read(home.resolve(INSIDE));
    }
    try (FileSystem jar = FileSystems.newFileSystem(home)) {
      return read(jar.getPath("/" + INSIDE));
    }
  }

  /**
   * The templates of a folder that take the place of the program's own. What is wrong with them is
   * found when they are used.
   *
   * @param folder the folder
   * @return the templates
   * @throws IOException when it can't be read or is too large
   */
  public static Templates replacing(Path folder) throws IOException {
    Path name = folder.toAbsolutePath().normalize().getFileName();
    if (name == null) {
      throw new FileSystemException(
          folder.toString(), null, "templates need a folder of their own");
    }
    return new Templates(read(folder).files(), name.toString());
  }

  private static Templates read(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NotDirectoryException(folder.toString());
    }
    Map<String, byte[]> files = new TreeMap<>();
    long[] total = new long[1];
    // Symbolic links are neither followed nor read.
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
            return !directory.equals(folder) && isHidden(directory)
                ? FileVisitResult.SKIP_SUBTREE
                : FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            if (!attributes.isRegularFile() || isHidden(file)) {
              return FileVisitResult.CONTINUE;
            }
            total[0] += attributes.size();
            if (total[0] > MOST_BYTES || files.size() == MOST_FILES) {
              throw new FileSystemException(
                  folder.toString(),
                  null,
                  "templates are at most " + MOST_FILES + " files and 32 MiB together");
            }
            List<String> names = new ArrayList<>();
            folder.relativize(file).forEach(name -> names.add(name.toString()));
            files.put(
                Normalizer2.getNFCInstance().normalize(String.join("/", names)),
                Files.readAllBytes(file));
            return FileVisitResult.CONTINUE;
          }
        });
    return new Templates(files);
  }

  private static boolean isHidden(Path path) {
    return path.getFileName().toString().startsWith(".");
  }
}
