package org.lapmark.document.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The font files as bytes, which any thread may read. A font that was parsed from them belongs to
 * one thread.
 */
public final class FontFiles {
  private final Map<Typeface, byte[]> files;
  private final Optional<Map<Typeface, TrueTypeFont>> parsed;

  private FontFiles(Map<Typeface, byte[]> files, Optional<Map<Typeface, TrueTypeFont>> parsed) {
    this.files = files;
    this.parsed = parsed;
  }

  /** Reads the files that the program carries. */
  public static FontFiles load() {
    Map<Typeface, byte[]> files = new EnumMap<>(Typeface.class);
    for (Typeface face : Typeface.values()) {
      try (InputStream stream =
          FontFiles.class.getClassLoader().getResourceAsStream(face.resource())) {
        if (stream == null) {
          throw new IllegalStateException("no font " + face.resource());
        }
        files.put(face, stream.readAllBytes());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return new FontFiles(Collections.unmodifiableMap(files), Optional.empty());
  }

  /** The same files for use by one thread, which parses each font once for all its documents. */
  public FontFiles ofOneThread() {
    return new FontFiles(files, Optional.of(new EnumMap<>(Typeface.class)));
  }

  /**
   * Parses a font. Ligatures are switched off: a reader that copies or searches text would meet one
   * character for two letters.
   */
  TrueTypeFont parse(Typeface face) {
    return parsed
        .map(known -> known.computeIfAbsent(face, this::parseAnew))
        .orElseGet(() -> parseAnew(face));
  }

  private TrueTypeFont parseAnew(Typeface face) {
    try {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(files.get(face)));
      font.setEnableGsub(false);
      return font;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
