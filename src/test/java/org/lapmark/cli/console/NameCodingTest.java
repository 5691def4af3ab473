package org.lapmark.cli.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.cli.Lapmark;

/** Names with letters of every kind, in every locale, through the program itself. */
class NameCodingTest {
  private static final Path PATTERN = Path.of("src/test/resources/org/lapmark/publish/by-size");

  @TempDir Path home;

  private String out;
  private String err;

  private Path copy(String name) throws IOException {
    Path folder = home.resolve(name);
    try (var files = Files.walk(PATTERN)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = folder.resolve(PATTERN.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
    return folder;
  }

  private int run(Path directory, String locale, File output, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
    command.add(classPath());
    command.add(Lapmark.class.getName());
    command.addAll(List.of(arguments));
    Path said = home.resolve("said");
    Path talked = home.resolve("talked");
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(directory.toFile())
            .redirectOutput(output == null ? said.toFile() : output)
            .redirectError(talked.toFile());
    builder.environment().put("LC_ALL", locale);
    Process process = builder.start();
    assertTrue(process.waitFor(2, TimeUnit.MINUTES));
    out = output == null ? Files.readString(said) : "";
    err = Files.readString(talked);
    return process.exitValue();
  }

  /** With absolute paths, since the program starts in another folder. */
  private static String classPath() {
    List<String> paths = new ArrayList<>();
    for (String path : System.getProperty("java.class.path").split(File.pathSeparator)) {
      paths.add(Path.of(path).toAbsolutePath().toString());
    }
    return String.join(File.pathSeparator, paths);
  }

  @Test
  void everyLetterWorksInTheLocaleOfScripts() throws Exception {
    Path home = copy("Täschchen 大/Beutel größe").getParent();
    int code =
        run(
            home,
            "C",
            null,
            "publish",
            "Beutel größe/pattern.yaml",
            "--size",
            "54",
            "--paper=a4",
            "--out",
            "für Łucja & 100%\u00a0fertig");
    assertEquals("", err.replaceAll("(?m)^lapmark: (publishing Beutel größe|54 on a4): .*\n", ""));
    assertEquals(0, code);
    assertTrue(out.startsWith("für Łucja & 100%\u00a0fertig/Beutel größe/Beutel-größe-"), out);
    for (String line : out.lines().toList()) {
      assertTrue(Files.isRegularFile(home.resolve(line)), line);
    }
    assertEquals(3, run(home, "POSIX", null, "check", "Ämter"));
    assertEquals("lapmark: Ämter: there is no such folder\n", err);
  }

  @Test
  void aFullDiskIsAFailure() throws Exception {
    File full = new File("/dev/full");
    if (!full.exists()) {
      return; // Known to Linux alone; other systems have the test with a stream.
    }
    assertEquals(3, run(copy("a").getParent(), "C.UTF-8", full, "grade", "a"));
    assertTrue(err.endsWith("whoever read it has stopped\n"), err);
    assertEquals(3, run(home, "C", full, "--version"));
  }

  @Test
  void argumentsAreHandedOverAsTheSystemHasThem() {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (String part : List.of("java", "-Xmx1g", "-jar", "l.jar", "check", "ä &%=", "", "-x")) {
      line.writeBytes(part.getBytes(StandardCharsets.UTF_8));
      line.write(0);
    }
    List<byte[]> parts = NameCoding.parts(line.toByteArray());
    String[] given = {"check", "\ufffd\ufffd &%=", "", "-x"};
    List<String> start = NameCoding.start(parts, given);
    assertEquals("-Dlapmark.arguments=check&%C3%A4+%26%25%3D&&-x&", start.get(1));
    assertEquals(List.of("-Xmx1g", "-jar", "l.jar"), start.subList(2, start.size()));
    // Whatever isn't plain is left alone.
    given[0] = "publish";
    assertEquals(List.of(), NameCoding.start(parts, given));
    assertEquals(List.of(), NameCoding.start(parts.subList(0, 3), new String[3]));
  }
}
