package org.lapmark.source.folder;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.finding.InvisibleCharacters;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;

/** Reports characters that nobody sees, in files as they are and in texts as their syntax means. */
public final class UnseenCharacters {
  private UnseenCharacters() {}

  /**
   * Reports every such character of a file once, where it stands first.
   *
   * @return whether the file can be read on: parsers take no control characters
   */
  static boolean check(SourceFile file, Findings findings) {
    String content = file.content();
    Map<Integer, int[]> found = new TreeMap<>();
    for (int at = 0; at < content.length(); ) {
      int point = content.codePointAt(at);
      int units = Character.charCount(point);
      if (InvisibleCharacters.of(point).isPresent()) {
        int first = at;
        found.computeIfAbsent(point, unused -> new int[] {first, -1})[1]++;
      }
      at += units;
    }
    boolean readable = true;
    for (Map.Entry<Integer, int[]> one : found.entrySet()) {
      int point = one.getKey();
      int at = one.getValue()[0];
      findings.add(
          finding(point, file.position(at, at + Character.charCount(point)), one.getValue()[1]));
      readable &= InvisibleCharacters.of(point).orElseThrow() != InvisibleCharacters.CONTROL;
    }
    return readable;
  }

  /**
   * Reports the first such character that a text has by an escape, not as it stands in the file.
   *
   * @param text the text as its syntax means it
   * @param start where its syntax begins in the file
   * @param end where it ends
   * @param findings where the finding goes
   */
  public static void checkEscapes(SourceText text, int start, int end, Findings findings) {
    String value = text.text();
    for (int at = 0; at < value.length(); ) {
      int point = value.codePointAt(at);
      int units = Character.charCount(point);
      if (InvisibleCharacters.of(point).isPresent()
          && !text.file().content().substring(start, end).contains(Character.toString(point))) {
        findings.add(finding(point, text.position(at, at + units), 0));
        return;
      }
      at += units;
    }
  }

  /**
   * What is wrong with a word that isn't known since something in it can't be seen.
   *
   * @param position where it stands
   * @return the finding, or nothing if all of it can be seen
   */
  public static Optional<Finding> within(Position position) {
    int[] points = position.lineText().codePoints().toArray();
    int end = Math.min(points.length, position.column() - 1 + position.length());
    for (int i = Math.max(0, position.column() - 1); i < end; i++) {
      if (InvisibleCharacters.takesNoRoom(points[i])) {
        Position place =
            new Position(position.file(), position.line(), i + 1, 1, position.lineText());
        return Optional.of(finding(points[i], place, 0));
      }
    }
    return Optional.empty();
  }

  /**
   * The finding about one character.
   *
   * @param point the character
   * @param position where it stands
   * @param more at how many more places of the file it stands
   * @return the finding
   */
  public static Finding finding(int point, Position position, int more) {
    return Finding.of(
        FolderCode.CONTROL_CHARACTER,
        position,
        "kind",
        // Of what scripts need, only the place is wrong.
        InvisibleCharacters.of(point).map(InvisibleCharacters::id).orElse("misplaced"),
        "code",
        InvisibleCharacters.named(point),
        "others",
        more);
  }
}
