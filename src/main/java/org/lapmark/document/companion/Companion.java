package org.lapmark.document.companion;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.manual.DateWords;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.pdf.Program;
import org.lapmark.document.section.Content;
import org.lapmark.document.section.Sections;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.Masthead;
import org.lapmark.source.NoteSource;
import org.lapmark.source.PatternSource;
import org.lapmark.text.Manuscript;
import org.lapmark.text.Steps;
import org.lapmark.text.Targets;
import org.lapmark.text.markdown.ManuscriptReader;
import org.lapmark.text.markdown.StepsReader;
import org.lapmark.wording.Wording;

/**
 * A pattern's companion: one HTML file with everything that is read while sewing, in every size and
 * in metric and inches. The file is complete in itself and its own policy forbids it to ask for
 * anything; without its script it can still be read, all sizes side by side. It is set in the
 * reader's own fonts: what a page on a screen needs is their size, and a font inside would make the
 * file many times larger.
 *
 * @param patterns the pattern in every size of the page, in the order of the size table; without
 *     errors
 * @param figures whether figures are drawn; without them it only shows what is wrong elsewhere
 */
public record Companion(List<EvaluatedPattern> patterns, boolean figures) implements Document {
  private static final String PAGE = "companion/companion.ftlh";
  private static final String STYLE = "companion/companion.css.ftl";
  private static final String SCRIPT = "companion/companion.js";

  private static final String ABBREVIATION = "abbreviation.";

  /** Checks that there is a size. */
  public Companion {
    patterns = List.copyOf(patterns);
    if (patterns.isEmpty()) {
      throw new IllegalArgumentException("a companion has at least one size");
    }
  }

  /** A whole companion. */
  public Companion(List<EvaluatedPattern> patterns) {
    this(patterns, true);
  }

  /** The same, for who knows already that the figures can be drawn. */
  public Companion withoutFigures() {
    return new Companion(patterns, false);
  }

  @Override
  public byte[] write(DocumentWriter documents, Findings findings) {
    PatternSource source = patterns.get(0).source();
    Wording wording = documents.wording(source.masthead().language());
    CompanionSizes sizes = new CompanionSizes(patterns, wording, findings);
    Map<String, Object> model = new LinkedHashMap<>();
    masthead(sizes, model);
    new CompanionLists(sizes, documents).describe(model);
    texts(documents, sizes, model);
    // Style and script as they will stand between their tags: the policy names their hashes.
    String style = "\n" + documents.engine().fill(STYLE, model, wording);
    String script = "\n//<![CDATA[\n" + documents.templates().text(SCRIPT) + "//]]>\n";
    model.put("style", style);
    model.put("styleHash", hash(style));
    model.put("script", script);
    model.put("scriptHash", hash(script));
    return documents.setting().wellFormed(PAGE, model, wording).getBytes(StandardCharsets.UTF_8);
  }

  private static void masthead(CompanionSizes sizes, Map<String, Object> model) {
    PatternSource source = sizes.source();
    Masthead masthead = source.masthead();
    model.put("language", masthead.language().toLanguageTag());
    model.put("title", masthead.title().text());
    model.put("studio", masthead.studio().text());
    if (masthead.designer() != null) {
      model.put("designer", masthead.designer().text());
    }
    model.put("edition", masthead.edition().text());
    model.put("date", DateWords.inWords(masthead.date(), sizes.wording().locale()));
    model.put("summary", sizes.html(masthead.summary()));
    model.put("copyright", sizes.html(masthead.copyright()));
    model.put("note", sizes.html(masthead.note()));
    model.put("program", Program.name());
    boolean every = sizes.names().size() == source.sizes().sizes().size();
    if (!every) {
      String between = sizes.wording().text("list.between");
      model.put(
          "onlySizes",
          sizes
              .wording()
              .text("companion.only", Map.of("sizes", String.join(between, sizes.names()))));
    }
    model.put(
        "memory",
        source.folder()
            + " "
            + masthead.edition().text()
            + (every ? "" : " " + String.join(" ", sizes.names())));
    model.put("units", CompanionUnits.chosen(masthead.form()).id());
    model.put("sizes", sizes.names());
    model.put("typical", sizes.names().get(sizes.typical()));
  }

  private void texts(DocumentWriter documents, CompanionSizes sizes, Map<String, Object> model) {
    PatternSource source = sizes.source();
    Steps steps =
        StepsReader.read(source.steps(), Targets.of(source, Sections.pages()), sizes.findings());
    Hazards hazards = sizes.hazards();
    List<Map<String, Object>> all = new ArrayList<>();
    for (String hazard : hazards.gathered()) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("title", hazards.title(hazard));
      one.put(
          "text",
          sizes.html(
              sizes.sized(
                  (pattern, form) ->
                      hazards.text(hazard, pattern, form, sizes.findings()).orElse(null))));
      all.add(one);
    }
    List<String> sections =
        Sections.ids(new Content(source, steps, hazards, Optional.empty(), false));
    model.put("abbreviations", abbreviations(steps, sizes.wording()));
    CompanionFigures drawn = new CompanionFigures(sizes, figures, documents);
    CompanionText text = new CompanionText(sizes, drawn, steps, sections);
    Map<String, String> notes = new LinkedHashMap<>();
    Targets targets =
        Targets.of(source, Sections.pages())
            .withSteps(steps.all().stream().map(Steps.Step::id).toList());
    for (NoteSource note : source.notes()) {
      Manuscript manuscript = ManuscriptReader.read(note.body(), targets, sizes.findings());
      notes.put(note.name(), text.text(manuscript, 2, "note-" + notes.size()));
    }
    model.put("notes", notes);
    drawn.cover().ifPresent(cover -> model.put("cover", cover));
    model.put("cautions", all);
    model.put("use", hazards.inUse());
    model.put("stages", stages(steps, text, drawn, hazards));
    model.put("steps", steps.all().size());
    model.put("figures", drawn.count());
    if (drawn.count() > 0) {
      model.put("key", drawn.key());
    }
    List<String> progress = new ArrayList<>();
    for (int done = 0; done <= steps.all().size(); done++) {
      progress.add(
          sizes
              .wording()
              .text("companion.progress", Map.of("done", done, "steps", steps.all().size())));
    }
    model.put("progress", progress);
  }

  /** What the steps' abbreviations stand for; those that none uses aren't listed. */
  private static List<String> abbreviations(Steps steps, Wording wording) {
    List<String> known =
        wording.messages().keySet().stream()
            .filter(key -> key.startsWith(ABBREVIATION))
            .map(key -> key.substring(ABBREVIATION.length()))
            .toList();
    return steps.abbreviations(known).stream()
        .map(
            used ->
                wording.text(
                    "companion.abbreviation",
                    Map.of("short", used, "meaning", wording.text(ABBREVIATION + used))))
        .toList();
  }

  private static List<Map<String, Object>> stages(
      Steps steps, CompanionText text, CompanionFigures figures, Hazards hazards) {
    List<List<String>> cautions = hazards.atEveryStep();
    List<Map<String, Object>> stages = new ArrayList<>();
    for (Steps.Stage stage : steps.stages()) {
      List<Map<String, Object>> written = new ArrayList<>();
      for (Steps.Step step : stage.steps()) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("number", step.number());
        one.put("id", step.id());
        one.put("title", text.line(step.title()));
        one.put("label", text.plain(step.title()));
        one.put("cautions", cautions.get(step.number() - 1));
        one.put("text", text.text(step.body(), 4, "step-" + step.id()) + figures.film(step.id()));
        written.add(one);
      }
      Map<String, Object> group = new LinkedHashMap<>();
      group.put("name", text.line(stage.name()));
      group.put("steps", written);
      stages.add(group);
    }
    return stages;
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
