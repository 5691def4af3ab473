package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.KeyTable;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.Laid;
import org.lapmark.figure.workpiece.Marks;
import org.lapmark.figure.workpiece.Measure;
import org.lapmark.figure.workpiece.NameTag;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.Shown;
import org.lapmark.figure.workpiece.Workpiece;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.yaml.YamlNode;

/**
 * A piece or a zip as it lies in a picture.
 *
 * @param piece the piece's number, or null for a zip
 * @param zip the zip's id, or null for a piece
 * @param length the zip's length from stop to stop, or null
 * @param cloth the material's id, or null for the first
 * @param side the side that faces the reader
 * @param reversed whether it is one of those cut with the paper face down
 * @param turn by how many degrees clockwise it is turned: a multiple of 90
 * @param edge the edge along which layers meet, or null
 * @param cropped how much of it is drawn from that edge on, or null for all
 * @param cutAway the side on which a layer is cut away to show those beneath, or null
 * @param turned edges whose allowance is folded away
 * @param shown what else is drawn
 * @param name its name: the author's own; null for the computed one
 * @param named whether it is named at all
 * @param lines stitching and emphasised edges
 * @param labels labels
 * @param dimensions dimensions
 * @param things what lies on it
 * @param clips cuts into its allowance
 * @param around a seam whose other side is shown round it, or null
 */
record View(
    SourceText piece,
    SourceText zip,
    Formula length,
    SourceText cloth,
    Side side,
    boolean reversed,
    int turn,
    SourceText edge,
    Formula cropped,
    Beside cutAway,
    List<SourceText> turned,
    Set<Shown> shown,
    TemplateText name,
    boolean named,
    List<SewnLine> lines,
    List<Label> labels,
    List<Dimension> dimensions,
    List<Thing> things,
    List<Clips> clips,
    Around around) {
  static final KeyTable KEYS =
      KeyTable.of(
          "view",
          "piece",
          "zip",
          "length",
          "cloth",
          "side",
          "reversed",
          "turn",
          "edge",
          "cropped",
          "cut_away",
          "turned",
          "show",
          "name",
          "lines",
          "labels",
          "dimensions",
          "things",
          "clips",
          "around");

  /** What a zip, which has neither edges nor an allowance, can't have. */
  private static final List<String> NEEDS_PIECE =
      List.of("cropped", "turned", "show", "lines", "labels", "things", "clips", "around");

  /** What is looked at of a zip. */
  private static final List<String> BESIDE_ZIP =
      List.of("length", "side", "reversed", "turn", "edge", "cut_away", "name", "dimensions");

  /** What is looked at of a piece. */
  private static final List<String> BESIDE_PIECE =
      KEYS.keys().stream().filter(key -> !List.of("piece", "zip", "length").contains(key)).toList();

  /** A view; null if where everything on it lies depends on something that can't be read. */
  static View read(Keys keys) {
    if (keys.one("piece", "zip").equals("zip")) {
      keys.need("length");
      for (String key : NEEDS_PIECE) {
        if (keys.has(key)) {
          keys.report(
              Faults.of(keys.get(key).position(), FigureCode.FIGURE_NEEDS_PIECE, "name", key),
              "zip");
        }
      }
      keys.idle("zip", List.of("cloth"), BESIDE_ZIP);
    } else {
      keys.idle("piece", List.of("length"), BESIDE_PIECE);
      if (keys.has("cropped")) {
        keys.need("edge");
      }
    }
    String named = keys.get("name") instanceof YamlNode.Text text ? text.text().text() : "yes";
    boolean computed =
        named.equals("no")
            || named.equals("yes")
                && !(keys.get("name") instanceof YamlNode.Items)
                && !(keys.get("name") instanceof YamlNode.Entries);
    View view =
        new View(
            keys.text("piece"),
            keys.text("zip"),
            keys.formula("length"),
            keys.text("cloth"),
            keys.constant("side", Side.class, Side.RIGHT),
            keys.yes("reversed", false),
            keys.turn(),
            keys.text("edge"),
            keys.formula("cropped"),
            keys.has("cut_away") ? keys.constant("cut_away", Beside.class, Beside.LEFT) : null,
            keys.texts("turned"),
            keys.constants("show", Shown.class),
            computed ? null : keys.label("name"),
            !named.equals("no"),
            keys.all("lines", SewnLine.KEYS, SewnLine::read),
            keys.all("labels", Label.KEYS, Label::read),
            keys.all("dimensions", Dimension.KEYS, Dimension::read),
            keys.all("things", Thing.KEYS, Thing::read),
            keys.all("clips", Clips.KEYS, Clips::read),
            keys.child("around", Around.KEYS, Around::read));
    return keys.amiss("piece", "zip", "length", "turn", "edge", "cropped", "cut_away", "turned")
        ? null
        : view;
  }

  boolean isZip() {
    return zip != null;
  }

  /** Whether something lies round its rim, on which lines are drawn. */
  boolean hasBand() {
    return things.stream().anyMatch(Thing::isBand);
  }

  /** The mirror image if it is seen from the side that isn't the paper's. */
  Affine mirror() {
    return side == Side.WRONG != reversed ? Affine.scaling(-1, 1) : Affine.IDENTITY;
  }

  /** From its own coordinates to a picture in which it lies by itself. */
  Affine facing() {
    return Affine.rotation(turn).after(mirror());
  }

  /** The edge along which it meets other layers. */
  SourceText seamEdge() {
    if (edge == null) {
      SourceText what = isZip() ? zip : piece;
      throw Faults.of(what.position(), FigureCode.FIGURE_KEY_MISSING, "name", "edge");
    }
    return edge;
  }

  /**
   * All that is shown on it.
   *
   * @param laid where it lies at the scale that is tried first
   */
  Workpiece stage(Staging staging, Subject subject, Laid laid) {
    List<Overlay> overlays = new ArrayList<>();
    List<Detail> details = new ArrayList<>();
    List<Measure> measures = new ArrayList<>();
    for (Thing thing : things) {
      staging.attempt(() -> thing.stage(staging, subject, laid)).ifPresent(overlays::add);
    }
    for (SewnLine line : lines) {
      staging.attempt(() -> line.stage(staging, subject, laid)).ifPresent(details::add);
    }
    for (Clips one : clips) {
      staging
          .attempt(() -> one.stage(staging, subject, laid))
          .flatMap(cuts -> cuts)
          .ifPresent(details::add);
    }
    if (around != null) {
      staging.attempt(() -> around.stage(staging, subject)).ifPresent(details::add);
    }
    if (named) {
      staging
          .attempt(() -> words(staging, subject))
          .ifPresent(words -> details.add(new NameTag(words, covers(subject, overlays))));
    }
    for (Label label : labels) {
      staging.attempt(() -> label.stage(staging, subject, laid)).ifPresent(details::add);
    }
    for (Dimension dimension : dimensions) {
      staging.attempt(() -> dimension.stage(staging, subject, laid)).ifPresent(measures::add);
    }
    String said =
        isZip()
            ? PieceNames.zip(side, staging)
            : PieceNames.said(subject.piece(), subject.material(), side, staging);
    Marks marks =
        isZip()
            ? Marks.NONE
            : Marks.of(subject.panel(), shown, subject.allowances(), subject.turned());
    return new Workpiece(laid.lying(), said, overlays, marks, details, measures);
  }

  private String words(Staging staging, Subject subject) {
    if (name != null) {
      return staging.text(name);
    }
    return isZip()
        ? PieceNames.zip(side, staging)
        : PieceNames.of(subject.piece(), subject.material(), side, staging);
  }

  private static List<Path> covers(Subject subject, List<Overlay> overlays) {
    List<Path> covers = new ArrayList<>();
    overlays.forEach(overlay -> overlay.cover().ifPresent(covers::add));
    subject.body().flaps().forEach(flap -> covers.add(flap.shape()));
    return covers;
  }

  /** How deep it says to clip. */
  static List<Formula> clipDepths(List<View> views) {
    return views.stream().flatMap(view -> view.clips().stream()).map(Clips::depth).toList();
  }
}
