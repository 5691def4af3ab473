package org.lapmark.document.setting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

class TypesettingTest {
  @Test
  void putsWordsBesideInnerElementsIntoElementsOfTheirOwn() {
    assertEquals(
        "<p><span>Lay </span><em>this</em><span> on </span><a title=\"that\">that</a><span>"
            + " one</span></p>",
        prepared("<p>Lay <em>this</em> on <a href='#x'>that</a> one</p>"));
    assertEquals("<p>Nothing inside.</p>", prepared("<p>Nothing inside.</p>"));
    assertEquals(
        "<p><em>a</em> <em>b</em></p>", prepared("<p><em>a</em> <em>b</em></p>"), "space alone");
    assertEquals(
        "<p><em><span>a </span><strong>b</strong></em></p>",
        prepared("<p><em>a <strong>b</strong></em></p>"));
  }

  @Test
  void keepsClosingMarksInTheLineOfTheirWord() {
    assertEquals("<p><em>a:</em><span> b</span></p>", prepared("<p><em>a</em>: b</p>"));
    assertEquals("<p><em>a’s</em><span> b</span></p>", prepared("<p><em>a</em>’s b</p>"));
    assertEquals(
        "<p><a title=\"a b\"><span>a </span><em>b).</em></a></p>",
        prepared("<p><a href='#x'>a <em>b</em></a>).</p>"),
        "at the end of an end");
  }

  @Test
  void movesNothingElseIntoTheWordBefore() {
    assertEquals("<p><em>a</em><span>b: c</span></p>", prepared("<p><em>a</em>b: c</p>"));
    assertEquals("<p><em>a</em><span> (b)</span></p>", prepared("<p><em>a</em> (b)</p>"));
    assertEquals("<p><span>: b </span><em>a</em></p>", prepared("<p>: b <em>a</em></p>"));
    assertEquals("<p><sup>1</sup><span>. b</span></p>", prepared("<p><sup>1</sup>. b</p>"));
    assertEquals("<p><code>a</code><span>. b</span></p>", prepared("<p><code>a</code>. b</p>"));
    assertEquals(
        "<p><a title=\"page\">page</a><span>. b</span></p>",
        prepared("<p><a href='#page-map'>page</a>. b</p>"),
        "a page’s number follows the word");
  }

  @Test
  void keepsNumbersWithTheirUnits() {
    assertEquals(
        "<p>3 mm, 2½ yd, 5 g/m²</p>"
            .replace(" mm", "\u00a0mm")
            .replace(" yd", "\u00a0yd")
            .replace(" g", "\u00a0g"),
        prepared("<p>3 mm, 2½ yd, 5 g/m²</p>"));
    assertEquals("<p>Cut 2 in canvas, 3 men</p>", prepared("<p>Cut 2 in canvas, 3 men</p>"));
  }

  @Test
  void refusesDocumentTypesAndWhatIsNotWellFormed() {
    assertThrows(
        IllegalStateException.class,
        () -> Typesetting.prepared("<!DOCTYPE p [<!ENTITY a 'b'>]><p>&a;</p>"));
    assertThrows(IllegalStateException.class, () -> Typesetting.prepared("<p>"));
  }

  private static String prepared(String html) {
    Document document = Typesetting.prepared(html);
    StringBuilder out = new StringBuilder();
    write(document.getDocumentElement(), out);
    return out.toString();
  }

  private static void write(Node node, StringBuilder out) {
    if (node instanceof Element element) {
      out.append('<').append(element.getTagName());
      if (element.hasAttribute("title")) {
        out.append(" title=\"").append(element.getAttribute("title")).append('"');
      }
      out.append('>');
      for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
        write(child, out);
      }
      out.append("</").append(element.getTagName()).append('>');
    } else {
      out.append(node.getNodeValue());
    }
  }
}
