package org.lapmark.document.section;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.lapmark.drawing.Drawing;
import org.lapmark.figure.Figure;

/** The drawings of a document as they are asked for, by the names that its markup uses. */
public final class Pictures {
  /** A drawing by name with its size in millimetres, its words and its caption. */
  public record Picture(
      String name, double width, double height, String alternative, String caption) {}

  private final Map<String, Drawing> drawings = new LinkedHashMap<>();

  /** Takes a drawing in under a name that begins so. */
  public Picture add(String stem, Drawing drawing, String alternative, String caption) {
    String name = stem + "-" + (drawings.size() + 1);
    drawings.put(name, drawing);
    return new Picture(name, drawing.width(), drawing.height(), alternative, caption);
  }

  public Picture add(String stem, Figure figure, String caption) {
    return add(stem, figure.drawing(), figure.alternative(), caption);
  }

  public Map<String, Drawing> drawings() {
    return Collections.unmodifiableMap(drawings);
  }
}
