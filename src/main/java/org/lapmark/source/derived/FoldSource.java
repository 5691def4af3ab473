package org.lapmark.source.derived;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.lapmark.finding.SourceText;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.derivation.Derivation;
import org.lapmark.panel.derivation.Folded;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/**
 * The half of a whole.
 *
 * @param panel the whole's name
 * @param from where the fold begins: an edge or chain, in its middle, or a corner
 * @param to where it ends
 * @param edge the new edge's name
 * @param stated the same where it is stated, or null
 */
public record FoldSource(
    SourceText panel, SourceText from, SourceText to, String edge, SourceText stated)
    implements DerivedSource {
  private static final Key<SourceText> FROM = Key.required("from", Forms.FOLD_END);
  private static final Key<SourceText> TO = Key.required("to", Forms.FOLD_END);
  private static final Key<SourceText> EDGE = Key.of("edge", Forms.NEW_NAME).unless("fold");

  static final DerivedKind FOLD =
      new DerivedKind(
          Table.of("fold", PANEL, FROM, TO, EDGE),
          (in, reading) ->
              in.isSound(PANEL, FROM, TO, EDGE)
                  ? new FoldSource(
                      in.get(PANEL),
                      in.get(FROM),
                      in.get(TO),
                      DerivedSource.named(in, EDGE, EDGE.standard()),
                      in.get(EDGE))
                  : null);

  @Override
  public Set<String> edges(List<Set<String>> known) {
    return DerivedSource.and(known, edge);
  }

  @Override
  public Derivation derivation(Function<SourceText, Panel> originals, VariantValues values) {
    return new Folded(originals.apply(panel), from.text(), to.text(), edge);
  }

  @Override
  public boolean tells(PanelException notice) {
    return stated != null || notice.code() != PanelCode.DERIVED_EDGE_TAKEN;
  }

  @Override
  public SourceText blamed(PanelException problem) {
    if (stated != null && problem.code() == PanelCode.DERIVED_EDGE_TAKEN) {
      return stated;
    }
    return to.text().equals(problem.arguments().get("place")) ? to : from;
  }
}
