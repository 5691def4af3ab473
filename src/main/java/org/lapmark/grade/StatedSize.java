package org.lapmark.grade;

import java.util.ArrayList;
import java.util.List;

/**
 * The cut size of a rectangle or strip, which can be ruled onto the cloth without paper.
 *
 * @param width millimetres across, allowances included
 * @param height millimetres along the grain, or along a bias strip's length, allowances included
 * @param bias whether it is cut at 45 degrees to the grain
 * @param marks what is to be marked on it, by measurements
 */
public record StatedSize(double width, double height, boolean bias, List<RuledMark> marks) {
  /** Copies the list. */
  public StatedSize {
    marks = List.copyOf(marks);
  }

  /**
   * A size without marks.
   *
   * @param width millimetres across, allowances included
   * @param height millimetres along the grain, or along a bias strip's length
   * @param bias whether it is cut at 45 degrees to the grain
   */
  public StatedSize(double width, double height, boolean bias) {
    this(width, height, bias, List.of());
  }

  /**
   * The distances by which the marks are found.
   *
   * @return millimetres, in the order of the marks
   */
  public List<Double> places() {
    List<Double> places = new ArrayList<>();
    for (RuledMark mark : marks) {
      if (mark instanceof RuledMark.Notches notches) {
        for (RuledMark.Notch notch : notches.notches()) {
          places.add(notch.at());
          notch.set().offsets().forEach(offset -> places.add(notch.at() + offset));
        }
      } else if (mark instanceof RuledMark.Parallel line) {
        places.add(line.at());
        if (!line.whole()) {
          places.add(line.from());
          places.add(line.to());
        }
      } else if (mark instanceof RuledMark.Through line) {
        line.through().forEach(spot -> add(spot, places));
      } else if (mark instanceof RuledMark.Points points) {
        points.spots().forEach(spot -> add(spot, places));
      }
    }
    return places;
  }

  private static void add(RuledMark.Spot spot, List<Double> places) {
    places.add(spot.across());
    places.add(spot.down());
  }
}
