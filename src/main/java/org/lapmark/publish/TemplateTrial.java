package org.lapmark.publish;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Findings;

/**
 * What is wrong with templates that take the place of the program's own, gathered over one run:
 * whichever pattern's document comes upon a mistake, it is the templates' and told once.
 */
final class TemplateTrial {
  private final Stages stages;
  private final Findings findings = new Findings();

  TemplateTrial(Stages stages) {
    this.stages = stages;
  }

  /** Whether there are such templates. */
  boolean isOn() {
    return stages.templateFolder().isPresent();
  }

  /** Checks the templates by themselves; tells whether documents can be made of them. */
  boolean passes() {
    if (isOn()) {
      stages.checkTemplates(findings);
    }
    return !findings.hasErrors();
  }

  /** Takes a failure that is the templates' doing; tells whether it is. */
  boolean takes(Throwable failure) {
    return failure != null
        && stages
            .templateFault(failure)
            .map(
                finding -> {
                  findings.add(finding);
                  return true;
                })
            .orElse(false);
  }

  /** What came of the templates, told to the listener; nothing if all is well with them. */
  List<Outcome> told(Listener listener) {
    Optional<Path> folder = stages.templateFolder();
    if (folder.isEmpty() || findings.sorted().isEmpty()) {
      return List.of();
    }
    Outcome outcome =
        new Outcome(
            folder.get().toAbsolutePath().normalize(),
            new Result(List.of(), findings),
            Optional.empty());
    listener.ended(outcome);
    return List.of(outcome);
  }
}
