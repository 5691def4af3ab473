package org.lapmark.document.art;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.lapmark.drawing.Photograph;
import org.lapmark.source.outside.ArtSource;

/**
 * Makes photographs ready for documents: smaller, upright, in sRGB, on white where they let paper
 * through, and without anything that a camera wrote into the file, such as where it was.
 */
final class Photographs {
  private static final float QUALITY = 0.88f;
  private static final int WHITE = 255;

  private Photographs() {}

  /**
   * Makes one.
   *
   * @param source the photograph as brought
   * @param across how many pixels from left to right, not more than it has
   * @throws IOException when it can't be decoded
   */
  static Photograph of(ArtSource.Photo source, int across) throws IOException {
    try {
      return encoded(decoded(source, across));
    } catch (RuntimeException e) {
      // What decoders throw when a file isn't what it says.
      throw new IOException(e);
    }
  }

  private static Pixels decoded(ArtSource.Photo source, int across) throws IOException {
    int down = Math.max(1, (int) Math.round((double) across * source.down() / source.across()));
    boolean swapped = source.turn() > 4;
    int width = swapped ? down : across;
    int height = swapped ? across : down;
    boolean png = source.file().at(0) == 0x89;
    ImageReader reader = ImageIO.getImageReadersByFormatName(png ? "png" : "jpeg").next();
    try (ImageInputStream in = new MemoryCacheImageInputStream(source.file().open())) {
      reader.setInput(in, true, true);
      ImageReadParam param = reader.getDefaultReadParam();
      // Every other pixel is enough where four and more would become one.
      int every =
          Math.max(1, Math.min(source.width() / (2 * width), source.height() / (2 * height)));
      param.setSourceSubsampling(every, every, 0, 0);
      BufferedImage image = reader.read(0, param);
      return inSrgb(shrunk(image, width, height), image.getColorModel()).turned(source.turn());
    } finally {
      reader.dispose();
    }
  }

  private static Pixels shrunk(BufferedImage image, int width, int height) {
    int w = Math.min(width, image.getWidth());
    int h = Math.min(height, image.getHeight());
    Shrinking shrinking = new Shrinking(image.getWidth(), image.getHeight(), w, h);
    int[] rgb = new int[3 * image.getWidth()];
    for (int y = 0; y < image.getHeight(); y++) {
      row(image, y, rgb);
      shrinking.take(rgb);
    }
    return shrinking.pixels();
  }

  /** A row's pixels on white, in the picture's own colours. */
  private static void row(BufferedImage image, int y, int[] rgb) {
    int width = image.getWidth();
    ColorModel model = image.getColorModel();
    if (model instanceof IndexColorModel) {
      int[] argb = image.getRGB(0, y, width, 1, null, 0, width);
      for (int x = 0; x < width; x++) {
        set(rgb, x, argb[x] >> 16 & WHITE, argb[x] >> 8 & WHITE, argb[x] & WHITE, argb[x] >>> 24);
      }
      return;
    }
    Raster raster = image.getRaster();
    int bands = raster.getNumBands();
    int shift = Math.max(0, raster.getSampleModel().getSampleSize(0) - 8);
    int[] samples = raster.getPixels(0, y, width, 1, (int[]) null);
    boolean grey = bands < 3;
    for (int x = 0; x < width; x++) {
      int at = bands * x;
      int alpha = bands % 2 == 0 ? samples[at + bands - 1] >> shift : WHITE;
      int red = samples[at] >> shift;
      set(
          rgb,
          x,
          red,
          grey ? red : samples[at + 1] >> shift,
          grey ? red : samples[at + 2] >> shift,
          alpha);
    }
  }

  private static void set(int[] rgb, int x, int red, int green, int blue, int alpha) {
    rgb[3 * x] = WHITE + (red - WHITE) * alpha / WHITE;
    rgb[3 * x + 1] = WHITE + (green - WHITE) * alpha / WHITE;
    rgb[3 * x + 2] = WHITE + (blue - WHITE) * alpha / WHITE;
  }

  /** Converts what a camera keeps in wider colours; greys are taken as they are. */
  private static Pixels inSrgb(Pixels pixels, ColorModel model) {
    ColorSpace space = model.getColorSpace();
    if (model instanceof IndexColorModel
        || space.isCS_sRGB()
        || space.getType() != ColorSpace.TYPE_RGB) {
      return pixels;
    }
    ColorModel own =
        new ComponentColorModel(space, false, false, Transparency.OPAQUE, DataBuffer.TYPE_BYTE);
    WritableRaster raster = own.createCompatibleWritableRaster(pixels.width(), pixels.height());
    raster.setDataElements(0, 0, pixels.width(), pixels.height(), pixels.colours());
    BufferedImage from = new BufferedImage(own, raster, false, null);
    BufferedImage to =
        new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_RGB);
    new ColorConvertOp(space, ColorSpace.getInstance(ColorSpace.CS_sRGB), null).filter(from, to);
    byte[] colours = new byte[pixels.colours().length];
    int[] row = new int[pixels.width()];
    for (int y = 0; y < pixels.height(); y++) {
      to.getRGB(0, y, row.length, 1, row, 0, row.length);
      for (int x = 0; x < row.length; x++) {
        int at = 3 * (y * row.length + x);
        colours[at] = (byte) (row[x] >> 16);
        colours[at + 1] = (byte) (row[x] >> 8);
        colours[at + 2] = (byte) row[x];
      }
    }
    return new Pixels(pixels.width(), pixels.height(), colours);
  }

  private static Photograph encoded(Pixels pixels) throws IOException {
    BufferedImage image =
        new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_RGB);
    byte[] colours = pixels.colours();
    for (int y = 0; y < pixels.height(); y++) {
      for (int x = 0; x < pixels.width(); x++) {
        int at = 3 * (y * pixels.width() + x);
        image.setRGB(
            x,
            y,
            (colours[at] & WHITE) << 16 | (colours[at + 1] & WHITE) << 8 | colours[at + 2] & WHITE);
      }
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
    return new Photograph(pixels.width(), pixels.height(), bytes.toByteArray());
  }
}
