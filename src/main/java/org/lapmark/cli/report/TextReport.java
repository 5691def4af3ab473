package org.lapmark.cli.report;

import java.util.List;
import java.util.Locale;
import org.lapmark.cli.console.Visible;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Severity;

/** Findings for people. */
public final class TextReport {
  private TextReport() {}

  /** The findings of one folder, each with its line underlined and its hint. */
  static String of(FolderReport checked) {
    StringBuilder text = new StringBuilder();
    FindingText words = new FindingText();
    for (Finding finding : checked.findings()) {
      BriefFinding told = checked.told(finding, words);
      text.append(Visible.text(told.file()));
      if (finding.position().line() > 0) {
        text.append(':').append(finding.position().line());
        text.append(':').append(finding.position().column());
      }
      text.append(": ")
          .append(finding.severity().name().toLowerCase(Locale.ROOT))
          .append(": ")
          .append(Visible.text(told.message()))
          .append(" [")
          .append(finding.code().id())
          .append("]\n");
      if (finding.position().line() > 0) {
        text.append(SourceLine.underlined(finding.position(), "    "));
      }
      text.append("    hint: ").append(Visible.text(told.hint())).append('\n');
    }
    if (checked.leftOut() > 0) {
      text.append(Visible.text(checked.folder()))
          .append(": and ")
          .append(counted(checked.leftOut(), "more finding"))
          .append('\n');
    }
    return text.toString();
  }

  /** How many of each severity, or nothing when there are none. */
  static String summary(List<FolderReport> all) {
    StringBuilder text = new StringBuilder();
    for (Severity severity : Severity.values()) {
      long count = all.stream().mapToLong(checked -> checked.count(severity)).sum();
      if (count > 0) {
        text.append(text.isEmpty() ? "" : ", ")
            .append(counted(count, severity.name().toLowerCase(Locale.ROOT)));
      }
    }
    return text.toString();
  }

  public static String counted(long count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
