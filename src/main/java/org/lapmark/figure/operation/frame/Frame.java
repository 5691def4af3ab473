package org.lapmark.figure.operation.frame;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;

/**
 * One moment of an operation.
 *
 * @param title what stands under it where there are several
 * @param shown what is drawn
 * @param said what it shows, in whole sentences
 * @param remark what of it isn’t true to scale
 */
public record Frame(String title, Scene shown, String said, Optional<String> remark)
    implements Scene {
  /** The same with one more sentence. */
  public Frame with(String sentence) {
    return new Frame(title, shown, said + ' ' + sentence, remark);
  }

  /** The same with a further remark, on a line of its own. */
  public Frame remarked(String further) {
    return new Frame(
        title, shown, said, Optional.of(remark.map(one -> one + '\n' + further).orElse(further)));
  }

  @Override
  public void draw(Canvas canvas, double scale) {
    shown.draw(canvas, scale);
  }

  @Override
  public boolean isStackable() {
    return true;
  }

  @Override
  public List<String> inWords(Words words) {
    return List.of(said);
  }
}
