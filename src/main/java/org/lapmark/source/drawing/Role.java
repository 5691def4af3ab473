package org.lapmark.source.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.lapmark.finding.Known;

/**
 * What a shape in a drawing stands for, stated by its id; in the order in which marks come to lie
 * on their panel.
 */
public enum Role {
  /** The closed outline. */
  OUTLINE(DrawnForm.OUTLINE),
  /** The line along which the grain runs. */
  GRAINLINE(DrawnForm.LINE),
  /** A named corner. */
  CORNER(DrawnForm.POINT),
  /** A named line where something is placed. */
  PLACEMENT(DrawnForm.LINE),
  /** A named line along which cloth is folded. */
  FOLDLINE(DrawnForm.LINE),
  /** A named line along which the panel may be split. */
  STYLELINE(DrawnForm.LINE),
  /** A named point that is drilled or punched. */
  DRILL(DrawnForm.POINT),
  /** A notch. */
  NOTCH(DrawnForm.NOTCH),
  /** A named buttonhole: the line that is cut. */
  BUTTONHOLE(DrawnForm.LINE),
  /** A named point that meets those of the same name. */
  MATCHPOINT(DrawnForm.POINT),
  /** A named dart: from the outline to its apex and back. */
  DART(DrawnForm.LEGS),
  /** A named line from the outline inwards: the fold of a knife pleat, the middle of another. */
  PLEAT(DrawnForm.LINE),
  /** A named line along which the panel is cut and opened to grade it. */
  SLASH(DrawnForm.LINE);

  private final DrawnForm form;

  Role(DrawnForm form) {
    this.form = form;
  }

  /** How it is drawn. */
  DrawnForm form() {
    return form;
  }

  /** Whether the id goes on with a dot and a name. */
  boolean isNamed() {
    return this != OUTLINE && this != GRAINLINE;
  }

  /** The id's first word. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The id of a shape that has a name, where the role has one. */
  public String id(String name) {
    return isNamed() ? word() + "." + name : word();
  }

  /** The id as messages show it. */
  String pattern() {
    return isNamed() ? word() + ".name" : word();
  }

  /** The ids of all roles, as messages show them. */
  static String listed() {
    return Known.listed(Arrays.stream(values()).map(Role::pattern).toList());
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
