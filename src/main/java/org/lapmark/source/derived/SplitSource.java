package org.lapmark.source.derived;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.lapmark.finding.SourceText;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.derivation.Derivation;
import org.lapmark.panel.derivation.Split;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/**
 * A part of a panel that is split.
 *
 * @param panel the other panel's name
 * @param along the name of its style line
 * @param keep a corner, edge or chain that lies in this part alone
 * @param edge the new edge's name
 * @param stated the same where it is stated, or null
 */
public record SplitSource(
    SourceText panel, SourceText along, SourceText keep, String edge, SourceText stated)
    implements DerivedSource {
  private static final Key<SourceText> ALONG = Key.required("along", Forms.NAME);
  private static final Key<SourceText> KEEP = Key.required("keep", Forms.NAME);
  private static final Key<SourceText> EDGE = Key.of("edge", Forms.NEW_NAME);

  static final DerivedKind SPLIT =
      new DerivedKind(
          Table.of("split", PANEL, ALONG, KEEP, EDGE),
          (in, reading) ->
              in.isSound(PANEL, ALONG, KEEP, EDGE)
                  ? new SplitSource(
                      in.get(PANEL),
                      in.get(ALONG),
                      in.get(KEEP),
                      DerivedSource.named(in, EDGE, in.get(ALONG).text()),
                      in.get(EDGE))
                  : null);

  @Override
  public Set<String> edges(List<Set<String>> known) {
    return DerivedSource.and(known, edge);
  }

  @Override
  public Derivation derivation(Function<SourceText, Panel> originals, VariantValues values) {
    return new Split(originals.apply(panel), along.text(), keep.text(), edge);
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
    return problem.code() == PanelCode.SPLIT_KEEPS_BOTH ? keep : along;
  }
}
