package org.lapmark.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The functions of values, with the numbers of arguments they take. */
enum Function {
  IF(3, 3),
  MIN(1, Formula.MAX_ARGUMENTS),
  MAX(1, Formula.MAX_ARGUMENTS),
  ABS(1, 1),
  SQRT(1, 1),
  ROUND(1, 2),
  ROUND_UP(1, 2),
  ROUND_DOWN(1, 2),
  SIN(1, 1),
  COS(1, 1),
  TAN(1, 1),
  ASIN(1, 1),
  ACOS(1, 1),
  ATAN(1, 1),
  LONGEST_UP_TO(2, 2);

  private final int fewest;
  private final int most;

  Function(int fewest, int most) {
    this.fewest = fewest;
    this.most = most;
  }

  int fewest() {
    return fewest;
  }

  int most() {
    return most;
  }

  String written() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The function of a name, or null. */
  static Function of(String name) {
    return Arrays.stream(values())
        .filter(function -> function.written().equals(name))
        .findFirst()
        .orElse(null);
  }

  /** How many references a geometry function takes; 0 when the name is none. */
  static int references(String name) {
    return switch (name) {
      case "length", "width", "height", "perimeter", "area" -> 1;
      case "distance" -> 2;
      default -> 0;
    };
  }

  /** All names that may stand before a bracket. */
  static List<String> names() {
    List<String> names = new ArrayList<>();
    for (Function function : values()) {
      names.add(function.written());
    }
    names.addAll(List.of("length", "width", "height", "perimeter", "area", "distance"));
    return names;
  }
}
