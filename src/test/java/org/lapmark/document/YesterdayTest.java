package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.check.PatternChecks;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Piece;
import org.lapmark.measure.Variant;
import org.lapmark.print.SheetPlanner;
import org.lapmark.source.Kept;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/**
 * Folders that were published once are read as they were: nothing is to be said of them, and what
 * is cut is the same to the last digit. They stay as they are, whatever the demos become.
 */
class YesterdayTest {
  private static final String HOME = "src/test/resources/org/lapmark/document/yesterday/";

  @ParameterizedTest
  @ValueSource(strings = {"towpath-handlebar-bag", "slipway-rain-hat"})
  void aFolderOfYesterdayIsCutAlike(String name) throws Exception {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(Path.of(HOME, name), findings);
    PatternChecks.run(source, locale -> List.of(), findings);
    List<GradedPattern> sizes = new ArrayList<>();
    for (String size : source.sizes().sizes()) {
      sizes.add(Grader.grade(source, Variant.ofSize(size), findings));
    }
    PatternChecks.acrossSizes(sizes, findings);
    assertEquals(List.of(), findings.sorted());
    Kept.hold(HOME + name + ".cut-files.txt", hashes(sizes));
  }

  private static String hashes(List<GradedPattern> sizes) throws Exception {
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    StringBuilder hashes = new StringBuilder();
    for (GradedPattern pattern : sizes) {
      CutFileWriter files = writer(writer, pattern);
      for (Piece piece : pattern.pieces()) {
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(files.write(pattern, piece));
        hashes
            .append(pattern.variant().size())
            .append(' ')
            .append(piece.number())
            .append(' ')
            .append(HexFormat.of().formatHex(hash))
            .append('\n');
      }
    }
    return hashes.toString();
  }

  private static CutFileWriter writer(DocumentWriter writer, GradedPattern pattern)
      throws IOException {
    return new CutFileWriter(
        new SheetPlanner(
            writer.wording(pattern.source().masthead().language()),
            writer.styles(),
            writer.lettering()));
  }
}
