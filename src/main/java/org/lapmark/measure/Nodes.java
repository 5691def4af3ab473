package org.lapmark.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Value.NominalPair;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.Value.StockSizes;
import org.lapmark.measure.Value.Truth;

/** The kinds of a formula's parts. */
final class Nodes {
  private Nodes() {}

  /** A number, a quantity, a pair of stock sizes or pi. */
  record Constant(Value value, int start, int end) implements Node {
    @Override
    public Value value(Evaluation in) {
      return value;
    }

    @Override
    public Optional<String> kind(Kinds kinds) {
      return isZero() ? Optional.empty() : Optional.of(value.kind());
    }

    @Override
    public List<Node> parts() {
      return List.of();
    }

    @Override
    public boolean isPlainNumber() {
      return value.kind().equals(Dimension.PLAIN.word());
    }

    @Override
    public boolean isZero() {
      return value.quantity().map(Quantity::dimension).orElse(null) == Dimension.ZERO;
    }
  }

  /** Something the scope knows. */
  record Name(int start, int end) implements Node {
    @Override
    public Value value(Evaluation in) {
      return Objects.requireNonNull(in.scope().value(in.formula().part(start, end)));
    }

    @Override
    public Optional<String> kind(Kinds kinds) {
      return kinds.ofName(start, end);
    }

    @Override
    public List<Node> parts() {
      return List.of();
    }

    @Override
    public Optional<SourceText> name(SourceText formula) {
      return Optional.of(formula.part(start, end));
    }
  }

  /** A word after a comparison's sign that only a choice can be compared with. */
  record Word(int start, int end) implements Node {
    @Override
    public Value value(Evaluation in) {
      throw in.fault(MeasureCode.FORMULA_NAME, this, "name", in.written(this));
    }

    @Override
    public Optional<String> kind(Kinds kinds) {
      return Optional.empty();
    }

    @Override
    public List<Node> parts() {
      return List.of();
    }

    @Override
    public String choice(SourceText formula) {
      String word = formula.text().substring(start, end);
      return word.startsWith("\"") ? word.substring(1, word.length() - 1) : word;
    }
  }

  /** A sign between two parts. */
  record Binary(Operator operator, Operands sides) implements Node {
    @Override
    public int start() {
      return sides.left().start();
    }

    @Override
    public int end() {
      return sides.right().end();
    }

    @Override
    public Value value(Evaluation in) {
      return operator.operation().value(sides, in);
    }

    @Override
    public Optional<String> kind(Kinds kinds) {
      return operator.operation().kind(sides, kinds);
    }

    @Override
    public List<Node> parts() {
      return List.of(sides.left(), sides.right());
    }

    @Override
    public Optional<Operands> equation() {
      return operator == Operator.EQUAL ? Optional.of(sides) : Optional.empty();
    }
  }

  /** A minus sign before something. */
  record Negation(Node operand, int start) implements Node {
    @Override
    public int end() {
      return operand.end();
    }

    @Override
    public Value value(Evaluation in) {
      Quantity of = in.quantity(operand);
      return new Quantity(-of.amount(), of.dimension());
    }

    @Override
    public Optional<String> kind(Kinds kinds) {
      return operand.kind(kinds);
    }

    @Override
    public List<Node> parts() {
      return List.of(operand);
    }

    @Override
    public Node unsigned() {
      return operand;
    }
  }

  /** {@code not} before something. */
  record Not(Node operand, int start) implements Node {
    @Override
    public int end() {
      return operand.end();
    }

    @Override
    public Value value(Evaluation in) {
      return new Truth(!in.truth(operand));
    }

    @Override
    public Optional<String> kind(Kinds kinds) {
      return Optional.of(Evaluation.TRUTH);
    }

    @Override
    public List<Node> parts() {
      return List.of(operand);
    }
  }

  /** Something in round brackets, kept so that its place includes them. */
  record Bracketed(Node inner, int start, int end) implements Node {
    @Override
    public Value value(Evaluation in) {
      return inner.value(in);
    }

    @Override
    public Optional<String> kind(Kinds kinds) {
      return inner.kind(kinds);
    }

    @Override
    public List<Node> parts() {
      return List.of(inner);
    }

    @Override
    public Node bare() {
      return inner.bare();
    }
  }

  /** A function of values. */
  record Call(Function function, List<Node> arguments, int start, int end) implements Node {
    @Override
    public Value value(Evaluation in) {
      return function.value(this, in);
    }

    @Override
    public Optional<String> kind(Kinds kinds) {
      return function.kind(arguments, kinds);
    }

    @Override
    public List<Node> parts() {
      return arguments;
    }

    Node first() {
      return arguments.get(0);
    }
  }

  /** A function of the pattern's geometry; references are stretches of the formula. */
  record Geometry(int nameEnd, List<Name> references, int start, int end) implements Node {
    @Override
    public Value value(Evaluation in) {
      SourceText formula = in.formula();
      List<SourceText> named =
          references.stream().map(name -> formula.part(name.start(), name.end())).toList();
      return Objects.requireNonNull(in.scope().geometry(formula.part(start, nameEnd), named));
    }

    @Override
    public Optional<String> kind(Kinds kinds) {
      return kinds.ofGeometry(start, nameEnd);
    }

    @Override
    public List<Node> parts() {
      return List.of();
    }
  }

  /** A list of stock sizes. */
  record Stock(List<Node> sizes, int start, int end) implements Node {
    @Override
    public Value value(Evaluation in) {
      List<NominalPair> pairs = new ArrayList<>();
      for (Node size : sizes) {
        if (!(size.value(in) instanceof NominalPair pair)) {
          throw in.fault(MeasureCode.FORMULA_STOCK_ENTRY, size);
        }
        pairs.add(pair);
      }
      return new StockSizes(pairs);
    }

    @Override
    public Optional<String> kind(Kinds kinds) {
      return Optional.of(Evaluation.STOCK);
    }

    @Override
    public List<Node> parts() {
      return sizes;
    }
  }
}
