package org.lapmark.publish.output;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which files of an output folder the program wrote itself, and what was in them. Whatever isn't
 * listed here, or has been changed since, belongs to somebody else and is never deleted.
 */
public final class Manifest {
  /** The manifest's file in a pattern's output folder. */
  public static final String NAME = ".lapmark-files";

  private static final String HEAD = "lapmark-files 2";

  /** As written before files of several editions stood beside each other. */
  private static final String OLD_HEAD = "lapmark-files 1";

  private static final int FIELDS = 7;
  private static final long MOST_BYTES = 1 << 20;

  /**
   * A file written.
   *
   * @param name its name in the folder; that of a file in a folder inside has a slash
   * @param hash the SHA-256 of its content, in hexadecimal
   * @param size the size it is for; empty for all
   * @param paper the id of the paper it is for; empty for none
   * @param kind what it is
   * @param choices what it chooses other than by default; empty for the default
   * @param edition the edition that it belongs to; empty if that isn't known
   */
  public record Entry(
      String name,
      String hash,
      String size,
      String paper,
      String kind,
      String choices,
      String edition) {
    /** A file of the default. */
    Entry(String name, String hash, String size, String paper, String kind) {
      this(name, hash, size, paper, kind, "", "");
    }
  }

  private final SortedMap<String, Entry> entries;

  Manifest(List<Entry> entries) {
    SortedMap<String, Entry> byName = new TreeMap<>();
    entries.forEach(entry -> byName.put(entry.name(), entry));
    this.entries = Collections.unmodifiableSortedMap(byName);
  }

  /** The manifest of a folder; empty when it has none, or one that makes no sense. */
  static Manifest of(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST_BYTES) {
      return new Manifest(List.of());
    }
    String text;
    try {
      text =
          StandardCharsets.UTF_8
              .newDecoder()
              .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
              .toString();
    } catch (CharacterCodingException e) {
      return new Manifest(List.of());
    }
    List<Entry> entries = new ArrayList<>();
    String[] lines = text.split("\n", -1);
    boolean old = lines[0].equals(OLD_HEAD);
    if (!old && !lines[0].equals(HEAD) || !lines[lines.length - 1].isEmpty()) {
      return new Manifest(List.of());
    }
    for (int i = 1; i < lines.length - 1; i++) {
      String[] fields = lines[i].split("\t", -1);
      int last = fields.length - 1;
      boolean complete = old ? last == 4 || last == 5 : fields.length == FIELDS;
      if (!complete || !isPlace(fields[last])) {
        return new Manifest(List.of());
      }
      entries.add(
          new Entry(
              fields[last],
              fields[0],
              unescaped(fields[1]),
              fields[2],
              fields[3],
              last > 4 ? fields[4] : "",
              old ? "" : unescaped(fields[5])));
    }
    return new Manifest(entries);
  }

  /** Whether it names a file in the folder, or one in a folder inside. */
  static boolean isPlace(String name) {
    int slash = name.indexOf('/');
    return isName(name.substring(slash + 1)) && (slash < 0 || isName(name.substring(0, slash)));
  }

  private static boolean isName(String name) {
    return !name.isEmpty()
        && !name.startsWith(".")
        && name.chars().noneMatch(c -> c < ' ' || c == '/' || c == '\\' || c == ':');
  }

  List<Entry> entries() {
    return List.copyOf(entries.values());
  }

  /** Whether a file is one that the program wrote, as it is or changed since. */
  boolean lists(String name) {
    return entries.containsKey(name);
  }

  /** Whether files are in a folder of that name inside. */
  boolean hasFolder(String name) {
    return entries.keySet().stream().anyMatch(each -> each.startsWith(name + "/"));
  }

  /**
   * Whether a file is as the program wrote it.
   *
   * @param folder the pattern's output folder
   * @param name the file's name in it
   */
  boolean owns(Path folder, String name) throws IOException {
    Entry entry = entries.get(name);
    Path file = folder.resolve(name);
    return entry != null
        && Files.isDirectory(file.getParent(), LinkOption.NOFOLLOW_LINKS)
        && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && entry.hash().equals(hash(file));
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder(HEAD).append('\n');
    for (Entry entry : entries.values()) {
      text.append(entry.hash())
          .append('\t')
          .append(escaped(entry.size()))
          .append('\t')
          .append(entry.paper())
          .append('\t')
          .append(entry.kind())
          .append('\t')
          .append(entry.choices())
          .append('\t')
          .append(escaped(entry.edition()))
          .append('\t')
          .append(entry.name())
          .append('\n');
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String escaped(String field) {
    return field
        .replace("\\", "\\\\")
        .replace("\t", "\\t")
        .replace("\n", "\\n")
        .replace("\r", "\\r");
  }

  private static String unescaped(String field) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < field.length(); i++) {
      char c = field.charAt(i);
      if (c != '\\' || i + 1 == field.length()) {
        text.append(c);
        continue;
      }
      char escape = field.charAt(++i);
      text.append(
          switch (escape) {
            case 't' -> '\t';
            case 'n' -> '\n';
            case 'r' -> '\r';
            default -> escape;
          });
    }
    return text.toString();
  }

  static String hash(byte[] content) {
    return HexFormat.of().formatHex(sha256().digest(content));
  }

  static String hash(Path file) throws IOException {
    MessageDigest digest = sha256();
    try (InputStream stream = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
      byte[] buffer = new byte[1 << 16];
      for (int n = stream.read(buffer); n >= 0; n = stream.read(buffer)) {
        digest.update(buffer, 0, n);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
