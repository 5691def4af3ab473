package org.lapmark.publish;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Damages files at random: bits flipped, stretches deleted, doubled or moved, words put in that
 * mean something to one of the readers, numbers made extreme, values taken for one another, keys
 * left out, ends of other files spliced on. The same random numbers give the same damage.
 */
final class Mutator {
  private static final Pattern WORD = Pattern.compile("[A-Za-z_][A-Za-z0-9_.-]*|[-+]?[0-9.]+");
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");

  /** What stands behind a key, and a key with what stands behind it. */
  private static final Pattern VALUE = Pattern.compile("(?<=: )[^,{}\\[\\]\\n]+");

  private static final Pattern ENTRY = Pattern.compile("[a-z_]+: [^,{}\\[\\]\\n]+(, |(?=[}\n]))");

  private static final int MOST_CHANGES = 4;
  private static final int MOST_BYTES = 200_000;

  /** What has a meaning to a reader, whether or not the files use it. */
  private static final List<String> SIGNS =
      List.of(
          "\"",
          "'",
          "{",
          "}",
          "[",
          "]",
          ":",
          ": ",
          "\n",
          "\t",
          "\r",
          "\r\n",
          "&a ",
          "*a ",
          "!!x ",
          "---\n",
          "- ",
          "  ",
          "# ",
          "|\n",
          ">\n",
          "? ",
          "<",
          ">",
          "/>",
          "</g>",
          "<g>",
          "&",
          "&#0;",
          "&lt;",
          "]]>",
          "<!--",
          "<!DOCTYPE x>",
          "<use href='#outline'/>",
          "transform='scale(0)'",
          "data-d='{",
          "M0 0",
          "z",
          "A 1 1 0 0 1 2 2",
          "C0 0 0 0 0 0",
          "e999",
          "-",
          ",",
          ";",
          "%",
          "|",
          "../",
          "\u0000",
          "\u00e9",
          "e\u0301",
          "\u202e",
          "\ud834\udd1e",
          "\ufeff",
          "0",
          "-1",
          "1e9",
          "999999999",
          "0.0000001",
          "NaN",
          "1/0",
          "2^99",
          "pi",
          " mm",
          " in",
          " deg",
          "(",
          ")",
          "((((",
          "*",
          "**",
          "_",
          "```\n",
          "```figure\n",
          "```when\n",
          "$",
          "[^1]",
          "[a](b:c)",
          "![x](y)",
          "length(",
          "sqrt(-1)",
          "round_up(1 mm, 0 mm)",
          "solve:",
          "when: ",
          "null",
          "true",
          "~",
          "<<: *a");

  private static final List<String> NOTHING = List.of("");

  private static final List<String> NUMBERS =
      List.of("0", "-1", "1", "0.001", "1000000", "99999999999", "1e308", "0.3333333333", "٣");

  /** What an author may well state, and what may come of a formula. */
  private static final List<String> VALUES =
      List.of(
          "0",
          "0 mm",
          "-10 mm",
          "0.2 mm",
          "1 mm",
          "10 mm",
          "1 m",
          "25 mm (1 in)",
          "1/2",
          "-0.1",
          "1",
          "3",
          "0.999999",
          "90 deg",
          "pi ^ 40 * 10 mm",
          "all",
          "yes",
          "no",
          "true",
          "false",
          "fold",
          "size > S");

  private final List<byte[]> files;
  private final List<String> words = new ArrayList<>();
  private final List<String> values = new ArrayList<>();

  /**
   * A mutator.
   *
   * @param files what is spliced and where further words are taken from
   */
  Mutator(List<byte[]> files) {
    this.files = List.copyOf(files);
    for (byte[] file : files) {
      Matcher matcher = WORD.matcher(new String(file, StandardCharsets.UTF_8));
      while (matcher.find()) {
        words.add(matcher.group());
      }
      matcher = VALUE.matcher(new String(file, StandardCharsets.UTF_8));
      while (matcher.find()) {
        values.add(matcher.group());
      }
    }
  }

  byte[] mutant(byte[] original, Random random) {
    byte[] mutant = original;
    // A single change is what an author may overlook.
    int changes = random.nextBoolean() ? 1 : 1 + random.nextInt(MOST_CHANGES);
    for (int i = 0; i < changes; i++) {
      byte[] next = changed(mutant, random);
      mutant = next.length == 0 || next.length > MOST_BYTES ? mutant : next;
    }
    return mutant;
  }

  private byte[] changed(byte[] file, Random random) {
    int at = random.nextInt(file.length);
    int to = Math.min(file.length, at + 1 + random.nextInt(random.nextBoolean() ? 4 : 60));
    byte[] part = Arrays.copyOfRange(file, at, to);
    return switch (random.nextInt(14)) {
      case 0 -> {
        byte[] flipped = file.clone();
        flipped[at] ^= (byte) (1 << random.nextInt(8));
        yield flipped;
      }
      case 1 -> replaced(file, at, to, new byte[0]);
      case 2 -> replaced(file, at, at, repeated(part, 1 + random.nextInt(3)));
      case 3 -> replaced(replaced(file, at, to, new byte[0]), 0, 0, part);
      case 4 -> replaced(file, at, at, text(SIGNS, random));
      case 5 -> replaced(file, at, to, text(SIGNS, random));
      case 6 -> lines(file, random);
      case 7 -> swapped(file, WORD, words, random);
      case 8 -> swapped(file, NUMBER, NUMBERS, random);
      case 9, 10 -> swapped(file, VALUE, VALUES, random);
      case 11 -> swapped(file, VALUE, values.isEmpty() ? VALUES : values, random);
      case 12 -> swapped(file, ENTRY, NOTHING, random);
      default -> {
        byte[] other = files.get(random.nextInt(files.size()));
        int from = random.nextInt(other.length);
        int end = random.nextBoolean() ? other.length : Math.min(other.length, from + 200);
        yield replaced(
            file,
            at,
            random.nextBoolean() ? at : file.length,
            Arrays.copyOfRange(other, from, end));
      }
    };
  }

  /** A line deleted, doubled, moved, or moved in. */
  private static byte[] lines(byte[] file, Random random) {
    List<String> lines =
        new ArrayList<>(
            List.of(new String(file, StandardCharsets.ISO_8859_1).split("(?<=\n)", -1)));
    int at = random.nextInt(lines.size());
    int to = random.nextInt(lines.size());
    switch (random.nextInt(4)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(to, lines.get(at));
      case 2 -> lines.add(to, lines.remove(at));
      default -> lines.set(at, "  " + lines.get(at));
    }
    return String.join("", lines).getBytes(StandardCharsets.ISO_8859_1);
  }

  /** A word or number of the file in place of which another stands. */
  private static byte[] swapped(byte[] file, Pattern pattern, List<String> others, Random random) {
    Matcher matcher = pattern.matcher(new String(file, StandardCharsets.ISO_8859_1));
    int start = random.nextInt(file.length);
    if (!matcher.find(start) && !matcher.find(0)) {
      return file;
    }
    return replaced(file, matcher.start(), matcher.end(), text(others, random));
  }

  private static byte[] text(List<String> texts, Random random) {
    return texts.get(random.nextInt(texts.size())).getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] repeated(byte[] part, int times) {
    byte[] all = new byte[part.length * times];
    for (int i = 0; i < times; i++) {
      System.arraycopy(part, 0, all, i * part.length, part.length);
    }
    return all;
  }

  private static byte[] replaced(byte[] file, int from, int to, byte[] by) {
    byte[] next = new byte[file.length - (to - from) + by.length];
    System.arraycopy(file, 0, next, 0, from);
    System.arraycopy(by, 0, next, from, by.length);
    System.arraycopy(file, to, next, from + by.length, file.length - to);
    return next;
  }
}
