package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.manual.SizeWords;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.wording.Wording;

/**
 * The sizes of a document of several, whose texts stand beside each other.
 *
 * @param manuals the manual of each size
 * @param drawn the size that pictures are drawn in
 * @param wording the words
 */
public record Sizes(List<Manual> manuals, String drawn, Wording wording) {
  /** So many columns of values are wide enough beside the columns before them. */
  private static final int MOST_COLUMNS = 4;

  /** Stands where a size has nothing. */
  static final String NOTHING = "–";

  /** Copies the list. */
  public Sizes {
    manuals = List.copyOf(manuals);
  }

  /**
   * Columns a size.
   *
   * @param names the sizes
   * @param drawn the size that pictures are drawn in
   * @param groups the sizes that stand beside each other in one table
   */
  record Columns(List<String> names, String drawn, List<Group> groups) {}

  /** Sizes beside each other: the index of the first and their names. */
  record Group(int first, List<String> names) {}

  /** Whether there is no other size. */
  public boolean isEvery() {
    return manuals.size() == manuals.get(0).pattern().source().sizes().sizes().size();
  }

  Columns columns() {
    return new Columns(words().names(), drawn, groups());
  }

  /** Words that name sizes where they differ. */
  SizeWords words() {
    return new SizeWords(each(manuals, manual -> manual.pattern().variant().size()), wording);
  }

  /** What each size has. */
  <T> List<T> each(Function<Manual, T> what) {
    return each(manuals, what);
  }

  static <S, T> List<T> each(List<S> all, Function<S, T> what) {
    return all.stream().map(what).toList();
  }

  /** A text of each size, with the sizes named where they differ. */
  List<Object> runs(Function<EvaluatedPattern, List<Object>> text) {
    return words().runs(each(manual -> text.apply(manual.pattern())));
  }

  /** Tables of about the same number of columns. */
  private List<Group> groups() {
    int count = words().names().size();
    int tables = (count + MOST_COLUMNS - 1) / MOST_COLUMNS;
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < tables; i++) {
      int first = i * count / tables;
      int end = (i + 1) * count / tables;
      groups.add(new Group(first, words().names().subList(first, end)));
    }
    return groups;
  }
}
