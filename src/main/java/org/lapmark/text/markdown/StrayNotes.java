package org.lapmark.text.markdown;

import java.util.function.BiConsumer;
import org.commonmark.parser.InlineParserContext;
import org.commonmark.parser.beta.LinkInfo;
import org.commonmark.parser.beta.LinkProcessor;
import org.commonmark.parser.beta.LinkResult;
import org.commonmark.parser.beta.Scanner;
import org.lapmark.finding.Position;

/**
 * Sees brackets that look like a footnote's mark after those with a footnote have been taken.
 *
 * @param text the text
 * @param found what is done with a mark's label and place
 */
record StrayNotes(PreparedText text, BiConsumer<String, Position> found) implements LinkProcessor {
  @Override
  public LinkResult process(LinkInfo link, Scanner scanner, InlineParserContext context) {
    String label = link.text();
    if (link.destination() == null
        && label.length() > 1
        && label.charAt(0) == '^'
        && label.chars().noneMatch(Character::isWhitespace)) {
      int start = text.start(link.openingBracket());
      found.accept(label.substring(1), text.text().position(start, start + label.length() + 2));
    }
    return LinkResult.none();
  }
}
