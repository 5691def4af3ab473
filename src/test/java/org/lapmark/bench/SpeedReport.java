package org.lapmark.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Measures how fast Lapmark is, and says of everything whether it is as fast as it must be: {@code
 * mvn -q -Ptimes -DskipTests package exec:exec}; with {@code -Drows="check,growth with pieces"}
 * those rows alone whose names begin so, with {@code -Druns=5} that many runs of every command.
 */
public final class SpeedReport {
  private SpeedReport() {}

  /**
   * Prints the table, a line as soon as it is measured.
   *
   * @param arguments the folder of launcher and jar, how many runs of every command, and what the
   *     names of rows begin with, with commas between; empty for all
   * @throws IOException when nothing can be written
   */
  public static void main(String[] arguments) throws IOException {
    Path program = Path.of(arguments[0]).toAbsolutePath();
    int runs = Integer.parseInt(arguments[1]);
    List<String> wanted =
        List.of(arguments.length > 2 ? arguments[2].split(",") : new String[] {""});
    System.out.printf(Measured.HEADING);
    for (Row row : rows(program, runs)) {
      if (wanted.stream().anyMatch(row.name()::startsWith)) {
        row.measure().forEach(line -> System.out.println(line.line()));
      }
    }
  }

  private static List<Row> rows(Path program, int runs) throws IOException {
    List<Row> rows = new ArrayList<>();
    try (BufferedReader table =
        new BufferedReader(
            new InputStreamReader(
                SpeedReport.class.getResourceAsStream("commands.csv"), StandardCharsets.UTF_8))) {
      CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
      for (CSVRecord line : format.parse(table)) {
        rows.add(
            new CommandRow(
                line.get("name"),
                line.get("arguments"),
                line.get("over").equals("the same"),
                Double.parseDouble(line.get("most")),
                program,
                runs));
      }
    }
    rows.add(new MemoryRow(program));
    rows.add(GrowthRow.ofPieces());
    rows.add(GrowthRow.ofSizes());
    rows.add(new EditRow());
    rows.add(new FloorRow());
    return rows;
  }
}
