package org.lapmark.check.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words and groups of words that a text is searched for, whole and in either case. What stands
 * beside a hyphen belongs to a longer word. An asterisk stands for the rest of a word, as languages
 * that write words together need it.
 */
public final class Phrases {
  private static final String NOT = "not ";

  /** A place in a text. */
  public record Span(int start, int end) {
    private boolean overlaps(Span other) {
      return start < other.end && other.start < end;
    }
  }

  private final Pattern sought;
  private final Pattern exempt;

  private Phrases(Pattern sought, Pattern exempt) {
    this.sought = sought;
    this.exempt = exempt;
  }

  /**
   * Reads a list with commas in which {@code not} begins what takes a match away.
   *
   * @param list the list, or null for nothing
   */
  static Phrases of(String list) {
    List<String> sought = new ArrayList<>();
    List<String> exempt = new ArrayList<>();
    for (String phrase : list == null ? new String[0] : list.split(",")) {
      String one = phrase.strip();
      if (one.startsWith(NOT)) {
        exempt.add(one.substring(NOT.length()).strip());
      } else if (!one.isEmpty()) {
        sought.add(one);
      }
    }
    return new Phrases(pattern(sought), pattern(exempt));
  }

  private static Pattern pattern(List<String> phrases) {
    if (phrases.isEmpty()) {
      return null;
    }
    // Of two that begin alike the longer is tried first.
    List<String> longest =
        phrases.stream().sorted(Comparator.comparing(String::length).reversed()).toList();
    StringBuilder all = new StringBuilder("(?iu)(?<![\\p{L}\\p{N}-])(?:");
    for (int i = 0; i < longest.size(); i++) {
      List<String> words = new ArrayList<>();
      for (String word : longest.get(i).split("\\s+")) {
        words.add(Pattern.quote(word).replace("*", "\\E[\\p{L}\\p{M}]*\\Q"));
      }
      all.append(i == 0 ? "" : "|").append(String.join("[\\s\u00a0-]+", words));
    }
    return Pattern.compile(all.append(")(?![\\p{L}\\p{N}-])").toString());
  }

  /** Every place, in the order of the text. */
  public List<Span> all(String text) {
    List<Span> exempted = spans(exempt, text);
    return spans(sought, text).stream()
        .filter(span -> exempted.stream().noneMatch(span::overlaps))
        .toList();
  }

  /** The first place. */
  public Optional<Span> first(String text) {
    return all(text).stream().findFirst();
  }

  /** Whether a text has one of them. */
  public boolean in(String text) {
    return first(text).isPresent();
  }

  private static List<Span> spans(Pattern pattern, String text) {
    List<Span> spans = new ArrayList<>();
    if (pattern != null) {
      Matcher matcher = pattern.matcher(text);
      while (matcher.find()) {
        spans.add(new Span(matcher.start(), matcher.end()));
      }
    }
    return spans;
  }
}
