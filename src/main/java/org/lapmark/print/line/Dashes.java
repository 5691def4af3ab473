package org.lapmark.print.line;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.Style;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

/**
 * The part of a line that a tile shows. A dashed line that runs on beyond the tile is cut into its
 * dashes first, so that they go on from tile to tile; each is no longer than the pattern's first
 * dash, so that drawing it with the same pattern doesn't break it again.
 */
public final class Dashes {
  private Dashes() {}

  public static List<Path> inside(Path path, Style style, Box shown) {
    if (style.dash().isEmpty() || shown.contains(path.bounds()) || !longestFirst(style)) {
      return CurveClip.inside(path, shown);
    }
    List<Path> parts = new ArrayList<>();
    double length = path.length();
    double at = 0;
    for (int i = 0; at < length; i++) {
      double next = Math.min(length, at + style.dash().get(i % style.dash().size()));
      if (i % 2 == 0 && next - at > 1e-6) {
        Path dash = path.part(at, next);
        if (shown.overlaps(dash.bounds().expanded(1e-6))) {
          parts.addAll(CurveClip.inside(dash, shown));
        }
      }
      at = next;
    }
    return parts;
  }

  private static boolean longestFirst(Style style) {
    return style.dash().size() % 2 == 0
        && style.dash().stream().allMatch(part -> part > 0 && part <= style.dash().get(0));
  }
}
