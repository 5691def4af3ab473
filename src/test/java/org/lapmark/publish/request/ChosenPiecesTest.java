package org.lapmark.publish.request;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.Listener;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.TemplateFolder;
import org.lapmark.publish.product.NestedTiles;

/** Chosen pieces alone, and all sizes stacked, beside the files of the whole pattern. */
class ChosenPiecesTest {
  private static final Path DEMO = Path.of("content", "towpath-handlebar-bag");
  private static final String NAME = "towpath-handlebar-bag";

  @TempDir Path output;

  private List<String> publish(List<String> sizes, boolean nested, List<String> pieces)
      throws IOException {
    Request request =
        new Request(
            sizes,
            List.of(Paper.A4),
            Collections.emptySortedMap(),
            output,
            Presentation.OWN,
            nested ? Set.of(NestedTiles.EXTRA) : Set.of(),
            pieces);
    return new Publisher(TemplateFolder.bundled())
        .publish(DEMO, request).written().stream()
            .map(path -> output.relativize(path).toString().replace('\\', '/'))
            .toList();
  }

  @Test
  void chosenPiecesNeverReplaceTheWholeSet() throws IOException {
    publish(List.of("M"), false, List.of());
    List<String> before = files(NAME);
    String folder = NAME + ".piece-1-9";
    assertEquals(
        List.of(folder + "/" + folder + "-1-M-a4-tiles.pdf"),
        publish(List.of("M"), false, List.of("end stiffener", "1")));
    assertEquals(before, files(NAME));
    String text = text(output.resolve(folder).resolve(folder + "-1-M-a4-tiles.pdf"));
    assertTrue(text.contains("1  End\n") || text.contains("1 End"), text);
    assertTrue(text.contains("End stiffener"), text);
    assertTrue(!text.contains("End interfacing"), text);
  }

  @Test
  void stackedTilesAreMadeWhenAskedFor() throws IOException {
    String folder = NAME + ".piece-1";
    List<String> written = publish(List.of(), true, List.of("1"));
    assertTrue(written.contains(folder + "/" + folder + "-1-all-sizes-a4-tiles.pdf"));
    assertEquals(4, written.size());
    // A later run without them doesn't leave old ones behind.
    publish(List.of(), false, List.of("1"));
    assertEquals(3, files(folder).stream().filter(name -> name.endsWith(".pdf")).count());
  }

  @Test
  void aRuledPieceIsToldAndTheOthersArePrinted() throws IOException {
    List<String> told = new ArrayList<>();
    Listener listener =
        new Listener() {
          @Override
          public void omitted(Path folder, String what) {
            told.add(what);
          }
        };
    Request request =
        new Request(
            List.of("M"),
            List.of(Paper.A4),
            Collections.emptySortedMap(),
            output,
            Presentation.OWN,
            Set.of(),
            List.of("1", "Rear strip"));
    new Publisher(TemplateFolder.bundled()).publish(List.of(DEMO), request, listener);
    Path tiles;
    try (Stream<Path> files = Files.walk(output)) {
      tiles = files.filter(path -> path.toString().endsWith(".pdf")).findAny().get();
    }
    assertTrue(text(tiles).contains("End"), text(tiles));
    assertTrue(!text(tiles).contains("Rear strip"), text(tiles));
    assertEquals(1, told.size(), told.toString());
    assertTrue(told.get(0).contains("‘Rear strip’ has no paper: it is cut by"), told.get(0));
  }

  @Test
  void whatCannotBePrintedIsRefused() {
    refused(List.of(), false, List.of("Ennd"), "has no piece ‘Ennd’; did you mean ‘End’?");
    refused(List.of(), false, List.of("77"), "has no piece ‘77’");
    refused(List.of(), false, List.of("Rear strip"), "‘Rear strip’ of");
    refused(List.of("M"), true, List.of(), "leave out --size");
    assertTrue(Files.notExists(output.resolve(NAME)));
  }

  private void refused(List<String> sizes, boolean nested, List<String> pieces, String message) {
    RefusedException refused =
        assertThrows(RefusedException.class, () -> publish(sizes, nested, pieces));
    assertTrue(refused.getMessage().contains(message), refused.getMessage());
  }

  private List<String> files(String folder) throws IOException {
    try (Stream<Path> files = Files.list(output.resolve(folder))) {
      return files.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  private static String text(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }
}
