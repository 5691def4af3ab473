package org.lapmark.source.outside;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A file’s bytes, known by their hash. */
public final class Bytes {
  private final byte[] content;
  private final String hash;

  /** Takes bytes that nobody changes afterwards. */
  public Bytes(byte[] content) {
    this.content = content;
    try {
      hash = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** How many. */
  public int size() {
    return content.length;
  }

  /** A byte, as a number from 0 to 255. */
  public int at(int index) {
    return content[index] & 0xff;
  }

  /** Reads them from the beginning. */
  public InputStream open() {
    return new ByteArrayInputStream(content);
  }

  /** A copy. */
  public byte[] copy() {
    return content.clone();
  }

  /** What tells them from others. */
  public String hash() {
    return hash;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Bytes bytes && bytes.hash.equals(hash);
  }

  @Override
  public int hashCode() {
    return hash.hashCode();
  }

  @Override
  public String toString() {
    return content.length + " bytes";
  }
}
