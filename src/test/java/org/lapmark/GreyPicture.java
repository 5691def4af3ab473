package org.lapmark;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Writes pictures in a few greys, which keeps their files small. */
final class GreyPicture {
  private static final int GREYS = 16;

  private GreyPicture() {}

  /** Writes a picture as PNG. */
  static void write(Path file, BufferedImage page) throws IOException {
    Files.createDirectories(file.getParent());
    ImageIO.write(grey(page), "png", file.toFile());
    System.out.println(file);
  }

  /** Writes a picture as PNG in a frame that shows where the page ends. */
  static void framed(Path file, BufferedImage page) throws IOException {
    BufferedImage picture = grey(page);
    Graphics2D frame = picture.createGraphics();
    frame.setColor(Color.GRAY);
    frame.drawRect(0, 0, page.getWidth() - 1, page.getHeight() - 1);
    frame.dispose();
    write(file, picture);
  }

  private static BufferedImage grey(BufferedImage page) {
    byte[] levels = new byte[GREYS];
    for (int i = 0; i < GREYS; i++) {
      levels[i] = (byte) (i * 255 / (GREYS - 1));
    }
    BufferedImage picture =
        new BufferedImage(
            page.getWidth(),
            page.getHeight(),
            BufferedImage.TYPE_BYTE_BINARY,
            new IndexColorModel(4, GREYS, levels, levels, levels));
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        Color color = new Color(page.getRGB(x, y));
        int grey = (299 * color.getRed() + 587 * color.getGreen() + 114 * color.getBlue()) / 1000;
        picture.getRaster().setSample(x, y, 0, (grey * (GREYS - 1) + 127) / 255);
      }
    }
    return picture;
  }
}
