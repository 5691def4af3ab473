package org.lapmark.figure.operation.strips;

import java.util.Optional;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.frame.Material;

/** A cord as it is shown. */
final class Cord {
  private Cord() {}

  static Material of(Bench bench) {
    String name = bench.label("cord");
    return new Material(Optional.of(Texture.INTERFACING), name, name);
  }
}
