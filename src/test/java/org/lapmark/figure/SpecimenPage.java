package org.lapmark.figure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * The page of the reference that shows what figures draw: each specimen as written and as drawn.
 */
public final class SpecimenPage {
  /** Where the page’s pictures are, from the top of the source. */
  public static final Path PICTURES = Path.of("src", "readme", "reference", "pictures");

  private static final int DIGITS = 8;

  private SpecimenPage() {}

  /**
   * What follows the page’s introduction.
   *
   * @param sheet the specimens
   * @return Markdown
   */
  static String of(List<Specimen> sheet) {
    StringBuilder page = new StringBuilder();
    String heading = "";
    for (Specimen specimen : sheet) {
      if (!specimen.heading().equals(heading)) {
        heading = specimen.heading();
        page.append("\n## ").append(heading).append('\n');
      }
      page.append("\n```yaml\n").append(specimen.block()).append("```\n\n");
      page.append("![").append(escaped(specimen.figure().alternative())).append("](");
      page.append(PICTURES.getFileName()).append('/').append(picture(specimen)).append(")\n");
    }
    return page.toString();
  }

  /**
   * The file of a specimen’s picture. It is called after what is drawn as well, so that one of an
   * earlier day has another name.
   *
   * @param specimen the specimen
   * @return the file’s name
   */
  public static String picture(Specimen specimen) {
    try {
      byte[] drawn = Sketch.svg(specimen.figure().drawing()).getBytes(StandardCharsets.UTF_8);
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(drawn);
      return specimen.name() + "-" + HexFormat.of().formatHex(hash).substring(0, DIGITS) + ".png";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * The pictures that are there.
   *
   * @return their names, in order
   */
  public static List<String> kept() {
    try (var files = Files.list(PICTURES)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String escaped(String text) {
    return text.replace("[", "\\[").replace("]", "\\]").replace('\n', ' ');
  }
}
