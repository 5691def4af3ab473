package org.lapmark.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;

/**
 * Text with placeholders: an expression in braces, optionally followed by {@code as} and a form; a
 * backslash before a brace makes it stand for itself. Immutable.
 *
 * <p>Forms are {@code mm}, {@code cm}, {@code m}, {@code in}, {@code ft}, {@code yd}, {@code
 * metric}, {@code inches}, {@code both} and {@code number}, which leaves the unit out. Metric forms
 * but {@code both} take a step in their own unit ({@code as cm 0.5}), inch forms a fraction ({@code
 * as in 1/16}).
 *
 * @param source the text as written
 * @param parts literals and placeholders in order
 */
public record TemplateText(SourceText source, List<Part> parts) {
  /** Copies the list. */
  public TemplateText {
    parts = List.copyOf(parts);
  }

  /** A part of a text. */
  public sealed interface Part {
    /**
     * What is made of it, depending on what it is.
     *
     * @param literal what is made of words
     * @param placeholder what is made of an expression
     * @param <R> what is made
     * @return what was made
     */
    <R> R made(Function<String, R> literal, Function<Placeholder, R> placeholder);
  }

  /**
   * Words that stand for themselves.
   *
   * @param text the words, unescaped
   */
  public record Literal(String text) implements Part {
    @Override
    public <R> R made(Function<String, R> literal, Function<Placeholder, R> placeholder) {
      return literal.apply(text);
    }
  }

  /**
   * An expression to be printed.
   *
   * @param formula the expression
   * @param form what was written after {@code as}, or null
   */
  public record Placeholder(Formula formula, SourceText form) implements Part {
    @Override
    public <R> R made(Function<String, R> literal, Function<Placeholder, R> placeholder) {
      return placeholder.apply(this);
    }

    /**
     * Reads what stands between a pair of braces.
     *
     * @param inside the text between the braces
     * @return the placeholder
     * @throws FindingException at what can't be understood
     */
    public static Placeholder parse(SourceText inside) {
      String text = inside.text();
      int as = as(text);
      SourceText expression = trimmed(inside, 0, as < 0 ? text.length() : as);
      if (expression.text().isEmpty()) {
        throw new FindingException(
            Finding.of(MeasureCode.PLACEHOLDER_EMPTY, inside.position(0, text.length())));
      }
      Formula formula = Formula.parse(expression);
      SourceText form = as < 0 ? null : trimmed(inside, as + 2, text.length());
      Form.parse(form);
      return new Placeholder(formula, form);
    }

    /**
     * Computes and prints it in one variant.
     *
     * @param scope what names stand for
     * @param variant the variant
     * @param document how values are printed where the placeholder doesn't say
     * @return the value with all that it came from
     * @throws FindingException when it can't be computed or printed
     */
    public PrintedValue print(Scope scope, Variant variant, PrintForm document) {
      Value exact = formula.evaluate(scope);
      String printed = new Printer(formula, Form.parse(form), document).print(exact);
      SourceText written = formula.text();
      return new PrintedValue(written.text(), variant, exact, printed, written.position());
    }

    /** Where the word {@code as} begins, or -1. */
    private static int as(String text) {
      for (int at = text.indexOf("as"); at >= 0; at = text.indexOf("as", at + 1)) {
        if (!inWord(text, at - 1) && !inWord(text, at + 2)) {
          return at;
        }
      }
      return -1;
    }

    private static boolean inWord(String text, int at) {
      if (at < 0 || at >= text.length()) {
        return false;
      }
      char c = text.charAt(at);
      return Character.isLetterOrDigit(c) || c == '_' || c == '.';
    }

    private static SourceText trimmed(SourceText text, int from, int to) {
      int start = from;
      int end = to;
      while (start < end && Lexer.isSpace(text.text().charAt(start))) {
        start++;
      }
      while (end > start && Lexer.isSpace(text.text().charAt(end - 1))) {
        end--;
      }
      return text.part(start, end);
    }
  }

  /**
   * Takes a text apart. What is wrong with one placeholder is reported, and the placeholder left
   * out, so that the others are still checked.
   *
   * @param source the text
   * @param findings where problems go
   * @return its parts
   */
  public static TemplateText parse(SourceText source, Findings findings) {
    String text = source.text();
    List<Part> parts = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    int at = 0;
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '\\' && at + 1 < text.length() && isBrace(text.charAt(at + 1))) {
        words.append(text.charAt(at + 1));
        at += 2;
      } else if (c == '{') {
        int end = closing(text, at);
        if (end < 0) {
          findings.add(MeasureCode.PLACEHOLDER_UNCLOSED, source.position(at, at + 1));
          at++;
          continue;
        }
        if (!words.isEmpty()) {
          parts.add(new Literal(words.toString()));
          words.setLength(0);
        }
        try {
          parts.add(placeholder(source, at, end));
        } catch (FindingException e) {
          findings.add(e.finding());
        }
        at = end + 1;
      } else {
        if (c == '}') {
          findings.add(MeasureCode.PLACEHOLDER_UNOPENED, source.position(at, at + 1));
        }
        words.append(c);
        at++;
      }
    }
    if (!words.isEmpty()) {
      parts.add(new Literal(words.toString()));
    }
    return new TemplateText(source, parts);
  }

  private static Placeholder placeholder(SourceText source, int opening, int closing) {
    if (source.text().substring(opening + 1, closing).isBlank()) {
      // The braces themselves are what the author sees.
      throw new FindingException(
          Finding.of(MeasureCode.PLACEHOLDER_EMPTY, source.position(opening, closing + 1)));
    }
    return Placeholder.parse(source.part(opening + 1, closing));
  }

  /**
   * Where a placeholder ends.
   *
   * @param text the text
   * @param opening index of its opening brace
   * @return index of its closing brace, or -1 when another opens first or none follows
   */
  public static int closing(CharSequence text, int opening) {
    for (int at = opening + 1; at < text.length(); at++) {
      if (text.charAt(at) == '}') {
        return at;
      }
      if (text.charAt(at) == '{') {
        return -1;
      }
    }
    return -1;
  }

  private static boolean isBrace(char c) {
    return c == '{' || c == '}';
  }

  /**
   * Prints the text in one variant.
   *
   * @param scope what names stand for
   * @param variant the variant
   * @param form how values are printed where a placeholder doesn't say
   * @return the literal parts as strings and the printed values in between, in order
   * @throws FindingException at the placeholder that can't be computed or printed
   */
  public List<Object> print(Scope scope, Variant variant, PrintForm form) {
    return made(text -> text, placeholder -> placeholder.print(scope, variant, form));
  }

  /**
   * What is made of its parts.
   *
   * @param literal what is made of words
   * @param placeholder what is made of an expression
   * @param <R> what is made
   * @return what was made of each part, in order
   */
  public <R> List<R> made(Function<String, R> literal, Function<Placeholder, R> placeholder) {
    return parts.stream().map(part -> part.made(literal, placeholder)).toList();
  }

  /**
   * Its expressions.
   *
   * @return the placeholders in order
   */
  public List<Placeholder> placeholders() {
    return parts.stream()
        .flatMap(part -> part.made(text -> Stream.<Placeholder>empty(), Stream::of))
        .toList();
  }
}
