package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.source.Kept;

/** The specimen sheet. */
class SpecimenTest {
  private static final Path INTRODUCTION =
      Path.of("src/test/resources/org/lapmark/source/reference/pages/specimens.md");

  @Test
  void itShowsEveryKeyOfAFigure() {
    Set<String> missing = new TreeSet<>(Specimen.possible());
    Specimen.sheet().forEach(specimen -> missing.removeAll(specimen.keys()));
    assertEquals(Set.of(), missing);
  }

  @Test
  void theReferenceShowsIt() throws IOException {
    List<Specimen> sheet = Specimen.sheet();
    Kept.hold(
        "src/readme/reference/specimens.md",
        Files.readString(INTRODUCTION) + SpecimenPage.of(sheet));
    assertEquals(
        sheet.stream().map(SpecimenPage::picture).sorted().toList(),
        SpecimenPage.kept(),
        "pictures are of an earlier day: make them with -Ppictures");
  }
}
