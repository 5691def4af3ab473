package org.lapmark.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.panel.PanelBuilder.CornerPair;

/**
 * Finds out whether a chain is broken because the corners of one of its edges are stated in the
 * wrong order: such an edge goes the other way round the panel and over edges that the chain lists
 * beside it.
 */
public final class SwappedCorners {
  private SwappedCorners() {}

  /**
   * Looks at the members of a chain.
   *
   * @param panel the panel's name
   * @param chain the chain's name
   * @param members what it lists
   * @param stated the edges stated by two corners
   * @param covered the stretches of the outline that a name stands for
   * @return the problem, if that is the cause
   */
  public static Optional<PanelException> in(
      String panel,
      String chain,
      List<String> members,
      Map<String, CornerPair> stated,
      Map<String, List<String>> covered) {
    for (String member : members) {
      List<String> own = covered.getOrDefault(member, List.of(member));
      if (own.size() < 2 || !stated.containsKey(member)) {
        continue;
      }
      List<String> others = new ArrayList<>();
      for (String other : members) {
        if (!other.equals(member)) {
          others.addAll(covered.getOrDefault(other, List.of(other)));
        }
      }
      if (!others.isEmpty() && own.containsAll(others)) {
        CornerPair pair = stated.get(member);
        return Optional.of(
            PanelCode.EDGE_CORNERS_SWAPPED.exception(
                "panel",
                panel,
                "edge",
                member,
                "chain",
                chain,
                "from",
                pair.from(),
                "to",
                pair.to()));
      }
    }
    return Optional.empty();
  }
}
