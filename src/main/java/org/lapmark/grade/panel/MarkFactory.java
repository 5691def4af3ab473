package org.lapmark.grade.panel;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.geometry.Affine;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.ValuesInScope;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Darts;
import org.lapmark.panel.Edge;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchSet;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PanelSource.NotchSource;
import org.lapmark.source.drawing.DrawnMark;
import org.lapmark.source.drawing.DrawnPanel;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.mark.MarkKind;
import org.lapmark.source.mark.MarkKinds;
import org.lapmark.source.mark.MarkSource;
import org.lapmark.source.variant.VariantValues;

/** Has the marks of one panel made in one variant. */
final class MarkFactory {
  private final PatternScope scope;
  private final VariantValues values;
  private final PanelFactory panels;

  MarkFactory(PatternScope scope, PanelFactory panels) {
    this.scope = scope;
    this.values = new ValuesInScope(scope);
    this.panels = panels;
  }

  /**
   * Adds the marks of a drawing.
   *
   * @param panel the panel without marks
   * @param source what is stated of it
   * @param shapes the drawing
   * @param scaling from the drawing to the panel
   * @return the panel with all that is drawn on it, slash lines apart
   */
  Panel drawn(Panel panel, PanelSource source, DrawnPanel shapes, Affine scaling) {
    List<Mark> marks = new ArrayList<>();
    for (Role role : Role.values()) {
      List<DrawnMark> drawn =
          shapes.marks(role).stream().map(mark -> mark.transformed(scaling)).toList();
      marks.addAll(drawn(panel, source, role, drawn));
    }
    return new Panel(panel.name(), panel.edges(), panel.chains(), marks);
  }

  private List<? extends Mark> drawn(
      Panel panel, PanelSource source, Role role, List<DrawnMark> drawn) {
    return switch (role) {
      case GRAINLINE ->
          drawn.stream()
              .map(DrawnMark::path)
              .map(line -> new Mark.Grainline(line.start(), line.end()))
              .toList();
      case STYLELINE ->
          drawn.stream().map(line -> new LineMark.StyleLine(line.name(), line.path())).toList();
      case NOTCH ->
          drawn.stream()
              .map(
                  notch ->
                      onOutline(
                          panel,
                          panel.outline().nearestLength(notch.point()),
                          set(source, notch.name())))
              .toList();
      default ->
          MarkKinds.of(role)
              .map(kind -> kind.drawn(drawn, described(source, kind), panel, values))
              .orElse(List.of());
    };
  }

  /** What is said of the drawn marks of a kind. */
  private static List<MarkSource> described(PanelSource source, MarkKind kind) {
    return source.marks().stream().filter(mark -> mark.kind() == kind && mark.isDrawn()).toList();
  }

  private static Mark.Notch onOutline(Panel panel, double along, NotchSet set) {
    double at = along;
    for (Edge edge : panel.edges()) {
      double length = edge.path().length();
      if (at <= length) {
        return new Mark.Notch(edge.name(), at, set);
      }
      at -= length;
    }
    Edge last = panel.edges().get(panel.edges().size() - 1);
    return new Mark.Notch(last.name(), last.path().length(), set);
  }

  private NotchSet set(PanelSource source, String name) {
    for (NotchSource notch : source.notches()) {
      if (notch.place().drawn().filter(drawn -> drawn.text().equals(name)).isPresent()) {
        return set(scope, source.name().text(), notch);
      }
    }
    return NotchSet.of(1);
  }

  /** The notches of a statement, in order along the edge. */
  static NotchSet set(PatternScope scope, String panel, NotchSource source) {
    if (source.gaps().isEmpty()) {
      return NotchSet.of(source.count()).cut(source.cut());
    }
    List<Double> gaps = new ArrayList<>();
    for (Formula formula : source.gaps()) {
      double gap = scope.length(formula);
      if (!(gap >= NotchSet.LEAST_GAP)) {
        throw new FindingException(
            Finding.of(
                PanelCode.NOTCH_GAP,
                formula.text().position(),
                "panel",
                panel,
                "edge",
                source.edge().text(),
                "gap",
                gap,
                "least",
                NotchSet.LEAST_GAP,
                "size",
                scope.size()));
      }
      gaps.add(gap);
    }
    return new NotchSet(gaps.size() + 1, gaps, source.cut());
  }

  /**
   * Adds the marks that are stated beside a panel's shape and on which its geometry depends.
   *
   * @param panel the panel with its drawn marks
   * @param source what is stated of it
   * @return the panel with them
   * @throws FindingException when one can't be made
   */
  Panel stated(Panel panel, PanelSource source) {
    return stated(panel, source, MarkKind.Stage.SHAPE);
  }

  /**
   * Adds those on which nothing depends.
   *
   * @param panel the panel with all other marks
   * @param source what is stated of it
   * @return the panel with them
   * @throws FindingException when one can't be made
   */
  Panel placed(Panel panel, PanelSource source) {
    return stated(panel, source, MarkKind.Stage.GUIDE, MarkKind.Stage.ON_GUIDES);
  }

  private Panel stated(Panel panel, PanelSource source, MarkKind.Stage... stages) {
    List<Mark> marks = new ArrayList<>(panel.marks());
    for (MarkKind.Stage stage : stages) {
      for (MarkSource mark : source.marks()) {
        if (!mark.isDrawn() && mark.kind().stage() == stage) {
          marks.addAll(made(mark, new Panel(panel.name(), panel.edges(), panel.chains(), marks)));
        }
      }
    }
    Panel all = new Panel(panel.name(), panel.edges(), panel.chains(), marks);
    Darts.check(all);
    return all;
  }

  /** Says where a mark is stated that can't be made. */
  private List<Mark> made(MarkSource mark, Panel panel) {
    try {
      return mark.kind().stated(mark, panel, values);
    } catch (PanelException e) {
      throw panels.inVariant(e, mark.name());
    }
  }
}
