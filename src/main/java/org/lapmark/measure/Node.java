package org.lapmark.measure;

import java.util.List;

/** A part of a parsed formula, with the stretch of the formula that it was written as. */
sealed interface Node {
  /** Index of its first unit. */
  int start();

  /** Index behind its last unit. */
  int end();

  /** A number, a quantity, a pair of stock sizes or pi. */
  record Constant(Value value, int start, int end) implements Node {}

  /** Something the scope knows. */
  record Name(int start, int end) implements Node {}

  /** A word after a comparison's sign that only a choice can be compared with. */
  record Word(int start, int end) implements Node {}

  /** A sign between two parts; start and end are the whole, the sign has its own place. */
  record Binary(Operator operator, Node left, Node right, int signStart, int signEnd)
      implements Node {
    @Override
    public int start() {
      return left.start();
    }

    @Override
    public int end() {
      return right.end();
    }
  }

  /** A minus sign before something. */
  record Negation(Node operand, int start) implements Node {
    @Override
    public int end() {
      return operand.end();
    }
  }

  /** {@code not} before something. */
  record Not(Node operand, int start) implements Node {
    @Override
    public int end() {
      return operand.end();
    }
  }

  /** Something in round brackets, kept so that its place includes them. */
  record Bracketed(Node inner, int start, int end) implements Node {}

  /** A function of values. */
  record Call(Function function, List<Node> arguments, int start, int end) implements Node {}

  /** A function of the pattern's geometry; references are stretches of the formula. */
  record Geometry(int nameEnd, List<Name> references, int start, int end) implements Node {}

  /** A list of stock sizes. */
  record Stock(List<Node> sizes, int start, int end) implements Node {}
}
