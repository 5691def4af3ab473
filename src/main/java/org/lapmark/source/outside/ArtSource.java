package org.lapmark.source.outside;

import java.util.List;
import java.util.function.UnaryOperator;
import org.lapmark.finding.Position;
import org.lapmark.measure.print.TemplateText;

/** A picture of the folder {@code art} as read. */
public sealed interface ArtSource {
  /** The same with other texts. */
  default ArtSource with(UnaryOperator<TemplateText> exchange) {
    return this;
  }

  /** Its texts. */
  default List<TemplateText> texts() {
    return List.of();
  }

  /** One that nothing shows, and that isn't read. */
  record Unshown() implements ArtSource {}

  /** One that can't be shown, which was reported. */
  record Broken() implements ArtSource {}

  /**
   * A photograph, whose beginning has been looked at: kind and size are right, the picture itself
   * isn't decoded.
   *
   * @param file its bytes
   * @param width in pixels, as stored
   * @param height in pixels, as stored
   * @param turn how it is to be turned, 1 to 8 as Exif has it
   * @param place the file
   */
  record Photo(Bytes file, int width, int height, int turn, Position place) implements ArtSource {
    /** Pixels from left to right, once it is turned. */
    public int across() {
      return turn > 4 ? height : width;
    }

    /** Pixels from top to bottom, once it is turned. */
    public int down() {
      return turn > 4 ? width : height;
    }
  }

  /**
   * A line drawing.
   *
   * @param width in millimetres, as drawn
   * @param height in millimetres, as drawn
   * @param parts from the bottom up
   */
  record LineArt(double width, double height, List<ArtPart> parts) implements ArtSource {
    /** Copies the list. */
    public LineArt {
      parts = List.copyOf(parts);
    }

    @Override
    public LineArt with(UnaryOperator<TemplateText> exchange) {
      return new LineArt(
          width,
          height,
          parts.stream()
              .map(part -> part instanceof ArtPart.Words words ? words.with(exchange) : part)
              .toList());
    }

    @Override
    public List<TemplateText> texts() {
      return parts.stream()
          .filter(ArtPart.Words.class::isInstance)
          .map(part -> ((ArtPart.Words) part).text())
          .toList();
    }
  }
}
