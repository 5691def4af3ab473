package org.lapmark.cli.walk;

import java.util.Locale;
import java.util.stream.Collectors;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.panel.NotchSet;
import org.lapmark.seam.SeamMark;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;

/** What the forms of a walk have in common. */
final class WalkWords {
  private WalkWords() {}

  /** The choices of a variant, as {@code option=choice}; empty without options. */
  static String choices(EvaluatedPattern pattern) {
    return pattern.variant().choices().entrySet().stream()
        .map(choice -> choice.getKey() + "=" + choice.getValue())
        .collect(Collectors.joining(" "));
  }

  static String side(WalkedSeam seam, int side) {
    String name = seam.sides().get(side).name();
    return name.isEmpty() ? Integer.toString(side + 1) : (side + 1) + " " + name;
  }

  static String parts(SeamSide side) {
    return String.join(" + ", side.members());
  }

  /** Where a mark stands and what it is. */
  static String mark(SeamMark mark) {
    String what =
        switch (mark.kind()) {
          case NOTCH -> notch(mark);
          case JOIN -> "join";
          case TAB -> "tab";
          case DART -> "dart or pleat";
          case CORNER -> "corner";
        };
    return what + " " + mark.name();
  }

  private static String notch(SeamMark mark) {
    if (!mark.set().agrees(NotchSet.of(mark.count()))) {
      return "set of " + mark.count() + " notches";
    }
    return switch (mark.count()) {
      case 1 -> "notch";
      case 2 -> "double notch";
      case 3 -> "triple notch";
      default -> mark.count() + " notches";
    };
  }

  static String verdict(boolean agrees) {
    return agrees ? "agrees" : "differs";
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
