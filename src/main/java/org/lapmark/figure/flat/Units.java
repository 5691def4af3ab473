package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Severity;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.source.UnitSource;

/** What was assembled in earlier steps and is shown as one. */
final class Units {
  /** Units are made of units as deep as this. */
  private static final int DEEPEST = 4;

  private Units() {}

  /**
   * A view in one variant.
   *
   * @param view what it shows, in place of a unit what that is made of
   * @param subject what is drawn
   */
  record Staged(View view, Subject subject) {}

  static Staged staged(View view, Staging staging) {
    View shown = resolved(view, List.of(), staging);
    List<String> within = view.unit() == null ? List.of() : List.of(view.unit().text());
    return new Staged(shown, Subjects.of(shown, within, staging));
  }

  /** What a view shows: itself, or its unit and what is stated here. */
  static View resolved(View view, List<String> within, Staging staging) {
    return view.unit() == null ? view : view.after(of(view.unit(), within, staging));
  }

  /**
   * A unit as it was assembled.
   *
   * @param within the units within which it is named
   */
  static View of(SourceText name, List<String> within, Staging staging) {
    List<UnitSource> units = staging.pattern().source().units();
    UnitSource unit =
        units.stream()
            .filter(one -> one.name().text().equals(name.text()))
            .findFirst()
            .orElseThrow(
                () ->
                    staging
                        .names()
                        .unknown(
                            FigureCode.FIGURE_UNIT_UNKNOWN,
                            name,
                            units.stream().map(one -> one.name().text()).toList()));
    if (within.contains(name.text()) || within.size() >= DEEPEST) {
      throw Faults.of(
          name.position(), FigureCode.FIGURE_UNIT_WITHIN, "name", name.text(), "limit", DEEPEST);
    }
    View read = read(unit, staging);
    View called = unit.label() == null ? read : read.called(unit.label());
    return resolved(called, within(within, name.text()), staging);
  }

  static List<String> within(List<String> within, String name) {
    List<String> all = new ArrayList<>(within);
    all.add(name);
    return all;
  }

  /** What is wrong with it is told as often as it is shown, and so once. */
  private static View read(UnitSource unit, Staging staging) {
    Findings findings = new Findings();
    View view = null;
    try {
      view = View.read(Keys.of(unit.view(), "pattern/assembled", View.TABLE, findings));
    } catch (FindingException e) {
      findings.add(e.finding());
    }
    for (Finding finding : findings.sorted()) {
      (finding.severity() == Severity.ERROR ? staging.faults() : staging.notices()).add(finding);
    }
    if (view == null) {
      throw new DemandGraph.Unavailable();
    }
    return view;
  }
}
