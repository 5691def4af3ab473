package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;

/** An element of an XML file with the places of its name and attributes. */
public final class XmlElement {
  private final SourceFile file;
  private final String name;
  private final int start;
  private final int nameEnd;
  private final List<Attribute> attributes = new ArrayList<>();
  private final List<XmlElement> children = new ArrayList<>();
  private String namespace = "";
  private int contentStart;
  private int contentEnd;

  XmlElement(SourceFile file, String name, int start, int nameEnd) {
    this.file = file;
    this.name = name;
    this.start = start;
    this.nameEnd = nameEnd;
  }

  /**
   * An attribute.
   *
   * @param name its name as written, with its prefix
   * @param file the file
   * @param start 0-based offset of its name
   * @param end offset behind its name
   * @param value its value after entities were replaced, each character with its place
   */
  record Attribute(String name, SourceFile file, int start, int end, SourceText value) {
    /** Where its name stands. */
    Position position() {
      return file.position(start, end);
    }
  }

  /** The name as written, with its prefix. */
  String name() {
    return name;
  }

  /** The name without its prefix. */
  String localName() {
    return name.substring(name.indexOf(':') + 1);
  }

  String namespace() {
    return namespace;
  }

  void namespace(String uri) {
    namespace = uri;
  }

  List<Attribute> attributes() {
    return attributes;
  }

  List<XmlElement> children() {
    return children;
  }

  /** An attribute's value, or null. */
  SourceText value(String attribute) {
    for (Attribute candidate : attributes) {
      if (candidate.name().equals(attribute)) {
        return candidate.value();
      }
    }
    return null;
  }

  void content(int from, int to) {
    contentStart = from;
    contentEnd = to;
  }

  /** Offset behind its start tag. */
  int contentStart() {
    return contentStart;
  }

  /** What stands between its tags, as written. */
  String content() {
    return file.content().substring(contentStart, contentEnd);
  }

  /** Where the name stands, in the start tag. */
  Position position() {
    return file.position(start, nameEnd);
  }
}
