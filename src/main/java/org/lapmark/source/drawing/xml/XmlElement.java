package org.lapmark.source.drawing.xml;

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
  private final List<Run> runs = new ArrayList<>();
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
  public record Attribute(String name, SourceFile file, int start, int end, SourceText value) {
    /** Where its name stands. */
    public Position position() {
      return file.position(start, end);
    }
  }

  /**
   * Words in it.
   *
   * @param text after entities were replaced, each character with its place
   * @param before how many of its children come before
   */
  public record Run(SourceText text, int before) {}

  /** The words in it, but for those in its children, in file order. */
  public List<Run> runs() {
    return runs;
  }

  void add(SourceText words) {
    runs.add(new Run(words, children.size()));
  }

  /** The name as written, with its prefix. */
  public String name() {
    return name;
  }

  /** The name without its prefix. */
  public String localName() {
    return name.substring(name.indexOf(':') + 1);
  }

  /** The address of the namespace that it belongs to; empty for none. */
  public String namespace() {
    return namespace;
  }

  void namespace(String uri) {
    namespace = uri;
  }

  /** Its attributes in file order. */
  public List<Attribute> attributes() {
    return attributes;
  }

  /** The elements in it, in file order. */
  public List<XmlElement> children() {
    return children;
  }

  /** An attribute's value, or null. */
  public SourceText value(String attribute) {
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
  public String content() {
    return file.content().substring(contentStart, contentEnd);
  }

  /** Where the name stands, in the start tag. */
  public Position position() {
    return file.position(start, nameEnd);
  }
}
