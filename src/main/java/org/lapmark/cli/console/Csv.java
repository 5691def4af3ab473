package org.lapmark.cli.console;

import java.util.List;
import java.util.stream.Collectors;

/** Comma-separated values (RFC 4180, lines ended by CR LF). */
public final class Csv {
  private Csv() {}

  public static void append(StringBuilder text, List<String> cells) {
    text.append(cells.stream().map(Csv::cell).collect(Collectors.joining(","))).append("\r\n");
  }

  /** A cell that a spreadsheet takes for a text, where it is one. */
  private static String cell(String value) {
    String plain = Visible.text(value);
    if (plain.matches("[=+@-].*") && !plain.matches("-?[0-9.]+")) {
      plain = "'" + plain;
    }
    return plain.matches("[^\",]*") ? plain : '"' + plain.replace("\"", "\"\"") + '"';
  }
}
