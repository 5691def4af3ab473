package org.lapmark.text;

import org.commonmark.parser.InlineParserContext;
import org.commonmark.parser.beta.LinkInfo;
import org.commonmark.parser.beta.LinkProcessor;
import org.commonmark.parser.beta.LinkResult;
import org.commonmark.parser.beta.Scanner;
import org.lapmark.finding.Position;

/** Sees brackets that look like a footnote's mark after those with a footnote have been taken. */
record StrayNotes(BlockReader reader) implements LinkProcessor {
  @Override
  public LinkResult process(LinkInfo link, Scanner scanner, InlineParserContext context) {
    String label = link.text();
    if (link.destination() == null
        && label.length() > 1
        && label.charAt(0) == '^'
        && label.chars().noneMatch(Character::isWhitespace)) {
      int start = reader.start(link.openingBracket());
      Position position = reader.text().position(start, start + label.length() + 2);
      reader.strayNote(label.substring(1), position);
    }
    return LinkResult.none();
  }
}
