package org.lapmark.figure.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.panel.Panel;
import org.lapmark.seam.EaseSpread;
import org.lapmark.seam.NotchMatching;
import org.lapmark.seam.SeamPart;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.SeamSource;

/**
 * Where a trim that is a part of a seam meets a panel on that seam's other side.
 *
 * @param from where on the panel's stitching line it begins
 * @param to where it ends
 */
public record TrimInSeam(Point from, Point to) {
  /**
   * The place of a trim beside a panel, in the first seam that has both.
   *
   * @param trim the trim's name
   * @param panel the panel
   * @throws FindingException when no seam has the trim, once, on a side across from the panel
   */
  public static TrimInSeam of(Staging staging, SourceText trim, Panel panel) {
    Trim known = staging.names().trim(trim);
    for (SeamSource source : staging.pattern().source().seams()) {
      for (int i = 0; i < source.sides().size(); i++) {
        if (names(source.sides().get(i), trim.text())) {
          Optional<TrimInSeam> place = place(staging, source, i, known, panel);
          if (place.isPresent()) {
            return place.get();
          }
        }
      }
    }
    throw Faults.of(
        trim.position(),
        FigureCode.FIGURE_TRIM_ELSEWHERE,
        "name",
        trim.text(),
        "panel",
        panel.name());
  }

  private static boolean names(SeamSource.Side side, String trim) {
    return side.members().stream().anyMatch(member -> member.text().text().equals(trim));
  }

  private static Optional<TrimInSeam> place(
      Staging staging, SeamSource source, int index, Trim trim, Panel panel) {
    Optional<WalkedSeam> walked =
        staging.pattern().seams().stream()
            .filter(one -> one.name().equals(source.name().text()))
            .findFirst();
    if (walked.isEmpty()) {
      return Optional.empty();
    }
    WalkedSeam seam = walked.get();
    SeamSide side = seam.sides().get(index);
    Optional<SeamSide> own =
        seam.sides().stream()
            .filter(one -> one != side)
            .filter(one -> one.parts().stream().anyMatch(part -> isOf(part, panel)))
            .findFirst();
    String called =
        staging.pattern().source().fastenings().trim(trim.name()).orElseThrow().called();
    List<Double> begins = new ArrayList<>();
    double at = 0;
    for (SeamPart part : side.parts()) {
      if (part.panel().isEmpty() && part.name().equals(called)) {
        begins.add(at);
      }
      at += part.length();
    }
    if (own.isEmpty() || begins.size() != 1) {
      return Optional.empty();
    }
    EaseSpread spread =
        new EaseSpread(
            side.length(),
            own.get().length(),
            NotchMatching.of(side, own.get(), seam.closed()).pairs());
    double begin = begins.get(0);
    double end = begin + trim.visibleWidth().orElse(0);
    Optional<Point> from = on(own.get(), panel, spread.of(begin));
    Optional<Point> to = on(own.get(), panel, spread.of(end));
    return from.isPresent() && to.isPresent()
        ? Optional.of(new TrimInSeam(from.get(), to.get()))
        : Optional.empty();
  }

  private static boolean isOf(SeamPart part, Panel panel) {
    return part.panel().equals(panel.name());
  }

  /** The point of a panel at a place of a side; nothing where the side runs along another. */
  private static Optional<Point> on(SeamSide side, Panel panel, double place) {
    double before = 0;
    for (SeamPart part : side.parts()) {
      double within = place - before;
      if (within <= part.length()) {
        return isOf(part, panel)
            ? part.path().map(path -> path.atLength(within))
            : Optional.empty();
      }
      before += part.length();
    }
    return Optional.empty();
  }
}
