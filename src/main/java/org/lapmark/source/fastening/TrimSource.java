package org.lapmark.source.fastening;

import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Ref;

/**
 * Something by the length, such as a zip, a tape, elastic or piping, that is sewn along edges.
 *
 * @param name its name
 * @param thing the hardware or the material
 * @param along the edges, chains or lines that it is sewn along, end to end
 * @param facing those on its other side; empty where nothing is
 * @param length how long it is, or null for what its edges ask for
 * @param ends how far each of its ends stands in from the ends of its edges, or null
 * @param centred whether it is as long as it is and lies in the middle, {@code ends} being the
 *     least
 * @param overlap how much of it lies over its own beginning, or null
 * @param ease how much longer than its edges it is besides, or null; below zero for what is
 *     stretched
 * @param tolerance how far lengths may be apart, or null for the standard
 * @param visibleWidth how wide it shows between what it is sewn to, or null for what its thing says
 * @param distance how far from its edge it is stitched, or null
 * @param casing how high the casing is that it lies in, or null
 */
public record TrimSource(
    SourceText name,
    SourceText thing,
    List<Stretch> along,
    List<Stretch> facing,
    Formula length,
    Formula ends,
    boolean centred,
    Formula overlap,
    Formula ease,
    Formula tolerance,
    Formula visibleWidth,
    Formula distance,
    Formula casing) {
  /** What a thing says how wide it shows by. */
  public static final String VISIBLE_WIDTH = "visible_width";

  /**
   * A line, or a part of one.
   *
   * @param line {@code panel.edge}
   * @param from where on it the part begins, or null for its beginning
   * @param to where it ends, or null for its end
   */
  public record Stretch(SourceText line, Formula from, Formula to) {}

  /** Copies the lists. */
  public TrimSource {
    along = List.copyOf(along);
    facing = List.copyOf(facing);
  }

  /**
   * How it is called as a part of a seam: by its thing's width, or by its own name where it says
   * itself how wide it shows.
   *
   * @return such as {@code zip.visible_width}
   */
  public String called() {
    return visibleWidth == null ? thing.text() + '.' + VISIBLE_WIDTH : name.text();
  }

  /** Its identity. */
  public Ref ref() {
    return Ref.of(Ref.Kind.TRIM, name.text());
  }
}
