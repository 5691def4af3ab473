package org.lapmark.check.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchSet;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.source.PanelSource;
import org.lapmark.source.mark.MarkSource;

/** Tells of notches and buttonholes so near to each other that they come out as one blot. */
public final class MarksApart {
  public static final Rule<Evaluated> RULE =
      new Rule<>(MarksApart::run, PieceCode.NOTCHES_CLOSE, PieceCode.BUTTONHOLES_CLOSE);

  /** Notches nearer to each other than this, in millimetres, are one, and meant as one. */
  private static final double ONE = 0.05;

  /** The cloth that a buttonhole's stitches need on either side, in millimetres. */
  private static final double BESIDE = 2;

  private final String size;
  private final Findings findings;

  private MarksApart(String size, Findings findings) {
    this.size = size;
    this.findings = findings;
  }

  static void run(Evaluated evaluated, Findings findings) {
    MarksApart check = new MarksApart(evaluated.size(), findings);
    for (PanelSource source : evaluated.source().panels()) {
      Panel panel = evaluated.pattern().panels().get(source.name().text());
      if (panel != null) {
        check.check(panel, source);
      }
    }
  }

  /** Looks at a panel's own marks; those of a derived panel were looked at on its original. */
  private void check(Panel panel, PanelSource source) {
    if (source.derivation().isEmpty() || !source.notches().isEmpty()) {
      notches(panel, source);
    }
    if (source.derivation().isEmpty() || !source.marks().isEmpty()) {
      buttonholes(panel, source);
    }
  }

  /** One notch of a set. */
  private record Foot(Mark.Notch set, double at) {}

  private void notches(Panel panel, PanelSource source) {
    Map<String, List<Foot>> byEdge = new LinkedHashMap<>();
    for (Mark.Notch notch : panel.marks(Mark.Notch.class)) {
      for (double offset : notch.set().offsets()) {
        byEdge
            .computeIfAbsent(notch.edge(), edge -> new ArrayList<>())
            .add(new Foot(notch, notch.at() + offset));
      }
    }
    byEdge.forEach((edge, feet) -> notches(panel, source, edge, feet));
  }

  private void notches(Panel panel, PanelSource source, String edge, List<Foot> feet) {
    feet.sort(Comparator.comparingDouble(Foot::at));
    for (int i = 1; i < feet.size(); i++) {
      Foot one = feet.get(i - 1);
      Foot next = feet.get(i);
      double gap = next.at() - one.at();
      boolean same = gap <= ONE && one.set().count() == next.set().count();
      if (one.set() != next.set() && gap < NotchSet.LEAST_GAP - ONE && !same) {
        findings.add(
            Finding.of(
                PieceCode.NOTCHES_CLOSE,
                place(panel, source, edge),
                "panel",
                panel.name(),
                "edge",
                edge,
                "gap",
                Rounded.hundredth(gap),
                "at",
                Rounded.hundredth(one.at()),
                "least",
                NotchSet.LEAST_GAP,
                "size",
                size));
        return;
      }
    }
  }

  /** Where the last notch on an edge is stated. */
  private static Position place(Panel panel, PanelSource source, String edge) {
    Position place = source.name().position();
    for (PanelSource.NotchSource notch : source.notches()) {
      String line = notch.edge().text();
      if (line.equals(edge) || panel.chains().getOrDefault(line, List.of()).contains(edge)) {
        place = notch.edge().position();
      }
    }
    return place;
  }

  private void buttonholes(Panel panel, PanelSource source) {
    List<PointMark.Buttonhole> holes = panel.marks(PointMark.Buttonhole.class);
    for (int i = 0; i < holes.size(); i++) {
      for (int j = i + 1; j < holes.size(); j++) {
        PointMark.Buttonhole one = holes.get(i);
        PointMark.Buttonhole other = holes.get(j);
        double apart = apart(one, other);
        if (apart < BESIDE) {
          findings.add(
              Finding.of(
                  PieceCode.BUTTONHOLES_CLOSE,
                  source.marks().stream()
                      .map(MarkSource::name)
                      .filter(name -> name.text().equals(other.name()))
                      .findFirst()
                      .orElse(source.name())
                      .position(),
                  "name",
                  other.name(),
                  "panel",
                  panel.name(),
                  "gap",
                  Rounded.hundredth(apart),
                  "size",
                  size));
          return;
        }
      }
    }
  }

  /** How far apart two cuts are; 0 where they cross. */
  private static double apart(PointMark.Buttonhole one, PointMark.Buttonhole other) {
    Path first = path(one);
    Path second = path(other);
    double least = Double.POSITIVE_INFINITY;
    for (double share : new double[] {0, 0.25, 0.5, 0.75, 1}) {
      least = Math.min(least, first.distance(other.from().towards(other.to(), share)));
      least = Math.min(least, second.distance(one.from().towards(one.to(), share)));
    }
    return least;
  }

  private static Path path(PointMark.Buttonhole hole) {
    return new Path(List.of(new Line(hole.from(), hole.to())));
  }
}
