package org.lapmark.publish.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ManifestTest {
  @TempDir Path folder;

  @Test
  void readsWhatItWrote() throws IOException {
    List<Manifest.Entry> entries =
        List.of(
            new Manifest.Entry("a.pdf", "00", "S\\t\tM\n\r", "a4", "complete"),
            new Manifest.Entry("größe.pdf", "01", "", "letter", "tiles"),
            new Manifest.Entry("z.pdf", "02", "M", "a4", "tiles", "trim-yes", "2\tb"));
    Files.write(folder.resolve(Manifest.NAME), new Manifest(entries).bytes());
    assertEquals(entries, Manifest.of(folder).entries());
  }

  @Test
  void readsWhatWasWrittenBeforeEditionsWereNoted() throws IOException {
    Files.writeString(
        folder.resolve(Manifest.NAME),
        "lapmark-files 1\n00\tS\ta4\tcomplete\ta.pdf\n01\tS\ta4\ttiles\ttrim-yes\tb.pdf\n");
    assertEquals(
        List.of(
            new Manifest.Entry("a.pdf", "00", "S", "a4", "complete"),
            new Manifest.Entry("b.pdf", "01", "S", "a4", "tiles", "trim-yes", "")),
        Manifest.of(folder).entries());
  }

  @Test
  void ownsOnlyWhatIsAsItWasWritten() throws IOException {
    Manifest manifest =
        new Manifest(
            List.of(
                new Manifest.Entry("a.pdf", Manifest.hash(new byte[] {1}), "S", "a4", "complete")));
    Path file = folder.resolve("a.pdf");
    assertFalse(manifest.owns(file.getParent(), file.getFileName().toString()));
    Files.write(file, new byte[] {1});
    assertTrue(manifest.owns(file.getParent(), file.getFileName().toString()));
    Files.write(file, new byte[] {2});
    assertFalse(manifest.owns(file.getParent(), file.getFileName().toString()));
    Files.delete(file);
    Files.write(folder.resolve("b.pdf"), new byte[] {1});
    Files.createSymbolicLink(file, folder.resolve("b.pdf"));
    assertFalse(manifest.owns(file.getParent(), file.getFileName().toString()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "something else\n",
        "lapmark-files 2\n00\tS\ta4\tcomplete\t\ta.pdf\n",
        "lapmark-files 3\n",
        "lapmark-files 1\n00\tS\ta4\tcomplete\t../a.pdf\n",
        "lapmark-files 1\n00\tS\ta4\tcomplete\t.hidden\n",
        "lapmark-files 1\n00\tS\ta4\tcomplete\ta/.hidden\n",
        "lapmark-files 1\n00\tS\ta4\tcomplete\t/a.pdf\n",
        "lapmark-files 1\n00\tS\ta4\tcomplete\ta/\n",
        "lapmark-files 1\n00\tS\ta4\tcomplete\ta/b/c.pdf\n",
        "lapmark-files 1\n00\tS\ta4\tcomplete\ta\\b\n",
        "lapmark-files 1\n00\tS\ta4\tcomplete\n",
        "lapmark-files 1\n00\tS\ta4\tcomplete\ta.pdf"
      })
  void claimsNothingWhenItMakesNoSense(String text) throws IOException {
    Files.writeString(folder.resolve(Manifest.NAME), text);
    assertEquals(List.of(), Manifest.of(folder).entries());
  }

  @Test
  void claimsNothingWhenItIsNotText() throws IOException {
    Files.write(folder.resolve(Manifest.NAME), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    assertEquals(List.of(), Manifest.of(folder).entries());
  }
}
