package org.lapmark.document.setting;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Makes a page's markup ready for the renderer. */
final class Typesetting {
  private static final List<String> INLINE =
      List.of("a", "em", "strong", "sup", "code", "span", "b");

  /** What small print and fixed-width letters end with isn't closed in their own letters. */
  private static final List<String> ENDING_IN_A_WORD = List.of("a", "em", "strong", "span", "b");

  /** Where such links lead, a number is added when pages are known. */
  private static final String PAGE_NUMBER = "#page-";

  private static final List<String> APART = List.of("style", "title", "bookmarks");

  /**
   * Between a figure and a unit no line may end; {@code in} is left out, for it is a word as well.
   */
  private static final Pattern BEFORE_UNIT =
      Pattern.compile("(?<=[0-9½¼¾⅛⅜⅝⅞]) (?=(?:mm|cm|m|ft|yd|kg|g|%)(?![\\p{L}\\p{N}]))");

  /** Marks before which no line may end, and the ending of a word such as ’s. */
  private static final Pattern CLOSING =
      Pattern.compile("[.,:;!?…)\\]’”»]+(?:(?<=’)\\p{L}{1,2}(?!\\p{L}))?");

  private Typesetting() {}

  /**
   * Parses markup and prepares it. The renderer draws what stands directly in a line before the
   * line's inner elements, so that text would be extracted in another order than it is read; text
   * beside such elements gets an element of its own. Links get a title, which becomes their
   * description. Numbers stay with their units.
   *
   * @param html well-formed XHTML without a document type
   */
  static Document prepared(String html) {
    Document document = parsed(html);
    prepare(document.getDocumentElement());
    return document;
  }

  /**
   * Parses markup.
   *
   * @throws BrokenMarkup when it isn't well-formed
   */
  static Document parsed(String html) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setExpandEntityReferences(false);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder.parse(new InputSource(new StringReader(html)));
    } catch (ParserConfigurationException | IOException e) {
      throw new IllegalStateException(e);
    } catch (SAXException e) {
      throw new BrokenMarkup(e);
    }
  }

  /** Markup that isn't well-formed. */
  static final class BrokenMarkup extends IllegalStateException {
    private static final long serialVersionUID = 1L;
    private final int line;

    BrokenMarkup(SAXException cause) {
      super(cause.getMessage(), cause);
      this.line = cause instanceof SAXParseException parse ? parse.getLineNumber() : 0;
    }

    /** The line at which that shows, from 1; 0 if it isn't known. */
    int line() {
      return line;
    }
  }

  private static void prepare(Element element) {
    if (APART.contains(element.getTagName())) {
      return;
    }
    List<Node> children = new ArrayList<>();
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      children.add(child);
    }
    boolean mixed =
        children.stream()
            .anyMatch(
                child -> child instanceof Element inner && INLINE.contains(inner.getTagName()));
    for (Node child : children) {
      if (child.getNodeType() == Node.TEXT_NODE) {
        child.setNodeValue(BEFORE_UNIT.matcher(child.getNodeValue()).replaceAll("\u00a0"));
      }
      if (child instanceof Element inner) {
        prepare(inner);
      } else if (mixed
          && child.getNodeType() == Node.TEXT_NODE
          && !child.getNodeValue().isBlank()) {
        close((Text) child);
        if (!child.getNodeValue().isEmpty()) {
          wrap((Text) child);
        }
      }
    }
    if (element.getTagName().equals("a") && !element.hasAttribute("title")) {
      element.setAttribute("title", element.getTextContent().strip());
    }
  }

  /**
   * Moves the marks that close a word into the element that ends with it: between elements the
   * renderer breaks lines without looking on, and would begin one with a full stop.
   */
  private static void close(Text text) {
    Matcher closing = CLOSING.matcher(text.getNodeValue());
    if (text.getPreviousSibling() instanceof Element word
        && ENDING_IN_A_WORD.contains(word.getTagName())
        && !word.getAttribute("href").startsWith(PAGE_NUMBER)
        && word.getLastChild() != null
        && closing.lookingAt()) {
      Node last = word.getLastChild();
      while (last instanceof Element inner
          && ENDING_IN_A_WORD.contains(inner.getTagName())
          && inner.getLastChild() != null) {
        last = inner.getLastChild();
      }
      if (last instanceof Text end && !end.getNodeValue().isBlank()) {
        end.appendData(closing.group());
        text.deleteData(0, closing.end());
      }
    }
  }

  private static void wrap(Text text) {
    Element span = text.getOwnerDocument().createElement("span");
    text.getParentNode().replaceChild(span, text);
    span.appendChild(text);
  }
}
