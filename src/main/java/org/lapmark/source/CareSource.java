package org.lapmark.source;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.lapmark.finding.SourceText;

/**
 * What a tool, a material or a piece of hardware says of the care that it needs.
 *
 * @param kinds what it is
 * @param stated hazards that are named as such
 * @param because why it needs none, where that is stated in place of hazards; or null
 */
public record CareSource(List<ThingKind> kinds, List<SourceText> stated, SourceText because) {
  /** Nothing is said. */
  public static final CareSource NONE = new CareSource(List.of(), List.of(), null);

  /** What nobody can argue away where children are concerned. */
  private static final String CORDS = "cords";

  /** Copies the lists. */
  public CareSource {
    kinds = List.copyOf(kinds);
    stated = List.copyOf(stated);
  }

  /**
   * Whether anything is said.
   *
   * @return true when a kind, a hazard or a reason is stated
   */
  public boolean isSaid() {
    return !kinds.isEmpty() || !stated.isEmpty() || because != null;
  }

  /**
   * The hazards that cautions are printed for.
   *
   * @param child whether the article is for a child: then cords stay, whatever reason is stated
   * @return each once, those of the kinds first
   */
  public List<String> hazards(boolean child) {
    List<String> hazards = new ArrayList<>(nature());
    if (because != null) {
      hazards.removeIf(hazard -> !child || !hazard.equals(CORDS));
    }
    return hazards;
  }

  /**
   * What it is by nature, whether or not a reason speaks against a caution.
   *
   * @return hazards, each once
   */
  public List<String> nature() {
    Set<String> hazards = new LinkedHashSet<>();
    kinds.forEach(kind -> hazards.addAll(kind.hazards()));
    stated.forEach(hazard -> hazards.add(hazard.text()));
    return List.copyOf(hazards);
  }
}
