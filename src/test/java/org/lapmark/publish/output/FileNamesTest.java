package org.lapmark.publish.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.lang.UCharacter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.Test;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.Papers;

class FileNamesTest {
  private static String name(FileNames names, String size, Paper paper, String ending) {
    return names.of(Purpose.ofSize(size, "").on(paper), ending);
  }

  @Test
  void namesPatternEditionSizeAndPaper() {
    FileNames names = FileNames.of("tote", "1.2", List.of("S", "M"));
    assertEquals("tote-1.2-M-a4.pdf", name(names, "M", Paper.A4, ".pdf"));
    assertEquals("tote-1.2-S-shared-tiles.pdf", name(names, "S", Paper.SHARED, "-tiles.pdf"));
  }

  @Test
  void aSizeNeverTakesTheNameOfAllSizes() {
    FileNames names = FileNames.of("tote", "1", List.of("All sizes", "M"));
    assertEquals(
        "tote-1-all-sizes-a4-instructions.pdf",
        names.of(Purpose.ofSizes(List.of(), "").on(Paper.A4), "-instructions.pdf"));
    assertEquals(
        "tote-1-All-sizes-2-a4-instructions.pdf",
        name(names, "All sizes", Paper.A4, "-instructions.pdf"));
  }

  @Test
  void someSizesAreNamedUnlikeAnySize() {
    FileNames names = FileNames.of("tote", "1", List.of("Sizes M", "S M", "L"));
    assertEquals(
        "tote-1-sizes-S-M-L-a4-instructions.pdf",
        names.of(Purpose.ofSizes(List.of("S M", "L"), "").on(Paper.A4), "-instructions.pdf"));
    assertEquals("tote-1-sizes-L.html", names.of(Purpose.ofSizes(List.of("L"), ""), ".html"));
    assertEquals("tote-1.html", names.alone(".html"));
    assertEquals("tote-1-size-Sizes-M-a4.pdf", name(names, "Sizes M", Paper.A4, ".pdf"));
  }

  @Test
  void keepsLettersOfEveryScriptAndReplacesWhatShellsMind() {
    FileNames names =
        FileNames.of("sac à dos", "", List.of("Größe 38/40", "大", "../etc", "½", "", "*", "2XL+"));
    assertEquals("sac-à-dos-Größe-38-40-a4.pdf", name(names, "Größe 38/40", Paper.A4, ".pdf"));
    assertEquals("sac-à-dos-大-a4.pdf", name(names, "大", Paper.A4, ".pdf"));
    assertEquals("sac-à-dos-etc-a4.pdf", name(names, "../etc", Paper.A4, ".pdf"));
    assertEquals("sac-à-dos-½-a4.pdf", name(names, "½", Paper.A4, ".pdf"));
    assertEquals("sac-à-dos-_-a4.pdf", name(names, "", Paper.A4, ".pdf"));
    assertEquals("sac-à-dos-_-2-a4.pdf", name(names, "*", Paper.A4, ".pdf"));
    assertEquals("sac-à-dos-2XL+-a4.pdf", name(names, "2XL+", Paper.A4, ".pdf"));
  }

  @Test
  void cutFilesHaveAFolderASize() {
    FileNames names = FileNames.of("tote", "1", List.of("S", "s"));
    assertEquals(
        "tote-1-S-cut/03-Flap-front-S.svg",
        names.inFolder(Purpose.ofSize("S", ""), "-cut", 3, "Flap: front", ".svg"));
    assertEquals(
        "tote-1-s-2-cut/120-_-s-2.svg",
        names.inFolder(Purpose.ofSize("s", ""), "-cut", 120, "../", ".svg"));
    assertEquals(
        "tote-1-S--trim-no-cut/01-Flap-S.svg",
        names.inFolder(Purpose.ofSize("S", "trim-no"), "-cut", 1, "Flap", ".svg"));
  }

  @Test
  void composesLetters() {
    assertEquals(
        "caf\u00e9-M-a4.pdf",
        name(FileNames.of("cafe\u0301", "", List.of("M")), "M", Paper.A4, ".pdf"));
  }

  @Test
  void keepsSizesApart() {
    FileNames names = FileNames.of("tote", "", List.of("s", "S", "S M", "S/M", "S-M-2"));
    assertEquals("tote-s-a4.pdf", name(names, "s", Paper.A4, ".pdf"));
    assertEquals("tote-S-2-a4.pdf", name(names, "S", Paper.A4, ".pdf"));
    assertEquals("tote-S-M-a4.pdf", name(names, "S M", Paper.A4, ".pdf"));
    assertEquals("tote-S-M-2-a4.pdf", name(names, "S/M", Paper.A4, ".pdf"));
    assertEquals("tote-S-M-2-2-a4.pdf", name(names, "S-M-2", Paper.A4, ".pdf"));
  }

  @Test
  void avoidsDeviceNames() {
    assertEquals(
        "_nul.bag-M-a4.pdf",
        name(FileNames.of("nul.bag", "", List.of("M")), "M", Paper.A4, ".pdf"));
    assertEquals(
        "nullity.bag-M-a4.pdf",
        name(FileNames.of("nullity.bag", "", List.of("M")), "M", Paper.A4, ".pdf"));
  }

  @Property(tries = 200)
  void everyNameIsUsableAndDistinct(
      @ForAll String pattern,
      @ForAll String edition,
      @ForAll @Size(max = 12) @UniqueElements List<String> sizes) {
    FileNames names = FileNames.of(pattern, edition, sizes);
    Set<String> seen = new LinkedHashSet<>();
    for (String size : sizes) {
      for (Paper paper : Papers.USUAL) {
        for (String name :
            List.of(name(names, size, paper, ".pdf"), name(names, size, paper, "-tiles.pdf"))) {
          assertTrue(seen.add(UCharacter.foldCase(name, true)), name);
          assertTrue(name.getBytes(StandardCharsets.UTF_8).length <= 255, name);
          assertTrue(name.chars().noneMatch(c -> c < ' ' || "/\\:*?\"<>|".indexOf(c) >= 0), name);
          assertTrue(!name.startsWith(".") && !name.startsWith("-"), name);
        }
      }
    }
  }
}
