package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads lengths as a maker does who has one ruler, from nothing but the text of one place: one
 * step, one row of a table, one figure. It knows nothing of how they were rounded.
 */
final class LengthsRead {
  private static final String INCH = "(?:\\d+ )?\\d+/\\d+ in|\\d+ in";
  private static final String METRIC = "\\d+(?:\\.\\d+)? (?:mm|cm|m)\\b";
  private static final Pattern BOTH =
      Pattern.compile(
          "(?<mf>"
              + METRIC
              + ") \\((?<is>"
              + INCH
              + ")\\)|(?<if>"
              + INCH
              + ") \\((?<ms>"
              + METRIC
              + ")\\)");

  /** What one sentence says of clipping or snipping. */
  private static final Pattern DEEP =
      Pattern.compile(
          "(?:[Cc]lip|[Ss]nip)[^.:]*?(?<all>"
              + BOTH.pattern().replaceAll("\\?<\\w+>", "?:")
              + "|"
              + METRIC
              + ") deep");

  /** In millimetres; what is nearer is the same to anybody with a ruler. */
  private static final double ALIKE = 1;

  private record Read(double metric, double inches, String text) {}

  private LengthsRead() {}

  /** Holds one place; how many lengths there were. */
  static int held(String where, String written) {
    String text = Companions.spaced(written).replaceAll("[½¼¾⅛⅜⅝⅞]", "∎");
    assertEquals(-1, text.indexOf('∎'), where + ": another form of fractions in " + text);
    Map<String, Read> all = new LinkedHashMap<>();
    Matcher matcher = BOTH.matcher(text);
    while (matcher.find()) {
      Read one = read(matcher);
      all.put(one.text(), one);
    }
    List<Read> lengths = List.copyOf(all.values());
    for (Read one : lengths) {
      // An author's pair may be apart by 10 % or 1 mm; what is computed isn't by more than 6 %.
      assertEquals(one.metric(), one.inches(), Math.max(2.1, 0.12 * one.metric()), where);
      for (Read other : lengths) {
        double apart = Math.abs(one.metric() - other.metric());
        boolean differ = apart > Math.min(ALIKE, 0.06 * Math.min(one.metric(), other.metric()));
        assertTrue(
            !differ || one.inches() != other.inches(),
            () -> where + ": " + one + " and " + other + " in " + text);
      }
    }
    Matcher deep = DEEP.matcher(text);
    Pattern from =
        Pattern.compile("(?:" + BOTH.pattern() + ") (?:from the edge|from both|all round)");
    while (deep.find()) {
      Matcher seam = from.matcher(text);
      Matcher depth = BOTH.matcher(deep.group("all"));
      if (!seam.find()) {
        break;
      }
      Read sewn = read(seam);
      boolean both = depth.matches();
      double metric = both ? read(depth).metric() : metric(deep.group("all"));
      assertTrue(
          metric < sewn.metric() && (!both || read(depth).inches() < sewn.inches()),
          () -> where + ": " + deep.group("all") + " deep, sewn " + sewn);
    }
    return lengths.size();
  }

  private static Read read(Matcher matcher) {
    boolean metricFirst = matcher.group("mf") != null;
    String metric = metricFirst ? matcher.group("mf") : matcher.group("ms");
    String inches = metricFirst ? matcher.group("is") : matcher.group("if");
    return new Read(metric(metric), inches(inches), metric + " / " + inches);
  }

  private static double metric(String text) {
    String[] parts = text.split(" ");
    double unit = parts[1].equals("mm") ? 1 : parts[1].equals("cm") ? 10 : 1000;
    return Double.parseDouble(parts[0]) * unit;
  }

  private static double inches(String text) {
    double sum = 0;
    for (String part : text.replace(" in", "").split(" ")) {
      int slash = part.indexOf('/');
      sum +=
          slash < 0
              ? Double.parseDouble(part)
              : Double.parseDouble(part.substring(0, slash))
                  / Double.parseDouble(part.substring(slash + 1));
    }
    return sum * 25.4;
  }
}
