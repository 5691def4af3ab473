package org.lapmark.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Token.Kind;
import org.lapmark.measure.Value.Quantity;

/** Reads a formula by precedence climbing; stops at the first thing it can't understand. */
final class Parser {
  static final int MAX_LENGTH = 2000;
  static final int MAX_DEPTH = 100;

  private final Tokens tokens;
  private final QuantityReader quantities;
  private int depth;

  private Parser(Tokens tokens) {
    this.tokens = tokens;
    this.quantities = new QuantityReader(tokens);
  }

  public static Node parse(SourceText source) {
    int length = source.text().length();
    if (length > MAX_LENGTH) {
      throw new FindingException(
          Finding.of(
              MeasureCode.FORMULA_TOO_LONG,
              source.position(MAX_LENGTH, length),
              "length",
              length,
              "limit",
              MAX_LENGTH));
    }
    Tokens tokens = new Tokens(source);
    if (tokens.next().kind() == Kind.END) {
      throw new FindingException(Finding.of(MeasureCode.FORMULA_EMPTY, source.position()));
    }
    Node whole = new Parser(tokens).expression(0);
    if (tokens.next().kind() != Kind.END) {
      throw tokens.outOfPlace();
    }
    return whole;
  }

  private Node expression(int binding) {
    enter();
    Node left = operand(binding);
    while (true) {
      Token sign = tokens.next();
      Operator operator = Operator.of(sign);
      if (operator == null || operator.binding() < binding) {
        break;
      }
      tokens.take();
      if (operator.comparison()) {
        checkQuoted(left);
      }
      // A power groups to the right, and its exponent may bear a sign; all else groups to the left.
      Node right =
          expression(
              operator == Operator.POWER ? Operator.NEGATION_BINDING : operator.binding() + 1);
      left = new Nodes.Binary(operator, new Operands(left, right, sign.start(), sign.end()));
    }
    depth--;
    return left;
  }

  /** Reports the name of a size or a choice that reads as a number and a unit, such as 2T. */
  private void checkQuoted(Node left) {
    Token number = tokens.next();
    Token word = tokens.peek(1);
    boolean unknown =
        number.kind() == Kind.NUMBER
            && word.kind() == Kind.NAME
            && !Names.isWord(word.text())
            && Unit.of(word.text()).isEmpty();
    Optional<SourceText> name = left.name(tokens.source());
    if (!unknown || name.isEmpty()) {
      return;
    }
    boolean size = name.get().text().equals("size");
    if (size || QuantityReader.nearestUnit(word.text()).isEmpty()) {
      String written = tokens.written(number.start(), word.end());
      throw tokens.fault(
          MeasureCode.FORMULA_CHOICE_UNQUOTED,
          number.start(),
          word.end(),
          "written",
          written,
          "name",
          name.get().text());
    }
  }

  private Node operand(int binding) {
    Token first = tokens.next();
    if (first.is("-")) {
      tokens.take();
      return new Nodes.Negation(expression(Operator.NEGATION_BINDING), first.start());
    }
    if (first.is("not")) {
      if (binding > Operator.NOT_BINDING) {
        throw tokens.outOfPlace();
      }
      tokens.take();
      return new Nodes.Not(expression(Operator.NOT_BINDING), first.start());
    }
    return primary();
  }

  private Node primary() {
    Token first = tokens.next();
    switch (first.kind()) {
      case NUMBER, FRACTION:
        return quantities.read();
      case NAME:
        if (tokens.peek(1).is("(")) {
          return call();
        }
        if (Names.reserved().contains(first.text()) && !first.text().equals("pi")) {
          throw tokens.outOfPlace();
        }
        tokens.take();
        if (first.text().equals("pi")) {
          return new Nodes.Constant(Quantity.plain(Math.PI), first.start(), first.end());
        }
        return new Nodes.Name(first.start(), first.end());
      case WORD:
        tokens.take();
        return new Nodes.Word(first.start(), first.end());
      case END:
        throw tokens.fault(MeasureCode.FORMULA_UNFINISHED, tokens.lastEnd(), tokens.lastEnd() + 1);
      default:
        if (first.is("(")) {
          return bracketed();
        }
        if (first.is("[")) {
          return stock();
        }
        throw tokens.outOfPlace();
    }
  }

  private Node bracketed() {
    Token opening = tokens.open();
    Node inner = expression(0);
    Token closing = tokens.close(opening, ")");
    return new Nodes.Bracketed(inner, opening.start(), closing.end());
  }

  private Node stock() {
    Token opening = tokens.open();
    List<Node> sizes = new ArrayList<>();
    do {
      if (sizes.size() == Function.MAX_ARGUMENTS) {
        throw tokens.fault(
            MeasureCode.FORMULA_ARGUMENT_COUNT,
            tokens.next().start(),
            tokens.next().end(),
            "function",
            "[ ]",
            "fewest",
            1,
            "most",
            Function.MAX_ARGUMENTS,
            "range",
            "several");
      }
      sizes.add(expression(0));
    } while (tokens.skip(","));
    Token closing = tokens.close(opening, "]");
    return new Nodes.Stock(List.copyOf(sizes), opening.start(), closing.end());
  }

  private Node call() {
    Token name = tokens.next();
    Optional<Function> known = Function.of(name.text());
    if (known.isEmpty()) {
      if (Names.isWord(name.text()) && !name.text().equals("pi")) {
        throw tokens.outOfPlace();
      }
      throw tokens.fault(
          MeasureCode.FORMULA_UNKNOWN_FUNCTION,
          name.start(),
          name.end(),
          "function",
          name.text(),
          "nearest",
          NearestWord.of(name.text(), Function.names()).orElse(""),
          "hasNearest",
          NearestWord.of(name.text(), Function.names()).isPresent() ? "yes" : "no");
    }
    Function function = known.get();
    if (function.ofGeometry()) {
      return geometry(function.most());
    }
    tokens.take();
    Token opening = tokens.open();
    List<Node> arguments = new ArrayList<>();
    if (!tokens.next().is(")")) {
      do {
        arguments.add(expression(0));
        if (arguments.size() > function.most()) {
          break;
        }
      } while (tokens.skip(","));
    }
    int end = arguments.size() > function.most() ? tooManyEnd() : tokens.close(opening, ")").end();
    if (arguments.size() < function.fewest() || arguments.size() > function.most()) {
      throw argumentCount(name, end, function.fewest(), function.most());
    }
    return new Nodes.Call(function, List.copyOf(arguments), name.start(), end);
  }

  private Node geometry(int needed) {
    Token name = tokens.take();
    Token opening = tokens.open();
    List<Nodes.Name> references = new ArrayList<>();
    if (!tokens.next().is(")")) {
      do {
        Token reference = tokens.next();
        if (reference.kind() != Kind.NAME || Names.reserved().contains(reference.text())) {
          int end = Math.max(reference.end(), reference.start() + 1);
          throw tokens.fault(
              MeasureCode.FORMULA_REFERENCE, reference.start(), end, "function", name.text());
        }
        tokens.take();
        if (!tokens.next().is(",") && !tokens.next().is(")") && tokens.next().kind() != Kind.END) {
          throw tokens.fault(
              MeasureCode.FORMULA_REFERENCE,
              reference.start(),
              tokens.next().end(),
              "function",
              name.text());
        }
        references.add(new Nodes.Name(reference.start(), reference.end()));
      } while (references.size() <= needed && tokens.skip(","));
    }
    int end = references.size() > needed ? tooManyEnd() : tokens.close(opening, ")").end();
    if (references.size() != needed) {
      throw argumentCount(name, end, needed, needed);
    }
    return new Nodes.Geometry(name.end(), List.copyOf(references), name.start(), end);
  }

  private int tooManyEnd() {
    return tokens.next().is(")") ? tokens.next().end() : tokens.lastEnd();
  }

  private FindingException argumentCount(Token name, int end, int fewest, int most) {
    return tokens.fault(
        MeasureCode.FORMULA_ARGUMENT_COUNT,
        name.start(),
        end,
        "function",
        name.text(),
        "fewest",
        fewest,
        "most",
        most,
        "range",
        fewest == most ? "one" : "several");
  }

  private void enter() {
    depth++;
    if (depth > MAX_DEPTH) {
      throw tokens.fault(
          MeasureCode.FORMULA_TOO_DEEP,
          tokens.next().start(),
          tokens.next().end(),
          "limit",
          MAX_DEPTH);
    }
  }
}
