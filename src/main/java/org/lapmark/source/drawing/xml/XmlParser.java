package org.lapmark.source.drawing.xml;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.source.folder.Limits;

/**
 * Reads well-formed XML 1.0 with namespaces. A document type is passed over: nothing in it is
 * fetched, and one that could expand anything is refused. Unlike a general parser it knows the
 * place of every character of every attribute. Of words, those of lettering are kept.
 */
public final class XmlParser {
  private final SourceFile file;
  private final Limits limits;
  private final XmlCursor cursor;
  private final XmlNamespaces namespaces = new XmlNamespaces();
  private final Deque<XmlElement> open = new ArrayDeque<>();
  private int elements;

  private XmlParser(SourceFile file, Limits limits) {
    this.file = file;
    this.limits = limits;
    this.cursor = new XmlCursor(file);
  }

  /**
   * Reads a file.
   *
   * @return its root element
   * @throws FindingException at the first place that isn't well-formed, or when a limit is passed
   */
  public static XmlElement read(SourceFile file, Limits limits) {
    return new XmlParser(file, limits).document();
  }

  private XmlElement document() {
    XmlElement root = null;
    boolean typed = false;
    cursor.declaration();
    while (!cursor.isAtEnd()) {
      if (!cursor.sees("<")) {
        SourceText words = cursor.words(root != null && !open.isEmpty());
        if (!open.isEmpty() && open.peek().localName().matches("text|tspan")) {
          open.peek().add(words);
        }
      } else if (cursor.sees("<!--")) {
        cursor.comment();
      } else if (cursor.sees("<?")) {
        cursor.instruction();
      } else if (cursor.sees(DocumentType.START)) {
        if (root != null || typed) {
          int end = cursor.at() + DocumentType.START.length();
          throw DocumentType.fault(file, "place", cursor.at(), end);
        }
        cursor.to(new DocumentType(file, cursor.at()).end());
        typed = true;
      } else if (cursor.sees("<![CDATA[") && !open.isEmpty()) {
        cursor.to(cursor.after("]]>", cursor.at() + 9));
      } else if (cursor.sees("</")) {
        endTag();
      } else {
        if (root != null && open.isEmpty()) {
          throw cursor.fault("second_root", cursor.at(), cursor.at() + 1);
        }
        XmlElement element = startTag();
        root = root == null ? element : root;
      }
    }
    if (!open.isEmpty()) {
      XmlElement element = open.peek();
      throw new FindingException(
          Finding.of(
              XmlCode.XML_SYNTAX, element.position(), "problem", "open", "text", element.name()));
    }
    if (root == null) {
      throw cursor.fault("no_root", 0, 1);
    }
    return root;
  }

  private XmlElement startTag() {
    int start = cursor.at();
    cursor.skip(1);
    String name = cursor.name();
    XmlElement element = new XmlElement(file, name, start + 1, cursor.at());
    if (++elements > limits.xmlElements()) {
      throw limit(XmlCode.XML_TOO_LARGE, element, limits.xmlElements());
    }
    if (open.size() >= limits.xmlDepth()) {
      throw limit(XmlCode.XML_TOO_DEEP, element, limits.xmlDepth());
    }
    boolean empty = attributes(element, start);
    namespaces.open(element);
    if (!open.isEmpty()) {
      open.peek().children().add(element);
    }
    if (empty) {
      namespaces.close();
    } else {
      open.push(element);
      element.content(cursor.at(), cursor.at());
    }
    return element;
  }

  private static FindingException limit(FindingCode code, XmlElement element, int limit) {
    return new FindingException(
        Finding.of(code, element.position(), "limit", Integer.toString(limit)));
  }

  /** Reads the attributes and the tag's end; tells whether the element ends there too. */
  private boolean attributes(XmlElement element, int start) {
    Set<String> seen = new LinkedHashSet<>();
    while (true) {
      boolean spaced = cursor.skipSpace();
      if (cursor.isAtEnd()) {
        throw cursor.fault("unfinished", start, start + 1 + element.name().length());
      }
      if (cursor.sees(">")) {
        cursor.skip(1);
        return false;
      }
      if (cursor.sees("/>")) {
        cursor.skip(2);
        return true;
      }
      int nameStart = cursor.at();
      if (!spaced) {
        throw cursor.fault("space", nameStart, nameStart + 1);
      }
      String name = cursor.name();
      int nameEnd = cursor.at();
      if (!seen.add(name)) {
        throw cursor.fault("attribute_twice", nameStart, nameEnd);
      }
      cursor.skipSpace();
      if (!cursor.sees("=")) {
        throw cursor.fault("equals", nameStart, nameEnd);
      }
      cursor.skip(1);
      cursor.skipSpace();
      SourceText value = cursor.value(nameStart, nameEnd);
      element.attributes().add(new XmlElement.Attribute(name, file, nameStart, nameEnd, value));
    }
  }

  private void endTag() {
    int start = cursor.at();
    cursor.skip(2);
    String name = cursor.name();
    cursor.skipSpace();
    if (!cursor.sees(">")) {
      throw cursor.fault("unfinished", start, cursor.at());
    }
    cursor.skip(1);
    if (open.isEmpty() || !open.peek().name().equals(name)) {
      throw cursor.fault(open.isEmpty() ? "end_without_start" : "tag_mismatch", start, cursor.at());
    }
    XmlElement element = open.pop();
    element.content(element.contentStart(), start);
    namespaces.close();
  }
}
