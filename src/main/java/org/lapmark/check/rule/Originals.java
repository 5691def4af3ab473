package org.lapmark.check.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.lapmark.finding.SourceText;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.derived.DerivedSource;

/** What panels are derived from. */
public final class Originals {
  private Originals() {}

  /**
   * A panel, then those that it is derived from, then those that these are derived from.
   *
   * @param source the pattern
   * @param panel the panel's name
   * @return names, nearest first
   */
  public static List<List<String>> of(PatternSource source, String panel) {
    List<List<String>> levels = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    List<String> level = List.of(panel);
    while (!level.isEmpty()) {
      levels.add(level);
      List<String> next = new ArrayList<>();
      for (String name : level) {
        if (seen.add(name)) {
          source.panels().stream()
              .filter(one -> one.name().text().equals(name))
              .forEach(one -> next.addAll(of(one)));
        }
      }
      level = next;
    }
    return levels;
  }

  /** What a panel is derived from, by itself. */
  public static List<String> of(PanelSource panel) {
    return panel.derivation().stream()
        .flatMap(how -> how.originals().stream())
        .map(SourceText::text)
        .toList();
  }

  /**
   * The panels whose outlines a panel's runs beside: itself, and those that it is an inset, outset,
   * lining or mirror image of.
   */
  public static List<String> beside(PatternSource source, String panel) {
    List<String> names = new ArrayList<>();
    String name = panel;
    while (name != null && !names.contains(name)) {
      names.add(name);
      String current = name;
      name =
          source.panels().stream()
              .filter(one -> one.name().text().equals(current))
              .flatMap(one -> one.derivation().stream())
              .filter(DerivedSource::runsBeside)
              .map(how -> how.panel().text())
              .findFirst()
              .orElse(null);
    }
    return names;
  }
}
