package org.lapmark.document.section;

/** The page that proves the scale and says how to print. */
final class PrintingSection implements Section {
  @Override
  public String id() {
    return Sections.PRINTING;
  }

  @Override
  public boolean isIn(Content content) {
    return content.ofOneSize().isPresent();
  }
}
