package org.lapmark;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.lapmark.finding.Finding;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.Result;
import org.lapmark.publish.TemplateFolder;
import org.lapmark.publish.request.Request;

/** Makes the pictures of figures for the reference, and those of the demo pattern for README.md. */
public final class ReadmePictures {
  private static final Path DEMO = Path.of("content", "towpath-handlebar-bag");
  private static final Path PICTURES = Path.of("src", "readme");
  private static final String SIZE = "M";
  private static final float DPI = 62;
  private static final List<String> BROWSERS =
      List.of("chromium", "chromium-browser", "google-chrome");
  private static final int PHONE_WIDTH = 400;
  private static final int PHONE_HEIGHT = 660;
  private static final String READER =
      """
      var size = document.getElementById('choose-size');
      size.selectedIndex = 2;
      size.dispatchEvent(new Event('change'));
      window.addEventListener('load', function () {
        document.documentElement.style.scrollBehavior = 'auto';
        document.getElementById('step-ends').scrollIntoView();
      });
      """;
  private static final long MOST_SECONDS = 120;

  private ReadmePictures() {}

  /**
   * Makes the pictures, and prints what was made.
   *
   * @param arguments none
   * @throws IOException when something can't be read or written
   * @throws InterruptedException when interrupted while the browser works
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    SpecimenPictures.make();
    Path folder = Files.createTempDirectory("readme");
    try {
      Result result =
          new Publisher(TemplateFolder.bundled())
              .publish(DEMO, new Request(List.of(), List.of(Paper.A4), folder));
      List<Finding> findings = result.findings().sorted();
      if (result.written().isEmpty()) {
        throw new IllegalStateException("the demo can't be published: " + findings);
      }
      pages(written(result, "-" + SIZE + "-a4.pdf"));
      companion(written(result, ".html"), folder);
    } finally {
      delete(folder);
    }
  }

  private static Path written(Result result, String end) {
    return result.written().stream()
        .filter(file -> file.getFileName().toString().endsWith(end))
        .findFirst()
        .orElseThrow();
  }

  private static void pages(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      PDFRenderer renderer = new PDFRenderer(document);
      picture("cover", renderer.renderImageWithDPI(0, DPI, ImageType.GRAY));
      picture("printing", renderer.renderImageWithDPI(1, DPI, ImageType.GRAY));
      picture(
          "step",
          renderer.renderImageWithDPI(page(document, "Baste the open"), DPI, ImageType.GRAY));
      picture("map", renderer.renderImageWithDPI(page(document, "Page map"), DPI, ImageType.GRAY));
      picture(
          "tile",
          renderer.renderImageWithDPI(document.getNumberOfPages() - 1, DPI, ImageType.GRAY));
    }
  }

  /** The last page with a text: the contents name headings, too, but before them. */
  private static int page(PDDocument document, String text) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    for (int page = document.getNumberOfPages(); page > 0; page--) {
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      if (stripper.getText(document).contains(text)) {
        return page - 1;
      }
    }
    throw new IllegalStateException("no page says " + text);
  }

  /** The companion at a step, as a browser shows it; without a browser its picture stays. */
  private static void companion(Path file, Path folder) throws IOException, InterruptedException {
    Optional<Path> browser = browser();
    if (browser.isEmpty()) {
      System.err.println("companion.png stays: none of " + String.join(", ", BROWSERS));
      return;
    }
    Path shot = folder.resolve("companion.png");
    // Its policy lets no script but its own choose the size and turn to the step.
    Path copy =
        Files.writeString(
            folder.resolve("copy.html"),
            Files.readString(file)
                .replaceFirst("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", "")
                .replace("</body>", "<script>" + READER + "</script></body>"));
    // A window isn't narrower than 500 pixels; a frame may be.
    Path phone =
        Files.writeString(
            folder.resolve("phone.html"),
            "<!DOCTYPE html><body style='margin: 0'><iframe style='border: 0' width='"
                + PHONE_WIDTH
                + "' height='"
                + PHONE_HEIGHT
                + "' src='"
                + copy.toUri()
                + "'></iframe>");
    Process process =
        new ProcessBuilder(
                browser.get().toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--hide-scrollbars",
                "--no-first-run",
                "--disable-background-networking",
                "--user-data-dir=" + folder.resolve("profile"),
                "--window-size=500," + (PHONE_HEIGHT + 200),
                "--virtual-time-budget=20000",
                "--screenshot=" + shot,
                phone.toUri().toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log.txt").toFile())
            .start();
    try {
      if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS) || !Files.exists(shot)) {
        throw new IllegalStateException("the browser made no picture");
      }
    } finally {
      process.destroyForcibly();
    }
    picture("companion", ImageIO.read(shot.toFile()).getSubimage(0, 0, PHONE_WIDTH, PHONE_HEIGHT));
  }

  private static Optional<Path> browser() {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return BROWSERS.stream()
        .flatMap(
            name ->
                Stream.of(path.split(Pattern.quote(File.pathSeparator)))
                    .map(place -> Path.of(place, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  private static void picture(String name, BufferedImage page) throws IOException {
    GreyPicture.framed(PICTURES.resolve(name + ".png"), page);
  }

  private static void delete(Path folder) throws IOException {
    List<Path> paths;
    try (Stream<Path> walk = Files.walk(folder)) {
      paths = walk.sorted(java.util.Comparator.reverseOrder()).toList();
    }
    for (Path path : paths) {
      Files.deleteIfExists(path);
    }
  }
}
