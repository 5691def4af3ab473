package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.lapmark.finding.FindingException;
import org.lapmark.geometry.Affine;
import org.lapmark.measure.Formula;

/** One step on the way from a shape's coordinates to those of the drawing. */
sealed interface Placing {
  /** Whether a placeholder couldn't be understood, which has been reported. */
  default boolean isBroken() {
    return false;
  }

  /**
   * The map that it stands for.
   *
   * @param evaluator gives placeholders' numbers
   * @throws FindingException when it can't be understood or computed
   */
  Affine map(Function<Formula, Double> evaluator);

  /** What couldn't be understood, which has been reported. */
  record Broken() implements Placing {
    @Override
    public boolean isBroken() {
      return true;
    }

    @Override
    public Affine map(Function<Formula, Double> evaluator) {
      return Affine.IDENTITY;
    }
  }

  /** What doesn't depend on any placeholder. */
  record Fixed(Affine affine) implements Placing {
    @Override
    public Affine map(Function<Formula, Double> evaluator) {
      return affine;
    }
  }

  /** A transform with placeholders. */
  record Transform(AttributeText text) implements Placing {
    @Override
    public boolean isBroken() {
      return text.isBroken();
    }

    @Override
    public Affine map(Function<Formula, Double> evaluator) {
      return TransformParser.parse(text.resolve(evaluator));
    }
  }

  /** Where a copy is placed, with placeholders; only a computed drawing has one. */
  record Shift(Map<String, AttributeText> attributes) implements Placing {
    @Override
    public boolean isBroken() {
      return attributes.values().stream().anyMatch(AttributeText::isBroken);
    }

    @Override
    public Affine map(Function<Formula, Double> evaluator) {
      SvgNumbers numbers = new SvgNumbers(attributes, evaluator, true, ViewportSize.UNKNOWN);
      return Affine.translation(numbers.get("x"), numbers.get("y"));
    }
  }

  /** A row of placings, outermost first, with one more inside; fixed neighbours become one. */
  static List<Placing> inside(List<Placing> around, Placing next) {
    List<Placing> all = new ArrayList<>(around);
    int last = all.size() - 1;
    if (next instanceof Fixed fixed && last >= 0 && all.get(last) instanceof Fixed before) {
      all.set(last, new Fixed(before.affine().after(fixed.affine())));
    } else {
      all.add(next);
    }
    return List.copyOf(all);
  }
}
