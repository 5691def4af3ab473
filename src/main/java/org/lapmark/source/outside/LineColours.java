package org.lapmark.source.outside;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Colours as line drawings write them. */
final class LineColours {
  private static final Pattern HEX = Pattern.compile("#([0-9a-f]{3}|[0-9a-f]{6})");
  private static final Pattern RGB =
      Pattern.compile(
          "rgb\\(\\s*([0-9.]{1,8})(%?)\\s*[, ]\\s*([0-9.]{1,8})%?\\s*[, ]\\s*([0-9.]{1,8})%?\\s*\\)");
  private static final int WHOLE = 255;

  private final Map<String, Integer> names = new TreeMap<>();

  LineColours() {
    String known =
        "black 000000 silver c0c0c0 gray 808080 grey 808080 white ffffff maroon 800000 red ff0000"
            + " purple 800080 fuchsia ff00ff magenta ff00ff green 008000 lime 00ff00 olive 808000"
            + " yellow ffff00 navy 000080 blue 0000ff teal 008080 aqua 00ffff cyan 00ffff"
            + " orange ffa500 brown a52a2a pink ffc0cb gold ffd700 beige f5f5dc ivory fffff0"
            + " tan d2b48c khaki f0e68c indigo 4b0082 violet ee82ee crimson dc143c"
            + " dimgray 696969 dimgrey 696969 darkgray a9a9a9 darkgrey a9a9a9"
            + " lightgray d3d3d3 lightgrey d3d3d3 gainsboro dcdcdc whitesmoke f5f5f5"
            + " darkred 8b0000 darkgreen 006400 darkblue 00008b lightblue add8e6"
            + " steelblue 4682b4 slategray 708090 slategrey 708090";
    String[] words = known.split(" ");
    for (int i = 0; i < words.length; i += 2) {
      names.put(words[i], Integer.parseInt(words[i + 1], 16));
    }
  }

  /** A colour as red, green and blue in 24 bits; nothing if it isn't one that is known. */
  OptionalInt of(String written) {
    String text = written.strip().toLowerCase(Locale.ROOT);
    Matcher hex = HEX.matcher(text);
    if (hex.matches()) {
      StringBuilder digits = new StringBuilder();
      for (char digit : hex.group(1).toCharArray()) {
        digits.append(digit);
        if (hex.group(1).length() == 3) {
          digits.append(digit);
        }
      }
      return OptionalInt.of(Integer.parseInt(digits.toString(), 16));
    }
    Matcher rgb = RGB.matcher(text);
    if (rgb.matches()) {
      double unit = rgb.group(2).isEmpty() ? 1 : WHOLE / 100.0;
      try {
        return OptionalInt.of(
            level(rgb.group(1), unit) << 16
                | level(rgb.group(3), unit) << 8
                | level(rgb.group(4), unit));
      } catch (NumberFormatException e) {
        return OptionalInt.empty();
      }
    }
    return names.containsKey(text) ? OptionalInt.of(names.get(text)) : OptionalInt.empty();
  }

  private static int level(String number, double unit) {
    return (int) Math.round(Math.max(0, Math.min(WHOLE, Double.parseDouble(number) * unit)));
  }

  /** What a colour that lets paper through looks like on white. */
  static int onPaper(int colour, double opacity) {
    int mixed = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int level = colour >> shift & WHOLE;
      mixed |= (int) Math.round(WHOLE + (level - WHOLE) * opacity) << shift;
    }
    return mixed;
  }
}
