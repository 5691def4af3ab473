package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** The same pattern written otherwise. */
public final class Rewriting {
  private Rewriting() {}

  /** Comments above lines that begin something, blocks of text excepted. */
  public static String commented(String text, Random random) {
    StringBuilder edited = new StringBuilder();
    int block = -1;
    int added = 0;
    for (String line : text.split("\n", -1)) {
      int indent = line.length() - line.stripLeading().length();
      if (block >= 0 && (line.isBlank() || indent > block)) {
        edited.append(line).append('\n');
        continue;
      }
      block = line.matches(".*[:-] *[>|][-+]?\\s*") ? indent : -1;
      if (line.strip().matches("(- |[a-z0-9_]+:).*") && random.nextInt(4) == 0) {
        edited.append(" ".repeat(indent)).append("# A remark.\n");
        added++;
      }
      edited.append(line).append('\n');
    }
    assertTrue(added > 0);
    return edited.toString();
  }

  /** What stands in one map at the top of the file in another order, if the file has it. */
  public static String reorderedWithin(String key, String text, Random random) {
    StringBuilder edited = new StringBuilder();
    List<StringBuilder> entries = new ArrayList<>();
    boolean inside = false;
    for (String line : text.split("\n", -1)) {
      if (inside && line.matches("\\S.*")) {
        Collections.shuffle(entries, random);
        entries.forEach(edited::append);
        entries.clear();
        inside = false;
      }
      if (inside && (entries.isEmpty() || line.matches("  [a-z0-9_]+:.*"))) {
        entries.add(new StringBuilder());
      }
      (inside ? entries.get(entries.size() - 1) : edited).append(line).append('\n');
      inside |= line.equals(key + ":");
    }
    Collections.shuffle(entries, random);
    entries.forEach(edited::append);
    return edited.toString();
  }

  /** The keys at the top of the file, with what stands below each, in another order. */
  public static String reordered(String text, Random random) {
    List<StringBuilder> blocks = new ArrayList<>();
    for (String line : text.split("\n", -1)) {
      if (blocks.isEmpty() || line.matches("[a-z_]+:.*")) {
        blocks.add(new StringBuilder());
      }
      blocks.get(blocks.size() - 1).append(line).append('\n');
    }
    assertTrue(blocks.size() > 5);
    Collections.shuffle(blocks, random);
    return String.join("", blocks);
  }
}
