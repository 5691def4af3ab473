package org.lapmark.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lapmark.cli.console.Json;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Position;
import org.lapmark.finding.Severity;

/**
 * Findings as JSON:
 *
 * <pre>{@code
 * format     1; changes when a reader of this form would break
 * program    name, version
 * patterns   one for each folder, in the order given
 *   pattern    the folder's name
 *   folder     its path, relative to the working directory where it lies in it
 *   failure    why it couldn't be read to the end; only if so
 *   errors, warnings, notes   how many of the findings below
 *   leftOut    how many more there were
 *   findings   by position
 *     code       the stable name of the kind of problem
 *     severity   error, warning or note
 *     message, hint
 *     arguments  what the message names, by name; what is long is cut and ends in an ellipsis
 *     file       path of the file, to be read like folder
 *     line, column, length   from 1, in code points; missing if the whole file is meant
 *     text       the source line, or of a long one the part around the place
 * }</pre>
 */
public final class JsonReport {
  private static final int FORMAT = 1;

  private JsonReport() {}

  public static String of(List<FolderReport> all) {
    List<Object> patterns = new ArrayList<>();
    FindingText words = new FindingText();
    for (FolderReport checked : all) {
      List<Object> findings = new ArrayList<>();
      for (Finding finding : checked.findings()) {
        findings.add(finding(checked, finding, words));
      }
      patterns.add(
          Json.object(
              "pattern",
              checked.pattern(),
              "folder",
              checked.folder(),
              "failure",
              checked.failure(),
              "errors",
              checked.count(Severity.ERROR),
              "warnings",
              checked.count(Severity.WARNING),
              "notes",
              checked.count(Severity.NOTE),
              "leftOut",
              checked.leftOut(),
              "findings",
              findings));
    }
    return Json.report(FORMAT, patterns);
  }

  private static Map<String, Object> finding(
      FolderReport checked, Finding finding, FindingText words) {
    Position position = finding.position();
    BriefFinding told = checked.told(finding, words);
    boolean placed = position.line() > 0;
    return Json.object(
        "code",
        finding.code().id(),
        "severity",
        finding.severity().name().toLowerCase(Locale.ROOT),
        "message",
        told.message(),
        "hint",
        told.hint(),
        "arguments",
        told.arguments(),
        "file",
        told.file(),
        "line",
        placed ? position.line() : null,
        "column",
        placed ? position.column() : null,
        "length",
        placed ? position.length() : null,
        "text",
        told.excerpt());
  }
}
