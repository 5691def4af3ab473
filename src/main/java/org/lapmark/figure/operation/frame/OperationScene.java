package org.lapmark.figure.operation.frame;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * An operation of the trade, moment by moment.
 *
 * @param moments one to three of them
 */
public record OperationScene(List<Frame> moments) implements Scene {
  private static final double GAP = 8;

  /** Copies the list. */
  public OperationScene {
    moments = List.copyOf(moments);
  }

  @Override
  public List<Titled> frames() {
    return moments.stream()
        .map(
            frame ->
                new Titled(Optional.of(frame.title()).filter(title -> moments.size() > 1), frame))
        .toList();
  }

  /** All beside each other, without what stands under them. */
  @Override
  public void draw(Canvas canvas, double scale) {
    double x = 0;
    for (Frame frame : moments) {
      Canvas one = canvas.another();
      frame.draw(one, scale);
      Box box = one.bounds();
      canvas.add(one, new Point(x - box.minX(), -box.centre().y()));
      x += box.width() + GAP;
    }
  }

  @Override
  public List<String> inWords(Words words) {
    return moments.stream().map(Frame::said).toList();
  }
}
