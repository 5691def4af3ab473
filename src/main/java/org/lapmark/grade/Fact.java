package org.lapmark.grade;

import org.lapmark.source.key.Ref;

/** Something that is stated, from which values are computed. */
sealed interface Fact {
  /**
   * A row of the size table in one size.
   *
   * @param row its name
   * @param size the column
   */
  record Cell(String row, String size) implements Fact {}

  /** The size itself, where something asks which one it is. */
  record Size() implements Fact {}

  /**
   * An option and what is chosen of it.
   *
   * @param option its name
   */
  record Choice(String option) implements Fact {}

  /**
   * What is stated of something, without what it has inside that has an identity of its own: of a
   * panel its shape and the names of its edges, not its notches.
   *
   * @param what its identity
   */
  record Stated(Ref what) implements Fact {}

  /**
   * A property of a material or of hardware.
   *
   * @param thing the thing
   * @param property the property's name
   */
  record Property(Ref thing, String property) implements Fact {}

  /**
   * On what condition something belongs to a variant.
   *
   * @param what its identity
   */
  record Condition(Ref what) implements Fact {}

  /**
   * The drawing of a panel.
   *
   * @param file the file's name
   */
  record Drawing(String file) implements Fact {}
}
