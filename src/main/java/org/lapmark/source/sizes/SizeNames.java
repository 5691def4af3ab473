package org.lapmark.source.sizes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.finding.SourceText;

/** What the names of sizes say of their order. */
final class SizeNames {
  private static final Pattern LETTERS = Pattern.compile("(?:([0-9]{1,2}) ?)?(X{0,8})([SML])");
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,4}(?:\\.[0-9]+)?");

  private SizeNames() {}

  /** The ranks of sizes that are called by letters or by numbers; null for other names. */
  static List<Double> ranks(List<SourceText> sizes) {
    List<Double> letters = ranks(sizes, SizeNames::letters);
    return letters == null ? ranks(sizes, SizeNames::number) : letters;
  }

  private static List<Double> ranks(List<SourceText> sizes, Function<String, Double> rank) {
    List<Double> ranks = new ArrayList<>();
    for (SourceText size : sizes) {
      Double found = rank.apply(size.text());
      if (found == null) {
        return null;
      }
      ranks.add(found);
    }
    return ranks;
  }

  private static Double letters(String name) {
    Matcher matcher = LETTERS.matcher(name);
    if (!matcher.matches()) {
      return null;
    }
    int times = matcher.group(2).length();
    if (matcher.group(1) != null) {
      times *= Integer.parseInt(matcher.group(1));
    }
    return switch (matcher.group(3)) {
      case "S" -> -1.0 - times;
      case "L" -> 1.0 + times;
      default -> times == 0 && matcher.group(1) == null ? 0.0 : null;
    };
  }

  private static Double number(String name) {
    return NUMBER.matcher(name).matches() ? Double.valueOf(name) : null;
  }
}
