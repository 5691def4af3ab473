package org.lapmark.source.drawing.xml;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;

/** The namespaces that prefixes stand for, where elements stand in each other. */
final class XmlNamespaces {
  private static final String XML_NAMESPACE = "http://www.w3.org/XML/1998/namespace";
  private static final String XMLNS_NAMESPACE = "http://www.w3.org/2000/xmlns/";

  private final Deque<Scope> prefixes = new ArrayDeque<>();

  XmlNamespaces() {
    Map<String, String> known = new TreeMap<>(Map.of("xml", XML_NAMESPACE));
    known.put("", "");
    prefixes.push(new Scope(null, known));
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

  /** Takes in the element's namespace declarations and looks up its prefixes. */
  void open(XmlElement element) {
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
                XmlCode.XML_SYNTAX,
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
        Finding.of(XmlCode.XML_SYNTAX, position, "problem", "namespace", "text", name));
  }

  /** Leaves an element. */
  void close() {
    prefixes.pop();
  }
}
