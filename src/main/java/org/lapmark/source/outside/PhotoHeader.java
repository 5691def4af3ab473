package org.lapmark.source.outside;

import java.util.List;

/**
 * What the bytes of a photograph say of it, without anything being decoded: a picture that ends
 * early, or that would take too much to decode, is refused before.
 *
 * @param png whether it is PNG; if not, it is JPEG
 * @param width in pixels
 * @param height in pixels
 * @param turn how it is to be turned, 1 to 8 as Exif has it
 */
record PhotoHeader(boolean png, int width, int height, int turn) {
  /** The most pixels. */
  static final long MOST_PIXELS = 60_000_000;

  /** The most passes in which a photograph is built up; each costs as much as a picture. */
  private static final int MOST_SCANS = 60;

  private static final int[] PNG = {0x89, 'P', 'N', 'G', 0x0d, 0x0a, 0x1a, 0x0a};
  private static final int CHUNK = 12;
  private static final int MARKER = 0xff;
  private static final int EXIF = 0xe1;
  private static final int SCAN = 0xda;
  private static final int END = 0xd9;
  private static final int ORIENTATION = 0x0112;

  /** The first byte of segments that say how large the picture is, and which are decoded. */
  private static final List<Integer> FRAMES = List.of(0xc0, 0xc1, 0xc2);

  private static final List<Integer> OTHER_FRAMES =
      List.of(0xc3, 0xc5, 0xc6, 0xc7, 0xc9, 0xca, 0xcb, 0xcd, 0xce, 0xcf);

  /** A photograph that isn't taken. */
  static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;
    private final OutsideCode code;
    private final String[] arguments;

    Refused(OutsideCode code, String... arguments) {
      this.code = code;
      this.arguments = arguments;
    }

    OutsideCode code() {
      return code;
    }

    Object[] arguments() {
      return arguments.clone();
    }
  }

  static PhotoHeader of(Bytes bytes) throws Refused {
    PhotoHeader header;
    try {
      if (isPng(bytes)) {
        header = png(bytes);
      } else if (bytes.size() > 2 && bytes.at(0) == MARKER && bytes.at(1) == 0xd8) {
        header = jpeg(bytes);
      } else {
        throw new Refused(OutsideCode.ART_KIND);
      }
    } catch (IndexOutOfBoundsException e) {
      throw new Refused(OutsideCode.ART_BROKEN);
    }
    if (header.width < 1 || header.height < 1) {
      throw new Refused(OutsideCode.ART_BROKEN);
    }
    if ((long) header.width * header.height > MOST_PIXELS) {
      throw new Refused(
          OutsideCode.ART_PIXELS,
          "width",
          Integer.toString(header.width),
          "height",
          Integer.toString(header.height),
          "limit",
          Long.toString(MOST_PIXELS / 1_000_000));
    }
    return header;
  }

  private static boolean isPng(Bytes bytes) {
    for (int i = 0; i < PNG.length; i++) {
      if (bytes.size() <= i || bytes.at(i) != PNG[i]) {
        return false;
      }
    }
    return true;
  }

  /** Goes from chunk to chunk to the last. */
  private static PhotoHeader png(Bytes bytes) throws Refused {
    int at = PNG.length;
    if (!name(bytes, at).equals("IHDR") || number(bytes, at, 4) != 13) {
      throw new Refused(OutsideCode.ART_BROKEN);
    }
    long width = number(bytes, at + 8, 4);
    long height = number(bytes, at + 12, 4);
    while (true) {
      long length = number(bytes, at, 4);
      String name = name(bytes, at);
      if (length > bytes.size() - at - CHUNK) {
        throw new Refused(OutsideCode.ART_BROKEN);
      }
      if (name.equals("IEND")) {
        break;
      }
      at += CHUNK + (int) length;
    }
    return new PhotoHeader(true, clamped(width), clamped(height), 1);
  }

  private static int clamped(long number) {
    return (int) Math.min(number, Integer.MAX_VALUE);
  }

  private static String name(Bytes bytes, int chunk) {
    StringBuilder name = new StringBuilder();
    for (int i = 4; i < 8; i++) {
      name.append((char) bytes.at(chunk + i));
    }
    return name.toString();
  }

  private static long number(Bytes bytes, int at, int size) {
    long number = 0;
    for (int i = 0; i < size; i++) {
      number = number << 8 | bytes.at(at + i);
    }
    return number;
  }

  /** Goes from segment to segment, and over what is coded between them, to the end. */
  private static PhotoHeader jpeg(Bytes bytes) throws Refused {
    int at = 2;
    int width = 0;
    int height = 0;
    int turn = 1;
    int scans = 0;
    while (true) {
      if (bytes.at(at) != MARKER) {
        throw new Refused(OutsideCode.ART_BROKEN);
      }
      while (bytes.at(at) == MARKER) {
        at++;
      }
      int kind = bytes.at(at++);
      if (kind == END) {
        break;
      }
      int length = (int) number(bytes, at, 2);
      if (FRAMES.contains(kind)) {
        if (width > 0 || bytes.at(at + 2) != 8) {
          throw new Refused(OutsideCode.ART_BROKEN);
        }
        height = (int) number(bytes, at + 3, 2);
        width = (int) number(bytes, at + 5, 2);
        int colours = bytes.at(at + 7);
        if (colours != 1 && colours != 3) {
          throw new Refused(colours == 4 ? OutsideCode.ART_CMYK : OutsideCode.ART_BROKEN);
        }
      } else if (OTHER_FRAMES.contains(kind)) {
        throw new Refused(OutsideCode.ART_KIND);
      } else if (kind == EXIF) {
        turn = turn(bytes, at, length, turn);
      }
      at += length;
      if (kind == SCAN) {
        if (++scans > MOST_SCANS) {
          throw new Refused(OutsideCode.ART_BROKEN);
        }
        at = afterScan(bytes, at);
      }
    }
    if (scans == 0) {
      throw new Refused(OutsideCode.ART_BROKEN);
    }
    return new PhotoHeader(false, width, height, turn);
  }

  /** The next segment behind what is coded: a marker that is neither stuffing nor a restart. */
  private static int afterScan(Bytes bytes, int from) {
    int at = from;
    while (true) {
      if (bytes.at(at) == MARKER) {
        int next = bytes.at(at + 1);
        if (next != 0 && next != MARKER && (next < 0xd0 || next > 0xd7)) {
          return at;
        }
      }
      at++;
    }
  }

  /** The orientation in the first directory of an Exif segment, if it is one and has it. */
  private static int turn(Bytes bytes, int segment, int length, int otherwise) {
    int tiff = segment + 8;
    int end = Math.min(segment + length, bytes.size());
    if (end - segment < 20 || number(bytes, segment + 2, 4) != 0x45786966) {
      return otherwise;
    }
    boolean little = bytes.at(tiff) == 'I';
    long directory = tiff + number(bytes, tiff + 4, 4, little);
    if (directory > end - 2) {
      return otherwise;
    }
    int entry = (int) directory + 2;
    long entries = number(bytes, (int) directory, 2, little);
    for (long i = 0; i < entries && entry + 12 <= end; i++) {
      if (number(bytes, entry, 2, little) == ORIENTATION) {
        long turn = number(bytes, entry + 8, 2, little);
        return turn >= 1 && turn <= 8 ? (int) turn : otherwise;
      }
      entry += 12;
    }
    return otherwise;
  }

  private static long number(Bytes bytes, int at, int size, boolean little) {
    if (!little) {
      return number(bytes, at, size);
    }
    long number = 0;
    for (int i = size - 1; i >= 0; i--) {
      number = number << 8 | bytes.at(at + i);
    }
    return number;
  }
}
