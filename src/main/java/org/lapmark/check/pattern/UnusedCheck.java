package org.lapmark.check.pattern;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Originals;
import org.lapmark.check.rule.PrintedTexts;
import org.lapmark.check.rule.Rule;
import org.lapmark.check.rule.Written;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ShapeSource;
import org.lapmark.source.UnitSource;

/**
 * Every material is cut, every panel is used, and every unit is shown: what isn't, no document
 * shows. Where something is wrong already, what uses it may not have been read, and nothing is
 * said.
 */
public final class UnusedCheck {
  public static final Rule<Written> RULE =
      new Rule<>(
          UnusedCheck::run,
          CheckCode.MATERIAL_UNUSED,
          CheckCode.PANEL_UNUSED,
          CheckCode.UNIT_UNUSED);

  /** How formulas, seams and figures name what belongs to a panel. */
  private static final Pattern OWNED =
      Pattern.compile("(?<![\\p{L}\\p{N}_.])([a-z][a-z0-9_]*)\\.(?!svg\\b)[a-z]");

  private UnusedCheck() {}

  static void run(Written written, Findings findings) {
    PatternSource source = written.source();
    if (findings.hasErrors()) {
      return;
    }
    Set<String> cut = new LinkedHashSet<>();
    source.pieces().forEach(piece -> piece.cuts().forEach(one -> cut.add(one.material().text())));
    source
        .materials()
        .forEach(
            thing -> {
              if (!cut.contains(thing.id().text())) {
                String name = thing.id().text();
                findings.add(CheckCode.MATERIAL_UNUSED, thing.id().position(), "material", name);
              }
            });
    List<String> contents = contents(source);
    for (UnitSource unit : source.units()) {
      String name = unit.name().text();
      Pattern shown = Pattern.compile("\\bunit:\\s*[\"']?" + Pattern.quote(name) + "\\b");
      if (contents.stream().noneMatch(content -> shown.matcher(content).find())) {
        findings.add(CheckCode.UNIT_UNUSED, unit.name().position(), "unit", name);
      }
    }
    Set<String> used = owners(contents);
    source.pieces().forEach(piece -> used.add(piece.panel().text()));
    for (PanelSource panel : source.panels()) {
      Originals.of(panel).forEach(used::add);
    }
    for (PanelSource panel : source.panels()) {
      String name = panel.name().text();
      if (!used.contains(name)) {
        findings.add(CheckCode.PANEL_UNUSED, panel.name().position(), "panel", name);
      }
    }
  }

  /** Every file in which something can be named. */
  private static List<String> contents(PatternSource source) {
    Map<String, SourceFile> files = new LinkedHashMap<>();
    List<SourceText> texts = new ArrayList<>(PrintedTexts.all(source));
    source.panels().forEach(panel -> texts.add(panel.name()));
    texts.forEach(text -> files.putIfAbsent(text.file().name(), text.file()));
    List<String> contents = new ArrayList<>();
    files.values().forEach(file -> contents.add(file.content()));
    for (PanelSource panel : source.panels()) {
      if (panel.shape() instanceof ShapeSource.Drawn drawn) {
        drawn.drawing().file().ifPresent(file -> contents.add(file.content()));
      }
    }
    return contents;
  }

  /** Whatever is named before a dot. */
  private static Set<String> owners(List<String> contents) {
    Set<String> owners = new LinkedHashSet<>();
    for (String content : contents) {
      Matcher matcher = OWNED.matcher(content);
      while (matcher.find()) {
        owners.add(matcher.group(1));
      }
    }
    return owners;
  }
}
