package org.lapmark.measure;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the tables of labelled faults and near misses. */
final class FaultTable {
  private static final Pattern REPEATED = Pattern.compile("«(.+?)×(\\d+)»");

  private FaultTable() {}

  record Row(String expected, String written) {
    boolean fine() {
      return expected.equals("fine");
    }

    String code() {
      return expected.split(" ")[0];
    }
  }

  static List<Row> rows(String name) throws IOException {
    try (InputStream stream = FaultTable.class.getResourceAsStream(name)) {
      String whole = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      return whole.lines().filter(line -> !line.startsWith("#")).flatMap(FaultTable::row).toList();
    }
  }

  private static Stream<Row> row(String line) {
    int bar = line.indexOf('|');
    if (bar < 0) {
      throw new IllegalStateException(line);
    }
    String written = line.substring(Math.min(bar + 2, line.length()));
    String expanded =
        REPEATED
            .matcher(written)
            .replaceAll(match -> match.group(1).repeat(Integer.parseInt(match.group(2))));
    return Stream.of(new Row(line.substring(0, bar).strip(), expanded));
  }
}
