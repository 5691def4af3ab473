package org.lapmark.publish.product;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Cut;
import org.lapmark.source.PatternSource;

/**
 * What a variant consists of, whatever it measures. Only sizes of the same makeup share a document:
 * a reader follows one text from beginning to end, without leaving out what isn't for her.
 *
 * @param parts choices, pieces, materials, steps and texts, in words that are equal when they are
 *     the same
 */
public record VariantContents(List<Object> parts) {
  public VariantContents {
    parts = List.copyOf(parts);
  }

  static VariantContents of(EvaluatedPattern pattern) {
    PatternSource source = pattern.source();
    List<Object> parts = new ArrayList<>();
    parts.add(new LinkedHashMap<>(pattern.variant().choices()));
    parts.add(
        pattern.pieces().stream()
            .map(
                piece -> List.of(piece.number(), piece.cuts().stream().map(Cut::material).toList()))
            .toList());
    parts.add(source.materials().stream().map(thing -> thing.id().text()).toList());
    parts.add(source.hardware().stream().map(thing -> thing.id().text()).toList());
    parts.add(source.making().tools().stream().map(tool -> tool.id().text()).toList());
    parts.add(source.finished().stream().map(row -> row.label().source().text()).toList());
    parts.add(
        source.steps().stream()
            .map(
                step ->
                    List.of(
                        step.id().text(),
                        step.uses().stream().map(SourceText::text).toList(),
                        step.body().text()))
            .toList());
    parts.add(source.notes().stream().map(note -> note.name() + note.body().text()).toList());
    return new VariantContents(parts);
  }

  /**
   * Sizes by what they consist of.
   *
   * @param patterns patterns, one a size or one a variant
   * @return the groups, each in the order given and by their first
   */
  public static List<List<EvaluatedPattern>> groups(List<EvaluatedPattern> patterns) {
    Map<VariantContents, List<EvaluatedPattern>> groups = new LinkedHashMap<>();
    for (EvaluatedPattern pattern : patterns) {
      groups.computeIfAbsent(of(pattern), makeup -> new ArrayList<>()).add(pattern);
    }
    return List.copyOf(groups.values());
  }
}
