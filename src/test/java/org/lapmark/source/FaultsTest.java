package org.lapmark.source;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.lapmark.finding.Findings;

class FaultsTest extends LabelledFaults {
  FaultsTest() {
    super(FaultCase.RESOURCES, Arrays.stream(SourceCode.values()).map(SourceCode::id));
  }

  @Override
  protected Findings found(FaultCase fault, Path parent) throws IOException {
    Findings findings = new Findings();
    fault.read(parent, findings);
    return findings;
  }

  /** Hints show how placeholders are written. */
  @Override
  protected boolean isFilledIn(String text) {
    return !text.matches(".*\\{[a-z]+\\}.*") || text.contains("pouch_width");
  }
}
