package org.lapmark.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.lapmark.finding.SourceText;

/** What is known of the kinds of a formula's names while no part of it is computed. */
interface Kinds {
  /** Nothing is known of names: what shows in the formula as written is all. */
  Kinds WRITTEN =
      new Kinds() {
        @Override
        public Optional<String> ofName(int start, int end) {
          return Optional.empty();
        }

        @Override
        public Optional<String> ofGeometry(int start, int end) {
          return Optional.empty();
        }
      };

  /** The kind of a name, which stands at a stretch of the formula. */
  Optional<String> ofName(int start, int end);

  /** The kind of a geometry function, whose name stands at a stretch of the formula. */
  Optional<String> ofGeometry(int start, int end);

  /**
   * What the names of a formula are known for by a scope.
   *
   * @param formula the formula
   * @param scope what its names stand for
   */
  record InScope(SourceText formula, Scope scope) implements Kinds {
    @Override
    public Optional<String> ofName(int start, int end) {
      return scope.kind(formula.part(start, end));
    }

    @Override
    public Optional<String> ofGeometry(int start, int end) {
      Dimension dimension =
          formula.text().substring(start, end).equals(Function.AREA_OF.written())
              ? Dimension.AREA
              : Dimension.LENGTH;
      return Optional.of(dimension.word());
    }
  }

  /** The first kind that shows among parts that have to be of one kind. */
  default Optional<String> first(List<Node> parts) {
    return parts.stream().flatMap(part -> part.kind(this).stream()).findFirst();
  }

  /** The same of parts one by one. */
  default Optional<String> first(Node... parts) {
    return first(Arrays.asList(parts));
  }
}
