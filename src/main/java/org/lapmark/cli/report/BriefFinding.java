package org.lapmark.cli.report;

import java.util.LinkedHashMap;
import java.util.Map;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Position;

/**
 * What is said about a finding, the same in every form of report. However much an author has
 * written in one place, it is no more than 2,000 bytes in any form; what is cut shows an ellipsis.
 *
 * @param file the path of its file as people write it
 * @param message what is wrong
 * @param hint what to do about it
 * @param excerpt the source line, or of a long one the part around the place; null if there is none
 * @param arguments what the message names
 */
record BriefFinding(
    String file, String message, String hint, String excerpt, Map<String, Object> arguments) {
  /** How many bytes a finding takes, in any form. */
  static final int MOST_BYTES = 2000;

  private static final int MOST_OF_FILE = 360;
  private static final int MOST_OF_MESSAGE = 440;
  private static final int MOST_OF_EXCERPT = 240;

  /** What the most talkative form needs around all that. */
  private static final int FRAME = 730;

  /** What JSON needs around all but the arguments, and around one of them beside its name. */
  private static final int JSON_FRAME = 430;

  private static final int ARGUMENT_FRAME = 20;
  private static final int LEAST_OF_ARGUMENT = 4;

  static BriefFinding of(Finding finding, String path, FindingText words) {
    Position position = finding.position();
    String file = BriefText.path(path, MOST_OF_FILE);
    String message = BriefText.head(words.messageOf(finding), MOST_OF_MESSAGE);
    String excerpt =
        position.line() == 0
            ? null
            : BriefText.around(position.lineText(), position.column() - 1, MOST_OF_EXCERPT);
    int left =
        MOST_BYTES
            - BriefText.pathBytes(file)
            - BriefText.bytes(message)
            - (excerpt == null ? 0 : BriefText.bytes(excerpt));
    String hint = BriefText.head(words.hintOf(finding), left - FRAME);
    return new BriefFinding(
        file,
        message,
        hint,
        excerpt,
        arguments(finding, left - JSON_FRAME - BriefText.bytes(hint)));
  }

  private static Map<String, Object> arguments(Finding finding, int bytes) {
    Map<String, Object> arguments = new LinkedHashMap<>(finding.arguments());
    int left = bytes;
    int texts = 0;
    for (Map.Entry<String, Object> argument : arguments.entrySet()) {
      left -= ARGUMENT_FRAME + argument.getKey().length();
      if (argument.getValue() instanceof String) {
        texts++;
      } else {
        left -= String.valueOf(argument.getValue()).length();
      }
    }
    // Short ones leave their share to those behind them.
    for (Map.Entry<String, Object> argument : arguments.entrySet()) {
      if (argument.getValue() instanceof String text) {
        String some = BriefText.head(text, Math.max(LEAST_OF_ARGUMENT, left / texts));
        argument.setValue(some);
        left -= BriefText.bytes(some);
        texts--;
      }
    }
    return arguments;
  }
}
