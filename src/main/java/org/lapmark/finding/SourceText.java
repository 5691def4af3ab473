package org.lapmark.finding;

import java.util.Objects;

/**
 * A piece of text taken out of a source file that still knows where each of its characters stood,
 * even where the file's syntax escaped or folded it. Immutable.
 */
public final class SourceText {
  private final SourceFile file;
  private final String text;
  private final int[] offsets;

  private SourceText(SourceFile file, String text, int[] offsets) {
    this.file = file;
    this.text = text;
    this.offsets = offsets;
  }

  /**
   * Text that stands in the file letter by letter.
   *
   * @param file the file
   * @param start 0-based offset of its first character
   * @param end offset behind its last
   * @return the text
   */
  public static SourceText verbatim(SourceFile file, int start, int end) {
    int[] offsets = new int[end - start + 1];
    for (int i = 0; i < offsets.length; i++) {
      offsets[i] = start + i;
    }
    return new SourceText(file, file.content().substring(start, end), offsets);
  }

  /**
   * Text whose characters stand at stated places.
   *
   * @param file the file
   * @param text the text after unescaping
   * @param offsets for each UTF-16 unit of the text its offset in the file, and one more for the
   *     text's end
   * @return the text
   */
  public static SourceText mapped(SourceFile file, String text, int[] offsets) {
    if (offsets.length != text.length() + 1) {
      throw new IllegalArgumentException("one offset a unit and one for the end");
    }
    return new SourceText(Objects.requireNonNull(file), text, offsets.clone());
  }

  /**
   * The same places with another spelling of equal length.
   *
   * @param before a character
   * @param after what stands for it
   * @return the text in which each such character is replaced
   */
  public SourceText respelled(char before, char after) {
    return new SourceText(file, text.replace(before, after), offsets);
  }

  /**
   * The text itself.
   *
   * @return the text
   */
  public String text() {
    return text;
  }

  /**
   * The file it stands in.
   *
   * @return the file
   */
  public SourceFile file() {
    return file;
  }

  /**
   * A part of this text.
   *
   * @param start 0-based index of the first unit
   * @param end index behind the last
   * @return the part, with its places
   */
  public SourceText part(int start, int end) {
    int[] some = new int[end - start + 1];
    System.arraycopy(offsets, start, some, 0, some.length);
    return new SourceText(file, text.substring(start, end), some);
  }

  /**
   * Where one character of this text stands.
   *
   * @param index 0-based index of a UTF-16 unit, or the text's length; clamped
   * @return 0-based offset in the file
   */
  public int offset(int index) {
    return offsets[Math.max(0, Math.min(index, text.length()))];
  }

  /**
   * Where a part of this text stands.
   *
   * @param start 0-based index of the first unit; clamped
   * @param end index behind the last; clamped
   * @return the position in the file
   */
  public Position position(int start, int end) {
    int from = Math.max(0, Math.min(start, text.length()));
    int to = Math.max(from, Math.min(end, text.length()));
    return file.position(offsets[from], to > from ? offsets[to - 1] + 1 : offsets[from]);
  }

  /**
   * Where the whole text stands.
   *
   * @return the position
   */
  public Position position() {
    return position(0, text.length());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SourceText that
        && text.equals(that.text)
        && file.name().equals(that.file.name())
        && offsets[0] == that.offsets[0];
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
