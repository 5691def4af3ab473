package org.lapmark.document.setting;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An element that was opened and that another's end came upon.
 *
 * @param name its name
 * @param line the line on which it was opened, from 1
 */
record UnclosedElement(String name, int line) {
  private static final Pattern TAG =
      Pattern.compile(
          "<!--.*?-->|<!\\[CDATA\\[.*?]]>|<(/?)([A-Za-z][\\w:-]*)([^<>]*)>", Pattern.DOTALL);

  /** The first such element up to a line, if there is one. */
  static Optional<UnclosedElement> before(String html, int lastLine) {
    Deque<UnclosedElement> open = new ArrayDeque<>();
    Matcher tag = TAG.matcher(html);
    int line = 1;
    int counted = 0;
    while (tag.find()) {
      for (; counted < tag.start(); counted++) {
        line += html.charAt(counted) == '\n' ? 1 : 0;
      }
      if (line > lastLine) {
        break;
      }
      String name = tag.group(2);
      if (name == null || tag.group(3).endsWith("/")) {
        continue;
      }
      if (tag.group(1).isEmpty()) {
        open.push(new UnclosedElement(name, line));
      } else if (!open.isEmpty()) {
        UnclosedElement innermost = open.pop();
        if (!innermost.name().equals(name)) {
          return Optional.of(innermost);
        }
      }
    }
    return Optional.empty();
  }
}
