package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Value;
import org.lapmark.measure.print.NumberWords;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.print.piece.EdgeWords;
import org.lapmark.seam.Clipping;
import org.lapmark.seam.Joint;
import org.lapmark.seam.NotchLine;
import org.lapmark.seam.SeamMark;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.wording.Wording;

/**
 * What the page says on which every seam is walked: the value {@code walk} of {@code
 * document/sections/walk.ftlh}. Lengths are in the document's units, metric ones to hundredths of a
 * millimetre; sides are counted from 1.
 *
 * @param size the size's name
 * @param seams the seams in the order stated
 */
public record WalkPages(String size, List<Seam> seams) {
  public WalkPages {
    seams = List.copyOf(seams);
  }

  /** A seam; its allowances ascend. */
  record Seam(
      String name,
      boolean closed,
      boolean agrees,
      String tolerance,
      List<Side> sides,
      List<Tab> tabs,
      List<Notch> notches,
      List<Corner> corners,
      List<String> allowances,
      boolean turnable,
      List<Clip> clips) {}

  /** A side, or a layer basted to the side before. */
  record Side(
      int number,
      boolean layer,
      List<String> parts,
      String length,
      String ease,
      String difference,
      boolean agrees) {}

  /** Something caught in the seam. */
  record Tab(int side, String name, String width, String at) {}

  /** A notch or what it meets. */
  record Place(String at, SeamMark.Kind kind, int count, String line) {}

  /** What lies on each other on side 1 and another. */
  record Notch(
      int side,
      Optional<Place> first,
      Optional<Place> second,
      NotchLine.Verdict verdict,
      String difference) {}

  /** Two corners on one edge. */
  record Corner(int side, String before, String after, String at, double angle, boolean agrees) {}

  /** Where to clip; at a corner by how many degrees it turns, elsewhere 0. */
  record Clip(
      int side,
      String from,
      String to,
      String radius,
      double turn,
      String depth,
      String spacing,
      int count) {}

  /**
   * Gathers what the page says.
   *
   * @param pattern the pattern in one variant
   * @param wording the document's words
   * @return the page's content
   */
  public static WalkPages of(EvaluatedPattern pattern, Wording wording) {
    Names names =
        new Names(
            pattern, wording, pattern.source().masthead().form().with(NumberWords.of(wording)));
    return new WalkPages(
        pattern.variant().size(), pattern.seams().stream().map(seam -> seam(seam, names)).toList());
  }

  private static Seam seam(WalkedSeam seam, Names names) {
    List<Side> sides = new ArrayList<>();
    List<Tab> tabs = new ArrayList<>();
    for (int i = 0; i < seam.sides().size(); i++) {
      SeamSide side = seam.sides().get(i);
      double deviation = seam.deviation(i);
      sides.add(side(i + 1, false, side, deviation, seam.tolerance(), names));
      for (int layer = 0; layer < side.basted().size(); layer++) {
        double apart = seam.layerDeviation(i, layer);
        sides.add(side(i + 1, true, side.basted().get(layer), apart, seam.tolerance(), names));
      }
      for (SeamSide.Tab tab : side.tabs()) {
        tabs.add(
            new Tab(
                i + 1, names.of(tab.name()), names.walked(tab.width()), names.walked(tab.at())));
      }
    }
    return new Seam(
        seam.name().replace('_', ' '),
        seam.closed(),
        seam.agrees(),
        names.printed(seam.tolerance()),
        sides,
        tabs,
        seam.notchLines().stream().map(line -> notch(line, names)).toList(),
        seam.joints().stream().map(joint -> corner(joint, names)).toList(),
        seam.allowances().stream().map(names::printed).toList(),
        seam.isTurnable(),
        seam.clippings().stream().map(clip -> clip(clip, names)).toList());
  }

  private static Side side(
      int number, boolean layer, SeamSide side, double deviation, double tolerance, Names names) {
    return new Side(
        number,
        layer,
        side.members().stream().map(names::of).toList(),
        names.walked(side.length()),
        names.walked(side.ease()),
        names.walked(deviation),
        Math.abs(deviation) <= tolerance);
  }

  private static Notch notch(NotchLine line, Names names) {
    return new Notch(
        line.side() + 1,
        line.first().map(mark -> place(mark, names)),
        line.second().map(mark -> place(mark, names)),
        line.verdict(),
        names.walked(Math.abs(line.difference())));
  }

  private static Place place(SeamMark mark, Names names) {
    return new Place(names.walked(mark.at()), mark.kind(), mark.count(), names.of(mark.name()));
  }

  private static Corner corner(Joint joint, Names names) {
    return new Corner(
        joint.side() + 1,
        names.of(joint.before()),
        names.of(joint.after()),
        names.walked(joint.at()),
        hundredths(joint.angle()),
        joint.isTrue());
  }

  private static Clip clip(Clipping clip, Names names) {
    return new Clip(
        clip.side() + 1,
        names.walked(clip.from()),
        names.walked(clip.to()),
        names.printed(clip.radius()),
        hundredths(clip.turn()),
        names.form.printDepth(clip.depth(), clip.allowance()),
        names.form.printAtMost(clip.spacing()),
        clip.count());
  }

  /** Never -0. */
  private static double hundredths(double value) {
    return Math.round(value * 100) / 100.0 + 0.0;
  }

  /** Parts of seams by the piece that a maker has in hand, and lengths in the document's units. */
  private record Names(EvaluatedPattern pattern, Wording wording, PrintForm form) {
    /** A length as it was walked: metric to hundredths, inches as a ruler has them. */
    String walked(double length) {
      double millimetres = Math.round(length * 100) / 100.0 + 0.0; // never -0
      Optional<String> inches = form.printInches(millimetres);
      return wording.text(
          "walk.length",
          Map.of(
              "order",
              inches.isEmpty() ? "METRIC" : form.units().name(),
              "length",
              millimetres,
              "inches",
              inches.orElse("")));
    }

    String printed(double length) {
      return form.print(Value.Quantity.length(length));
    }

    public String of(String part) {
      int dot = part.indexOf('.');
      Optional<Piece> piece = dot > 0 ? pattern.pieceOf(part.substring(0, dot)) : Optional.empty();
      if (piece.isPresent()) {
        return wording.text(
            "walk.part",
            Map.of(
                "number",
                Integer.toString(piece.get().number()),
                "name",
                piece.get().name(),
                "edge",
                EdgeWords.of(List.of(part.substring(dot + 1)), wording).get(0)));
      }
      // A maker buys the zip, not its trim.
      String owner =
          pattern
              .fastened()
              .trim(part)
              .map(Trim::thing)
              .orElse(dot > 0 ? part.substring(0, dot) : part);
      return pattern.source().hardware().stream()
          .filter(thing -> thing.id().text().equals(owner))
          .map(
              thing ->
                  thing.name().print(pattern.scope(), pattern.variant(), form).stream()
                      .map(said -> said instanceof PrintedValue value ? value.text() : "" + said)
                      .collect(Collectors.joining()))
          .findFirst()
          .orElseGet(() -> part.replace('.', ' ').replace('_', ' '));
    }
  }
}
