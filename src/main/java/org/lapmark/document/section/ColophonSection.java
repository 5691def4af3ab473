package org.lapmark.document.section;

/** Who made what is read, and its terms. */
final class ColophonSection implements Section {
  @Override
  public String id() {
    return "colophon";
  }

  @Override
  public boolean isIn(Content content) {
    return true;
  }
}
