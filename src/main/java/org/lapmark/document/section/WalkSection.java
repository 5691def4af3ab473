package org.lapmark.document.section;

import java.util.Optional;
import org.lapmark.document.manual.Manual;

/** The walk of every seam, where it was asked for. */
final class WalkSection implements Section {
  /** The walk. */
  record Values(Optional<WalkPages> walk) {}

  @Override
  public String id() {
    return "walk";
  }

  /** It is there only when it is asked for, which no text can know. */
  @Override
  public boolean isReferable() {
    return false;
  }

  @Override
  public boolean isIn(Content content) {
    return content.ofOneSize().map(WalkSection::isWalked).orElse(false);
  }

  @Override
  public Record values(Setting setting) {
    Manual manual = setting.manual();
    return new Values(
        !manual.isOfSizes() && isWalked(manual)
            ? Optional.of(WalkPages.of(manual.pattern(), setting.wording()))
            : Optional.empty());
  }

  private static boolean isWalked(Manual manual) {
    return manual.walked() && !manual.pattern().seams().isEmpty();
  }
}
