package org.lapmark.source.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What a shape in a drawing stands for, stated by its id. */
public enum Role {
  /** The closed outline. */
  OUTLINE(false),
  /** The line along which the grain runs. */
  GRAINLINE(false),
  /** A named corner. */
  CORNER(true),
  /** A named line where something is placed. */
  PLACEMENT(true),
  /** A named line along which cloth is folded. */
  FOLDLINE(true),
  /** A named line along which the panel may be split. */
  STYLELINE(true),
  /** A named point that is drilled or punched. */
  DRILL(true),
  /** A notch. */
  NOTCH(true),
  /** A named dart: from the outline to its apex and back. */
  DART(true),
  /** A named line from the outline inwards: the fold of a knife pleat, the middle of another. */
  PLEAT(true),
  /** A named buttonhole: the line that is cut. */
  BUTTONHOLE(true),
  /** A named point that meets those of the same name. */
  MATCHPOINT(true),
  /** A named line along which the panel is cut and opened to grade it. */
  SLASH(true);

  private final boolean named;

  Role(boolean named) {
    this.named = named;
  }

  /** Whether the id goes on with a dot and a name. */
  boolean isNamed() {
    return named;
  }

  /** The id's first word. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The id of a shape that has a name, where the role has one. */
  public String id(String name) {
    return named ? word() + "." + name : word();
  }

  /** The id as messages show it. */
  String pattern() {
    return named ? word() + ".name" : word();
  }

  /** The role with a word, or null. */
  static Role of(String word) {
    return Arrays.stream(values())
        .filter(role -> role.word().equals(word))
        .findFirst()
        .orElse(null);
  }

  static List<String> words() {
    return Arrays.stream(values()).map(Role::word).toList();
  }

  /** The words that a whole id may be taken for; short ones are too near to plain words. */
  static List<String> plainWords() {
    return Arrays.stream(values())
        .filter(role -> role != DART && role != PLEAT)
        .map(Role::word)
        .toList();
  }
}
