package org.lapmark.document;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.check.Rules;
import org.lapmark.check.rule.Written;
import org.lapmark.document.svg.CutFile;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.piece.Piece;
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

  /** What is written on a piece may be put better; what is cut, sewn and marked stays. */
  private static final Pattern WORDS =
      Pattern.compile("<title.*?</title>|<desc.*?</desc>|<g id=\"text\".*?</g>", Pattern.DOTALL);

  @ParameterizedTest
  @ValueSource(strings = {"towpath-handlebar-bag", "slipway-rain-hat"})
  void aFolderOfYesterdayIsCutAlike(String name) throws Exception {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(Path.of(HOME, name), findings);
    Rules.asWritten(new Written(source), findings);
    List<EvaluatedPattern> sizes = new ArrayList<>();
    for (String size : source.sizes().sizes()) {
      sizes.add(Grader.grade(source, Variant.ofSize(size), findings));
    }
    Rules.acrossSizes(sizes, findings);
    assertEquals(List.of(), findings.sorted());
    Kept.hold(HOME + name + ".cut-files.txt", hashes(sizes));
  }

  private static String hashes(List<EvaluatedPattern> sizes) throws Exception {
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    StringBuilder hashes = new StringBuilder();
    for (EvaluatedPattern pattern : sizes) {
      SheetPlanner planner =
          new SheetPlanner(
              writer.wording(pattern.source().masthead().language()),
              writer.styles(),
              writer.lettering());
      for (Piece piece : pattern.pieces()) {
        String lines =
            WORDS
                .matcher(
                    new String(
                        writer.write(new CutFile(pattern, piece, planner), new Findings()), UTF_8))
                .replaceAll("");
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(lines.getBytes(UTF_8));
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
}
