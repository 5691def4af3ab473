package org.lapmark.source.derived;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.lapmark.finding.SourceText;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.derivation.Derivation;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Stated;
import org.lapmark.source.variant.VariantValues;

/**
 * How a panel is derived from others. Names of edges and chains follow from the statement alone, so
 * that they are the same in every size.
 */
public interface DerivedSource {
  /** The panel that it is derived from. */
  Key<SourceText> PANEL = Key.required("panel", Forms.NAME);

  /**
   * The panel that it is derived from.
   *
   * @return its name
   */
  SourceText panel();

  /** The panels that it is derived from. */
  default List<SourceText> originals() {
    return List.of(panel());
  }

  /** The edges that it names of one of its originals. */
  default List<SourceText> usedEdges(SourceText original) {
    return List.of();
  }

  /** The edges or chains that it names. */
  default List<SourceText> usedLines() {
    return List.of();
  }

  /** Whether the result has the corners of the original, and no others. */
  default boolean keepsCorners() {
    return false;
  }

  /**
   * Whether its outline is the original's or runs beside it all round, mirrored or not, so that it
   * is held against the original's, and a rectangle stays one.
   */
  default boolean runsBeside() {
    return false;
  }

  /** Whether it is basted to the original, raw edge to raw edge, and sewn as one with it. */
  default boolean isMounted() {
    return false;
  }

  /**
   * The edges that the derived panel may have.
   *
   * @param known the edges of its originals
   */
  default Set<String> edges(List<Set<String>> known) {
    return new TreeSet<>(known.get(0));
  }

  /** The chains that the derived panel may have from one of its originals. */
  default Set<String> chains(Set<String> known) {
    return new TreeSet<>(known);
  }

  /**
   * How it is made in a variant.
   *
   * @param originals gives the panels that it names
   * @param values what its formulas come to
   * @return what makes the panel
   */
  Derivation derivation(Function<SourceText, Panel> originals, VariantValues values);

  /** What of the statement is to blame for a problem of making the panel. */
  default SourceText blamed(PanelException problem) {
    return panel();
  }

  /**
   * Whether a notice of making the panel is told.
   *
   * @param notice what isn't wrong but should be known
   * @return false where it is about what the statement doesn't say
   */
  default boolean tells(PanelException notice) {
    return true;
  }

  /**
   * The edge of which another may be a part: a derivation that takes the middle of the edge {@code
   * side} leaves {@code side_1} and {@code side_2}. Whether it does follows from the geometry.
   */
  static String whole(String edge) {
    int end = edge.length();
    while (end > 0 && Character.isDigit(edge.charAt(end - 1))) {
      end--;
    }
    return end < edge.length() && end > 1 && edge.charAt(end - 1) == '_'
        ? edge.substring(0, end - 1)
        : edge;
  }

  /** A new edge's name, or another where none is stated. */
  static String named(Stated in, Key<SourceText> key, String standard) {
    SourceText name = in.get(key);
    return name == null ? standard : name.text();
  }

  /** The edges of an original and a new one. */
  static Set<String> and(List<Set<String>> known, String edge) {
    Set<String> edges = new TreeSet<>(known.get(0));
    edges.add(edge);
    return edges;
  }
}
