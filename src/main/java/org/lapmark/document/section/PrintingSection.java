package org.lapmark.document.section;

/** The page that proves the scale and says how to print. */
final class PrintingSection implements Section {
  static final String ID = "printing";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public boolean isIn(Content content) {
    return content.ofOneSize().isPresent();
  }
}
