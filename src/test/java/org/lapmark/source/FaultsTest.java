package org.lapmark.source;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Findings;
import org.lapmark.source.derived.DerivedCode;
import org.lapmark.source.drawing.DrawingCode;
import org.lapmark.source.folder.FolderCode;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.mark.MarkCode;
import org.lapmark.source.sizes.SizesCode;
import org.lapmark.source.yaml.YamlCode;

class FaultsTest extends LabelledFaults {
  FaultsTest() {
    super(FaultCase.RESOURCES, codes());
  }

  private static Stream<String> codes() {
    return Stream.<FindingCode[]>of(
            SourceCode.values(),
            FolderCode.values(),
            YamlCode.values(),
            KeyCode.values(),
            DrawingCode.values(),
            SizesCode.values(),
            new DerivedCode[] {DerivedCode.DISTANCE_MISSING, DerivedCode.CONSTRUCTION_WRONG},
            new MarkCode[] {MarkCode.MARK_STATEMENT, MarkCode.PLEAT_UNSTATED})
        .flatMap(Arrays::stream)
        .map(FindingCode::id);
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
