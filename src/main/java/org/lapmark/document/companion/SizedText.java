package org.lapmark.document.companion;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.text.Markup;
import org.lapmark.wording.Wording;

/**
 * A text in every size and in every choice of units of a page that holds all of them. Elements are
 * marked with {@code data-for}, the place of their size in the size table, and {@code data-in},
 * their choice of units; the page's style sheet shows what is chosen. Where no size is chosen the
 * sizes' texts read as a list led by the sizes' names.
 *
 * @param texts by the place of the size, the text in each choice of units, in the order of {@link
 *     CompanionUnits}; a size may be missing
 */
record SizedText(Map<Integer, List<String>> texts) {
  SizedText {
    Map<Integer, List<String>> copy = new LinkedHashMap<>();
    texts.forEach((size, forms) -> copy.put(size, List.copyOf(forms)));
    texts = Collections.unmodifiableMap(copy);
  }

  /** Whether it reads the same in every size of the page. */
  boolean isAlike(int sizes) {
    return texts.size() == sizes && texts.values().stream().distinct().count() == 1;
  }

  /** Writes it within a line. */
  void write(List<String> sizes, Wording wording, Markup out) {
    if (texts.isEmpty()) {
      return;
    }
    if (isAlike(sizes.size())) {
      forms(texts.values().iterator().next(), out);
      return;
    }
    List<Integer> places = new ArrayList<>(texts.keySet());
    for (int i = 0; i < places.size(); i++) {
      int place = places.get(i);
      out.open("span", "data-for", String.valueOf(place));
      out.open("b", "class", "who").text(sizes.get(place)).close();
      out.open("span", "class", "who").text("\u00a0").close();
      forms(texts.get(place), out);
      if (i + 1 < places.size()) {
        out.open("span", "class", "who").text(wording.text("list.between")).close();
      }
      out.close();
    }
  }

  /** Writes it for one size alone, as in a table with a column a size. */
  void write(int size, Markup out) {
    if (texts.containsKey(size)) {
      forms(texts.get(size), out);
    }
  }

  private static void forms(List<String> forms, Markup out) {
    if (forms.stream().distinct().count() == 1) {
      out.text(forms.get(0));
      return;
    }
    for (CompanionUnits units : CompanionUnits.values()) {
      out.open("span", "data-in", units.id()).text(forms.get(units.ordinal())).close();
    }
  }
}
