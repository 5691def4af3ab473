package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.pose.Pins;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.Holders;
import org.lapmark.figure.workpiece.Measure;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.source.key.Key;

/**
 * What lies on a piece and is done to it.
 *
 * @param lines stitching and emphasised edges
 * @param tacks boxes and bars of stitches
 * @param labels labels
 * @param dimensions dimensions
 * @param things what lies on it
 * @param clips cuts into its allowance
 * @param pins what holds it for a while
 * @param around a seam whose other side is shown round it, or null
 */
record Work(
    List<SewnLine> lines,
    List<Tack> tacks,
    List<Label> labels,
    List<Dimension> dimensions,
    List<Thing> things,
    List<Clips> clips,
    List<Pins> pins,
    Around around) {
  private static final Key<Entries<SewnLine>> LINES = Key.of("lines", SewnLine.LIST);
  private static final Key<Entries<Tack>> TACKS = Key.of("tacks", Tack.LIST);
  private static final Key<Entries<Label>> LABELS = Key.of("labels", Label.LIST);
  static final Key<Entries<Dimension>> DIMENSIONS = Key.of("dimensions", Dimension.LIST);
  private static final Key<Entries<Thing>> THINGS = Key.of("things", Thing.LIST);
  private static final Key<Entries<Clips>> CLIPS = Key.of("clips", Clips.LIST);
  private static final Key<Entries<Pins>> PINS = Key.of("pins", Pins.LIST);
  private static final Key<Around> AROUND = Key.of("around", Around.FORM);

  static final List<Key<?>> KEYS =
      List.of(LINES, TACKS, LABELS, DIMENSIONS, THINGS, CLIPS, PINS, AROUND);

  /** What a zip can't have. */
  static final List<Key<?>> NEEDS_PIECE =
      KEYS.stream().<Key<?>>filter(key -> key != DIMENSIONS).toList();

  /** Nothing. */
  static final Work NONE = of(List.of());

  static Work of(List<SewnLine> lines) {
    return new Work(lines, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), null);
  }

  static Work read(Keys keys) {
    return new Work(
        keys.all(LINES),
        keys.all(TACKS),
        keys.all(LABELS),
        keys.all(DIMENSIONS),
        keys.all(THINGS),
        keys.all(CLIPS),
        keys.all(PINS),
        keys.get(AROUND));
  }

  /** What is left of it after the steps that do it: no words, and pins and clips are taken out. */
  Work done() {
    return new Work(
        lines.stream().map(SewnLine::done).toList(),
        tacks.stream().map(Tack::done).toList(),
        List.of(),
        List.of(),
        things,
        clips.stream().map(Clips::done).toList(),
        List.of(),
        null);
  }

  /** What shows of it when the piece is turned over. */
  Work turnedOver() {
    List<Thing> over = things.stream().map(Thing::turnedOver).flatMap(Optional::stream).toList();
    return new Work(lines, tacks, labels, dimensions, over, clips, pins, around);
  }

  List<Overlay> overlays(Staging staging, Subject subject, PlacedBody laid) {
    List<Overlay> overlays = new ArrayList<>();
    for (Thing thing : things) {
      staging.attempt(() -> thing.stage(staging, subject, laid)).ifPresent(overlays::add);
    }
    return overlays;
  }

  /** What is done to it. */
  void stage(
      Staging staging,
      Subject subject,
      PlacedBody laid,
      List<Detail> details,
      List<Measure> measures) {
    for (SewnLine line : lines) {
      staging
          .attempt(() -> line.stage(staging, subject, laid))
          .ifPresent(
              staged -> {
                details.add(staged.detail());
                measures.addAll(staged.gaps());
              });
    }
    for (Tack tack : tacks) {
      staging.attempt(() -> tack.stage(staging, subject, laid)).ifPresent(details::add);
    }
    for (Clips one : clips) {
      staging
          .attempt(() -> one.stage(staging, subject, laid))
          .flatMap(cuts -> cuts)
          .ifPresent(details::add);
    }
    for (Pins one : pins) {
      staging.attempt(() -> held(one, staging, subject, laid)).ifPresent(details::add);
    }
    if (around != null) {
      staging.attempt(() -> around.stage(staging, subject)).ifPresent(details::add);
    }
  }

  private static Detail held(Pins pins, Staging staging, Subject subject, PlacedBody laid) {
    Holders held = pins.stage(staging, subject.panel(), subject.allowances());
    subject.checkSeen(laid, pins.edge().position(), held.places(laid));
    return held;
  }

  /** What is said of it in the picture. */
  void stageWords(
      Staging staging,
      Subject subject,
      PlacedBody laid,
      List<Detail> details,
      List<Measure> measures) {
    for (Label label : labels) {
      staging.attempt(() -> label.stage(staging, subject, laid)).ifPresent(details::add);
    }
    for (Dimension dimension : dimensions) {
      staging.attempt(() -> dimension.stage(staging, subject, laid)).ifPresent(measures::add);
    }
  }
}
