package org.lapmark.document;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * The files of the {@code templates/} folder, read beforehand.
 *
 * @param files content by path relative to the folder, with forward slashes
 */
public record Templates(Map<String, byte[]> files) {
  /** Copies the map, sorted by path. */
  public Templates {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
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
