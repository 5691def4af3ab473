package org.lapmark.measure;

import static org.lapmark.measure.Dimension.AREA;
import static org.lapmark.measure.Dimension.COUNT;
import static org.lapmark.measure.Dimension.LENGTH;
import static org.lapmark.measure.Dimension.PLAIN;
import static org.lapmark.measure.Dimension.ZERO;

import java.util.Optional;
import org.lapmark.measure.Value.Quantity;

/** What is calculated from two quantities, with the dimensions that it leads to. */
enum Arithmetic implements Operation {
  SUM {
    @Override
    public Quantity of(Operands sides, Quantity left, Quantity right, Evaluation in) {
      return new Quantity(left.amount() + right.amount(), in.common(sides, left, right, "add"));
    }

    @Override
    public Optional<String> kind(Operands sides, Kinds kinds) {
      return kinds.first(sides.left(), sides.right());
    }
  },
  DIFFERENCE {
    @Override
    public Quantity of(Operands sides, Quantity left, Quantity right, Evaluation in) {
      return new Quantity(left.amount() - right.amount(), in.common(sides, left, right, "add"));
    }

    @Override
    public Optional<String> kind(Operands sides, Kinds kinds) {
      return SUM.kind(sides, kinds);
    }
  },
  PRODUCT {
    @Override
    public Quantity of(Operands sides, Quantity left, Quantity right, Evaluation in) {
      return new Quantity(left.amount() * right.amount(), dimension(sides, left, right, in));
    }

    private static Dimension dimension(
        Operands sides, Quantity left, Quantity right, Evaluation in) {
      Dimension a = left.dimension();
      Dimension b = right.dimension();
      if (a == PLAIN || a == ZERO) {
        return b == ZERO ? a : b;
      }
      if (b.isNumber()) {
        return a;
      }
      if (a == COUNT) {
        return b;
      }
      if (a == LENGTH && b == LENGTH) {
        return AREA;
      }
      throw in.noSuchDimension(sides, a, b, "times");
    }

    @Override
    Optional<String> kind(String left, String right) {
      if (Evaluation.isNumber(left)) {
        return Optional.of(right);
      }
      return left.equals(right) && left.equals(LENGTH.word())
          ? Optional.of(AREA.word())
          : Optional.empty();
    }
  },
  QUOTIENT {
    @Override
    public Quantity of(Operands sides, Quantity left, Quantity right, Evaluation in) {
      Dimension a = left.dimension();
      Dimension b = right.dimension();
      Dimension result;
      if (a == ZERO || b == PLAIN || b == ZERO || b == COUNT && a != COUNT) {
        result = a;
      } else if (a == b) {
        result = PLAIN;
      } else if (a == AREA && b == LENGTH) {
        result = LENGTH;
      } else {
        throw in.noSuchDimension(sides, a, b, "over");
      }
      if (right.amount() == 0) {
        throw in.fault(MeasureCode.FORMULA_DIVISION_BY_ZERO, sides.right());
      }
      return new Quantity(left.amount() / right.amount(), result);
    }

    @Override
    Optional<String> kind(String left, String right) {
      return left.equals(right) ? Optional.of(PLAIN.word()) : Optional.empty();
    }
  },
  POWER {
    @Override
    public Quantity of(Operands sides, Quantity base, Quantity exponent, Evaluation in) {
      if (!exponent.dimension().isNumber()) {
        throw in.wrongKind(sides.right(), exponent.kind(), PLAIN.word());
      }
      double power = exponent.amount();
      Dimension result;
      if (base.dimension().isNumber() || Comparison.order(power, 0) == 0) {
        result = PLAIN;
      } else if (Comparison.order(power, 1) == 0) {
        result = base.dimension();
      } else if (base.dimension() == LENGTH && Comparison.order(power, 2) == 0) {
        result = AREA;
      } else if (base.dimension() == AREA && Comparison.order(power, 0.5) == 0) {
        result = LENGTH;
      } else {
        throw in.noSuchDimension(sides, base.dimension(), exponent.dimension(), "power");
      }
      if (base.amount() == 0 && power < 0) {
        throw in.fault(MeasureCode.FORMULA_DIVISION_BY_ZERO, sides.left());
      }
      if (base.amount() < 0 && power != Math.rint(power)) {
        throw in.fault(MeasureCode.FORMULA_NO_VALUE, sides.left(), "function", "^");
      }
      return new Quantity(StrictMath.pow(base.amount(), power), result);
    }

    @Override
    public Optional<String> kind(Operands sides, Kinds kinds) {
      return Optional.empty();
    }
  };

  public abstract Quantity of(Operands sides, Quantity left, Quantity right, Evaluation in);

  /** The kind that two kinds lead to, the second of which isn't a bare number. */
  Optional<String> kind(String left, String right) {
    return Optional.empty();
  }

  @Override
  public Optional<String> kind(Operands sides, Kinds kinds) {
    Optional<String> left = sides.left().kind(kinds);
    Optional<String> right = sides.right().kind(kinds);
    if (left.isEmpty() || right.isEmpty() || Evaluation.isNumber(right.get())) {
      return right.flatMap(known -> left);
    }
    return kind(left.get(), right.get());
  }

  @Override
  public Value value(Operands sides, Evaluation in) {
    Value left = sides.left().value(in);
    Value right = sides.right().value(in);
    Quantity result =
        of(sides, in.quantity(left, sides.left()), in.quantity(right, sides.right()), in);
    if (!Double.isFinite(result.amount())) {
      throw in.fault(MeasureCode.FORMULA_TOO_LARGE, sides.left().start(), sides.right().end());
    }
    return result;
  }
}
