package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.lapmark.publish.request.Papers;
import org.lapmark.publish.request.Request;
import org.lapmark.source.outside.SamplePictures;

/** A pattern with photographs, a line drawing and a film from outside, and what is made of it. */
public final class SallowCase {
  private static final Path SOURCE =
      Path.of("src/test/resources/org/lapmark/publish/outside/sallow-case");

  private SallowCase() {}

  /** The pattern with photographs of every kind. */
  public static Path folder(Path home) throws IOException {
    Path folder = home.resolve("sallow-case");
    try (Stream<Path> files = Files.walk(SOURCE)) {
      for (Path one : files.toList()) {
        Files.copy(one, folder.resolve(SOURCE.relativize(one).toString()));
      }
    }
    Path art = folder.resolve("art");
    Files.write(
        art.resolve("finished.jpg"), SamplePictures.turned(SamplePictures.jpeg(2000, 3000), 6));
    Files.write(art.resolve("laid.png"), SamplePictures.png(1200, 800));
    Files.write(
        art.resolve("in-use.jpg"),
        SamplePictures.written(
            SamplePictures.drawn(900, 600, BufferedImage.TYPE_BYTE_GRAY), "jpg"));
    return folder;
  }

  /** The files made of sizes on A4. */
  public static List<Path> published(Path folder, Path output, String... sizes) throws IOException {
    Request request = new Request(List.of(sizes), List.of(Papers.ALL.get(0)), output);
    List<Outcome> outcomes =
        new Publisher(TemplateFolder.bundled())
            .publish(List.of(folder), request, new Listener() {});
    Outcome outcome = outcomes.get(0);
    assertTrue(outcome.failure().isEmpty(), outcome.toString());
    assertEquals(List.of(), outcome.result().findings().sorted());
    return outcome.result().written();
  }
}
