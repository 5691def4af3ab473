package org.lapmark.source.key;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.finding.SourceText;

/**
 * The passages of a Markdown text that belong to some variants only. A passage stands between
 * fences of three or more backticks or tildes, the first followed by the word {@code when} and a
 * condition:
 *
 * <pre>
 * ```when piping
 * Sew the piping to the ends.
 * ```
 * </pre>
 *
 * <p>What is in it is Markdown. Passages, tips and warnings may stand in each other; as everywhere
 * the outer fence then has more signs than the inner one; where it hasn't, it is read as it was
 * meant, and reported. A passage that begins with an item of a list or a row of a table continues
 * the list or table that it stands in. Passages don't stand in quotations or figures.
 */
public final class Passages {
  private static final Pattern FENCE = Pattern.compile("( *)(`{3,}|~{3,})(.*)");
  private static final Pattern CONTINUES =
      Pattern.compile("\\s*(?:(?:[-+*]|\\d{1,9}[.)])(?:\\s.*)?|\\|.*)");
  private static final String WHEN = "when";
  private static final int MOST_DEPTH = 16;

  private final SourceText text;
  private final List<Line> lines = new ArrayList<>();
  private final List<SourceText> left = new ArrayList<>();
  private final List<SourceText> bare = new ArrayList<>();
  private final Set<SourceText> tooShort = new LinkedHashSet<>();

  private Passages(SourceText text) {
    this.text = text;
    read();
  }

  /** A line: where it stands, and the passages around it, outermost first. */
  private record Line(int start, int end, List<Passage> around, boolean fence, boolean blank) {}

  /** A passage's condition, and where its opening fence stands. */
  private record Passage(SourceText when, SourceText fence, boolean continues) {}

  /** A fence that is open. */
  private record Open(char sign, int length, boolean nests, Passage passage, SourceText fence) {}

  /**
   * The text of one variant.
   *
   * @param text the text as written
   * @param holds whether a condition holds; it gets the condition as written, maybe empty
   * @return the text without fences of passages and without passages whose condition doesn't hold;
   *     every character keeps its place
   */
  public static SourceText select(SourceText text, Predicate<SourceText> holds) {
    return text.text().contains(WHEN) ? new Passages(text).selected(holds) : text;
  }

  /**
   * The conditions of a text's passages.
   *
   * @param text the text with its passages
   * @return the conditions as written, in the order they begin
   */
  public static List<SourceText> conditions(SourceText text) {
    List<SourceText> conditions = new ArrayList<>();
    select(text, condition -> conditions.add(condition));
    return Collections.unmodifiableList(conditions);
  }

  /** The opening fences of passages that are never closed. */
  static List<SourceText> unclosed(SourceText text) {
    return text.text().contains(WHEN) ? new Passages(text).left : List.of();
  }

  /** The opening fences of passages that say no condition. */
  static List<SourceText> bare(SourceText text) {
    return text.text().contains(WHEN) ? new Passages(text).bare : List.of();
  }

  /**
   * The opening fences, closed ones, of what has something inside with a fence as long, where one
   * of the two is a passage.
   */
  static List<SourceText> tooShort(SourceText text) {
    return text.text().contains(WHEN) ? List.copyOf(new Passages(text).tooShort) : List.of();
  }

  private void read() {
    Deque<Open> open = new ArrayDeque<>();
    String all = text.text();
    for (int start = 0; start < all.length(); ) {
      int found = all.indexOf('\n', start);
      int end = found < 0 ? all.length() : found + 1;
      line(start, found < 0 ? end : found, end, open);
      start = end;
    }
    open.descendingIterator()
        .forEachRemaining(
            last -> {
              tooShort.remove(last.fence);
              if (last.passage != null) {
                left.add(last.passage.fence);
              }
            });
  }

  private void line(int start, int stop, int end, Deque<Open> open) {
    String line = text.text().substring(start, stop);
    Matcher fence = FENCE.matcher(line);
    List<Passage> around = around(open);
    if (fence.matches()) {
      String run = fence.group(2);
      String rest = fence.group(3);
      if (rest.isBlank() && closing(run, open) != null) {
        boolean passage = close(run, open);
        List<Passage> outside = around(open);
        // The end of a passage goes with it, so that nothing of it is left.
        List<Passage> itself = passage ? around.subList(0, outside.size() + 1) : outside;
        lines.add(new Line(start, end, itself, passage, blank(itself)));
        return;
      }
      boolean nests = open.isEmpty() || open.getLast().nests && open.size() < MOST_DEPTH;
      if (nests && (run.charAt(0) == '~' || rest.indexOf('`') < 0)) {
        String info = rest.strip();
        Passage passage = null;
        if (info.equals(WHEN) || info.startsWith(WHEN + " ")) {
          passage = passage(start, fence, stop, end);
          if (passage.when.text().isEmpty()) {
            bare.add(passage.fence);
          }
          around = new ArrayList<>(around);
          around.add(passage);
        }
        String kind = info.split("\\s", 2)[0];
        boolean markdown = passage != null || kind.equals("tip") || kind.equals("warning");
        nested(run, passage, open);
        SourceText opening = text.part(start + fence.start(2), start + fence.end());
        open.addLast(new Open(run.charAt(0), run.length(), markdown, passage, opening));
        lines.add(new Line(start, end, around, passage != null, blank(around)));
        return;
      }
    }
    lines.add(new Line(start, end, around, false, false));
  }

  private static boolean blank(List<Passage> around) {
    return around.isEmpty() || !around.get(around.size() - 1).continues;
  }

  private Passage passage(int start, Matcher fence, int stop, int end) {
    int from = start + fence.start(3) + fence.group(3).indexOf(WHEN) + WHEN.length();
    int to = stop;
    String all = text.text();
    while (from < to && Character.isWhitespace(all.charAt(from))) {
      from++;
    }
    while (to > from && Character.isWhitespace(all.charAt(to - 1))) {
      to--;
    }
    int next = end;
    while (next < all.length() && all.charAt(next) == '\n') {
      next++;
    }
    int nextEnd = all.indexOf('\n', next);
    String first = all.substring(next, nextEnd < 0 ? all.length() : nextEnd);
    return new Passage(
        text.part(from, to),
        text.part(start + fence.start(2), Math.max(to, start + fence.end(2))),
        CONTINUES.matcher(first).matches());
  }

  private static List<Passage> around(Deque<Open> open) {
    return open.stream().filter(one -> one.passage != null).map(Open::passage).toList();
  }

  /** Takes note of what is around a fence, and has none that is longer. */
  private void nested(String run, Passage passage, Deque<Open> open) {
    for (Open outer : open) {
      boolean asLong = outer.sign == run.charAt(0) && outer.length <= run.length();
      if (asLong && (outer.passage != null || passage != null)) {
        tooShort.add(outer.fence);
      }
    }
  }

  /**
   * What a fence closes: the outermost that it can, as in Markdown, but where something inside has
   * a fence that is as long, that first, as it was meant. Null if there is nothing to close.
   */
  private static Open closing(String run, Deque<Open> open) {
    Open closing = null;
    for (Open one : open) {
      boolean can = one.sign == run.charAt(0) && run.length() >= one.length;
      if (can && (closing == null || one.length >= closing.length)) {
        closing = one;
      }
    }
    return closing;
  }

  /** Closes a fence, and with it all inside; whether that was a passage. */
  private boolean close(String run, Deque<Open> open) {
    Open closed = closing(run, open);
    while (true) {
      Open last = open.removeLast();
      if (last == closed) {
        return last.passage != null;
      }
      tooShort.remove(last.fence);
      if (last.passage != null) {
        left.add(last.passage.fence);
      }
    }
  }

  private SourceText selected(Predicate<SourceText> holds) {
    if (lines.stream().noneMatch(Line::fence)) {
      return text;
    }
    StringBuilder chosen = new StringBuilder();
    List<Integer> places = new ArrayList<>();
    Map<Passage, Boolean> known = new LinkedHashMap<>();
    for (Line line : lines) {
      boolean shown = true;
      for (int i = 0; i < line.around.size() && shown; i++) {
        shown = known.computeIfAbsent(line.around.get(i), one -> holds.test(one.when));
      }
      if (line.fence) {
        List<Passage> outside = line.around.subList(0, line.around.size() - 1);
        if (line.blank && outside.stream().allMatch(one -> known.getOrDefault(one, false))) {
          chosen.append('\n');
          places.add(text.offset(line.end - 1));
        }
      } else if (shown) {
        for (int i = line.start; i < line.end; i++) {
          chosen.append(text.text().charAt(i));
          places.add(text.offset(i));
        }
      }
    }
    places.add(text.offset(text.text().length()));
    return SourceText.mapped(
        text.file(), chosen.toString(), places.stream().mapToInt(Integer::intValue).toArray());
  }
}
