package org.lapmark.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;

/** Takes a formula apart into words, numbers and signs. */
public final class Lexer {
  private final SourceText source;
  private final String text;
  private final List<Token> tokens = new ArrayList<>();
  private int at;

  private Lexer(SourceText source) {
    this.source = source;
    this.text = source.text();
  }

  static List<Token> tokens(SourceText source) {
    Lexer lexer = new Lexer(source);
    while (lexer.at < lexer.text.length()) {
      lexer.next();
    }
    int end = lexer.text.length();
    lexer.tokens.add(new Token(Token.Kind.END, "", end, end));
    return lexer.tokens;
  }

  private void next() {
    char c = text.charAt(at);
    if (isSpace(c)) {
      at++;
    } else if (isDigit(c)) {
      number();
    } else if (Fractions.isSign(c)) {
      take(Token.Kind.FRACTION, at + 1);
    } else if (Character.isLetter(text.codePointAt(at)) && c != 'π') {
      name();
    } else {
      sign(c);
    }
  }

  private void number() {
    int end = digits(at);
    if (end + 1 < text.length() && text.charAt(end) == '.' && isDigit(text.charAt(end + 1))) {
      end = digits(end + 1);
    }
    take(Token.Kind.NUMBER, end);
  }

  private int digits(int from) {
    int end = from;
    while (end < text.length() && isDigit(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private void name() {
    int end = at;
    while (end < text.length()) {
      int point = text.codePointAt(end);
      if (!Character.isLetterOrDigit(point) && point != '_' && point != '.') {
        break;
      }
      end += Character.charCount(point);
    }
    if (!Names.isWellFormed(text.substring(at, end))) {
      if (afterComparison()) {
        take(Token.Kind.WORD, end);
        return;
      }
      String word = text.substring(at, end);
      Optional<FindingException> unquoted = unquoted(end);
      throw unquoted.isPresent()
          ? unquoted.get()
          : fault(MeasureCode.FORMULA_NAME, at, end, "name", word);
    }
    take(Token.Kind.NAME, end);
  }

  /** The fault of a choice's name that begins with a digit, such as 2T, and has capitals. */
  private Optional<FindingException> unquoted(int end) {
    int last = tokens.size() - 1;
    if (last < 2 || tokens.get(last).kind() != Token.Kind.NUMBER) {
      return Optional.empty();
    }
    Operator operator = Operator.of(tokens.get(last - 1));
    Token left = tokens.get(last - 2);
    boolean unit = Unit.of(text.substring(at, end).toLowerCase(Locale.ROOT)).isPresent();
    if (operator == null
        || !operator.comparison()
        || left.kind() != Token.Kind.NAME
        || unit && !left.is("size")) {
      return Optional.empty();
    }
    int start = tokens.get(last).start();
    return Optional.of(
        fault(
            MeasureCode.FORMULA_CHOICE_UNQUOTED,
            start,
            end,
            "written",
            text.substring(start, end),
            "name",
            left.text()));
  }

  /** Whether a choice's name may stand here. */
  private boolean afterComparison() {
    if (tokens.isEmpty()) {
      return false;
    }
    Operator operator = Operator.of(tokens.get(tokens.size() - 1));
    return operator != null && operator.comparison();
  }

  private void sign(char c) {
    int closing = c == '"' && afterComparison() ? text.indexOf('"', at + 1) : -1;
    if (closing > at + 1) {
      take(Token.Kind.WORD, closing + 1);
      return;
    }
    String two = text.substring(at, Math.min(at + 2, text.length()));
    if (two.equals("<=") || two.equals(">=") || two.equals("!=")) {
      take(Token.Kind.SIGN, at + 2);
    } else if ("+-*/^<>=()[],°".indexOf(c) >= 0) {
      take(Token.Kind.SIGN, at + 1);
    } else if (c == '\u2212') {
      // The minus sign proper, as printed forms have it.
      tokens.add(new Token(Token.Kind.SIGN, "-", at, at + 1));
      at++;
    } else {
      int end = at + Character.charCount(text.codePointAt(at));
      String found = text.substring(at, end);
      String written = otherSign(found);
      if (written == null) {
        throw fault(MeasureCode.FORMULA_UNEXPECTED_CHARACTER, at, end, "found", visible(found));
      }
      throw fault(MeasureCode.FORMULA_OTHER_SIGN, at, end, "found", found, "written", written);
    }
  }

  private void take(Token.Kind kind, int end) {
    tokens.add(new Token(kind, text.substring(at, end), at, end));
    at = end;
  }

  private FindingException fault(MeasureCode code, int start, int end, Object... arguments) {
    return new FindingException(Finding.of(code, source.position(start, end), arguments));
  }

  /** A character that can't be seen is named by its number. */
  private static String visible(String found) {
    int point = found.codePointAt(0);
    int type = Character.getType(point);
    boolean hidden =
        Character.isISOControl(point)
            || Character.isWhitespace(point)
            || type == Character.FORMAT
            || type == Character.SURROGATE
            || type == Character.UNASSIGNED
            || type == Character.PRIVATE_USE;
    return hidden ? String.format("U+%04X", point) : found;
  }

  public static boolean isSpace(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r' || c == '\u00a0' || c == '\u202f';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** What is written here for a sign of another notation, or null. */
  private static String otherSign(String found) {
    return switch (found) {
      case "×", "·" -> "*";
      case "÷", ":" -> "/";
      case "–" -> "-";
      case "≤" -> "<=";
      case "≥" -> ">=";
      case "≠" -> "!=";
      case "π" -> "pi";
      case "√" -> "sqrt( )";
      case "²" -> "^ 2";
      case "\"", "″" -> "in";
      case "'", "′" -> "ft";
      case "&" -> "and";
      case "|" -> "or";
      case "!" -> "not";
      case "%" -> "/ 100";
      case ";" -> ",";
      default -> null;
    };
  }
}
