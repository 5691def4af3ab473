package org.lapmark.check.care;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.check.rule.CareCode;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Phrases;
import org.lapmark.check.rule.PrintedTexts;
import org.lapmark.check.rule.Prose;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.CareSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.ThingKind;

/** A step names the heat, the blade or the machine that its words call for. */
public final class TaskCheck {
  public static final Rule<Evaluated> RULE = new Rule<>(TaskCheck::run, CareCode.STEP_TOOL_MISSING);

  /** Where a sentence, or a part of one, ends. */
  private static final Pattern END = Pattern.compile("[.!?;:](?=\\s)|\\n[ \\t]*\\n");

  /** So far back the word before another is looked for. */
  private static final int LONGEST_WORD = 60;

  private static final Pattern WORD_BEFORE = Pattern.compile("([\\p{L}\\p{N}’'-]+)[*_\\s]*$");

  /** What is done with a tool that calls for care. */
  private enum Task {
    /** With an iron. */
    PRESS("iron"),
    /** With a flame. */
    MELT("melting"),
    /** With a blade. */
    CUT("blades"),
    /** With a blade, or with a clip that holds. */
    CLIP("blades", ThingKind.CLIPS),
    /** With a machine, or with a needle. */
    SEW("machine", ThingKind.NEEDLE);

    private final String hazard;
    private final List<ThingKind> instead;

    Task(String hazard, ThingKind... instead) {
      this.hazard = hazard;
      this.instead = List.of(instead);
    }

    private String key() {
      return "task." + name().toLowerCase(Locale.ROOT) + ".sought";
    }
  }

  private final PatternSource source;
  private final CareWords words;
  private final Findings findings;
  private final Map<String, Set<Task>> byThing = new LinkedHashMap<>();

  TaskCheck(PatternSource source, CareWords words, Findings findings) {
    this.source = source;
    this.words = words;
    this.findings = findings;
    source.making().tools().forEach(tool -> add(tool.id(), tool.name(), tool.care(), true));
    PrintedTexts.things(source)
        .forEach(thing -> add(thing.id(), thing.name(), thing.care(), false));
  }

  /** What a thing can do by its kind or hazards; where neither is stated, by its name. */
  private void add(SourceText id, TemplateText name, CareSource care, boolean tool) {
    String text = name.source().text().replace('_', ' ');
    Set<Task> tasks = new LinkedHashSet<>();
    Set<String> hazards = new LinkedHashSet<>(care.nature());
    if (!care.isSaid()) {
      for (ThingKind kind : ThingKind.values()) {
        if ((tool || kind.group() == ThingKind.Group.PART) && words.sounds(kind, text)) {
          hazards.addAll(kind.hazards());
        }
      }
    }
    for (Task task : Task.values()) {
      if (hazards.contains(task.hazard)
          || task.instead.stream()
              .anyMatch(
                  kind ->
                      care.kinds().contains(kind)
                          || care.kinds().isEmpty() && words.sounds(kind, text))) {
        tasks.add(task);
      }
    }
    byThing.put(id.text(), tasks);
  }

  static void run(Evaluated evaluated, Findings findings) {
    new TaskCheck(evaluated.source(), evaluated.sought(), findings).run();
  }

  void run() {
    for (StepSource step : source.steps()) {
      Set<Task> named = new LinkedHashSet<>();
      step.uses()
          .forEach(use -> named.addAll(byThing.getOrDefault(use.text(), Collections.emptySet())));
      for (Task task : Task.values()) {
        if (!named.contains(task) && (task != Task.SEW || hasMachine())) {
          check(step, task);
        }
      }
    }
  }

  /** Where no machine is stated, a pattern may be sewn by hand. */
  private boolean hasMachine() {
    return source.making().tools().stream()
        .anyMatch(
            tool ->
                byThing.get(tool.id().text()).contains(Task.SEW)
                    && isMachine(tool.care(), tool.name()));
  }

  private boolean isMachine(CareSource care, TemplateText name) {
    return care.nature().contains(Task.SEW.hazard)
        || !care.isSaid() && words.sounds(ThingKind.MACHINE, name.source().text());
  }

  private void check(StepSource step, Task task) {
    for (SourceText text : List.of(step.title(), step.body())) {
      String prose = Prose.of(text);
      Optional<Phrases.Span> done = done(prose, task);
      if (done.isPresent()) {
        Phrases.Span span = done.get();
        String tool =
            byThing.entrySet().stream()
                .filter(entry -> entry.getValue().contains(task))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
        findings.add(
            CareCode.STEP_TOOL_MISSING,
            text.position(span.start(), span.end()),
            "word",
            prose.substring(span.start(), span.end()),
            "task",
            task.name(),
            "stated",
            tool.isEmpty() ? "no" : "yes",
            "tool",
            tool);
        return;
      }
    }
  }

  /** Where a text first says that a job is done. */
  private Optional<Phrases.Span> done(String prose, Task task) {
    Matcher end = END.matcher(prose);
    for (int from = 0; from < prose.length(); ) {
      int to = end.find() ? end.end() : prose.length();
      String said = prose.substring(from, to);
      if (task != Task.SEW || !words.list("task.by-hand.sought").in(said)) {
        for (Phrases.Span span : words.list(task.key()).all(said)) {
          if (isDone(said, span.start())) {
            return Optional.of(new Phrases.Span(from + span.start(), from + span.end()));
          }
        }
      }
      from = to;
    }
    return Optional.empty();
  }

  /** Not behind an article, a negation or the like; a comma between them parts them. */
  private boolean isDone(String said, int at) {
    Matcher word = WORD_BEFORE.matcher(said.substring(Math.max(0, at - LONGEST_WORD), at));
    return !word.find() || !words.list("task.otherwise.sought").in(word.group(1));
  }
}
