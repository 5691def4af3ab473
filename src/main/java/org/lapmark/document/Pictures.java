package org.lapmark.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.lapmark.drawing.Drawing;
import org.lapmark.figure.Figure;

/** The drawings of a document as they are asked for, by the names that its markup uses. */
final class Pictures {
  private final Map<String, Drawing> drawings = new LinkedHashMap<>();

  /** Takes a drawing in under a name that begins so. */
  ManualPages.Picture add(String stem, Drawing drawing, String alternative, String caption) {
    String name = stem + "-" + (drawings.size() + 1);
    drawings.put(name, drawing);
    return new ManualPages.Picture(name, drawing.width(), drawing.height(), alternative, caption);
  }

  ManualPages.Picture add(String stem, Figure figure, String caption) {
    return add(stem, figure.drawing(), figure.alternative(), caption);
  }

  Map<String, Drawing> drawings() {
    return Collections.unmodifiableMap(drawings);
  }
}
