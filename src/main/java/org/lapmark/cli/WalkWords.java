package org.lapmark.cli;

import java.util.Locale;
import java.util.stream.Collectors;
import org.lapmark.grade.GradedPattern;
import org.lapmark.seam.SeamMark;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;

/** What the forms of a walk have in common. */
final class WalkWords {
  private WalkWords() {}

  /** The choices of a variant, as {@code option=choice}; empty without options. */
  static String choices(GradedPattern pattern) {
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
          case NOTCH -> mark.count() == 2 ? "double notch" : "notch";
          case JOIN -> "join";
          case TAB -> "tab";
        };
    return what + " " + mark.name();
  }

  static String verdict(boolean agrees) {
    return agrees ? "agrees" : "differs";
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
