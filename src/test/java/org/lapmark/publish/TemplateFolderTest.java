package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.template.Templates;

class TemplateFolderTest {
  @TempDir Path home;

  @Test
  void readsAJarWithoutFolderEntries() throws IOException {
    Path jar = home.resolve("program.jar");
    try (OutputStream stream = Files.newOutputStream(jar);
        ZipOutputStream zip = new ZipOutputStream(stream)) {
      for (String name : List.of("org/lapmark/templates/words/en.properties", "org/other/x")) {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(name.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    Map<String, byte[]> files = TemplateFolder.inside(jar).files();
    assertEquals(List.of("words/en.properties"), List.copyOf(files.keySet()));
    assertArrayEquals(
        "org/lapmark/templates/words/en.properties".getBytes(StandardCharsets.UTF_8),
        files.get("words/en.properties"));
    // A second reading doesn't stumble over the first.
    assertEquals(files.keySet(), TemplateFolder.inside(jar).files().keySet());
  }

  @Test
  void readsTheProgramsOwn() throws IOException {
    Templates templates = TemplateFolder.bundled();
    assertTrue(templates.files().containsKey("words/en.properties"));
  }

  @Test
  void skipsHiddenFilesAndLinks() throws IOException {
    Path templates = Files.createDirectories(home.resolve("org/lapmark/templates/.git"));
    Files.writeString(templates.resolve("config"), "x");
    Files.writeString(templates.resolveSibling(".DS_Store"), "x");
    Files.writeString(home.resolve("secret"), "x");
    Files.createSymbolicLink(templates.resolveSibling("secret"), home.resolve("secret"));
    Files.createSymbolicLink(templates.resolveSibling("up"), home);
    Files.writeString(templates.resolveSibling("a.css"), "x");
    assertEquals(List.of("a.css"), List.copyOf(TemplateFolder.inside(home).files().keySet()));
  }

  @Test
  void aReplacementIsAFolder() {
    assertThrows(
        NotDirectoryException.class, () -> TemplateFolder.replacing(home.resolve("nowhere")));
    FileSystemException nameless =
        assertThrows(FileSystemException.class, () -> TemplateFolder.replacing(home.getRoot()));
    assertTrue(nameless.getReason().contains("of their own"), nameless.getReason());
  }

  @Test
  void boundsTheirSize() throws IOException {
    Path folder = Files.createDirectory(home.resolve("large"));
    byte[] mebibyte = new byte[1 << 20];
    for (int i = 0; i < 33; i++) {
      Files.write(folder.resolve("f" + i), mebibyte);
    }
    FileSystemException large =
        assertThrows(FileSystemException.class, () -> TemplateFolder.replacing(folder));
    assertTrue(large.getReason().contains("32 MiB"), large.getReason());
  }
}
