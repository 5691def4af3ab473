package org.lapmark.measure;

import java.util.List;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;

/**
 * Text with placeholders: an expression in braces, optionally followed by {@code as} and a form; a
 * backslash before a brace makes it stand for itself. Immutable.
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
  public sealed interface Part {}

  /**
   * Words that stand for themselves.
   *
   * @param text the words, unescaped
   */
  public record Literal(String text) implements Part {}

  /**
   * An expression to be printed.
   *
   * @param formula the expression
   * @param form what was written after {@code as}, or null
   */
  public record Placeholder(Formula formula, SourceText form) implements Part {}

  /**
   * Takes a text apart. What is wrong with one placeholder is reported, and the placeholder left
   * out, so that the others are still checked.
   *
   * @param source the text
   * @param findings where problems go
   * @return its parts
   */
  public static TemplateText parse(SourceText source, Findings findings) {
    throw new UnsupportedOperationException();
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
    throw new UnsupportedOperationException();
  }
}
