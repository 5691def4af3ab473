package org.lapmark.source.derived;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.lapmark.finding.SourceText;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.derivation.Derivation;
import org.lapmark.panel.derivation.Unfolded;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/**
 * The whole of a half.
 *
 * @param panel the half's name
 * @param edge its fold edge
 * @param apart edges that stay apart from their images at the fold
 */
public record UnfoldSource(SourceText panel, SourceText edge, List<SourceText> apart)
    implements DerivedSource {
  /** What the image of an edge or a chain is called. */
  private static final String MIRRORED = "_mirrored";

  private static final Key<SourceText> EDGE = Key.required("edge", Forms.NAME);
  private static final Key<List<SourceText>> APART = Key.of("apart", Forms.NAMES);

  static final DerivedKind UNFOLD =
      new DerivedKind(
          Table.of("unfold", PANEL, EDGE, APART),
          (in, reading) -> {
            List<SourceText> apart = in.all(APART);
            return in.isSound(PANEL, EDGE)
                ? new UnfoldSource(in.get(PANEL), in.get(EDGE), apart)
                : null;
          });

  /** Copies the list. */
  public UnfoldSource {
    apart = List.copyOf(apart);
  }

  @Override
  public List<SourceText> usedEdges(SourceText original) {
    List<SourceText> used = new ArrayList<>(apart);
    used.add(edge);
    return used;
  }

  @Override
  public Set<String> edges(List<Set<String>> known) {
    Set<String> edges = new TreeSet<>(known.get(0));
    edges.remove(edge.text());
    List.copyOf(edges).forEach(each -> edges.add(each + MIRRORED));
    return edges;
  }

  @Override
  public Set<String> chains(Set<String> known) {
    Set<String> chains = new TreeSet<>(known);
    known.forEach(chain -> chains.add(chain + MIRRORED));
    return chains;
  }

  @Override
  public Derivation derivation(Function<SourceText, Panel> originals, VariantValues values) {
    return new Unfolded(
        originals.apply(panel), edge.text(), apart.stream().map(SourceText::text).toList());
  }

  @Override
  public SourceText blamed(PanelException problem) {
    return apart.stream()
        .filter(one -> problem.code() == PanelCode.UNFOLD_NOT_AT_FOLD)
        .filter(one -> one.text().equals(problem.arguments().get("edge")))
        .findFirst()
        .orElse(edge);
  }
}
