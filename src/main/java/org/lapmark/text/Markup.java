package org.lapmark.text;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Pattern;

/**
 * Builds a fragment of XHTML that is well-formed whatever it is given: text and attributes are
 * escaped, characters that XML lacks are left out, elements close in the order they were opened.
 */
public final class Markup {
  private static final Pattern NAME = Pattern.compile("[a-zA-Z][a-zA-Z0-9:_-]*");

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element.
   *
   * @param element its name
   * @param namesAndValues attribute name, value, name, value …; one whose value is null is left out
   * @return this
   * @throws IllegalArgumentException when a name isn't one
   */
  public Markup open(String element, String... namesAndValues) {
    tag(element, namesAndValues);
    out.append('>');
    open.push(element);
    return this;
  }

  /**
   * Writes an element without content.
   *
   * @param element its name
   * @param namesAndValues attribute name, value, name, value …; one whose value is null is left out
   * @return this
   * @throws IllegalArgumentException when a name isn't one
   */
  public Markup empty(String element, String... namesAndValues) {
    tag(element, namesAndValues);
    out.append("/>");
    return this;
  }

  private void tag(String element, String... namesAndValues) {
    out.append('<').append(checked(element));
    for (int i = 0; i < namesAndValues.length; i += 2) {
      if (namesAndValues[i + 1] != null) {
        out.append(' ').append(checked(namesAndValues[i])).append("=\"");
        escape(namesAndValues[i + 1]);
        out.append('"');
      }
    }
  }

  private static String checked(String name) {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("no name: " + name);
    }
    return name;
  }

  /**
   * Closes the element opened last.
   *
   * @return this
   * @throws java.util.NoSuchElementException when none is open
   */
  public Markup close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /**
   * Writes text.
   *
   * @param text the text, unescaped
   * @return this
   */
  public Markup text(String text) {
    escape(text);
    return this;
  }

  /**
   * Writes a fragment made elsewhere, such as a drawing.
   *
   * @param fragment well-formed XML, taken as it is
   * @return this
   */
  public Markup raw(String fragment) {
    out.append(fragment);
    return this;
  }

  /** Ends a line, where that makes no difference to a reader. */
  Markup line() {
    out.append('\n');
    return this;
  }

  private void escape(String text) {
    String plain = Letters.plain(text);
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        default -> out.append(c);
      }
    }
  }

  /**
   * The fragment.
   *
   * @return what was written
   * @throws IllegalStateException while an element is open
   */
  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
    return out.toString();
  }
}
