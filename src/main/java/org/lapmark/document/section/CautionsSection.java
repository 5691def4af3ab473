package org.lapmark.document.section;

import java.util.List;
import java.util.Optional;
import org.lapmark.document.manual.Hazards;

/** The gathered cautions, and the author's own. */
final class CautionsSection implements Section {
  /** Cautions; the author's own as a fragment of XHTML. */
  record Values(List<Caution> cautions, Optional<String> ownCautions) {}

  /** A caution. */
  record Caution(String title, String text) {}

  @Override
  public String id() {
    return "cautions";
  }

  @Override
  public boolean isIn(Content content) {
    return !content.hazards().gathered().isEmpty() || content.hasNote("cautions");
  }

  @Override
  public Record values(Setting setting) {
    Hazards hazards = setting.hazards();
    return new Values(
        hazards.gathered().stream()
            .map(hazard -> new Caution(hazards.title(hazard), hazards.text(hazard)))
            .toList(),
        setting.texts().note("cautions"));
  }
}
