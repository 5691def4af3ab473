package org.lapmark.document.art;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.drawing.Photograph;
import org.lapmark.finding.Position;
import org.lapmark.source.outside.ArtSource;
import org.lapmark.source.outside.Bytes;
import org.lapmark.source.outside.SamplePictures;

/** Photographs as documents embed them. */
class PhotographsTest {
  private static final int TOLERANCE = 12;

  private static ArtSource.Photo photo(byte[] file, int width, int height, int turn) {
    return new ArtSource.Photo(new Bytes(file), width, height, turn, Position.ofFile("a"));
  }

  private static BufferedImage image(Photograph made) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(made.jpeg()));
  }

  private static void near(int rgb, BufferedImage image, double across, double down) {
    Color found =
        new Color(
            image.getRGB((int) (image.getWidth() * across), (int) (image.getHeight() * down)));
    Color expected = new Color(rgb);
    assertEquals(expected.getRed(), found.getRed(), TOLERANCE, "red " + found);
    assertEquals(expected.getGreen(), found.getGreen(), TOLERANCE, "green " + found);
    assertEquals(expected.getBlue(), found.getBlue(), TOLERANCE, "blue " + found);
  }

  /** Where the red corner is seen, for each of the ways in which Exif turns a picture. */
  @ParameterizedTest
  @CsvSource({
    "1, .25, .25, 90", "2, .75, .25, 90", "3, .75, .75, 90", "4, .25, .75, 90",
    "5, .25, .25, 60", "6, .75, .25, 60", "7, .75, .75, 60", "8, .25, .75, 60"
  })
  void everyTurnComesOutUpright(int turn, double across, double down, int width)
      throws IOException {
    Photograph made = Photographs.of(photo(SamplePictures.jpeg(360, 240), 360, 240, turn), width);
    BufferedImage image = image(made);
    assertEquals(width, image.getWidth());
    assertEquals(150 - width, image.getHeight());
    near(0xff0000, image, across, down);
    near(0x0000ff, image, 1 - across, 1 - down);
    near(0x808080, image, 1 - across, down);
  }

  @Test
  void paperShowsThroughWhite() throws IOException {
    BufferedImage image =
        image(Photographs.of(photo(SamplePictures.png(300, 200), 300, 200, 1), 150));
    near(0xff0000, image, .25, .25);
    near(0xffffff, image, .75, .25);
  }

  @Test
  void greysKeepTheirLightness() throws IOException {
    BufferedImage grey = new BufferedImage(200, 100, BufferedImage.TYPE_BYTE_GRAY);
    for (int x = 0; x < 200; x++) {
      for (int y = 0; y < 100; y++) {
        grey.getRaster().setSample(x, y, 0, 100);
      }
    }
    for (String format : new String[] {"jpg", "png"}) {
      byte[] file = SamplePictures.written(grey, format);
      near(0x646464, image(Photographs.of(photo(file, 200, 100, 1), 50)), .5, .5);
    }
  }

  @Test
  void palettesAndSixteenBitsAreRead() throws IOException {
    BufferedImage few = SamplePictures.drawn(200, 100, BufferedImage.TYPE_BYTE_INDEXED);
    near(
        0xff0000,
        image(Photographs.of(photo(SamplePictures.written(few, "png"), 200, 100, 1), 100)),
        .25,
        .25);
    BufferedImage fine = new BufferedImage(200, 100, BufferedImage.TYPE_USHORT_GRAY);
    for (int x = 0; x < 200; x++) {
      for (int y = 0; y < 100; y++) {
        fine.getRaster().setSample(x, y, 0, 100 << 8);
      }
    }
    near(
        0x646464,
        image(Photographs.of(photo(SamplePictures.written(fine, "png"), 200, 100, 1), 50)),
        .5,
        .5);
  }

  @Test
  void fineLinesBecomeTheirMean() throws IOException {
    BufferedImage lines = new BufferedImage(400, 400, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 400; x += 2) {
      for (int y = 0; y < 400; y++) {
        lines.setRGB(x, y, 0xffffff);
      }
    }
    byte[] file = SamplePictures.written(lines, "png");
    near(0x808080, image(Photographs.of(photo(file, 400, 400, 1), 133)), .5, .5);
  }

  @Test
  void nothingThatACameraWroteIsLeft() throws IOException {
    byte[] file = SamplePictures.turned(SamplePictures.jpeg(300, 200), 3);
    assertTrue(new String(file, StandardCharsets.ISO_8859_1).contains("GPS"));
    Photograph made = Photographs.of(photo(file, 300, 200, 3), 150);
    String text = new String(made.jpeg(), StandardCharsets.ISO_8859_1);
    assertFalse(text.contains("GPS"));
    assertFalse(text.contains("Exif"));
    assertArrayEquals(made.jpeg(), Photographs.of(photo(file, 300, 200, 3), 150).jpeg());
  }

  @Test
  void whatCannotBeDecodedSaysSo() throws IOException {
    byte[] file = SamplePictures.png(300, 200);
    for (int i = 60; i < file.length - 30; i++) {
      file[i] = 7;
    }
    assertThrows(IOException.class, () -> Photographs.of(photo(file, 300, 200, 1), 150));
  }
}
