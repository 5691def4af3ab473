package org.lapmark.document.template;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;

/**
 * The files of the {@code templates/} folder, read beforehand.
 *
 * @param files content by path relative to the folder, with forward slashes
 * @param folder the name of the folder if they take the place of the program's own; else empty
 */
public record Templates(Map<String, byte[]> files, String folder) {
  private static final String OWN = "templates";

  /** Copies the map, sorted by path. */
  public Templates {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
    Objects.requireNonNull(folder);
  }

  /**
   * The program's own templates.
   *
   * @param files content by path relative to the folder, with forward slashes
   */
  public Templates(Map<String, byte[]> files) {
    this(files, "");
  }

  /** Whether they are the program's own: what is wrong in them is no user's fault. */
  public boolean areOwn() {
    return folder.isEmpty();
  }

  /** A file's path as findings show it. */
  public String display(String path) {
    return (areOwn() ? OWN : folder) + "/" + path;
  }

  /** A file with its places. */
  public SourceFile source(String path) {
    return new SourceFile(display(path), text(path).replace("\r\n", "\n").replace('\r', '\n'));
  }

  /** A place in a file; the whole file if the line isn't known. */
  Position position(String path, int line, int column, int length) {
    if (line <= 0 || !files.containsKey(path)) {
      return Position.ofFile(display(path));
    }
    SourceFile file = source(path);
    int start = file.offset(line - 1, Math.max(0, column - 1));
    return file.position(start, start + Math.max(1, length));
  }

  /** A line of a file. */
  public Position line(String path, int line) {
    Position start = position(path, line, 1, 1);
    String text = start.lineText();
    int blank = text.length() - text.stripLeading().length();
    return position(path, line, blank + 1, text.strip().length());
  }

  /**
   * A file as text.
   *
   * @param path its relative path
   * @return the text, read as UTF-8
   * @throws IllegalArgumentException when there is no such file
   */
  public String text(String path) {
    return new String(bytes(path), StandardCharsets.UTF_8);
  }

  /**
   * A file.
   *
   * @param path its relative path
   * @return the bytes
   * @throws IllegalArgumentException when there is no such file
   */
  public byte[] bytes(String path) {
    byte[] bytes = files.get(path);
    if (bytes == null) {
      throw new IllegalArgumentException("no template " + path);
    }
    return bytes.clone();
  }
}
