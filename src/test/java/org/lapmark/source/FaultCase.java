package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.read.PatternReader;

/**
 * A labelled fault: changes to a small pattern in the folder {@code base}, and the findings that
 * they must give.
 */
public final class FaultCase {
  static final Path RESOURCES = Path.of("src", "test", "resources", "org", "lapmark", "source");
  private static final Pattern BYTE = Pattern.compile("<<([0-9A-F]{2})>>");

  private final Path resources;
  private final String name;
  private final List<String> changes = new ArrayList<>();
  private final List<String> expected = new ArrayList<>();
  private final Map<Integer, List<String>> said = new TreeMap<>();

  private FaultCase(Path resources, String name) {
    this.resources = resources;
    this.name = name;
  }

  /** All cases, by file and then as written. */
  static List<FaultCase> all() throws IOException {
    return all(RESOURCES);
  }

  /**
   * All cases of a folder, by file and then as written.
   *
   * @param resources the folder, with {@code base} and {@code faults} in it
   */
  public static List<FaultCase> all(Path resources) throws IOException {
    List<FaultCase> cases = new ArrayList<>();
    List<Path> files;
    try (Stream<Path> stream = Files.list(resources.resolve("faults"))) {
      files = stream.sorted().toList();
    }
    for (Path file : files) {
      for (String line : Files.readAllLines(file)) {
        if (line.startsWith("== ")) {
          String topic = file.getFileName().toString().replace(".txt", "");
          cases.add(new FaultCase(resources, topic + ": " + line.substring(3)));
        } else if (line.startsWith("> ")) {
          cases.get(cases.size() - 1).expected.add(line.substring(2));
        } else if (line.startsWith("? ")) {
          FaultCase last = cases.get(cases.size() - 1);
          last.said
              .computeIfAbsent(last.expected.size() - 1, unused -> new ArrayList<>())
              .add(line.substring(2));
        } else if (!line.isEmpty() && !line.startsWith("#")) {
          cases.get(cases.size() - 1).changes.add(line);
        }
      }
    }
    return cases;
  }

  public String name() {
    return name;
  }

  public List<String> expected() {
    return expected;
  }

  /**
   * Words that the message or the hint of an expected finding must have: lines that begin with a
   * question mark, below the finding.
   */
  public List<String> said(int finding) {
    return said.getOrDefault(finding, List.of());
  }

  /** Holds what is found to the words that it must have. */
  public void checkWords(List<Finding> found) {
    for (int i = 0; i < found.size(); i++) {
      String all = FindingText.message(found.get(i)) + "\n" + FindingText.hint(found.get(i));
      for (String words : said(i)) {
        assertTrue(all.contains(words), name + ": " + words + "\n" + all);
      }
    }
  }

  /** The code that this case comes close to, or the empty text. */
  public String near() {
    Matcher matcher = Pattern.compile(".*: near ([a-z0-9-]+)(:.*)?").matcher(name);
    return matcher.matches() ? matcher.group(1) : "";
  }

  /** Writes the changed pattern into a folder, reads it and gives what was found. */
  List<Finding> run(Path parent) throws IOException {
    Findings findings = new Findings();
    read(parent, findings);
    return findings.sorted();
  }

  /** Writes the changed pattern into a folder and reads it. */
  public PatternSource read(Path parent, Findings findings) throws IOException {
    Path folder = Files.createDirectory(parent.resolve("pouch"));
    copyBase(resources, folder);
    Files.writeString(parent.resolve("outside.svg"), "<svg/>");
    Map<String, Integer> limits = new TreeMap<>();
    List<AutoCloseable> open = new ArrayList<>();
    Path file = null;
    List<byte[]> lines = null;
    int at = -1;
    for (String change : changes) {
      String rest = change.length() > 2 ? change.substring(2) : "";
      switch (change.charAt(0)) {
        case '@' -> {
          write(file, lines);
          file = folder.resolve(new String(bytes(rest), StandardCharsets.UTF_8));
          lines = null;
          at = -1;
        }
        case '-' -> {
          lines = lines == null ? lines(file) : lines;
          at = indexOf(lines, bytes(rest));
          lines.remove(at);
        }
        case '+' -> {
          lines = lines == null ? lines(file) : lines;
          at = at < 0 ? lines.size() : at;
          lines.add(at++, bytes(rest));
        }
        case '=' -> {
          lines = lines == null ? new ArrayList<>() : lines;
          lines.add(bytes(rest));
        }
        case '%' -> {
          String[] words = rest.split(" ");
          limits.put(words[0], Integer.parseInt(words[1]));
        }
        case '!' -> special(file, rest, open);
        default -> throw new IllegalArgumentException(change);
      }
    }
    write(file, lines);
    PatternSource source = PatternReader.read(folder, limits(limits), findings);
    for (AutoCloseable socket : open) {
      try {
        socket.close();
      } catch (Exception e) {
        throw new IOException(e);
      }
    }
    return source;
  }

  static void copyBase(Path folder) throws IOException {
    copyBase(RESOURCES, folder);
  }

  private static void copyBase(Path resources, Path folder) throws IOException {
    Path base = resources.resolve("base");
    Files.walkFileTree(
        base,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Path target = folder.resolve(base.relativize(file).toString());
            Files.createDirectories(target.getParent());
            Files.copy(file, target);
            return FileVisitResult.CONTINUE;
          }
        });
  }

  /** A finding as the cases write it. */
  public static String written(Finding finding) {
    Position position = finding.position();
    String file = position.file().replaceFirst("^pouch/", "");
    if (position.line() == 0) {
      return finding.code().id() + " " + file;
    }
    int[] points = position.lineText().codePoints().toArray();
    int from = Math.min(position.column() - 1, points.length);
    int to = Math.min(from + position.length(), points.length);
    return finding.code().id()
        + " "
        + file
        + ":"
        + position.line()
        + ":"
        + position.column()
        + (to > from ? " " + visible(new String(points, from, to - from)) : "");
  }

  /** Characters that can't be seen, as their code points in double angles. */
  private static String visible(String text) {
    StringBuilder all = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              if (point == 0xfffd || Character.toString(point).matches("\\p{C}")) {
                all.append(String.format(Locale.ROOT, "<<%02X>>", point));
              } else {
                all.appendCodePoint(point);
              }
            });
    return all.toString();
  }

  private static void special(Path file, String rest, List<AutoCloseable> open) throws IOException {
    String[] words = rest.split(" ");
    switch (words[0]) {
      case "delete" -> Files.delete(file);
      case "link" -> {
        Files.createDirectories(file.getParent());
        Files.createSymbolicLink(file, Path.of(words[1]));
      }
      case "folder" -> Files.createDirectories(file);
      case "socket" -> {
        ServerSocketChannel channel = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
        channel.bind(UnixDomainSocketAddress.of(file));
        open.add(channel);
      }
      case "bytes" -> {
        byte[] content = Files.readAllBytes(file);
        byte[] all = Arrays.copyOf(content, Integer.parseInt(words[1]));
        Arrays.fill(all, content.length, all.length, (byte) ' ');
        Files.write(file, all);
      }
      default -> throw new IllegalArgumentException(rest);
    }
  }

  private static Limits limits(Map<String, Integer> changed) {
    Map<String, Integer> left = new LinkedHashMap<>(changed);
    Limits standard = Limits.STANDARD;
    Limits limits =
        new Limits(
            taken(left, "fileBytes", standard.fileBytes()),
            taken(left, "totalBytes", standard.totalBytes()),
            taken(left, "lineLength", standard.lineLength()),
            taken(left, "files", standard.files()),
            taken(left, "folderDepth", standard.folderDepth()),
            taken(left, "yamlDepth", standard.yamlDepth()),
            taken(left, "yamlNodes", standard.yamlNodes()),
            taken(left, "sizes", standard.sizes()),
            taken(left, "rows", standard.rows()),
            taken(left, "entries", standard.entries()),
            taken(left, "pieces", standard.pieces()),
            taken(left, "steps", standard.steps()),
            taken(left, "nameLength", standard.nameLength()),
            taken(left, "textLength", standard.textLength()),
            taken(left, "xmlDepth", standard.xmlDepth()),
            taken(left, "xmlElements", standard.xmlElements()),
            taken(left, "pathSegments", standard.pathSegments()),
            standard.largest());
    if (!left.isEmpty()) {
      throw new IllegalArgumentException("no such limit: " + left);
    }
    return limits;
  }

  private static int taken(Map<String, Integer> left, String name, int standard) {
    Integer value = left.remove(name);
    return value == null ? standard : value;
  }

  private static void write(Path file, List<byte[]> lines) throws IOException {
    if (lines == null) {
      return;
    }
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] line : lines) {
      all.write(line);
      all.write('\n');
    }
    Files.createDirectories(file.getParent());
    Files.write(file, all.toByteArray());
  }

  private static List<byte[]> lines(Path file) throws IOException {
    List<byte[]> lines = new ArrayList<>();
    for (String line : Files.readAllLines(file)) {
      lines.add(line.getBytes(StandardCharsets.UTF_8));
    }
    return lines;
  }

  private int indexOf(List<byte[]> lines, byte[] line) {
    for (int i = 0; i < lines.size(); i++) {
      if (Arrays.equals(lines.get(i), line)) {
        return i;
      }
    }
    throw new IllegalArgumentException(
        name + ": no line " + new String(line, StandardCharsets.UTF_8));
  }

  private static byte[] bytes(String text) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    Matcher matcher = BYTE.matcher(text);
    int at = 0;
    while (matcher.find()) {
      all.writeBytes(text.substring(at, matcher.start()).getBytes(StandardCharsets.UTF_8));
      all.write(Integer.parseInt(matcher.group(1), 16));
      at = matcher.end();
    }
    all.writeBytes(text.substring(at).getBytes(StandardCharsets.UTF_8));
    return all.toByteArray();
  }
}
