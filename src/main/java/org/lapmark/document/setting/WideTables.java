package org.lapmark.document.setting;

import com.openhtmltopdf.newtable.TableBox;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import org.w3c.dom.Element;

/**
 * Finds tables that are wider than the place that they have. A table's columns are as wide as their
 * longest words; where that is too much, the last columns would stand beside the page.
 */
final class WideTables {
  /** The class that style sheets know such tables by. */
  private static final String CLASS = "wide";

  private WideTables() {}

  /**
   * Gives every table that is too wide the class by which it is set so that it fits.
   *
   * @param root what has been laid out
   * @return whether there is one that hadn't the class yet: then the page has to be laid out anew
   */
  static boolean mark(BlockBox root) {
    return mark(root, root);
  }

  private static boolean mark(Box box, BlockBox root) {
    boolean any = false;
    if (box instanceof TableBox table && table.getElement() != null && isTooWide(table, root)) {
      Element element = table.getElement();
      String classes = element.getAttribute("class");
      if (!(" " + classes + " ").contains(" " + CLASS + " ")) {
        element.setAttribute("class", (classes + " " + CLASS).strip());
        any = true;
      }
    }
    for (int i = 0; i < box.getChildCount(); i++) {
      any |= mark(box.getChild(i), root);
    }
    return any;
  }

  private static boolean isTooWide(TableBox table, BlockBox root) {
    // The renderer counts in twentieths of a CSS pixel; a part of one is no loss.
    int tolerance = 20;
    return table.getWidth() > table.getContainingBlockWidth() + tolerance
        || table.getAbsX() + table.getWidth() > root.getAbsX() + root.getWidth() + tolerance;
  }
}
