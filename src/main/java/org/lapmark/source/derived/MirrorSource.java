package org.lapmark.source.derived;

import java.util.function.Function;
import org.lapmark.finding.SourceText;
import org.lapmark.panel.Panel;
import org.lapmark.panel.derivation.Derivation;
import org.lapmark.panel.derivation.Mirrored;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/**
 * A mirror image.
 *
 * @param panel the other panel's name
 */
public record MirrorSource(SourceText panel) implements DerivedSource {
  static final DerivedKind MIRROR =
      new DerivedKind(
          Table.of("mirror", PANEL),
          (in, reading) -> in.isSound(PANEL) ? new MirrorSource(in.get(PANEL)) : null);

  @Override
  public boolean runsBeside() {
    return true;
  }

  @Override
  public Derivation derivation(Function<SourceText, Panel> originals, VariantValues values) {
    return new Mirrored(originals.apply(panel));
  }
}
