package org.lapmark.measure;

import java.util.List;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Token.Kind;

/**
 * The tokens of a formula, taken one after the other, and what to say where one is out of place.
 */
final class Tokens {
  private final SourceText source;
  private final List<Token> tokens;
  private int at;
  private int brackets;

  Tokens(SourceText source) {
    this.source = source;
    this.tokens = Lexer.tokens(source);
  }

  SourceText source() {
    return source;
  }

  String written(int start, int end) {
    return source.text().substring(start, end);
  }

  Token open() {
    brackets++;
    return tokens.get(at++);
  }

  Token close(Token opening, String closing) {
    Token found = next();
    if (!found.is(closing)) {
      if (found.kind() == Kind.END || found.is(")") || found.is("]")) {
        throw fault(
            MeasureCode.FORMULA_BRACKET_UNCLOSED,
            opening.start(),
            opening.end(),
            "opening",
            opening.text(),
            "closing",
            closing);
      }
      throw outOfPlace();
    }
    at++;
    brackets--;
    return found;
  }

  FindingException outOfPlace() {
    Token found = next();
    if (found.is(",") && brackets == 0 && touchesDigits()) {
      return fault(MeasureCode.FORMULA_DECIMAL_COMMA, found.start(), found.end());
    }
    if (brackets == 0 && (found.is(")") || found.is("]"))) {
      return fault(
          MeasureCode.FORMULA_BRACKET_UNOPENED, found.start(), found.end(), "found", found.text());
    }
    return fault(
        MeasureCode.FORMULA_OUT_OF_PLACE, found.start(), found.end(), "found", found.text());
  }

  private boolean touchesDigits() {
    Token comma = next();
    return at > 0
        && tokens.get(at - 1).kind() == Kind.NUMBER
        && tokens.get(at - 1).end() == comma.start()
        && peek(1).kind() == Kind.NUMBER
        && peek(1).start() == comma.end();
  }

  /** Takes a sign if it comes next. */
  boolean skip(String sign) {
    if (next().is(sign)) {
      at++;
      return true;
    }
    return false;
  }

  /** Takes the next one. */
  Token take() {
    return tokens.get(at++);
  }

  /** Goes back to the one before. */
  void back() {
    at--;
  }

  /** The next one. */
  Token next() {
    return tokens.get(at);
  }

  Token peek(int ahead) {
    return tokens.get(Math.min(at + ahead, tokens.size() - 1));
  }

  /** Where the one before ends. */
  int lastEnd() {
    return at == 0 ? 0 : tokens.get(at - 1).end();
  }

  FindingException fault(MeasureCode code, int start, int end, Object... arguments) {
    return new FindingException(Finding.of(code, source.position(start, end), arguments));
  }
}
