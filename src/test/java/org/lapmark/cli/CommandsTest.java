package org.lapmark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.cli.console.Console;
import org.lapmark.finding.Findings;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.EvaluatedFolder;
import org.lapmark.publish.Listener;
import org.lapmark.publish.Outcome;
import org.lapmark.publish.Result;
import org.lapmark.publish.product.Products;
import org.lapmark.publish.request.RefusedException;
import org.lapmark.publish.request.Request;

class CommandsTest {
  private static final String UNWRITABLE =
      "standard output can't be written: its disk is full, or whoever read it has stopped";

  @TempDir Path home;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final List<Path> asked = new ArrayList<>();
  private Request request;
  private List<String> walked;
  private Findings findings = new Findings();
  private Throwable failure;
  private RuntimeException refusal;
  private boolean full;

  /** Does no work, but says what a test wants to hear. */
  private final class IdleWorkshop implements Workshop {
    @Override
    public List<Outcome> publish(
        Path templates, List<Path> folders, Request wanted, Listener listener) {
      request = wanted;
      return outcomes(folders, listener, true);
    }

    @Override
    public List<Outcome> check(Path templates, List<Path> folders, Listener listener) {
      return outcomes(folders, listener, false);
    }

    @Override
    public List<EvaluatedFolder> walk(List<Path> folders, List<String> sizes) {
      walked = sizes;
      return outcomes(folders, new Listener() {}, false).stream()
          .map(outcome -> new EvaluatedFolder(outcome, List.of()))
          .toList();
    }

    @Override
    public List<EvaluatedFolder> grade(
        List<Path> folders, List<String> sizes, SortedMap<String, String> choices) {
      return walk(folders, sizes);
    }

    private List<Outcome> outcomes(List<Path> folders, Listener listener, boolean writes) {
      if (refusal != null) {
        throw refusal;
      }
      asked.addAll(folders);
      List<Outcome> outcomes = new ArrayList<>();
      for (Path folder : folders) {
        listener.begun(folder, 1, 3);
        List<Path> written =
            writes && !findings.hasErrors() && failure == null
                ? List.of(request.output().resolve(folder.getFileName()).resolve("größe.pdf"))
                : List.of();
        Outcome outcome =
            new Outcome(folder, new Result(written, findings), Optional.ofNullable(failure));
        listener.ended(outcome);
        outcomes.add(outcome);
      }
      return outcomes;
    }
  }

  @Test
  void publishesWhatIsInContent() throws IOException {
    for (String name : List.of("tote", "hat", ".git")) {
      Files.createDirectories(home.resolve("content").resolve(name));
    }
    Files.writeString(home.resolve("content/readme.txt"), "x");
    assertEquals(0, run("publish"));
    assertEquals(List.of(home.resolve("content/hat"), home.resolve("content/tote")), asked);
    assertEquals(
        "build-output/published/hat/größe.pdf\nbuild-output/published/tote/größe.pdf\n", result());
    assertEquals(
        "lapmark: publishing content/hat: 1 size on 3 papers\n"
            + "lapmark: publishing content/tote: 1 size on 3 papers\n",
        talk());
  }

  @Test
  void saysWhatIsMissingWithoutContent() throws IOException {
    assertEquals(2, run("publish"));
    assertEquals(
        "lapmark: no pattern folder was given, and there is no folder ‘content’ here\n", talk());
    Files.createDirectory(home.resolve("content"));
    assertEquals(2, run("publish"));
  }

  @Test
  void aFolderOfPatternsIsNotAPattern() throws IOException {
    Path hat = Files.createDirectories(home.resolve("content/hat"));
    // Nothing in it is a pattern yet: what is missing is for its findings to say.
    assertEquals(0, run("check", "content"));
    Files.createFile(hat.resolve("pattern.yaml"));
    for (String command : List.of("publish", "check", "walk", "grade")) {
      asked.clear();
      err.reset();
      assertEquals(2, run(command, "content"));
      assertTrue(
          talk().contains("it holds pattern folders: name one of them, such as ‘content/hat’"),
          talk());
      assertEquals(List.of(), asked);
    }
    assertEquals(0, run("check", "content/hat"));
    // A pattern may hold folders that look like patterns.
    Files.createDirectories(hat.resolve("old"));
    Files.createFile(hat.resolve("old/pattern.yaml"));
    assertEquals(0, run("check", "content/hat"));
  }

  @Test
  void anEmptyNameIsNoFolder() {
    assertEquals(2, run("publish", "tote", "--out", ""));
    assertEquals("lapmark: ‘--out’ names no folder: it is empty\n", talk());
    assertEquals(2, run("publish", "tote", "--templates="));
    assertEquals(2, run("check", ""));
    assertEquals(2, run("walk", "tote", ""));
    assertEquals(List.of(), asked);
    assertEquals(0, run("publish", "tote", "--out", "."));
  }

  @Test
  void aCheckSaysThatAllIsWell() {
    assertEquals(0, run("check", "tote", "hat"));
    assertEquals("lapmark: no errors in 2 sizes\n", talk());
    err.reset();
    assertEquals(0, run("check", "tote", "--format", "json"));
    assertEquals("", talk());
    findings = Samples.findings(Samples.Code.TOO_LONG);
    assertEquals(0, run("check", "tote"));
    assertTrue(talk().endsWith("lapmark: 1 warning\nlapmark: no errors in 1 size\n"), talk());
    findings = Samples.findings(Samples.Code.ODD_NAME);
    err.reset();
    run("check", "tote");
    assertTrue(!talk().contains("no errors"), talk());
  }

  @Test
  void handsOverSizesPapersAndOutput() {
    assertEquals(
        0,
        run("publish", "a", "--size", "S,M", "--size=M", "--paper=A4,shared", "--out", "o/../p"));
    assertEquals(List.of("S", "M"), request.sizes());
    assertEquals(List.of(Paper.A4, Paper.SHARED), request.papers());
    assertEquals("o/../p/a/größe.pdf\n", result());
    assertFalse(request.extras().contains(Products.WALK));
    assertEquals(0, run("publish", "a", "--with-walk"));
    assertTrue(request.extras().contains(Products.WALK));
  }

  @Test
  void handsOverChoices() {
    assertEquals(
        0, run("publish", "a", "--option", "trim=no", "--option=closure=flap", "--option=trim=no"));
    assertEquals("{closure=flap, trim=no}", request.choices().toString());
  }

  @Test
  void takesAFolderNamedLikeAnArgumentFile() {
    assertEquals(0, run("publish", "@a"));
    assertEquals(List.of(home.resolve("@a")), asked);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "publish a --papr a4 | there is no option ‘--papr’; did you mean ‘--paper’?",
        "publish a --papr=a4 | there is no option ‘--papr’; did you mean ‘--paper’?",
        "publish a --size , | ‘--size’ names nothing",
        "walk a --size=,, | ‘--size’ names nothing",
        "publish a --paper a5 | there is no paper ‘a5’; did you mean ‘a4’?",
        "publish a --paper leter | did you mean ‘letter’? (papers: a4, letter, shared, a0, roll36,"
            + " projector)",
        "publish a --measured 178.6 | ‘178.6’ is no pair of measurements in millimetres",
        "publish a --measured 168x239 | no printer is more than 6 % out",
        "publish a --measured 180x255 | no printer is more than 6 % out",
        "publish a --option trim | ‘trim’ doesn't say what is chosen; write it as name=choice",
        "publish a --option trim= | ‘trim=’ doesn't say what is chosen",
        "publish a --option t=yes --option t=no | two choices are given for the option ‘t’",
        "publish a --paper | Missing required parameter for option '--paper'",
        "walk a --format sarif | there is no format ‘sarif’ (formats: text, csv, json)",
        "walk | Missing required parameter: 'FOLDER'",
        "grade a --format sarif | there is no format ‘sarif’ (formats: text, csv, json)",
        "grade a --option trim | ‘trim’ doesn't say what is chosen; write it as name=choice",
        "check a --format jsn | there is no format ‘jsn’; did you mean ‘json’?",
        "check | Missing required parameter: 'FOLDER'",
        "chek a | there is no command ‘chek’; did you mean ‘check’?",
        "'' | Usage: lapmark"
      })
  void answersWrongUsage(String line, String expected) {
    assertEquals(2, run(line.isEmpty() ? new String[0] : line.split(" ")));
    assertTrue(talk().contains(expected), talk());
    assertEquals("", result());
    assertEquals(List.of(), asked);
  }

  @Test
  void aRefusedRequestIsWrongUsage() {
    refusal = new RefusedException("‘tote’ has no size ‘XM’");
    assertEquals(2, run("publish", "tote", "--size", "XM"));
    assertEquals("lapmark: ‘tote’ has no size ‘XM’\n", talk());
  }

  @Test
  void errorsAndFailuresHaveTheirCodes() {
    findings = Samples.findings(Samples.Code.TOO_LONG);
    assertEquals(0, run("publish", "tote"));
    findings = Samples.findings(Samples.Code.ODD_NAME);
    assertEquals(1, run("publish", "tote"));
    assertEquals(1, run("check", "tote"));
    assertEquals(1, run("check", "tote", "--format", "json"));
    failure = new AccessDeniedException(home.resolve("tote/pattern.yaml").toString());
    err.reset();
    assertEquals(3, run("check", "--format=sarif", "tote"));
    assertEquals("lapmark: tote/pattern.yaml: access is denied\n", talk());
  }

  @Test
  void aFileWhereAFolderIsMeantIsCalledOne() throws IOException {
    Path file = Files.createFile(home.resolve("tote.pdf"));
    failure = new NotDirectoryException(file.toString());
    assertEquals(3, run("check", "tote.pdf"));
    assertEquals("lapmark: tote.pdf: it is a file, not a folder\n", talk());
    failure = new NotDirectoryException(home.resolve("purse").toString());
    err.reset();
    assertEquals(3, run("check", "purse"));
    assertEquals("lapmark: purse: there is no such folder\n", talk());
  }

  @Test
  void aFaultOfTheProgramIsOneLine() {
    failure = new IllegalStateException("odd\nand \u001b[31mred");
    assertEquals(3, run("publish", "tote"));
    assertEquals(2, talk().lines().count());
    assertTrue(talk().contains("lapmark: tote: the program failed, please report this: "), talk());
    assertTrue(talk().contains("odd\\u000aand \\u001b[31mred"), talk());
    failure = null;
    refusal = new IllegalStateException("odd");
    err.reset();
    assertEquals(3, run("check", "tote"));
    assertEquals(1, talk().lines().count());
  }

  @Test
  void textFindingsGoToStandardErrorAndReportsToStandardOutput() {
    findings = Samples.findings(Samples.Code.ODD_NAME);
    run("check", "tote");
    assertEquals("", result());
    assertTrue(talk().endsWith("lapmark: 1 error\n"), talk());
    err.reset();
    run("check", "tote", "--format", "json");
    assertTrue(result().startsWith("{\n"), result());
    assertEquals("", talk());
  }

  @Test
  void aWalkTalksOfFindingsApartFromItsResult() {
    assertEquals(0, run("walk", "tote", "--size", "S,M,S", "--format", "csv"));
    assertEquals(List.of(home.resolve("tote")), asked);
    assertEquals(List.of("S", "M"), walked);
    assertEquals(1, result().lines().count());
    findings = Samples.findings(Samples.Code.ODD_NAME);
    assertEquals(1, run("walk", "tote"));
    assertTrue(talk().endsWith("lapmark: 1 error\n"), talk());
  }

  @Test
  void whoeverNamesThePatternsFileMeansItsFolder() throws IOException {
    Path tote = Files.createDirectories(home.resolve("tote"));
    Files.createFile(tote.resolve("pattern.yaml"));
    for (String command : List.of("publish", "check", "walk", "grade")) {
      asked.clear();
      assertEquals(0, run(command, "tote/pattern.yaml"));
      assertEquals(List.of(tote), asked);
    }
    // A folder of that name is a folder.
    Files.createDirectories(home.resolve("pattern.yaml"));
    asked.clear();
    assertEquals(0, run("check", "pattern.yaml"));
    assertEquals(List.of(home.resolve("pattern.yaml")), asked);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--help",
        "--version",
        "check --help",
        "publish tote",
        "check tote --format json",
        "check tote --format sarif",
        "walk tote --format csv",
        "walk tote --format json",
        "grade tote --format csv",
        "grade tote --format json"
      })
  void whatCannotBeWrittenIsAFailure(String line) {
    assertEquals(0, run(line.split(" ")));
    full = true;
    err.reset();
    assertEquals(3, run(line.split(" ")));
    assertTrue(talk().endsWith("lapmark: " + UNWRITABLE + "\n"), talk());
    // An error in a folder isn't all that is wrong then.
    findings = Samples.findings(Samples.Code.ODD_NAME);
    assertEquals(line.startsWith("publish") ? 1 : 3, run(line.split(" ")));
  }

  @Test
  void findingsThatCannotBeWrittenAreAFailure() {
    findings = Samples.findings(Samples.Code.TOO_LONG);
    Console console = new Console(out, new Full(), StandardCharsets.UTF_8, home);
    String[] line = {"check", "tote"};
    assertEquals(3, CommandRunner.run(line, console, new IdleWorkshop()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "o u\\t/größe | o u\\t/größe/a/größe.pdf",
        "a\"b | a\"b/a/größe.pdf",
        "\"ab | \"\\\"ab/a/größe.pdf\"",
        "x«10»y | \"x\\ny/a/größe.pdf\"",
        "x«9»y | \"x\\ty/a/größe.pdf\"",
        "x«27»[31m\\ | \"x\\u001b[31m\\\\/a/größe.pdf\"",
        "x«133»y | \"x\\u0085y/a/größe.pdf\"",
        "x«8238»y | \"x\\u202ey/a/größe.pdf\""
      })
  void writtenPathsAreOneLineEach(String folder, String expected) {
    String name =
        Pattern.compile("«([0-9]+)»")
            .matcher(folder)
            .replaceAll(match -> Character.toString(Integer.parseInt(match.group(1))));
    assertEquals(0, run("publish", "a", "--out", name));
    assertEquals(expected + "\n", result());
  }

  @Test
  void pathsBeyondTheTerminalsLettersAreEscaped() {
    Console console = new Console(out, err, StandardCharsets.ISO_8859_1, home);
    String[] line = {"publish", "a", "--out", "ł"};
    assertEquals(0, CommandRunner.run(line, console, new IdleWorkshop()));
    assertEquals("\"\\u0142/a/größe.pdf\"\n", out.toString(StandardCharsets.ISO_8859_1));
  }

  @Test
  void helpAndVersionAreResults() {
    assertEquals(0, run("--version"));
    assertTrue(result().matches("Lapmark [0-9]+(\\.[0-9]+)+\n"), result());
    out.reset();
    assertEquals(0, run("publish", "--help"));
    assertTrue(result().contains("--templates"), result());
    assertEquals("", talk());
  }

  private int run(String... arguments) {
    return CommandRunner.run(
        arguments,
        new Console(full ? new Full() : out, err, StandardCharsets.UTF_8, home),
        new IdleWorkshop());
  }

  /** A disk without room. */
  private static final class Full extends OutputStream {
    @Override
    public void write(int b) throws IOException {
      throw new IOException("No space left on device");
    }
  }

  private String result() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String talk() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
