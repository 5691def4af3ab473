package org.lapmark.source.derived;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.derivation.Derivation;
import org.lapmark.panel.derivation.Facing;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/**
 * A band along an edge.
 *
 * @param panel the other panel's name
 * @param along the edge or chain that it follows
 * @param width how wide it is
 * @param edge the new edge's name
 * @param stated the same where it is stated, or null
 */
public record FacingSource(
    SourceText panel, SourceText along, Formula width, String edge, SourceText stated)
    implements DerivedSource {
  private static final Key<SourceText> ALONG = Key.required("along", Forms.NAME);
  private static final Key<Formula> WIDTH = Key.required("width", Forms.LENGTH);
  private static final Key<SourceText> EDGE = Key.of("edge", Forms.NEW_NAME).unless("inner");

  static final DerivedKind FACING =
      new DerivedKind(
          Table.of("facing", PANEL, ALONG, WIDTH, EDGE),
          (in, reading) ->
              in.isSound(PANEL, ALONG, WIDTH, EDGE)
                  ? new FacingSource(
                      in.get(PANEL),
                      in.get(ALONG),
                      in.get(WIDTH),
                      DerivedSource.named(in, EDGE, EDGE.standard()),
                      in.get(EDGE))
                  : null);

  @Override
  public List<SourceText> usedLines() {
    return List.of(along);
  }

  @Override
  public Set<String> edges(List<Set<String>> known) {
    return DerivedSource.and(known, edge);
  }

  @Override
  public Derivation derivation(Function<SourceText, Panel> originals, VariantValues values) {
    return new Facing(originals.apply(panel), along.text(), values.positiveLength(width), edge);
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
    return problem.code() == PanelCode.BAND_TOO_WIDE ? width.text() : along;
  }
}
