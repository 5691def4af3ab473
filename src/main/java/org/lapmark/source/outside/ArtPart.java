package org.lapmark.source.outside;

import java.util.List;
import java.util.function.UnaryOperator;
import org.lapmark.drawing.Ink;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.print.TemplateText;

/** A part of a line drawing, in millimetres from its top left corner. */
public sealed interface ArtPart {
  /**
   * Paths.
   *
   * @param paths the paths
   * @param ink how they are drawn
   */
  record Lines(List<Path> paths, Ink ink) implements ArtPart {
    /** Copies the list. */
    public Lines {
      paths = List.copyOf(paths);
    }
  }

  /**
   * A line of lettering, set in the documents’ own font.
   *
   * @param text the text, whose placeholders follow the size
   * @param anchor a point on the baseline
   * @param alignment what of the text stands there
   * @param angle how far the baseline is turned, in degrees clockwise
   * @param size the size of type in millimetres
   * @param bold whether it is in the heavier weight
   * @param colour red, green and blue in 24 bits
   */
  record Words(
      TemplateText text,
      Point anchor,
      Item.Alignment alignment,
      double angle,
      double size,
      boolean bold,
      int colour)
      implements ArtPart {
    /** The same with another text. */
    public Words with(UnaryOperator<TemplateText> exchange) {
      return new Words(exchange.apply(text), anchor, alignment, angle, size, bold, colour);
    }
  }
}
