package org.lapmark.drawing;

import java.util.Arrays;

/** A photograph as documents embed it: JPEG, sRGB, upright, without anything said about it. */
public final class Photograph {
  private final int width;
  private final int height;
  private final byte[] jpeg;

  /**
   * A photograph.
   *
   * @param width in pixels
   * @param height in pixels
   * @param jpeg the file, which nobody changes afterwards
   */
  public Photograph(int width, int height, byte[] jpeg) {
    this.width = width;
    this.height = height;
    this.jpeg = jpeg;
  }

  /** In pixels. */
  public int width() {
    return width;
  }

  /** In pixels. */
  public int height() {
    return height;
  }

  /** The file’s bytes. */
  public byte[] jpeg() {
    return jpeg.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Photograph photograph && Arrays.equals(jpeg, photograph.jpeg);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(jpeg);
  }

  @Override
  public String toString() {
    return width + " by " + height + " pixels";
  }
}
