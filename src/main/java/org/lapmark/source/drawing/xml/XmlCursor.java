package org.lapmark.source.drawing.xml;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.InvisibleCharacters;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.source.folder.UnseenCharacters;

/** A place in an XML file, from which names, values and references to characters are read. */
final class XmlCursor {
  private final SourceFile file;
  private final String text;
  private int at;

  XmlCursor(SourceFile file) {
    this.file = file;
    this.text = file.content();
  }

  /** Where it stands. */
  int at() {
    return at;
  }

  /** Goes to another place. */
  void to(int place) {
    at = place;
  }

  /** Goes on by some characters. */
  void skip(int count) {
    at += count;
  }

  /** Whether the file has ended. */
  boolean isAtEnd() {
    return at >= text.length();
  }

  /** Whether some characters stand here. */
  boolean sees(String some) {
    return text.startsWith(some, at);
  }

  /** Whether white space stands here. */
  boolean seesSpace() {
    return !isAtEnd() && isSpace(text.charAt(at));
  }

  /** Where some characters end that stand at a place or beyond. */
  int after(String end, int from) {
    int found = text.indexOf(end, from);
    if (found < 0) {
      throw fault("unfinished", at, at + 2);
    }
    return found + end.length();
  }

  /** An attribute's value in quotes. */
  SourceText value(int nameStart, int nameEnd) {
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

  /** Passes over the declaration with which a file may begin. */
  void declaration() {
    if (!sees("<?xml") || text.length() <= 5 || !isSpace(text.charAt(5))) {
      return;
    }
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

  /** Passes over a comment. */
  void comment() {
    int end = text.indexOf("--", at + 4);
    if (end < 0) {
      throw fault("unfinished", at, at + 4);
    }
    if (!text.startsWith("-->", end)) {
      throw fault("hyphens", end, end + 2);
    }
    at = end + 3;
  }

  /** Passes over a processing instruction. */
  void instruction() {
    int start = at;
    at += 2;
    String target = name();
    if (target.equalsIgnoreCase("xml") || target.indexOf(':') >= 0) {
      throw fault("instruction", start, at);
    }
    if (!sees("?>") && !seesSpace()) {
      throw fault("instruction", start, at);
    }
    at = after("?>", at);
  }

  /** Words between elements. */
  SourceText words(boolean inside) {
    StringBuilder words = new StringBuilder();
    List<Integer> places = new ArrayList<>();
    while (!isAtEnd() && text.charAt(at) != '<') {
      if (!inside && !seesSpace()) {
        throw fault("outside", at, at + 1);
      }
      int place = at;
      if (sees("&")) {
        String replaced = entity(text.length());
        words.append(replaced);
        for (int i = 0; i < replaced.length(); i++) {
          places.add(place);
        }
      } else if (sees("]]>")) {
        throw fault("cdata_end", at, at + 3);
      } else {
        words.append(text.charAt(at));
        places.add(place);
        at++;
      }
    }
    places.add(at);
    return SourceText.mapped(
        file, words.toString(), places.stream().mapToInt(Integer::intValue).toArray());
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
        if (InvisibleCharacters.of(point).isPresent()) {
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

  /** A name, maybe with a prefix. */
  String name() {
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

  /** Goes beyond white space; tells whether there was some. */
  boolean skipSpace() {
    int start = at;
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
    return at > start;
  }

  static boolean isSpace(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r';
  }

  /** What is said of characters that aren't well-formed. */
  FindingException fault(String problem, int start, int end) {
    int to = Math.max(start, Math.min(end, text.length()));
    int from = Math.min(start, text.length());
    return new FindingException(
        Finding.of(
            XmlCode.XML_SYNTAX,
            file.position(from, to),
            "problem",
            problem,
            "text",
            text.substring(from, Math.min(to, from + 40))));
  }
}
