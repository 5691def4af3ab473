package org.lapmark.source.drawing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.finding.Unseen;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.folder.UnseenCharacters;

/**
 * Reads well-formed XML 1.0 with namespaces. A document type is passed over: nothing in it is
 * fetched, and one that could expand anything is refused. Unlike a general parser it knows the
 * place of every character of every attribute. Text between elements is passed over.
 */
public final class XmlParser {
  private static final String XML_NAMESPACE = "http://www.w3.org/XML/1998/namespace";
  private static final String XMLNS_NAMESPACE = "http://www.w3.org/2000/xmlns/";

  private final SourceFile file;
  private final String text;
  private final Limits limits;
  private final Deque<XmlElement> open = new ArrayDeque<>();
  private final Deque<Scope> prefixes = new ArrayDeque<>();
  private int at;
  private int elements;

  private XmlParser(SourceFile file, Limits limits) {
    this.file = file;
    this.text = file.content();
    this.limits = limits;
    Map<String, String> known = new TreeMap<>(Map.of("xml", XML_NAMESPACE));
    known.put("", "");
    prefixes.push(new Scope(null, known));
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

  /**
   * Namespace prefixes; there are no more scopes in each other than elements.
   *
   * @param outer the scope around it, or null
   * @param declared what is declared here
   */
  private record Scope(Scope outer, Map<String, String> declared) {
    String get(String prefix) {
      for (Scope scope = this; scope != null; scope = scope.outer()) {
        if (scope.declared().containsKey(prefix)) {
          return scope.declared().get(prefix);
        }
      }
      return null;
    }
  }

  private XmlElement document() {
    XmlElement root = null;
    boolean typed = false;
    if (text.startsWith("<?xml") && text.length() > 5 && isSpace(text.charAt(5))) {
      declaration();
    }
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c != '<') {
        words(root != null && !open.isEmpty());
      } else if (text.startsWith("<!--", at)) {
        comment();
      } else if (text.startsWith("<?", at)) {
        instruction();
      } else if (text.startsWith(DocumentType.START, at)) {
        if (root != null || typed) {
          throw DocumentType.fault(file, "place", at, at + DocumentType.START.length());
        }
        at = new DocumentType(file, at).end();
        typed = true;
      } else if (text.startsWith("<![CDATA[", at) && !open.isEmpty()) {
        at = after("]]>", at + 9);
      } else if (text.startsWith("</", at)) {
        endTag();
      } else {
        if (root != null && open.isEmpty()) {
          throw fault("second_root", at, at + 1);
        }
        XmlElement element = startTag();
        root = root == null ? element : root;
      }
    }
    if (!open.isEmpty()) {
      XmlElement element = open.peek();
      throw new FindingException(
          Finding.of(
              DrawingCode.XML_SYNTAX,
              element.position(),
              "problem",
              "open",
              "text",
              element.name()));
    }
    if (root == null) {
      throw fault("no_root", 0, 1);
    }
    return root;
  }

  private void declaration() {
    int end = after("?>", 0);
    String inside = text.substring(5, end - 2);
    if (!inside.matches(
        "\\s+version\\s*=\\s*(\"1\\.[0-9]+\"|'1\\.[0-9]+')"
            + "(\\s+encoding\\s*=\\s*(\"[A-Za-z][A-Za-z0-9._-]*\"|'[A-Za-z][A-Za-z0-9._-]*'))?"
            + "(\\s+standalone\\s*=\\s*(\"(yes|no)\"|'(yes|no)'))?\\s*")) {
      throw fault("declaration", 0, end);
    }
    at = end;
  }

  private void words(boolean inside) {
    while (at < text.length() && text.charAt(at) != '<') {
      char c = text.charAt(at);
      if (!inside && !isSpace(c)) {
        throw fault("outside", at, at + 1);
      }
      if (c == '&') {
        entity(text.length());
      } else if (text.startsWith("]]>", at)) {
        throw fault("cdata_end", at, at + 3);
      } else {
        at++;
      }
    }
  }

  private void comment() {
    int end = text.indexOf("--", at + 4);
    if (end < 0) {
      throw fault("unfinished", at, at + 4);
    }
    if (!text.startsWith("-->", end)) {
      throw fault("hyphens", end, end + 2);
    }
    at = end + 3;
  }

  private void instruction() {
    int start = at;
    at += 2;
    String target = name();
    if (target.equalsIgnoreCase("xml") || target.indexOf(':') >= 0) {
      throw fault("instruction", start, at);
    }
    if (!text.startsWith("?>", at) && (at >= text.length() || !isSpace(text.charAt(at)))) {
      throw fault("instruction", start, at);
    }
    at = after("?>", at);
  }

  private int after(String end, int from) {
    int found = text.indexOf(end, from);
    if (found < 0) {
      throw fault("unfinished", at, at + 2);
    }
    return found + end.length();
  }

  private XmlElement startTag() {
    int start = at++;
    String name = name();
    XmlElement element = new XmlElement(file, name, start + 1, at);
    if (++elements > limits.xmlElements()) {
      throw limit(DrawingCode.XML_TOO_LARGE, element, limits.xmlElements());
    }
    if (open.size() >= limits.xmlDepth()) {
      throw limit(DrawingCode.XML_TOO_DEEP, element, limits.xmlDepth());
    }
    boolean empty = attributes(element, start);
    resolve(element);
    if (!open.isEmpty()) {
      open.peek().children().add(element);
    }
    if (empty) {
      prefixes.pop();
    } else {
      open.push(element);
      element.content(at, at);
    }
    return element;
  }

  private static FindingException limit(FindingCode code, XmlElement element, int limit) {
    return new FindingException(
        Finding.of(code, element.position(), "limit", Integer.toString(limit)));
  }

  /** Reads the attributes and the tag's end; tells whether the element ends there too. */
  private boolean attributes(XmlElement element, int start) {
    Map<String, Integer> seen = new LinkedHashMap<>();
    while (true) {
      boolean spaced = skipSpace();
      if (at >= text.length()) {
        throw fault("unfinished", start, start + 1 + element.name().length());
      }
      if (text.charAt(at) == '>') {
        at++;
        return false;
      }
      if (text.startsWith("/>", at)) {
        at += 2;
        return true;
      }
      int nameStart = at;
      if (!spaced) {
        throw fault("space", at, at + 1);
      }
      String name = name();
      int nameEnd = at;
      if (seen.put(name, nameStart) != null) {
        throw fault("attribute_twice", nameStart, nameEnd);
      }
      skipSpace();
      if (at >= text.length() || text.charAt(at) != '=') {
        throw fault("equals", nameStart, nameEnd);
      }
      at++;
      skipSpace();
      element
          .attributes()
          .add(new XmlElement.Attribute(name, file, nameStart, nameEnd, value(nameStart, nameEnd)));
    }
  }

  private SourceText value(int nameStart, int nameEnd) {
    char quote = at < text.length() ? text.charAt(at) : ' ';
    if (quote != '"' && quote != '\'') {
      throw fault("quotes", nameStart, nameEnd);
    }
    at++;
    StringBuilder value = new StringBuilder();
    List<Integer> places = new ArrayList<>();
    int end = text.indexOf(quote, at);
    if (end < 0) {
      throw fault("unfinished", at - 1, at);
    }
    while (at < end) {
      char c = text.charAt(at);
      if (c == '<') {
        throw fault("less_than", at, at + 1);
      }
      int place = at;
      if (c == '&') {
        String replaced = entity(end);
        value.append(replaced);
        for (int i = 0; i < replaced.length(); i++) {
          places.add(place);
        }
      } else {
        value.append(isSpace(c) ? ' ' : c);
        places.add(place);
        at++;
      }
    }
    places.add(end);
    at = end + 1;
    int[] offsets = places.stream().mapToInt(Integer::intValue).toArray();
    return SourceText.mapped(file, value.toString(), offsets);
  }

  private String entity(int limit) {
    int start = at;
    int end = text.indexOf(';', at);
    if (end < 0 || end >= limit || end - start > 12) {
      throw fault("ampersand", start, start + 1);
    }
    String name = text.substring(start + 1, end);
    at = end + 1;
    switch (name) {
      case "lt":
        return "<";
      case "gt":
        return ">";
      case "amp":
        return "&";
      case "quot":
        return "\"";
      case "apos":
        return "'";
      default:
        int point = -1;
        if (name.matches("#[0-9]{1,8}")) {
          point = Integer.parseInt(name.substring(1));
        } else if (name.matches("#x[0-9a-fA-F]{1,7}")) {
          point = Integer.parseInt(name.substring(2), 16);
        }
        if (!isCharacter(point)) {
          throw fault("entity", start, end + 1);
        }
        if (Unseen.of(point).isPresent()) {
          throw new FindingException(
              UnseenCharacters.finding(point, file.position(start, end + 1), 0));
        }
        return Character.toString(point);
    }
  }

  private static boolean isCharacter(int point) {
    return point == '\t'
        || point == '\n'
        || point == '\r'
        || point >= ' ' && point <= 0xd7ff
        || point >= 0xe000 && point <= 0xfffd
        || point >= 0x10000 && point <= 0x10ffff;
  }

  /** Takes in the element's namespace declarations and looks up its prefixes. */
  private void resolve(XmlElement element) {
    Map<String, String> declared = new LinkedHashMap<>();
    for (XmlElement.Attribute attribute : element.attributes()) {
      String name = attribute.name();
      String uri = attribute.value().text();
      if (name.equals("xmlns") || name.startsWith("xmlns:")) {
        String prefix = name.equals("xmlns") ? "" : name.substring(6);
        boolean wrong =
            prefix.equals("xmlns")
                || uri.equals(XMLNS_NAMESPACE)
                || prefix.equals("xml") != uri.equals(XML_NAMESPACE)
                || uri.isEmpty() && !prefix.isEmpty();
        if (wrong) {
          throw namespaceFault(attribute.position(), name);
        }
        declared.put(prefix, uri);
      }
    }
    Scope scope = declared.isEmpty() ? prefixes.peek() : new Scope(prefixes.peek(), declared);
    prefixes.push(scope);
    element.namespace(uri(element.name(), element, scope));
    Map<String, String> expanded = new LinkedHashMap<>();
    for (XmlElement.Attribute attribute : element.attributes()) {
      String name = attribute.name();
      int colon = name.indexOf(':');
      if (colon < 0 || name.startsWith("xmlns:")) {
        continue;
      }
      String uri = scope.get(name.substring(0, colon));
      if (uri == null || uri.isEmpty()) {
        throw namespaceFault(attribute.position(), name);
      }
      if (expanded.put(uri + ' ' + name.substring(colon + 1), name) != null) {
        throw new FindingException(
            Finding.of(
                DrawingCode.XML_SYNTAX,
                attribute.position(),
                "problem",
                "attribute_twice",
                "text",
                name));
      }
    }
  }

  private static String uri(String name, XmlElement element, Scope scope) {
    int colon = name.indexOf(':');
    String uri = scope.get(colon < 0 ? "" : name.substring(0, colon));
    if (uri == null || colon >= 0 && uri.isEmpty()) {
      throw namespaceFault(element.position(), name);
    }
    return uri;
  }

  private static FindingException namespaceFault(Position position, String name) {
    return new FindingException(
        Finding.of(DrawingCode.XML_SYNTAX, position, "problem", "namespace", "text", name));
  }

  private void endTag() {
    int start = at;
    at += 2;
    String name = name();
    skipSpace();
    if (at >= text.length() || text.charAt(at) != '>') {
      throw fault("unfinished", start, at);
    }
    at++;
    if (open.isEmpty() || !open.peek().name().equals(name)) {
      throw fault(open.isEmpty() ? "end_without_start" : "tag_mismatch", start, at);
    }
    XmlElement element = open.pop();
    element.content(element.contentStart(), start);
    prefixes.pop();
  }

  private String name() {
    int start = at;
    int colons = 0;
    while (at < text.length()) {
      int point = text.codePointAt(at);
      boolean first = at == start || text.charAt(at - 1) == ':';
      if (point == ':' && at > start) {
        colons++;
      } else if (!(first ? isNameStart(point) : isNamePart(point))) {
        break;
      }
      at += Character.charCount(point);
    }
    if (at == start || colons > 1 || text.charAt(at - 1) == ':') {
      throw fault("name", start, Math.max(at, start + 1));
    }
    return text.substring(start, at);
  }

  /** As XML 1.0 had it up to its fourth edition, characters of two units left out. */
  private static boolean isNameStart(int c) {
    return c >= 'a' && c <= 'z'
        || c >= 'A' && c <= 'Z'
        || c == '_'
        || c >= 0xc0 && c <= 0x2ff && c != 0xd7 && c != 0xf7
        || c >= 0x370 && c <= 0x1fff && c != 0x37e
        || c == 0x200c
        || c == 0x200d
        || c >= 0x2070 && c <= 0x218f
        || c >= 0x2c00 && c <= 0x2fef
        || c >= 0x3001 && c <= 0xd7ff
        || c >= 0xf900 && c <= 0xfdcf
        || c >= 0xfdf0 && c <= 0xfffd;
  }

  private static boolean isNamePart(int c) {
    return isNameStart(c)
        || c >= '0' && c <= '9'
        || c == '-'
        || c == '.'
        || c == 0xb7
        || c >= 0x300 && c <= 0x36f
        || c == 0x203f
        || c == 0x2040;
  }

  private boolean skipSpace() {
    int start = at;
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
    return at > start;
  }

  static boolean isSpace(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r';
  }

  private FindingException fault(String problem, int start, int end) {
    int to = Math.max(start, Math.min(end, text.length()));
    int from = Math.min(start, text.length());
    return new FindingException(
        Finding.of(
            DrawingCode.XML_SYNTAX,
            file.position(from, to),
            "problem",
            problem,
            "text",
            text.substring(from, Math.min(to, from + 40))));
  }
}
