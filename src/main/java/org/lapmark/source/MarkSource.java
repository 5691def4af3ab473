package org.lapmark.source;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Intake;

/**
 * A mark, or a row of marks, as stated for a panel.
 *
 * @param kind what it is
 * @param name its name, which drawn marks of the same kind may have
 * @param formulas what is stated by formulas, by key
 * @param names edges, corners and drawn lines, by key
 * @param pleat how a pleat is folded
 * @param across whether buttonholes stand square to their line
 */
public record MarkSource(
    MarkKind kind,
    SourceText name,
    Map<String, Formula> formulas,
    Map<String, SourceText> names,
    Intake.PleatKind pleat,
    boolean across) {
  private static final List<String> PLACING = List.of("edge", "line", "corner", "from_edge");

  /** Copies the maps, keeping their order. */
  public MarkSource {
    formulas = Collections.unmodifiableMap(new LinkedHashMap<>(formulas));
    names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
  }

  /**
   * Whether it says more of a mark that is drawn.
   *
   * @return true when no place is stated
   */
  public boolean isDrawn() {
    return PLACING.stream().noneMatch(names::containsKey);
  }
}
