package org.lapmark.text;

import java.util.ArrayList;
import java.util.List;

/** A part of a text, which may be made of others. */
public sealed interface TextPart permits Block, Inline {
  /**
   * What it is made of.
   *
   * @return the parts in reading order
   */
  List<? extends TextPart> parts();

  /**
   * Every part of one kind, however deep in others.
   *
   * @param kind the kind
   * @param parts where to look
   * @param <T> the kind
   * @return those of that kind in reading order
   */
  static <T extends TextPart> List<T> all(Class<T> kind, List<? extends TextPart> parts) {
    List<T> all = new ArrayList<>();
    gather(kind, parts, all);
    return all;
  }

  private static <T extends TextPart> void gather(
      Class<T> kind, List<? extends TextPart> parts, List<T> all) {
    for (TextPart part : parts) {
      if (kind.isInstance(part)) {
        all.add(kind.cast(part));
      }
      gather(kind, part.parts(), all);
    }
  }
}
