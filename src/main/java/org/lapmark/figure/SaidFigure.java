package org.lapmark.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.scene.Words;

/**
 * A figure in words, for readers who can’t see it: what its pictures say of themselves, and what is
 * lettered in them beyond that. Whatever a sentence begins with, it begins with a capital.
 */
final class SaidFigure {
  private final Words words;
  private final List<String> sentences = new ArrayList<>();
  private final Set<String> remarks = new LinkedHashSet<>();

  SaidFigure(Words words) {
    this.words = words;
  }

  /**
   * What is lettered in a picture.
   *
   * @param words all but dimensions and numbers
   * @param numbers the numbers in rings
   * @param lengths the dimensions by the side on which they stand, in its order
   */
  record Lettered(List<String> words, List<Integer> numbers, Map<Beside, List<String>> lengths) {
    /** Reads it off what is drawn, at any scale. */
    static Lettered on(Canvas canvas) {
      Map<Beside, List<String>> lengths = new EnumMap<>(Beside.class);
      canvas.measured().forEach((beside, words) -> lengths.put(beside, List.copyOf(words)));
      return new Lettered(
          canvas.lettered(), canvas.numbers(), Collections.unmodifiableMap(lengths));
    }
  }

  /**
   * Says a picture.
   *
   * @param picture what is shown
   * @param lettered what is lettered in it
   */
  void add(FigureLayout.Picture picture, Lettered lettered) {
    picture.title().ifPresent(title -> say(words.word("alt.titled", "title", title)));
    List<String> own = picture.scene().inWords(words);
    own.forEach(this::say);
    letterings(lettered, own);
    lettered.lengths.forEach(this::measured);
    Set<Integer> numbers = new TreeSet<>(lettered.numbers);
    if (!numbers.isEmpty()) {
      String listed = numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
      say(words.word("alt.numbered", "count", numbers.size(), "numbers", listed));
    }
    picture.scene().remark().ifPresent(remarks::add);
  }

  private void measured(Beside beside, List<String> lengths) {
    String listed = String.join("; ", lengths);
    say(words.word("alt.measured." + beside.name().toLowerCase(Locale.ROOT), "lengths", listed));
  }

  private void letterings(Lettered lettered, List<String> said) {
    Set<String> callouts = new LinkedHashSet<>(lettered.words);
    callouts.removeIf(callout -> said.stream().anyMatch(one -> says(one, callout)));
    if (!callouts.isEmpty()) {
      String listed =
          callouts.stream()
              .map(callout -> words.word("alt.quoted", "words", callout))
              .collect(Collectors.joining("; "));
      say(words.word("alt.lettered", "count", callouts.size(), "what", listed));
    }
  }

  /**
   * Whether a sentence has all words of some lettering one after the other; one alone in a list.
   */
  private static boolean says(String sentence, String lettering) {
    List<String> sought = words(lettering);
    List<String> heard = words(sentence);
    for (int i = 0; sought.size() > 1 && i + sought.size() <= heard.size(); i++) {
      if (heard.subList(i, i + sought.size()).equals(sought)) {
        return true;
      }
    }
    return Arrays.stream(sentence.split("[:;]")).anyMatch(part -> words(part).equals(sought));
  }

  private static List<String> words(String text) {
    List<String> found = new ArrayList<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}/]+")) {
      if (!word.isEmpty()) {
        found.add(word);
      }
    }
    return found;
  }

  private void say(String sentence) {
    sentences.add(capital(sentence));
  }

  private static String capital(String sentence) {
    if (sentence.isEmpty()) {
      return sentence;
    }
    int second = sentence.offsetByCodePoints(0, 1);
    return sentence.substring(0, second).toUpperCase(Locale.ROOT) + sentence.substring(second);
  }

  /** All of it. */
  String inWords() {
    List<String> all = new ArrayList<>(sentences);
    remarks.forEach(remark -> all.add(capital(words.word("alt.remark", "words", remark))));
    return String.join(" ", all);
  }
}
