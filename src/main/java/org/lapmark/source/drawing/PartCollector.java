package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.List;

/** Takes the elements of a shape that is more than one element. */
final class PartCollector {
  /** Whether the elements' own roles count for nothing, since a copy has one. */
  private final boolean copy;

  private final List<DrawnPart> parts = new ArrayList<>();
  private boolean passedOver;

  PartCollector(boolean copy) {
    this.copy = copy;
  }

  /** Whether what is inside has no roles of its own. */
  boolean isCopy() {
    return copy;
  }

  /** The elements, in file order. */
  List<DrawnPart> parts() {
    return parts;
  }

  void add(DrawnPart part) {
    parts.add(part);
  }

  /** Takes note of an element that isn't shown. */
  void passOver() {
    passedOver = true;
  }

  /** Whether an element wasn't shown. */
  boolean hasPassedOver() {
    return passedOver;
  }
}
