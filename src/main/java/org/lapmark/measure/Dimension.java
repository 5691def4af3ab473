package org.lapmark.measure;

import java.util.Locale;

/** What kind of thing a quantity counts; only like kinds are added. */
public enum Dimension {
  /** A length, held in millimetres. */
  LENGTH,
  /** An area, held in square millimetres. */
  AREA,
  /** An angle, held in degrees. */
  ANGLE,
  /** A number of things: whole, without a unit. */
  COUNT,
  /** A pure number. */
  PLAIN;

  /** A stable word for messages to choose by. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether it has no unit. */
  boolean isNumber() {
    return this == PLAIN || this == COUNT;
  }
}
