package org.lapmark.source.folder;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;

/** Turns the bytes of a file into text. */
public final class TextFile {
  private TextFile() {}

  /**
   * A file's text, without byte order mark, its lines ended by LF.
   *
   * @param name the path as findings show it
   * @param bytes what is in the file
   * @param lineLength how many characters a line may have
   * @param findings where problems go
   * @return null if it can't be read as text, which is then reported
   */
  public static SourceFile read(String name, byte[] bytes, int lineLength, Findings findings) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    int good = out.position();
    if (result.isError()) {
      String lenient = new String(bytes, StandardCharsets.UTF_8);
      String before = normalised(out.flip().toString());
      SourceFile file = new SourceFile(name, normalised(lenient));
      findings.add(
          FolderCode.NOT_UTF_8,
          file.position(before.length(), before.length() + 1),
          "byte",
          String.format(Locale.ROOT, "%02X", bytes[in.position()] & 0xff),
          "number",
          Integer.toString(in.position() + 1),
          "sixteen",
          isSixteenBit(bytes) ? "yes" : "no");
      return null;
    }
    SourceFile file = new SourceFile(name, normalised(out.flip().toString().substring(0, good)));
    if (!hasShortLines(file, lineLength, findings) || !UnseenCharacters.check(file, findings)) {
      return null;
    }
    return file;
  }

  /** Whether a file begins as text of sixteen bits a character does. */
  private static boolean isSixteenBit(byte[] bytes) {
    return bytes.length > 1 && (bytes[0] & bytes[1]) == (byte) 0xfe && bytes[0] != bytes[1];
  }

  /** Whether all lines are short enough; the first that isn't is reported without its text. */
  private static boolean hasShortLines(SourceFile file, int limit, Findings findings) {
    String content = file.content();
    int line = 1;
    int start = 0;
    while (start <= content.length()) {
      int found = content.indexOf('\n', start);
      int end = found < 0 ? content.length() : found;
      if (end - start > limit) {
        findings.add(
            FolderCode.LINE_TOO_LONG,
            Position.ofFile(file.name()),
            "line",
            Integer.toString(line),
            "limit",
            Integer.toString(limit));
        return false;
      }
      start = end + 1;
      line++;
    }
    return true;
  }

  private static String normalised(String text) {
    String unmarked = text.startsWith("\ufeff") ? text.substring(1) : text;
    return unmarked.replace("\r\n", "\n").replace('\r', '\n');
  }
}
