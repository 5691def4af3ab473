package org.lapmark.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.lapmark.cli.console.Json;
import org.lapmark.cli.console.Version;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Position;
import org.lapmark.finding.Severity;

/** Findings as SARIF 2.1.0 (OASIS), for tools that show them beside the source. */
public final class SarifReport {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private SarifReport() {}

  public static String of(List<FolderReport> all) {
    Map<String, Finding> firstOfCode = new TreeMap<>();
    for (FolderReport checked : all) {
      checked.findings().forEach(finding -> firstOfCode.putIfAbsent(finding.code().id(), finding));
    }
    List<String> codes = List.copyOf(firstOfCode.keySet());
    FindingText words = new FindingText();
    List<Object> rules = new ArrayList<>();
    firstOfCode.values().forEach(finding -> rules.add(rule(finding, words)));
    List<Object> results = new ArrayList<>();
    List<Object> failures = new ArrayList<>();
    for (FolderReport checked : all) {
      for (Finding finding : checked.findings()) {
        results.add(result(checked, finding, codes.indexOf(finding.code().id()), words));
      }
      if (checked.failure() != null) {
        failures.add(notification("error", checked.folder() + ": " + checked.failure()));
      }
      if (checked.leftOut() > 0) {
        failures.add(
            notification(
                "note",
                checked.folder()
                    + ": "
                    + TextReport.counted(checked.leftOut(), "more finding")
                    + " left out"));
      }
    }
    boolean successful = all.stream().allMatch(checked -> checked.failure() == null);
    return Json.text(
        Json.object(
            "$schema",
            SCHEMA,
            "version",
            "2.1.0",
            "runs",
            List.of(
                Json.object(
                    "tool",
                    Json.object(
                        "driver",
                        Json.object("name", "Lapmark", "version", Version.text(), "rules", rules)),
                    "columnKind",
                    "unicodeCodePoints",
                    "invocations",
                    List.of(
                        Json.object(
                            "executionSuccessful",
                            successful,
                            "toolExecutionNotifications",
                            failures.isEmpty() ? null : failures)),
                    "results",
                    results))));
  }

  private static Map<String, Object> notification(String level, String text) {
    return Json.object("level", level, "message", Json.object("text", text));
  }

  private static Map<String, Object> rule(Finding example, FindingText words) {
    BriefFinding general = BriefFinding.of(general(example), "", words);
    return Json.object(
        "id",
        example.code().id(),
        "shortDescription",
        Json.object("text", general.message()),
        "help",
        Json.object("text", general.hint()),
        "defaultConfiguration",
        Json.object("level", level(example.severity())));
  }

  /**
   * The finding with its arguments' names in their places. A message that needs numbers or chooses
   * by an argument can't be put so; then the example stands for its kind.
   */
  private static Finding general(Finding example) {
    Map<String, Object> names = new LinkedHashMap<>();
    example.arguments().keySet().forEach(name -> names.put(name, "‹" + name + "›"));
    Finding general = new Finding(example.code(), example.position(), names);
    try {
      FindingText.message(general);
      FindingText.hint(general);
      return general;
    } catch (IllegalArgumentException e) {
      return example;
    }
  }

  private static Map<String, Object> result(
      FolderReport checked, Finding finding, int rule, FindingText words) {
    Position position = finding.position();
    BriefFinding told = checked.told(finding, words);
    Map<String, Object> region =
        position.line() == 0
            ? null
            : Json.object(
                "startLine",
                position.line(),
                "startColumn",
                position.column(),
                "endLine",
                position.line(),
                "endColumn",
                position.column() + position.length(),
                "snippet",
                Json.object("text", told.excerpt()));
    return Json.object(
        "ruleId",
        finding.code().id(),
        "ruleIndex",
        rule,
        "level",
        level(finding.severity()),
        "message",
        Json.object("text", told.message() + "\n" + told.hint()),
        "locations",
        List.of(
            Json.object(
                "physicalLocation",
                Json.object(
                    "artifactLocation",
                    Json.object("uri", PathUri.of(told.file())),
                    "region",
                    region))));
  }

  private static String level(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }
}
