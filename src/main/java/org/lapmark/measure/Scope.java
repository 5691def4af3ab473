package org.lapmark.measure;

import java.util.List;
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
}
