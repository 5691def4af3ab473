package org.lapmark.grade;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;
import org.lapmark.panel.derivation.Beside;
import org.lapmark.panel.derivation.Beside.Marks;
import org.lapmark.panel.derivation.Derivation;
import org.lapmark.panel.derivation.Facing;
import org.lapmark.panel.derivation.Folded;
import org.lapmark.panel.derivation.Merged;
import org.lapmark.panel.derivation.Mirrored;
import org.lapmark.panel.derivation.Split;
import org.lapmark.panel.derivation.Unfolded;
import org.lapmark.source.DerivedSource;
import org.lapmark.source.DerivedSource.EdgeDistance;
import org.lapmark.source.DerivedSource.Way;

/** Evaluates derivations. */
final class DerivedPanels {
  private final PatternScope scope;
  private final Variant variant;
  private final Function<SourceText, Panel> originals;
  private final Consumer<Notice> notices;

  /**
   * Prepares them.
   *
   * @param originals gives the panels that others are derived from
   * @param notices told what isn't wrong but should be known
   */
  DerivedPanels(
      PatternScope scope,
      Variant variant,
      Function<SourceText, Panel> originals,
      Consumer<Notice> notices) {
    this.scope = scope;
    this.variant = variant;
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
    Panel original = originals.apply(how.panel());
    Panel second =
        how instanceof DerivedSource.Merged merged ? originals.apply(merged.with()) : null;
    try {
      return derivation(how, original, second).derive(name.text(), notice -> tell(notice, how));
    } catch (PanelException e) {
      throw new FindingException(finding(e, how));
    }
  }

  private Derivation derivation(DerivedSource how, Panel original, Panel second) {
    if (how instanceof DerivedSource.Beside stated) {
      Marks marks = Marks.OF_UNMOVED_EDGES;
      if (stated.marks() != null) {
        marks = stated.marks() ? Marks.ALL : Marks.NONE;
      }
      boolean outwards = stated.way() == Way.OUTSET;
      return new Beside(original, outwards, distances(stated, original), marks);
    }
    if (how instanceof DerivedSource.Mirrored) {
      return new Mirrored(original);
    }
    if (how instanceof DerivedSource.Unfolded stated) {
      List<String> apart = stated.apart().stream().map(SourceText::text).toList();
      return new Unfolded(original, stated.edge().text(), apart);
    }
    if (how instanceof DerivedSource.Folded stated) {
      return new Folded(original, stated.from().text(), stated.to().text(), stated.edge());
    }
    if (how instanceof DerivedSource.Split stated) {
      return new Split(original, stated.along().text(), stated.keep().text(), stated.edge());
    }
    if (how instanceof DerivedSource.Merged stated) {
      return new Merged(original, stated.edge().text(), second, stated.withEdge().text());
    }
    DerivedSource.Facing stated = (DerivedSource.Facing) how;
    double width = scope.positiveLength(stated.width());
    return new Facing(original, stated.along().text(), width, stated.edge());
  }

  private Map<String, Double> distances(DerivedSource.Beside beside, Panel original) {
    double general = beside.distance() == null ? 0 : distance(beside.distance(), beside.way());
    Map<String, Double> distances = new LinkedHashMap<>();
    original.edges().forEach(edge -> distances.put(edge.name(), general));
    for (EdgeDistance stated : beside.edges()) {
      double own = distance(stated.distance(), beside.way());
      Ring.members(original, stated.edge().text()).forEach(edge -> distances.put(edge, own));
    }
    return distances;
  }

  private double distance(Formula formula, Way way) {
    double distance = scope.length(formula);
    if (distance < 0) {
      throw new FindingException(
          Finding.of(
              GradeCode.INSET_NEGATIVE,
              formula.text().position(),
              "value",
              Rounded.hundredth(distance),
              "way",
              way == Way.OUTSET ? "larger" : "smaller",
              "size",
              variant.size()));
    }
    return distance;
  }

  private void tell(PanelException notice, DerivedSource how) {
    notices.accept(new Notice(finding(notice, how), notice.place()));
  }

  private Finding finding(PanelException problem, DerivedSource how) {
    Map<String, Object> arguments = new LinkedHashMap<>(problem.arguments());
    arguments.putIfAbsent("size", variant.size());
    return new Finding(problem.code(), place(problem, how).position(), arguments);
  }

  /** What of a derivation is to blame. */
  private static SourceText place(PanelException problem, DerivedSource how) {
    Object edge = problem.arguments().get("edge");
    if (how instanceof DerivedSource.Beside beside) {
      for (EdgeDistance stated : beside.edges()) {
        if (stated.edge().text().equals(edge)) {
          return stated.edge();
        }
      }
    }
    if (how instanceof DerivedSource.Unfolded unfolded) {
      for (SourceText apart : unfolded.apart()) {
        if (apart.text().equals(edge) && problem.code() == PanelCode.UNFOLD_NOT_AT_FOLD) {
          return apart;
        }
      }
      return unfolded.edge();
    }
    if (how instanceof DerivedSource.Folded folded) {
      return folded.to().text().equals(problem.arguments().get("place"))
          ? folded.to()
          : folded.from();
    }
    if (how instanceof DerivedSource.Split split) {
      return problem.code() == PanelCode.SPLIT_KEEPS_BOTH ? split.keep() : split.along();
    }
    if (how instanceof DerivedSource.Merged merged) {
      return merged.withEdge();
    }
    if (how instanceof DerivedSource.Facing facing) {
      return problem.code() == PanelCode.BAND_TOO_WIDE ? facing.width().text() : facing.along();
    }
    return how.panel();
  }
}
