package org.lapmark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.cli.console.Console;

/** Does what README.md tells a newcomer to do, to the letter. */
class ReadmeTest {
  private static final Path README = Path.of("README.md");
  private static final String PROGRAM = "$ java -jar lapmark.jar ";

  @TempDir Path home;

  @Test
  void theWalkLeadsFromAnEmptyFolderToAPattern() throws IOException {
    Map<String, String> files = new LinkedHashMap<>();
    List<String> dialogues = new ArrayList<>();
    read(README, files, dialogues);
    assertEquals(
        List.of(
            "leaf-tag/sizes.csv",
            "leaf-tag/panels/leaf.svg",
            "leaf-tag/pattern.yaml",
            "leaf-tag/steps/010-sew.md"),
        List.copyOf(files.keySet()));
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = home.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
    assertEquals(2, dialogues.size());
    for (String dialogue : dialogues) {
      String command = dialogue.lines().findFirst().orElseThrow();
      assertTrue(command.startsWith(PROGRAM), command);
      ByteArrayOutputStream said = new ByteArrayOutputStream();
      Console console = new Console(said, said, StandardCharsets.UTF_8, home);
      int code =
          CommandRunner.run(
              command.substring(PROGRAM.length()).split(" "), console, new Workshop.Real());
      assertEquals(dialogue, command + "\n" + said.toString(StandardCharsets.UTF_8));
      assertEquals(0, code);
    }
    Path pdf = home.resolve("build-output/published/leaf-tag/leaf-tag-1-S-a4.pdf");
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("Willow leaf key tag"), text);
      assertTrue(text.contains("Sew all round,"), text);
    }
  }

  /** The guide's bag is published as it stands there, without a word to say against it. */
  @Test
  void theWholeSmallBagOfTheGuideIsPublished() throws IOException {
    Map<String, String> files = new LinkedHashMap<>();
    read(Path.of("src", "readme", "guide", "bag.md"), files, new ArrayList<>());
    assertEquals(4, files.size(), files.keySet().toString());
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = home.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    Console console = new Console(said, said, StandardCharsets.UTF_8, home);
    int code =
        CommandRunner.run(
            new String[] {"publish", "reed-pouch", "--size", "S", "--paper", "a4"},
            console,
            new Workshop.Real());
    String told = said.toString(StandardCharsets.UTF_8);
    assertEquals(0, code, told);
    assertFalse(told.contains("warning:"), told);
    Path pdf = home.resolve("build-output/published/reed-pouch/reed-pouch-1-S-a4.pdf");
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("Fold the tab through the ring"), text);
      assertTrue(text.contains("D-ring"), text);
    }
  }

  @Test
  void everyPictureShownIsThereAndSmall() throws IOException {
    long sum = 0;
    int shown = 0;
    Matcher picture = Pattern.compile("src/readme/[a-z-]+\\.png").matcher(Files.readString(README));
    while (picture.find()) {
      long size = Files.size(Path.of(picture.group()));
      assertTrue(size < 60_000, picture.group() + " has " + size + " bytes");
      sum += size;
      shown++;
    }
    assertTrue(shown >= 5 && sum < 300_000, shown + " pictures with " + sum + " bytes");
  }

  /** Files stand below a paragraph that is nothing but their name, dialogues begin with $ java. */
  private static void read(Path page, Map<String, String> files, List<String> dialogues)
      throws IOException {
    Node node = Parser.builder().build().parse(Files.readString(page)).getFirstChild();
    for (; node != null; node = node.getNext()) {
      if (!(node instanceof FencedCodeBlock block)) {
        continue;
      }
      if (block.getLiteral().startsWith(PROGRAM)) {
        dialogues.add(block.getLiteral());
      } else if (block.getPrevious() instanceof Paragraph paragraph
          && paragraph.getFirstChild() instanceof Code name
          && name.getNext() == null) {
        files.put(name.getLiteral(), block.getLiteral());
      }
    }
  }
}
