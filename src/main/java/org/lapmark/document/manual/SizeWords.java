package org.lapmark.document.manual;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.SizeList;
import org.lapmark.wording.Wording;

/**
 * Says once what is the same in every size, and otherwise what it is in each, led by its name.
 *
 * @param names the names of the sizes in their order
 * @param wording the document's words
 */
public record SizeWords(List<String> names, Wording wording) {
  private static final char NO_BREAK = '\u00a0';

  /** Values of one expression; no line ends within a size's name and value. */
  public static String values(List<PrintedValue> values, Wording wording) {
    List<PrintedValue> unbroken =
        values.stream()
            .map(
                one ->
                    new PrintedValue(
                        one.expression(),
                        one.variant(),
                        one.exact(),
                        one.text().replace(' ', NO_BREAK),
                        one.position()))
            .toList();
    return SizeList.text(
        unbroken,
        variant -> lead(variant.size().replace(' ', NO_BREAK), wording),
        String.valueOf(NO_BREAK),
        wording.text("list.between"));
  }

  /** A text that each size has one of. */
  public String text(List<String> texts) {
    if (texts.stream().distinct().count() <= 1) {
      return texts.isEmpty() ? "" : texts.get(0);
    }
    List<String> led = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      led.add(lead(names.get(i), wording) + NO_BREAK + texts.get(i));
    }
    return String.join(wording.text("list.between"), led);
  }

  /** A size's name before its value; a number is kept apart from the one that follows. */
  public static String lead(String name, Wording wording) {
    return Character.isDigit(name.charAt(name.length() - 1))
        ? wording.text("sizes.number", Map.of("size", name))
        : name;
  }

  /** A run of text that each size has one of, with the sizes listed at the values that differ. */
  public List<Object> runs(List<List<Object>> bySize) {
    List<Object> first = bySize.get(0);
    List<Object> merged = new ArrayList<>();
    for (int i = 0; i < first.size(); i++) {
      List<PrintedValue> values = new ArrayList<>();
      for (List<Object> runs : bySize) {
        boolean alike = runs.size() == first.size();
        if (alike && runs.get(i) instanceof PrintedValue value) {
          values.add(value);
        } else if (!alike || !runs.get(i).equals(first.get(i))) {
          return List.of(text(bySize.stream().map(SizeWords::plain).toList()));
        }
      }
      boolean same = values.stream().map(PrintedValue::text).distinct().count() <= 1;
      merged.add(same ? first.get(i) : values(values, wording));
    }
    return merged;
  }

  /** Lists of texts: what not every size has is led by the sizes that have it. */
  public List<String> lists(List<List<String>> bySize) {
    List<String> merged = new ArrayList<>();
    if (bySize.stream().map(List::size).distinct().count() == 1) {
      for (int i = 0; i < bySize.get(0).size(); i++) {
        int at = i;
        merged.add(text(bySize.stream().map(list -> list.get(at)).toList()));
      }
      return merged;
    }
    return led(bySize);
  }

  /** Texts, each led by the sizes that have it, if not all have. */
  public List<String> led(List<List<String>> bySize) {
    List<String> merged = new ArrayList<>();
    Map<String, List<String>> having = new LinkedHashMap<>();
    for (int i = 0; i < bySize.size(); i++) {
      for (String text : bySize.get(i)) {
        having.computeIfAbsent(text, key -> new ArrayList<>()).add(names.get(i));
      }
    }
    having.forEach(
        (text, sizes) ->
            merged.add(
                sizes.size() == names.size()
                    ? text
                    : wording.text(
                        "sizes.led",
                        Map.of(
                            "sizes",
                            String.join(wording.text("list.between"), sizes),
                            "text",
                            text))));
    return merged;
  }

  /** A run of text as one string. */
  public static String plain(List<Object> runs) {
    return runs.stream()
        .map(run -> run instanceof PrintedValue value ? value.text() : run.toString())
        .collect(Collectors.joining());
  }
}
