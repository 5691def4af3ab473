package org.lapmark.source.derived;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.lapmark.finding.SourceText;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.derivation.Derivation;
import org.lapmark.panel.derivation.Merged;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/**
 * Two panels as one.
 *
 * @param panel the panel that stays where it is
 * @param edge its edge
 * @param with the panel that is laid against it
 * @param withEdge that panel's edge
 */
public record MergeSource(SourceText panel, SourceText edge, SourceText with, SourceText withEdge)
    implements DerivedSource {
  private static final Key<SourceText> EDGE = Key.required("edge", Forms.NAME);
  private static final Key<SourceText> WITH = Key.required("with", Forms.NAME);
  private static final Key<SourceText> WITH_EDGE = Key.required("with_edge", Forms.NAME);

  static final DerivedKind MERGE =
      new DerivedKind(
          Table.of("merge", PANEL, EDGE, WITH, WITH_EDGE),
          (in, reading) ->
              in.isSound(PANEL, EDGE, WITH, WITH_EDGE)
                  ? new MergeSource(in.get(PANEL), in.get(EDGE), in.get(WITH), in.get(WITH_EDGE))
                  : null);

  @Override
  public List<SourceText> originals() {
    return List.of(panel, with);
  }

  @Override
  public List<SourceText> usedEdges(SourceText original) {
    return List.of(original == panel ? edge : withEdge);
  }

  @Override
  public Set<String> edges(List<Set<String>> known) {
    Set<String> edges = new TreeSet<>(known.get(0));
    edges.remove(edge.text());
    for (String other : known.get(1)) {
      if (!other.equals(withEdge.text())) {
        edges.add(other);
        edges.add(with.text() + "_" + other);
      }
    }
    return edges;
  }

  @Override
  public Derivation derivation(Function<SourceText, Panel> originals, VariantValues values) {
    return new Merged(originals.apply(panel), edge.text(), originals.apply(with), withEdge.text());
  }

  @Override
  public SourceText blamed(PanelException problem) {
    return withEdge;
  }
}
