package org.lapmark.check.care;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Findings;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.SourceText;
import org.lapmark.source.PatternSource;
import org.lapmark.source.key.Ref;

/** Every tool is used by a step; what no step names isn't printed. */
public final class ToolCheck {
  public static final Rule<Written> RULE = new Rule<>(ToolCheck::run, CheckCode.TOOL_UNUSED);

  private ToolCheck() {}

  static void run(Written written, Findings findings) {
    PatternSource source = written.source();
    if (source.options().unread().stream().anyMatch(what -> what.kind() == Ref.Kind.STEP)) {
      return; // Nobody knows what a step uses that couldn't be read.
    }
    Set<String> used = new LinkedHashSet<>();
    source.steps().forEach(step -> step.uses().stream().map(SourceText::text).forEach(used::add));
    List<String> tools = source.making().tools().stream().map(tool -> tool.id().text()).toList();
    // A mistyped name is reported where it stands; the tool that was meant is used.
    List.copyOf(used).forEach(name -> NearestWord.of(name, tools).ifPresent(used::add));
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
