package org.lapmark.source.drawing.xml;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with XML as XML. */
public enum XmlCode implements FindingCode {
  /** The XML can't be parsed. */
  XML_SYNTAX,
  /** A document type declaration that isn't harmless. */
  XML_DOCTYPE,
  /** Elements stand too deep in each other. */
  XML_TOO_DEEP,
  /** The drawing has too many elements. */
  XML_TOO_LARGE;

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }
}
