package org.lapmark.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.lapmark.finding.SourceText;

/** A part of a parsed formula, with the stretch of the formula that it was written as. */
public interface Node {
  /** Index of its first unit. */
  int start();

  /** Index behind its last unit. */
  public int end();

  /**
   * What it comes to.
   *
   * @throws org.lapmark.finding.FindingException at the part that can't be computed
   */
  Value value(Evaluation in);

  /**
   * The {@link Value#kind()} that it comes to, as far as that shows without computing it; nothing
   * where it depends on what a name stands for, and the names' kinds aren't known, and of a zero
   * without a unit, which is of any kind that is asked for.
   */
  Optional<String> kind(Kinds kinds);

  /** Whether it is a zero as written, without a unit. */
  default boolean isZero() {
    return false;
  }

  /** The parts that it is made of. */
  List<Node> parts();

  /** The same without the brackets around it. */
  default Node bare() {
    return this;
  }

  /** The same without a minus sign before it. */
  default Node unsigned() {
    return this;
  }

  /** Whether it is a number as written, without a unit. */
  default boolean isPlainNumber() {
    return false;
  }

  /** The name that it is. */
  default Optional<SourceText> name(SourceText formula) {
    return Optional.empty();
  }

  /** The two things that it says are equal, if it does. */
  default Optional<Operands> equation() {
    return Optional.empty();
  }

  /** What a choice is compared with where it is written as this. */
  default String choice(SourceText formula) {
    return formula.text().substring(start(), end());
  }

  /** Every name in it, in their order, without those of geometry functions' references. */
  default void names(SourceText formula, Consumer<SourceText> found) {
    name(formula).ifPresent(found);
    parts().forEach(part -> part.names(formula, found));
  }
}
