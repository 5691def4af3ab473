package org.lapmark.cli.report;

import java.util.List;
import org.lapmark.cli.console.Console;
import org.lapmark.cli.console.ExitCode;
import org.lapmark.finding.Severity;

/** What both commands tell people on standard error. */
public final class ConsoleReport {
  private ConsoleReport() {}

  /** Findings and failure of a folder. */
  public static void about(FolderReport checked, Console console) {
    console.talk(TextReport.of(checked));
    failure(checked, console);
  }

  /** The failure of a folder, if any. */
  public static void failure(FolderReport checked, Console console) {
    if (checked.failure() != null) {
      boolean named = checked.failure().startsWith(checked.folder());
      console.say((named ? "" : checked.folder() + ": ") + checked.failure());
    }
  }

  /** The summary of all folders; returns the exit code. */
  public static int end(List<FolderReport> all, Console console) {
    String summary = TextReport.summary(all);
    if (!summary.isEmpty()) {
      console.say(summary);
    }
    return exitCode(all);
  }

  public static int exitCode(List<FolderReport> all) {
    if (all.stream().anyMatch(checked -> checked.failure() != null)) {
      return ExitCode.FAILED;
    }
    boolean errors = all.stream().anyMatch(checked -> checked.count(Severity.ERROR) > 0);
    return errors ? ExitCode.ERRORS : ExitCode.DONE;
  }
}
