package org.lapmark.figure.scene;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;

/**
 * What one picture shows in one variant, as numbers in millimetres and printed words; scenes that
 * show the same are equal. Drawing evaluates nothing and may be tried at any scale.
 */
public interface Scene {
  /**
   * Draws it.
   *
   * @param canvas an empty canvas; the picture may lie anywhere on it
   * @param scale millimetres on paper for one of cloth
   */
  void draw(Canvas canvas, double scale);

  /**
   * Says what it shows to those who can’t see it.
   *
   * @param words the words of figures
   * @return whole sentences
   */
  List<String> inWords(Words words);

  /** The pictures that it is shown in beside each other, left to right: itself, as a rule. */
  default List<Titled> frames() {
    return List.of(new Titled(Optional.empty(), this));
  }

  /** Whether it may stand above or below others of one figure where that is narrow. */
  default boolean isStackable() {
    return false;
  }

  /** What of it isn’t true to scale, which is said once under a figure; nothing as a rule. */
  default Optional<String> remark() {
    return Optional.empty();
  }

  /**
   * One of the pictures of a scene.
   *
   * @param title what stands under it
   * @param scene what it shows
   */
  record Titled(Optional<String> title, Scene scene) {}
}
