package org.lapmark.document.pdf;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * An ICC profile (version 2.1, three colorants and tone curves) of the sRGB colour space of IEC
 * 61966-2-1, which PDF/A asks for. It is computed rather than taken from the Java runtime, whose
 * profile differs between releases.
 */
final class SrgbProfile {
  private static final int CURVE_ENTRIES = 1024;
  private static final int HEADER = 128;

  /** The illuminant of the connection space, D50, as X, Y, Z. */
  private static final double[] D50 = {0.9642, 1, 0.8249};

  // The primaries of IEC 61966-2-1, adapted from D65 to D50 by Bradford's method.
  private static final double[] RED = {0.43607, 0.22249, 0.01392};
  private static final double[] GREEN = {0.38515, 0.71687, 0.09708};
  private static final double[] BLUE = {0.14307, 0.06061, 0.71410};

  private SrgbProfile() {}

  static byte[] bytes() {
    try {
      return write();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] write() throws IOException {
    byte[] curve = curve();
    Map<String, byte[]> tags = new LinkedHashMap<>();
    tags.put("desc", description("sRGB"));
    tags.put("cprt", text("No copyright, use freely"));
    tags.put("wtpt", xyz(D50));
    tags.put("rXYZ", xyz(RED));
    tags.put("gXYZ", xyz(GREEN));
    tags.put("bXYZ", xyz(BLUE));
    tags.put("rTRC", curve);
    tags.put("gTRC", curve);
    tags.put("bTRC", curve);

    ByteArrayOutputStream directory = new ByteArrayOutputStream();
    DataOutputStream entries = new DataOutputStream(directory);
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    // Arrays are equal only to themselves.
    Map<byte[], Integer> places = new LinkedHashMap<>();
    int start = HEADER + 4 + 12 * tags.size();
    entries.writeInt(tags.size());
    for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
      byte[] value = tag.getValue();
      Integer place = places.get(value);
      if (place == null) {
        place = start + data.size();
        places.put(value, place);
        data.write(value);
        while (data.size() % 4 != 0) {
          data.write(0);
        }
      }
      entries.writeBytes(tag.getKey());
      entries.writeInt(place);
      entries.writeInt(value.length);
    }
    ByteArrayOutputStream profile = new ByteArrayOutputStream();
    profile.write(header(start + data.size()));
    profile.write(directory.toByteArray());
    profile.write(data.toByteArray());
    return profile.toByteArray();
  }

  private static byte[] header(int size) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeInt(size);
    out.writeInt(0);
    out.writeInt(0x02100000);
    out.writeBytes("mntrRGB XYZ ");
    for (int dateOrTime : new int[] {2026, 1, 1, 0, 0, 0}) {
      out.writeShort(dateOrTime);
    }
    out.writeBytes("acsp");
    out.write(new byte[28]);
    for (double value : D50) {
      out.writeInt(fixed(value));
    }
    out.write(new byte[HEADER - bytes.size()]);
    return bytes.toByteArray();
  }

  private static byte[] description(String words) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeBytes("desc");
    out.writeInt(0);
    out.writeInt(words.length() + 1);
    out.write(words.getBytes(StandardCharsets.US_ASCII));
    out.write(0);
    // No Unicode name and no Macintosh name: language, length; script, length, 67 bytes.
    out.write(new byte[4 + 4 + 2 + 1 + 67]);
    return bytes.toByteArray();
  }

  private static byte[] text(String words) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeBytes("text");
    out.writeInt(0);
    out.write(words.getBytes(StandardCharsets.US_ASCII));
    out.write(0);
    return bytes.toByteArray();
  }

  private static byte[] xyz(double[] values) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeBytes("XYZ ");
    out.writeInt(0);
    for (double value : values) {
      out.writeInt(fixed(value));
    }
    return bytes.toByteArray();
  }

  private static byte[] curve() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeBytes("curv");
    out.writeInt(0);
    out.writeInt(CURVE_ENTRIES);
    for (int i = 0; i < CURVE_ENTRIES; i++) {
      double encoded = (double) i / (CURVE_ENTRIES - 1);
      double linear =
          encoded <= 0.04045 ? encoded / 12.92 : StrictMath.pow((encoded + 0.055) / 1.055, 2.4);
      out.writeShort((int) Math.round(linear * 0xFFFF));
    }
    return bytes.toByteArray();
  }

  private static int fixed(double value) {
    return (int) Math.round(value * 0x10000);
  }
}
