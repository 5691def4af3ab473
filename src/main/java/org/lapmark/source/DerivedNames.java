package org.lapmark.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.SourceText;

/** What can be known of a derived panel's names without its geometry. */
public final class DerivedNames {
  private static final String MIRRORED = "_mirrored";

  private DerivedNames() {}

  /** The panels that one is derived from. */
  public static List<SourceText> originals(DerivedSource how) {
    return how instanceof DerivedSource.Merged merged
        ? List.of(merged.panel(), merged.with())
        : List.of(how.panel());
  }

  /** The edges that a derivation names of one of its originals. */
  public static List<SourceText> usedEdges(DerivedSource how, SourceText original) {
    if (how instanceof DerivedSource.Unfolded unfolded) {
      List<SourceText> used = new ArrayList<>(unfolded.apart());
      used.add(unfolded.edge());
      return used;
    }
    if (how instanceof DerivedSource.Merged merged) {
      return List.of(original == merged.panel() ? merged.edge() : merged.withEdge());
    }
    return List.of();
  }

  /** The edges or chains that a derivation names. */
  public static List<SourceText> usedLines(DerivedSource how) {
    if (how instanceof DerivedSource.Beside beside) {
      return beside.edges().stream().map(DerivedSource.EdgeDistance::edge).toList();
    }
    return how instanceof DerivedSource.Facing facing ? List.of(facing.along()) : List.of();
  }

  /**
   * The edges that a derived panel may have.
   *
   * @param how the derivation
   * @param known the edges of its originals
   */
  public static Set<String> edges(DerivedSource how, List<Set<String>> known) {
    Set<String> edges = new TreeSet<>(known.get(0));
    if (how instanceof DerivedSource.Unfolded unfolded) {
      edges.remove(unfolded.edge().text());
      List.copyOf(edges).forEach(edge -> edges.add(edge + MIRRORED));
    } else if (how instanceof DerivedSource.Folded folded) {
      edges.add(folded.edge());
    } else if (how instanceof DerivedSource.Split split) {
      edges.add(split.edge());
    } else if (how instanceof DerivedSource.Facing facing) {
      edges.add(facing.edge());
    } else if (how instanceof DerivedSource.Merged merged) {
      edges.remove(merged.edge().text());
      for (String edge : known.get(1)) {
        if (!edge.equals(merged.withEdge().text())) {
          edges.add(edge);
          edges.add(merged.with().text() + "_" + edge);
        }
      }
    }
    return edges;
  }

  /**
   * The edge of which another may be a part: a derivation that takes the middle of the edge {@code
   * side} leaves {@code side_1} and {@code side_2}. Whether it does follows from the geometry.
   */
  public static String whole(String edge) {
    int end = edge.length();
    while (end > 0 && Character.isDigit(edge.charAt(end - 1))) {
      end--;
    }
    return end < edge.length() && end > 1 && edge.charAt(end - 1) == '_'
        ? edge.substring(0, end - 1)
        : edge;
  }

  /** The chains that a derived panel may have from one of its originals. */
  public static Set<String> chains(DerivedSource how, Set<String> known) {
    Set<String> chains = new TreeSet<>(known);
    if (how instanceof DerivedSource.Unfolded) {
      known.forEach(chain -> chains.add(chain + MIRRORED));
    }
    return chains;
  }
}
