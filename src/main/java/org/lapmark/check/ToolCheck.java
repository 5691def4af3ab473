package org.lapmark.check;

import java.util.LinkedHashSet;
import java.util.Set;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.source.PatternSource;

/** Every tool is used by a step; what no step names isn't printed. */
final class ToolCheck {
  private ToolCheck() {}

  static void run(PatternSource source, Findings findings) {
    Set<String> used = new LinkedHashSet<>();
    source.steps().forEach(step -> step.uses().stream().map(SourceText::text).forEach(used::add));
    source
        .making()
        .tools()
        .forEach(
            tool -> {
              if (!used.contains(tool.id().text())) {
                findings.add(CheckCode.TOOL_UNUSED, tool.id().position(), "tool", tool.id().text());
              }
            });
  }
}
