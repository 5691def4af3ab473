package org.lapmark.document.section;

import java.util.List;

/** The steps by stage, and what to mind in use, one short line a hazard. */
final class StepsSection implements Section {
  /** Steps by stage; what to mind in use. */
  record Values(List<StepPages.Stage> stages, List<String> use) {}

  @Override
  public String id() {
    return "steps";
  }

  @Override
  public boolean isIn(Content content) {
    return !content.steps().all().isEmpty();
  }

  @Override
  public Record values(Setting setting) {
    return new Values(setting.texts().stages(setting.hazards()), setting.hazards().inUse());
  }
}
