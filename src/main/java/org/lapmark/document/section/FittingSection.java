package org.lapmark.document.section;

import java.util.Optional;

/** The author's advice on fitting. */
final class FittingSection implements Section {
  /** Advice as a fragment of XHTML. */
  record Values(Optional<String> fitting) {}

  @Override
  public String id() {
    return "fitting";
  }

  @Override
  public boolean isIn(Content content) {
    return content.hasNote("fitting");
  }

  @Override
  public Record values(Setting setting) {
    return new Values(setting.texts().note("fitting"));
  }
}
