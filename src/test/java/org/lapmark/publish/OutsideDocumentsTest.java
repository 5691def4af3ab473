package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.publish.request.Papers;
import org.lapmark.publish.request.Request;

/** What becomes of photographs, line drawings and films in documents. */
class OutsideDocumentsTest {
  @TempDir Path home;

  private static Path one(List<Path> files, String ending) {
    return files.stream()
        .filter(file -> file.toString().endsWith(ending))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void paperShowsThemAtPrintFinenessWithTheirWords() throws IOException {
    Path folder = SallowCase.folder(home);
    List<Path> files = SallowCase.published(folder, home.resolve("out"), "S", "L");
    try (PDDocument document = Loader.loadPDF(one(files, "S-a4.pdf").toFile())) {
      List<int[]> sizes = new ArrayList<>();
      for (PDPage page : document.getPages()) {
        images(page.getResources(), sizes);
      }
      // The cover is 104 mm high at 300 dpi; the others have fewer pixels than there is room for.
      assertEquals(
          List.of("1843 1229", "900 600", "1200 800").stream().sorted().toList(),
          sizes.stream().map(size -> size[0] + " " + size[1]).sorted().toList());
      List<String> figures = new ArrayList<>();
      figures(document.getDocumentCatalog().getStructureTreeRoot(), figures);
      for (String words :
          List.of(
              "The case, closed, 90 mm (3 1/2 in) wide.",
              "A case in use, in grey",
              "Both sides, 90 mm (3 1/2 in) wide, with lines where they are sewn",
              "The sides on each other, the open edge above",
              "A QR code that leads to the film of this step, from 3:20: "
                  + "https://films.example/sallow-case#t=200")) {
        assertTrue(
            figures.stream().anyMatch(alt -> alt.replace('\u00a0', ' ').equals(words)),
            words + " in " + figures);
      }
      assertEquals(
          List.of(
              "https://films.example/sallow-case#t=40", "https://films.example/sallow-case#t=200"),
          links(document));
      assertTrue(text(document).contains("90 mm (3 1/2 in)"), "lettering is text");
      assertTrue(
          text(document).contains("Laid with the open edge, 90 mm (3 1/2 in) wide, above"),
          "a caption stands under its picture");
    }
    try (PDDocument document = Loader.loadPDF(one(files, "L-a4.pdf").toFile())) {
      assertTrue(text(document).contains("110 mm (4 3/8 in)"), "lettering follows the size");
      assertFalse(text(document).contains("90 mm (3 1/2 in)"), "lettering follows the size");
    }
    for (Path file : files) {
      if (file.toString().endsWith(".pdf")) {
        String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
        assertFalse(bytes.contains("GPS 61"), file + " says where a photograph was taken");
      }
    }
  }

  private static String text(PDDocument document) throws IOException {
    return new PDFTextStripper().getText(document).replace('\u00a0', ' ');
  }

  private static void images(PDResources resources, List<int[]> sizes) throws IOException {
    for (COSName name : resources.getXObjectNames()) {
      PDXObject object = resources.getXObject(name);
      if (object instanceof PDImageXObject image) {
        sizes.add(new int[] {image.getWidth(), image.getHeight()});
      } else if (object instanceof PDFormXObject form) {
        images(form.getResources(), sizes);
      }
    }
  }

  private static void figures(PDStructureNode node, List<String> figures) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        if ("Figure".equals(element.getStructureType())) {
          figures.add(element.getAlternateDescription());
        }
        figures(element, figures);
      }
    }
  }

  private static List<String> links(PDDocument document) throws IOException {
    List<String> links = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      for (PDAnnotation annotation : page.getAnnotations()) {
        if (annotation instanceof PDAnnotationLink link
            && link.getAction() instanceof PDActionURI action
            && !links.contains(action.getURI())) {
          links.add(action.getURI());
        }
      }
    }
    return links;
  }

  @Test
  void theCompanionHoldsThemAllItself() throws IOException {
    Path folder = SallowCase.folder(home);
    Request all = new Request(List.of(), List.of(), home.resolve("out"));
    List<Path> files =
        new Publisher(TemplateFolder.bundled())
            .publish(List.of(folder), all, new Listener() {})
            .get(0)
            .result()
            .written();
    String page = Files.readString(one(files, ".html")).replace('\u00a0', ' ');
    Matcher held = Pattern.compile("href=\"data:image/jpeg;base64,([^\"]+)\"").matcher(page);
    List<String> sizes = new ArrayList<>();
    while (held.find()) {
      byte[] jpeg = Base64.getDecoder().decode(held.group(1));
      var image = ImageIO.read(new ByteArrayInputStream(jpeg));
      sizes.add(image.getWidth() + " " + image.getHeight());
      assertFalse(new String(jpeg, StandardCharsets.ISO_8859_1).contains("GPS"));
    }
    assertEquals(List.of("900 600", "974 649", "974 649"), sizes.stream().sorted().toList());
    assertTrue(page.contains("The sides on each other, the open edge above"));
    assertTrue(page.contains("<figcaption>Laid with the open edge, "));
    assertTrue(page.contains("Size S: The case, closed, 90 mm (3 1/2 in) wide. Size L: The case"));
    assertTrue(page.contains("href=\"https://films.example/sallow-case#t=200\""));
    // Nothing is asked for: what leads elsewhere is a link that a reader follows, or a namespace.
    Matcher asked =
        Pattern.compile("(src|href)=\"(?!#|data:|https://films)([^\"]*)\"").matcher(page);
    assertFalse(asked.find(), () -> asked.group());
    assertTrue(
        page.contains(">height &lt; 190 mm") && page.contains(">height &lt; 210 mm"), "sizes");
    assertFalse(page.contains("<script>alert"));
  }

  private List<String> found(Path folder) throws IOException {
    Request request = new Request(List.of("S"), List.of(Papers.ALL.get(0)), home.resolve("faulty"));
    return new Publisher(TemplateFolder.bundled())
            .publish(List.of(folder), request, new Listener() {})
            .get(0)
            .result()
            .findings()
            .sorted()
            .stream()
            .map(one -> one.code().id())
            .toList();
  }

  @Test
  void whatShowsOnlyOnceAPictureIsDrawnIsFound() throws IOException {
    Path folder = SallowCase.folder(home);
    Path drawing = folder.resolve("art/sides.svg");
    String svg = Files.readString(drawing);
    Files.writeString(drawing, svg.replace("<text x=\"27\"", "<text x=\"8\""));
    assertEquals(List.of("line-art-cut"), found(folder));
    Files.writeString(drawing, svg.replace("<text x=\"27\"", "<text x=\"17\""));
    assertEquals(List.of(), found(folder));
    Path photo = folder.resolve("art/laid.png");
    byte[] bytes = Files.readAllBytes(photo);
    for (int i = 60; i < bytes.length - 30; i++) {
      bytes[i] = 7;
    }
    Files.write(photo, bytes);
    assertEquals(List.of("art-broken"), found(folder));
  }

  @Test
  void aPictureThatChangesIsMadeAnew() throws IOException {
    Path folder = SallowCase.folder(home);
    Path art = folder.resolve("art/large.png");
    Files.write(art, new byte[3_000_000]);
    Optional<String> before = hash(folder);
    assertEquals(before, hash(folder));
    try (RandomAccessFile file = new RandomAccessFile(art.toFile(), "rw")) {
      file.seek(2_500_000);
      file.write(1);
    }
    assertNotEquals(before, hash(folder), "a byte of a large picture");
    assertTrue(before.isPresent());
  }

  private Optional<String> hash(Path folder) {
    return Fingerprint.of(
        folder,
        new Request(List.of(), List.of(), home.resolve("out")),
        List.of(Papers.ALL.get(0)),
        "");
  }
}
