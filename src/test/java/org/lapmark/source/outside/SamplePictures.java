package org.lapmark.source.outside;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Photographs made up: red above on the left, blue below on the right, on grey. */
public final class SamplePictures {
  private SamplePictures() {}

  public static BufferedImage drawn(int width, int height, int type) {
    BufferedImage image = new BufferedImage(width, height, type);
    Graphics2D pen = image.createGraphics();
    if (!image.getColorModel().hasAlpha()) {
      pen.setColor(new Color(0x80, 0x80, 0x80));
      pen.fillRect(0, 0, width, height);
    }
    pen.setColor(Color.RED);
    pen.fillRect(0, 0, width / 2, height / 2);
    pen.setColor(Color.BLUE);
    pen.fillRect(width / 2, height / 2, width, height);
    pen.dispose();
    return image;
  }

  public static byte[] jpeg(int width, int height) throws IOException {
    return written(drawn(width, height, BufferedImage.TYPE_INT_RGB), "jpg");
  }

  public static byte[] png(int width, int height) throws IOException {
    return written(drawn(width, height, BufferedImage.TYPE_INT_ARGB), "png");
  }

  public static byte[] written(BufferedImage image, String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, format, out);
    return out.toByteArray();
  }

  /** The same JPEG with an Exif segment that says how it is turned, and where it was taken. */
  public static byte[] turned(byte[] jpeg, int turn) {
    byte[] told =
        "Exif\0\0MM\0*\0\0\0\10\0\1\1\22\0\3\0\0\0\1\0T\0\0\0\0\0\0GPS 61.2 N"
            .getBytes(StandardCharsets.ISO_8859_1);
    for (int i = 0; i < told.length; i++) {
      if (told[i] == 'T' && told[i - 1] == 0) {
        told[i] = (byte) turn;
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    out.write(0xff);
    out.write(0xe1);
    out.write(0);
    out.write(told.length + 2);
    out.writeBytes(told);
    out.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }
}
