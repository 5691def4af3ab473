package org.lapmark.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.finding.Position;

/**
 * The steps in their order, numbered from 1 through the document and grouped by stage.
 *
 * @param stages the stages in the order they begin; one that comes again is listed again
 */
public record Steps(List<Stage> stages) {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:['’.-][\\p{L}\\p{N}]+)*");

  /** Copies the list. */
  public Steps {
    stages = List.copyOf(stages);
  }

  /**
   * Steps that follow each other under one heading.
   *
   * @param name the heading
   * @param steps the steps
   */
  public record Stage(List<Inline> name, List<Step> steps) {
    /** Copies the lists. */
    public Stage {
      name = List.copyOf(name);
      steps = List.copyOf(steps);
    }
  }

  /**
   * One step.
   *
   * @param number its number in the document, from 1
   * @param id its name in cross-references
   * @param title its heading
   * @param body what the maker does
   * @param position where its id stands
   */
  public record Step(
      int number, String id, List<Inline> title, Manuscript body, Position position) {
    /** Copies the list. */
    public Step {
      title = List.copyOf(title);
    }
  }

  /**
   * Every step.
   *
   * @return the steps by number
   */
  public List<Step> all() {
    return stages.stream().flatMap(stage -> stage.steps().stream()).toList();
  }

  /**
   * A step by its id.
   *
   * @param id the id
   * @return the first step that bears it
   */
  public Optional<Step> step(String id) {
    return all().stream().filter(step -> step.id().equals(id)).findFirst();
  }

  /**
   * Every placeholder of stages, titles and bodies.
   *
   * @return the placeholders in reading order
   */
  public List<Inline.Value> values() {
    List<Inline.Value> values = new ArrayList<>();
    for (Stage stage : stages) {
      values.addAll(Manuscript.values(stage.name()));
      for (Step step : stage.steps()) {
        values.addAll(Manuscript.values(step.title()));
        values.addAll(step.body().values());
      }
    }
    return Collections.unmodifiableList(values);
  }

  /**
   * The words that titles and bodies are made of; figures aside.
   *
   * @return the words as written
   */
  public SortedSet<String> words() {
    SortedSet<String> words = new TreeSet<>();
    Matcher matcher = WORD.matcher(plain());
    while (matcher.find()) {
      words.add(matcher.group());
    }
    return Collections.unmodifiableSortedSet(words);
  }

  /**
   * Which abbreviations the steps use, so that only these are explained.
   *
   * @param known abbreviations, in their order; upper and lower case differ
   * @return those that occur as whole words in a title or a body, figures aside
   */
  public List<String> abbreviations(Collection<String> known) {
    String plain = plain();
    return known.stream().filter(word -> occurs(word, plain)).toList();
  }

  private static boolean occurs(String word, String text) {
    for (int at = word.isEmpty() ? -1 : text.indexOf(word); at >= 0; ) {
      int end = at + word.length();
      if ((at == 0 || !inWord(text.codePointBefore(at)))
          && (end == text.length() || !inWord(text.codePointAt(end)))) {
        return true;
      }
      at = text.indexOf(word, at + 1);
    }
    return false;
  }

  private static boolean inWord(int point) {
    return Character.isLetterOrDigit(point);
  }

  private String plain() {
    PlainText writer = PlainText.wordsOnly();
    StringBuilder plain = new StringBuilder();
    for (Step step : all()) {
      plain.append(writer.inlines(step.title())).append('\n');
      plain.append(writer.text(step.body())).append('\n');
    }
    return plain.toString();
  }
}
