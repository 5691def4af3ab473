package org.lapmark.grade.panel;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;
import org.lapmark.source.derived.DerivedSource;
import org.lapmark.source.variant.VariantValues;

/** Evaluates derivations. */
final class DerivedPanels {
  private final VariantValues values;
  private final Function<SourceText, Panel> originals;
  private final Consumer<Notice> notices;

  /**
   * Prepares them.
   *
   * @param originals gives the panels that others are derived from
   * @param notices told what isn't wrong but should be known
   */
  DerivedPanels(
      VariantValues values, Function<SourceText, Panel> originals, Consumer<Notice> notices) {
    this.values = values;
    this.originals = originals;
    this.notices = notices;
  }

  /**
   * Something that isn't wrong but should be known, unless it is put right beside the derivation.
   *
   * @param finding what to say
   * @param place where on the panel it is
   */
  record Notice(Finding finding, Optional<Point> place) {}

  /**
   * A derived panel with the marks that it takes over.
   *
   * @param name its name
   * @param how how it is derived
   * @throws FindingException when it can't be
   */
  Panel build(SourceText name, DerivedSource how) {
    try {
      return how.derivation(originals, values).derive(name.text(), notice -> tell(notice, how));
    } catch (PanelException e) {
      throw new FindingException(finding(e, how));
    }
  }

  private void tell(PanelException notice, DerivedSource how) {
    if (how.tells(notice)) {
      notices.accept(new Notice(finding(notice, how), notice.place()));
    }
  }

  private Finding finding(PanelException problem, DerivedSource how) {
    Map<String, Object> arguments = new LinkedHashMap<>(problem.arguments());
    arguments.putIfAbsent("size", values.size());
    return new Finding(problem.code(), how.blamed(problem).position(), arguments);
  }
}
