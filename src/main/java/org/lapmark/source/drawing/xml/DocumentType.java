package org.lapmark.source.drawing.xml;

import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceFile;

/**
 * A document type, as older vector editors write one. It is read only to be passed over: what it
 * names is never fetched, and what it declares counts for nothing. So it is refused where a drawing
 * would mean something else without it: where it declares entities, or gives an attribute a value.
 */
final class DocumentType {
  /** How it begins. */
  static final String START = "<!DOCTYPE";

  private static final String ENTITY = "<!ENTITY";
  private static final String ATTRIBUTES = "<!ATTLIST";

  private final SourceFile file;
  private final String text;
  private int at;

  /**
   * Reads a document type.
   *
   * @param start where it begins in the file
   * @throws FindingException when it isn't harmless
   */
  DocumentType(SourceFile file, int start) {
    this.file = file;
    this.text = file.content();
    this.at = start + START.length();
    boolean inside = false;
    while (true) {
      char c = at < text.length() ? text.charAt(at) : 0;
      if (at >= text.length()) {
        throw fault(file, "unfinished", start, start + START.length());
      } else if (!inside && c == '>') {
        at++;
        return;
      } else if (!inside && c == '[') {
        inside = true;
        at++;
      } else if (inside && c == ']') {
        inside = false;
        at++;
      } else if (c == '"' || c == '\'') {
        quoted();
      } else if (inside && c == '%' || text.startsWith(ENTITY, at)) {
        throw fault(file, "entity", at, c == '%' ? at + 1 : at + ENTITY.length());
      } else if (inside && text.startsWith("<!--", at)) {
        after("-->", at + 4);
      } else if (inside && text.startsWith("<?", at)) {
        after("?>", at + 2);
      } else if (inside && text.startsWith(ATTRIBUTES, at)) {
        attributes();
      } else if (inside
          && (text.startsWith("<!ELEMENT", at) || text.startsWith("<!NOTATION", at))) {
        declaration();
      } else if (inside ? !XmlCursor.isSpace(c) : c == '<') {
        throw fault(file, "other", at, at + 1);
      } else {
        at++;
      }
    }
  }

  /** Where it ends in the file. */
  int end() {
    return at;
  }

  private void quoted() {
    after(String.valueOf(text.charAt(at)), at + 1);
  }

  private void after(String end, int from) {
    int found = text.indexOf(end, from);
    if (found < 0) {
      throw fault(file, "unfinished", at, at + 1);
    }
    at = found + end.length();
  }

  /** Passes over a declaration; what is in quotation marks ends nothing. */
  private void declaration() {
    int start = at;
    while (at < text.length() && text.charAt(at) != '>') {
      char c = text.charAt(at);
      if (c == '%') {
        throw fault(file, "entity", at, at + 1);
      } else if (c == '"' || c == '\'') {
        quoted();
      } else {
        at++;
      }
    }
    if (at >= text.length()) {
      throw fault(file, "unfinished", start, start + 2);
    }
    at++;
  }

  /** A list of attributes: of each its name, its type, and whether it has to be stated. */
  private void attributes() {
    int start = at;
    at += ATTRIBUTES.length();
    word(start); // The element's name.
    while (true) {
      String name = word(start);
      if (name.isEmpty()) {
        at++;
        return;
      }
      int nameEnd = at;
      if (word(start).equals("NOTATION")) {
        word(start);
      }
      String needed = word(start);
      boolean stated = needed.equals("#REQUIRED") || needed.equals("#IMPLIED");
      // Namespaces that aren't declared in the drawing itself are missed there.
      boolean harmless = stated || name.equals("xmlns") || name.startsWith("xmlns:");
      if (!harmless) {
        throw fault(file, "value", nameEnd - name.length(), nameEnd);
      }
      if (needed.equals("#FIXED")) {
        word(start);
      }
    }
  }

  /**
   * The next word, list in brackets or text in quotation marks; empty where the declaration ends.
   */
  private String word(int start) {
    while (at < text.length() && XmlCursor.isSpace(text.charAt(at))) {
      at++;
    }
    if (at >= text.length()) {
      throw fault(file, "unfinished", start, start + ATTRIBUTES.length());
    }
    int from = at;
    char first = text.charAt(at);
    if (first == '"' || first == '\'') {
      quoted();
    } else if (first == '(') {
      after(")", at);
    } else {
      while (at < text.length() && !XmlCursor.isSpace(text.charAt(at)) && text.charAt(at) != '>') {
        if (text.charAt(at) == '%') {
          throw fault(file, "entity", at, at + 1);
        }
        at++;
      }
    }
    return text.substring(from, at);
  }

  /** What is wrong with a document type. */
  static FindingException fault(SourceFile file, String problem, int start, int end) {
    return new FindingException(
        Finding.of(
            XmlCode.XML_DOCTYPE,
            file.position(start, end),
            "problem",
            problem,
            "text",
            file.content().substring(start, Math.min(end, file.content().length()))));
  }
}
