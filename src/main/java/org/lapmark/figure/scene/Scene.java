package org.lapmark.figure.scene;

import java.util.List;
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
}
