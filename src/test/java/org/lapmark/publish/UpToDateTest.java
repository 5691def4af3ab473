package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.template.Templates;
import org.lapmark.finding.FindingText;
import org.lapmark.print.paper.Correction;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.product.Products;
import org.lapmark.publish.request.Papers;
import org.lapmark.publish.request.Presentation;
import org.lapmark.publish.request.Request;

/** A run over what hasn't changed makes nothing; whatever did change is made. */
class UpToDateTest {
  private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

  @TempDir Path home;
  private Path folder;
  private Path output;
  private final List<String> told = new ArrayList<>();
  private final List<String> omitted = new ArrayList<>();
  private final Listener listener =
      new Listener() {
        @Override
        public void begun(Path pattern, int sizes, int papers) {
          told.add("making " + pattern.getFileName());
        }

        @Override
        public void upToDate(Path pattern) {
          told.add("nothing to do for " + pattern.getFileName());
        }

        @Override
        public void omitted(Path pattern, String what) {
          omitted.add(what);
        }

        @Override
        public void setAside(Path pattern, String file, String kept) {
          told.add("kept " + kept);
        }
      };

  @BeforeEach
  void prepare() throws IOException {
    output = home.resolve("published");
    folder = pattern("tag");
  }

  private Path pattern(String name) throws IOException {
    Path made = Files.createDirectories(home.resolve(name));
    Files.writeString(made.resolve("sizes.csv"), "measure,unit,S,M\nlong,mm,60,80\n");
    Files.writeString(
        made.resolve("pattern.yaml"),
        """
        format: 1
        title: Tag
        studio: Reed & Rye
        language: en-GB
        edition: {name: "1", date: 2026-03-01}
        materials:
          felt: {name: felt, usable_width: 45 cm (18 in), no_grain: true}
        panels:
          tag: {rectangle: {width: long, height: 30 mm}}
        pieces:
          - {number: 1, name: Tag, panel: tag, allowance: 3 mm, printed: true,
             cut: [{material: felt, count: 1}]}
        """);
    return made;
  }

  private Request request() {
    return new Request(List.of("S"), List.of(Papers.ALL.get(0)), output);
  }

  private List<Path> publish(Request request, Path... folders) throws IOException {
    return publish(TemplateFolder.bundled(), request, folders);
  }

  private List<Path> publish(Templates templates, Request request, Path... folders)
      throws IOException {
    told.clear();
    List<Path> written = new ArrayList<>();
    for (Outcome outcome : new Publisher(templates).publish(List.of(folders), request, listener)) {
      assertTrue(outcome.failure().isEmpty(), outcome.toString());
      assertEquals(List.of(), outcome.result().findings().sorted());
      written.addAll(outcome.result().written());
    }
    return written;
  }

  private void makes(Request request) throws IOException {
    publish(request, folder);
    assertEquals(List.of("making tag"), told);
    publish(request, folder);
    assertEquals(List.of("nothing to do for tag"), told);
  }

  /** Every file of the output with its time, which tells whether it was written again. */
  private Map<String, String> state() throws IOException {
    Map<String, String> state = new TreeMap<>();
    try (Stream<Path> all = Files.walk(output)) {
      for (Path path : all.toList()) {
        state.put(
            output.relativize(path).toString(),
            Files.getLastModifiedTime(path)
                + (Files.isRegularFile(path)
                    ? " "
                        + new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1)
                            .hashCode()
                    : ""));
      }
    }
    return state;
  }

  @Test
  void aSecondRunListsTheSameFilesAndWritesNothing() throws IOException {
    List<Path> first = publish(request(), folder);
    assertFalse(first.isEmpty());
    Map<String, String> before = state();
    assertEquals(first, publish(request(), folder));
    assertEquals(List.of("nothing to do for tag"), told);
    assertEquals(before, state());
  }

  @Test
  void whateverTheFilesDependOnMakesThemAnew() throws IOException {
    makes(request());
    edit("pattern.yaml", text -> text.replace("30 mm", "31 mm"));
    makes(request());
    edit("pattern.yaml", text -> "# a comment\n" + text);
    makes(request());
    edit("sizes.csv", text -> text.replace("80", "81"));
    makes(request());
    Files.createDirectory(folder.resolve("notes"));
    Files.writeString(folder.resolve("notes/introduction.md"), "A tag.\n");
    makes(request());
    Files.delete(folder.resolve("notes/introduction.md"));
    makes(request());
  }

  @Test
  void otherWishesAreOtherRunsAndAreRememberedBesideEachOther() throws IOException {
    List<Request> wishes =
        List.of(
            request(),
            new Request(List.of("M"), List.of(Papers.ALL.get(0)), output),
            new Request(List.of("S"), List.of(Papers.ALL.get(1)), output),
            request().with(Products.WALK),
            request().in(presentation("en-US")),
            new Request(
                List.of("S"),
                List.of(Papers.ALL.get(0).corrected(new Correction(179, 240))),
                output));
    List<String> hashes = new ArrayList<>();
    for (Request wish : wishes) {
      List<Paper> papers = wish.papers();
      hashes.add(Fingerprint.of(folder, wish, papers, "").orElseThrow());
    }
    assertEquals(wishes.size(), hashes.stream().distinct().count());
    publish(wishes.get(0), folder);
    publish(wishes.get(1), folder);
    publish(wishes.get(4), folder);
    for (int each : new int[] {0, 1, 4}) {
      publish(wishes.get(each), folder);
      assertEquals(List.of("nothing to do for tag"), told, "wish " + each);
    }
  }

  private static Presentation presentation(String language) {
    return new Presentation(Optional.of(Locale.forLanguageTag(language)), Optional.empty());
  }

  @Test
  void otherTemplatesOrAnotherProgramMakeThemAnew() throws IOException {
    Templates own = TemplateFolder.bundled();
    publish(own, request(), folder);
    Map<String, byte[]> files = new TreeMap<>(own.files());
    files.put("styles/unused.css.ftl", new byte[] {'/', '*', '*', '/'});
    publish(new Templates(files), request(), folder);
    assertEquals(List.of("making tag"), told);
    assertNotEquals(Fingerprint.common("1", own), Fingerprint.common("2", own));
  }

  @Test
  void whatIsMissingOrAlteredIsMadeAnew() throws IOException {
    List<Path> files = publish(request(), folder);
    Path file = files.get(0);
    byte[] content = Files.readAllBytes(file);
    Files.delete(file);
    publish(request(), folder);
    assertEquals(List.of("making tag"), told);
    assertEquals(content.length, Files.size(file));
    byte[] changed = content.clone();
    changed[content.length / 2] ^= 1;
    Files.write(file, changed);
    Files.setLastModifiedTime(file, LONG_AGO);
    assertEquals(files, publish(request(), folder));
    String name = file.getFileName().toString();
    String kept = name.replace(".pdf", ".changed-1.pdf");
    assertEquals(List.of("making tag", "kept " + kept), told);
    assertArrayEquals(content, Files.readAllBytes(file));
    assertArrayEquals(changed, Files.readAllBytes(file.resolveSibling(kept)));
    publish(request(), folder);
    assertEquals(List.of("nothing to do for tag"), told);
  }

  @Test
  void aRunOverManyGoesOnWhereItWas() throws IOException {
    Path second = pattern("second");
    Path third = pattern("third");
    publish(request(), folder, second);
    publish(request(), folder, second, third);
    assertEquals(
        List.of("nothing to do for tag", "nothing to do for second", "making third"), told);
  }

  @Test
  void aListThatMakesNoSenseIsAsNone() throws IOException {
    publish(request(), folder);
    Path list = output.resolve("tag/.lapmark-runs");
    String sound = Files.readString(list);
    for (String text :
        List.of(
            "",
            "lapmark-runs 9\n",
            sound.replace("run\t", "ran\t"),
            sound.replaceFirst("\t[0-9]+\t", "\t99999999999999999999\t"),
            sound.substring(0, sound.length() - 3),
            sound.replaceFirst("\ttag", "\t../tag"))) {
      Files.writeString(list, text);
      publish(request(), folder);
      assertEquals(List.of("making tag"), told, text);
    }
  }

  @Test
  void aWarningIsToldAgainThoughNothingIsMade() throws IOException {
    edit(
        "pattern.yaml",
        text ->
            text.replace(
                "materials:\n", "materials:\n  twill: {name: twill, usable_width: 140 cm}\n"));
    List<String> warnings = new ArrayList<>();
    for (int run = 0; run < 2; run++) {
      told.clear();
      Outcome outcome =
          new Publisher(TemplateFolder.bundled())
              .publish(List.of(folder), request(), listener)
              .get(0);
      assertEquals(List.of(run == 0 ? "making tag" : "nothing to do for tag"), told);
      assertFalse(outcome.result().written().isEmpty());
      warnings.add(
          outcome.result().findings().sorted().stream()
              .map(finding -> finding + FindingText.message(finding) + FindingText.hint(finding))
              .toList()
              .toString());
    }
    assertTrue(warnings.get(0).length() > 10, warnings.get(0));
    assertEquals(warnings.get(0), warnings.get(1));
  }

  @Test
  void whatIsntMadeIsToldAgain() throws IOException {
    Request walked = request().with(Products.WALK);
    List<List<String>> left = new ArrayList<>();
    for (int run = 0; run < 2; run++) {
      publish(walked, folder);
      left.add(List.copyOf(omitted));
      omitted.clear();
    }
    assertEquals(List.of("nothing to do for tag"), told);
    assertEquals(List.of("no walk: the pattern states no seams"), left.get(0));
    assertEquals(left.get(0), left.get(1));
  }

  @Test
  void aJarIsKnownByWhatIsInIt() throws IOException {
    Path jar = home.resolve("a.jar");
    Set<String> states = new TreeSet<>();
    for (String content : List.of("one", "two", "one")) {
      try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar))) {
        zip.putNextEntry(new ZipEntry("A.class"));
        zip.write(content.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
      states.add(ProgramIdentity.jar(jar));
    }
    assertEquals(2, states.size());
    assertTrue(ProgramIdentity.running().orElseThrow().contains("Lapmark.class"));
  }

  private void edit(String file, UnaryOperator<String> change) throws IOException {
    Path path = folder.resolve(file);
    Files.writeString(path, change.apply(Files.readString(path)));
  }
}
