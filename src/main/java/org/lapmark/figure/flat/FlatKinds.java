package org.lapmark.figure.flat;

import java.util.List;
import org.lapmark.figure.stage.PictureKind;

/** The kinds of picture that show pieces and zips flat. */
public final class FlatKinds {
  private FlatKinds() {}

  /**
   * All of them.
   *
   * @return pieces beside each other, and layers on each other
   */
  public static List<PictureKind> all() {
    return List.of(Pieces.KIND, Layers.KIND);
  }
}
