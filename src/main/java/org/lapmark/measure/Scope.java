package org.lapmark.measure;

import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;

/** What a formula can ask for while it is evaluated. */
public interface Scope {
  /**
   * The value of a name: a measure, or a property written {@code thing.property}.
   *
   * @param name the name as written
   * @return its value
   * @throws org.lapmark.finding.FindingException when there is none, at the name's place
   */
  Value value(SourceText name);

  /**
   * The result of a geometry function ({@code length}, {@code width}, {@code height}, {@code
   * perimeter}, {@code area}, {@code distance}).
   *
   * @param function the function's name as written
   * @param references its arguments: {@code panel}, {@code panel.edge} or {@code panel.corner}
   * @return the result
   * @throws org.lapmark.finding.FindingException when a reference leads nowhere, at its place
   */
  Value geometry(SourceText function, List<SourceText> references);

  /**
   * The {@link Value#kind()} of what a name stands for, without computing it.
   *
   * @param name the name as written
   * @return the kind; nothing where it doesn't show
   */
  default Optional<String> kind(SourceText name) {
    return Optional.empty();
  }

  /**
   * Where a name's value is stated, if that is a number without a unit: there the unit is missing
   * when a use of the name needs one.
   *
   * @param name the name where a formula uses it
   * @return the place of the number; nothing where the name stands for anything else
   */
  default Optional<Position> withoutUnit(SourceText name) {
    return Optional.empty();
  }
}
