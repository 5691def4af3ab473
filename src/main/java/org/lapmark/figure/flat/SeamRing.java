package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.ClosedLine;
import org.lapmark.panel.Panel;
import org.lapmark.seam.EaseSpread;
import org.lapmark.seam.NotchMatching;
import org.lapmark.seam.SeamCorner;
import org.lapmark.seam.SeamPart;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.ThingSource;

/** What a seam sews to the edges of a panel, part by part, as it is walked. */
final class SeamRing {
  /** Places nearer to each other than this, in millimetres, are the same. */
  private static final double SAME = 1;

  private static final double STEP = 1.5;

  /** A corner is looked at from so near on both sides, in millimetres. */
  private static final double BESIDE = 0.01;

  /** The cosine of an angle that is a corner, and of one that nothing stands off straight. */
  private static final double SMOOTH = 0.97;

  private static final double REVERSED = -0.8;

  private final Staging staging;
  private final Panel panel;
  private final WalkedSeam seam;
  private final SeamSide own;
  private final Position place;

  private SeamRing(Staging staging, Panel panel, WalkedSeam seam, SeamSide own, Position place) {
    this.staging = staging;
    this.panel = panel;
    this.seam = seam;
    this.own = own;
    this.place = place;
  }

  /**
   * A place on the panel's stitching line as drawn.
   *
   * @param point the place
   * @param inwards the direction into the panel; at a corner longer than 1, so that what stands off
   *     it by a distance does so from both its edges
   */
  record Foot(Point point, Point inwards) {}

  /**
   * A part of another side where it lies beside the panel.
   *
   * @param level which of the other sides, from 0
   * @param name what readers call it; empty where it was named before
   * @param length how long it is as it was walked
   * @param isZip whether it is the tape of a zip
   * @param feet where it runs along the panel, in the order of sewing
   */
  record Band(int level, String name, double length, boolean isZip, List<Foot> feet) {
    Band {
      feet = Collections.unmodifiableList(new ArrayList<>(feet)); // Some may be null.
    }
  }

  /**
   * The parts of all other sides.
   *
   * @param around what is asked for
   * @return nothing where the seam couldn't be walked, which was reported
   */
  static List<Band> bands(Staging staging, Panel panel, Around around) {
    return of(staging, panel, around).map(SeamRing::bands).orElse(List.of());
  }

  /**
   * Where the seam starts on the panel, and where it goes from there.
   *
   * @param around what is asked for
   * @return two places; nothing where the seam starts on another panel, or couldn't be walked
   */
  static List<Foot> start(Staging staging, Panel panel, Around around) {
    Optional<SeamRing> ring = of(staging, panel, around);
    if (ring.isEmpty() || ring.get().foot(0) == null || ring.get().foot(STEP) == null) {
      return List.of();
    }
    return List.of(ring.get().foot(0), ring.get().foot(STEP));
  }

  private static Optional<SeamRing> of(Staging staging, Panel panel, Around around) {
    List<String> names =
        staging.pattern().source().seams().stream().map(one -> one.name().text()).toList();
    if (!names.contains(around.seam().text())) {
      throw staging.names().unknown(FigureCode.FIGURE_SEAM_UNKNOWN, around.seam(), names);
    }
    for (WalkedSeam seam : staging.pattern().seams()) {
      if (seam.name().equals(around.seam().text())) {
        for (SeamSide side : seam.sides()) {
          if (side.parts().stream().anyMatch(part -> part.panel().equals(panel.name()))) {
            SeamRing ring = new SeamRing(staging, panel, seam, side, around.seam().position());
            ring.checkStart(around.start());
            return Optional.of(ring);
          }
        }
        throw Faults.of(
            around.seam().position(),
            FigureCode.FIGURE_SEAM_ELSEWHERE,
            "name",
            seam.name(),
            "panel",
            panel.name());
      }
    }
    return Optional.empty();
  }

  /** An edge that is named as the start has to begin where the seam does. */
  private void checkStart(SourceText start) {
    if (start == null) {
      return;
    }
    Point stated = panel.line(staging.names().edges(panel, start).get(0)).start();
    Foot real = foot(0);
    if (real == null || real.point().distance(stated) > SAME) {
      Position position = start.position();
      throw Faults.of(
          position,
          FigureCode.FIGURE_AROUND_START,
          "name",
          seam.name(),
          "edge",
          start.text(),
          "size",
          staging.size());
    }
  }

  private List<Band> bands() {
    List<Band> bands = new ArrayList<>();
    int level = 0;
    for (SeamSide side : seam.sides()) {
      if (side != own) {
        bands(side, level++, bands);
      }
    }
    return bands;
  }

  private void bands(SeamSide side, int level, List<Band> bands) {
    List<SeamPart> parts = side.parts();
    // A part in which a ring starts lies on both sides of the start, and is one.
    boolean cut = parts.size() > side.members().size();
    double at = 0;
    for (int i = 0; i < side.members().size(); i++) {
      SeamPart part = parts.get(i);
      double from = i == 0 && cut ? -parts.get(parts.size() - 1).length() : at;
      at += part.length();
      Band whole = new Band(level, "", at - from, zip(part).isPresent(), feet(side, from, at));
      band(side, part, whole, bands);
    }
  }

  /** Where a stretch of another side runs along the panel; null where it runs along others. */
  private List<Foot> feet(SeamSide side, double from, double to) {
    double whole = side.length();
    EaseSpread spread =
        new EaseSpread(whole, own.length(), NotchMatching.of(side, own, seam.closed()).pairs());
    TreeSet<Double> places = new TreeSet<>();
    int steps = (int) Math.max(8, Math.ceil((to - from) / STEP));
    for (int i = 0; i <= steps; i++) {
      places.add(from + (to - from) * i / steps);
    }
    EaseSpread back =
        new EaseSpread(own.length(), whole, NotchMatching.of(own, side, seam.closed()).pairs());
    for (SeamCorner corner : own.corners(seam.closed())) {
      for (double place : List.of(back.of(corner.at()), back.of(corner.at()) - whole)) {
        if (place - BESIDE > from && place + BESIDE < to) {
          places.add(place - BESIDE);
          places.add(place + BESIDE);
        }
      }
    }
    List<Foot> feet = new ArrayList<>();
    for (double place : places) {
      // A ring's end is its start: from there on, and back from it.
      Foot foot = foot(spread.of(place < 0 ? place + whole : place));
      Foot before = feet.isEmpty() ? null : feet.get(feet.size() - 1);
      if (foot != null && before != null) {
        turn(before, foot).ifPresent(feet::add);
      }
      feet.add(foot);
    }
    return feet;
  }

  /** What stands off a corner lies where the lines that stand off its edges meet. */
  private static Optional<Foot> turn(Foot before, Foot after) {
    double cos = before.inwards().dot(after.inwards());
    boolean sharp =
        before.point().distance(after.point()) <= 3 * BESIDE && cos < SMOOTH && cos > REVERSED;
    return sharp
        ? Optional.of(
            new Foot(before.point(), before.inwards().plus(after.inwards()).times(1 / (1 + cos))))
        : Optional.empty();
  }

  /** Stretches of a part that run along the panel; of those that don't there is no foot. */
  private void band(SeamSide side, SeamPart part, Band whole, List<Band> bands) {
    List<Foot> run = new ArrayList<>();
    boolean named = false;
    for (int i = 0; i <= whole.feet.size(); i++) {
      Foot foot = i < whole.feet.size() ? whole.feet.get(i) : null;
      if (foot != null) {
        run.add(foot);
      } else {
        if (run.size() > 1) {
          String name = named ? "" : name(side, part);
          bands.add(new Band(whole.level, name, whole.length, whole.isZip, run));
          named = true;
        }
        run = new ArrayList<>();
      }
    }
  }

  /** Where a place of the panel's side is on the panel; null where it is on another. */
  private Foot foot(double place) {
    double at = place;
    List<SeamPart> parts = own.parts();
    for (int i = 0; i < parts.size(); i++) {
      SeamPart part = parts.get(i);
      if (at <= part.length() || i == parts.size() - 1) {
        return part.panel().equals(panel.name())
            ? onPanel(part, Math.max(0, Math.min(part.length(), at)))
            : null;
      }
      at -= part.length();
    }
    return null;
  }

  private Foot onPanel(SeamPart part, double within) {
    String line = part.name().substring(part.name().indexOf('.') + 1);
    ClosedLine closed = ClosedLine.of(panel, line);
    Path path = part.path().orElseThrow();
    double begin = closed.path().nearestLength(part.clockwise() ? path.start() : path.end());
    double along = begin + (part.clockwise() ? within : part.length() - within);
    if (closed.path().isClosed() && along > closed.length()) {
      along -= closed.length();
    }
    Path drawn = panel.line(line);
    double open = Math.max(0, Math.min(drawn.length(), closed.open(along)));
    return new Foot(drawn.atLength(open), drawn.tangentAtLength(open).quarterTurn());
  }

  /** What readers call a part; no name of the source's own is ever theirs. */
  private String name(SeamSide side, SeamPart part) {
    Optional<Piece> piece =
        part.panel().isEmpty() ? Optional.empty() : staging.pattern().pieceOf(part.panel());
    if (piece.isPresent()) {
      return PieceNames.plain(piece.get(), staging);
    }
    Optional<ThingSource> thing = thing(part);
    if (thing.isPresent()) {
      return zip(part).isPresent() ? staging.words().word("zip") : staging.text(thing.get().name());
    }
    if (part.panel().isEmpty()) {
      return staging.printed(part.length());
    }
    if (side.name().isEmpty()) {
      throw Faults.of(
          place, FigureCode.FIGURE_AROUND_NAMELESS, "name", seam.name(), "panel", part.panel());
    }
    return side.name();
  }

  /** What of the hardware a part belongs to. */
  private Optional<ThingSource> thing(SeamPart part) {
    int dot = part.name().indexOf('.');
    String owner = dot > 0 ? part.name().substring(0, dot) : part.name();
    return staging.pattern().source().hardware().stream()
        .filter(thing -> thing.id().text().equals(owner))
        .findFirst();
  }

  private Optional<ThingSource> zip(SeamPart part) {
    return thing(part).filter(thing -> thing.properties().containsKey("visible_width"));
  }
}
