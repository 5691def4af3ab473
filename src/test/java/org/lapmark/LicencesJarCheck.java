package org.lapmark;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The built jar has the licence of everything in it. */
class LicencesJarCheck {
  private static final String FOLDER = "META-INF/licenses/";

  /** What a licence or notice may be called; wider than what the build takes along. */
  private static final Pattern LEGAL =
      Pattern.compile(
          "(.*/)?(licen[cs]e|notice|copying|copyright|ofl|mustread|about)[^/]*(?<!\\.class)",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern LICENCE =
      Pattern.compile("(licen[cs]e|copying)[^/]*", Pattern.CASE_INSENSITIVE);

  private static final Pattern LISTED =
      Pattern.compile("\\s*[^:]+:([^:]+):jar:[^:]+:(?:compile|runtime):(.+?\\.jar)(?:\\s.*)?");

  /** File by name of artifact. */
  private static final Map<String, Path> CARRIED = new TreeMap<>();

  private static ZipFile jar;

  @BeforeAll
  static void open() throws IOException {
    jar = new ZipFile("build-output/lapmark.jar");
    for (String line : Files.readAllLines(Path.of("build-output/maven/carried-artifacts.txt"))) {
      Matcher listed = LISTED.matcher(line);
      if (listed.matches()) {
        assertEquals(null, CARRIED.put(listed.group(1), Path.of(listed.group(2))), "two are alike");
      }
    }
    assertTrue(CARRIED.containsKey("pdfbox"), "the list is read: " + CARRIED);
  }

  @AfterAll
  static void close() throws IOException {
    jar.close();
  }

  @Test
  void ownLicenceIsThere() throws IOException {
    assertArrayEquals(Files.readAllBytes(Path.of("LICENSE")), bytes(jar, "META-INF/LICENSE"));
    assertTrue(text("META-INF/NOTICE").contains("The Lapmark authors"));
  }

  @Test
  void everyPartHasAFolderWithItsLicence() {
    Map<String, Boolean> licensed = new TreeMap<>();
    for (String name : names(jar)) {
      if (name.startsWith(FOLDER) && name.indexOf('/', FOLDER.length()) > 0) {
        String[] parts = name.substring(FOLDER.length()).split("/", 2);
        boolean licence =
            LICENCE.matcher(parts[1]).matches() && jar.getEntry(name).getSize() > 1000;
        licensed.merge(parts[0], licence, Boolean::logicalOr);
      }
    }
    Map<String, Boolean> wanted = new TreeMap<>();
    CARRIED.keySet().forEach(name -> wanted.put(name, true));
    assertEquals(
        wanted,
        licensed,
        "A folder for each part with a licence in it. Add what a part doesn't ship to"
            + " src/main/licenses; after removing a part, build with “clean”.");
  }

  @Test
  void whatPartsShipIsThereWordForWord() throws IOException {
    for (Map.Entry<String, Path> part : CARRIED.entrySet()) {
      try (ZipFile shipped = new ZipFile(part.getValue().toFile())) {
        boolean licensed = false;
        for (String name : names(shipped)) {
          if (LEGAL.matcher(name).matches() && !name.startsWith("META-INF/versions/")) {
            String simple = name.substring(name.lastIndexOf('/') + 1);
            licensed |= LICENCE.matcher(simple).matches();
            String here = FOLDER + part.getKey() + "/" + simple;
            assertTrue(
                jar.getEntry(here) != null, here + " is missing: see licence.files in pom.xml");
            assertArrayEquals(bytes(shipped, name), bytes(jar, here), here);
          }
        }
        boolean told =
            text(FOLDER + "README.txt").lines().anyMatch(line -> line.equals(part.getKey()));
        assertEquals(!licensed, told, part.getKey() + ": its licence's source is told in README");
      }
    }
  }

  @Test
  void fontsComeWithTheirs() throws IOException {
    List<String> withFonts = new ArrayList<>();
    for (Map.Entry<String, Path> part : CARRIED.entrySet()) {
      try (ZipFile shipped = new ZipFile(part.getValue().toFile())) {
        if (names(shipped).stream().anyMatch(name -> name.matches("(?i).*\\.(ttf|otf|ttc|pfb)"))) {
          withFonts.add(part.getKey());
        }
      }
    }
    assertFalse(withFonts.isEmpty());
    for (String part : withFonts) {
      assertTrue(
          names(jar).stream()
              .filter(name -> name.startsWith(FOLDER + part + "/"))
              .anyMatch(name -> text(name).contains("SIL OPEN FONT LICENSE Version 1.1")),
          part);
    }
  }

  @Test
  void noticesAreMerged() {
    TreeSet<String> missing = new TreeSet<>();
    String merged = words(text("META-INF/NOTICE"));
    for (String name : names(jar)) {
      if (name.startsWith(FOLDER) && name.matches(".*/NOTICE[^/]*")) {
        text(name)
            .lines()
            .filter(line -> line.contains("opyright") || line.contains("product includes"))
            .map(LicencesJarCheck::words)
            .filter(line -> !merged.contains(line))
            .forEach(missing::add);
      }
    }
    assertEquals(new TreeSet<>(), missing);
  }

  private static String words(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  private static List<String> names(ZipFile zip) {
    return zip.stream().filter(entry -> !entry.isDirectory()).map(ZipEntry::getName).toList();
  }

  private static String text(String name) {
    try {
      return new String(bytes(jar, name), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] bytes(ZipFile zip, String name) throws IOException {
    return zip.getInputStream(zip.getEntry(name)).readAllBytes();
  }
}
