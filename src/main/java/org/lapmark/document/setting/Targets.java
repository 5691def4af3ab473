package org.lapmark.document.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * What the renderer finds amiss only while it draws: links and bookmarks that lead nowhere, and
 * pictures that nothing describes.
 */
final class Targets {
  private Targets() {}

  /**
   * What is amiss, in the order of the page.
   *
   * @param page the page as it was laid out
   * @param isLaidOut whether there is a box with an id
   */
  static List<String> amiss(Document page, Predicate<String> isLaidOut) {
    List<String> found = new ArrayList<>();
    look(page.getDocumentElement(), isLaidOut, found);
    return found;
  }

  private static void look(Element element, Predicate<String> isLaidOut, List<String> found) {
    String tag = element.getTagName();
    if (tag.equals("a") || tag.equals("bookmark")) {
      String target = element.getAttribute("href");
      if (target.startsWith("#") && !isLaidOut.test(target.substring(1))) {
        found.add("nothing has the id that a " + tag + " leads to: " + target);
      }
    } else if (tag.equals("object") && element.getAttribute("alt").isEmpty()) {
      found.add("nothing describes the picture " + element.getAttribute("data"));
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        look(inner, isLaidOut, found);
      }
    }
  }
}
