package org.lapmark.cli.report;

import java.nio.file.Path;
import java.util.List;
import org.lapmark.cli.console.Console;
import org.lapmark.cli.console.Failures;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Severity;
import org.lapmark.publish.Outcome;

/**
 * What is to be reported about one folder.
 *
 * @param pattern the folder's name
 * @param folder the folder as people write it
 * @param prefix what goes before the relative paths of findings, with a slash at its end if any
 * @param findings by position
 * @param leftOut how many more there were
 * @param failure why the folder couldn't be finished, or null
 */
public record FolderReport(
    String pattern,
    String folder,
    String prefix,
    List<Finding> findings,
    int leftOut,
    String failure) {
  public static FolderReport of(Outcome outcome, Console console) {
    Path folder = outcome.folder();
    String parent = console.shown(folder.resolveSibling("x"));
    Findings findings = outcome.result().findings();
    return new FolderReport(
        folder.getFileName().toString(),
        slashes(console.shown(folder)),
        slashes(parent.substring(0, parent.length() - 1)),
        findings.sorted(),
        findings.leftOut(),
        outcome.failure().map(failure -> Failures.describe(failure, console)).orElse(null));
  }

  private static String slashes(String path) {
    return path.replace(java.io.File.separatorChar, '/');
  }

  /** The path of the file of a finding as people write it. */
  String file(Finding finding) {
    return prefix + finding.position().file();
  }

  /** What is said about a finding, in the words of findings read so far. */
  BriefFinding told(Finding finding, FindingText words) {
    return BriefFinding.of(finding, file(finding), words);
  }

  long count(Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).count();
  }
}
