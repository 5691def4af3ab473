package org.lapmark.document.section;

import org.lapmark.text.Targets;

/** The page that proves the scale and says how to print. */
final class PrintingSection implements Section {
  @Override
  public String id() {
    return Targets.PRINTING;
  }

  @Override
  public boolean isIn(Content content) {
    return content.ofOneSize().isPresent();
  }
}
