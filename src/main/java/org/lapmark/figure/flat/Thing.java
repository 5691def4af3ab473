package org.lapmark.figure.flat;

import org.lapmark.figure.read.KeyTable;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Laid;
import org.lapmark.figure.workpiece.Overlay;

/** Something that lies on a piece. */
sealed interface Thing permits PieceThing, BandThing, StripThing {
  KeyTable KEYS =
      KeyTable.of(
          "thing", "piece", "band", "cloth", "side", "width", "length", "edge", "along", "inside",
          "turn", "cropped", "name");

  static Thing read(Keys keys) {
    return switch (keys.one(PieceThing.KEY, BandThing.KEY, StripThing.KEY)) {
      case PieceThing.KEY -> PieceThing.read(keys);
      case BandThing.KEY -> BandThing.read(keys);
      default -> StripThing.read(keys);
    };
  }

  /** Whether it lies round the rim. */
  boolean isBand();

  Overlay stage(Staging staging, Subject on, Laid laid);
}
