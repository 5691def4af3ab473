package org.lapmark.source.sizes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;

class CellNumberTest {
  @Property(tries = 200)
  void decimalsReadWithPointAndWithComma(
      @ForAll @IntRange(min = -999_999, max = 999_999) int thousandths) {
    double number = thousandths / 100.0;
    String point = String.format(Locale.ROOT, "%.2f", number);
    assertEquals(new CellNumber(CellNumber.Kind.NUMBER, number), CellNumber.parse(point, false));
    assertEquals(
        new CellNumber(CellNumber.Kind.NUMBER, number),
        CellNumber.parse(point.replace('.', ','), true));
  }

  @Property(tries = 200)
  void fractionsReadExactly(
      @ForAll @IntRange(min = 0, max = 200) int whole,
      @ForAll @IntRange(min = 1, max = 15) int part) {
    double number = whole + part / 16.0;
    String text = (whole == 0 ? "" : whole + " ") + part + "/16";
    assertEquals(new CellNumber(CellNumber.Kind.NUMBER, number), CellNumber.parse(text, false));
  }

  @Property(tries = 200)
  void thousandsAreNeverGuessed(
      @ForAll @IntRange(min = 1, max = 999) int high,
      @ForAll @IntRange(min = 0, max = 999) int low) {
    for (String separator : List.of(",", " ", "'", "\u00a0")) {
      String text = high + separator + String.format(Locale.ROOT, "%03d", low);
      assertEquals(CellNumber.Kind.AMBIGUOUS, CellNumber.parse(text, false).kind(), text);
      assertEquals(CellNumber.Kind.AMBIGUOUS, CellNumber.parse(text, true).kind(), text);
    }
  }

  @Property(tries = 200)
  void datesAreNeverNumbers(
      @ForAll @IntRange(min = 1, max = 28) int day,
      @ForAll @IntRange(min = 1, max = 12) int month) {
    String name =
        List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
            .get(month - 1);
    for (String text :
        List.of(
            day + ". " + name,
            day + "-" + name,
            String.format(Locale.ROOT, "%02d.%s", day, name),
            name + "-" + day,
            String.format(Locale.ROOT, "2026-%02d-%02d", month, day),
            String.format(Locale.ROOT, "%02d.%02d.2026", day, month),
            String.format(Locale.ROOT, "%d/%d/26", month, day))) {
      assertEquals(CellNumber.Kind.DATE, CellNumber.parse(text, false).kind(), text);
    }
  }

  @Provide
  Arbitrary<List<List<String>>> tables() {
    Arbitrary<String> cell = Arbitraries.strings().withChars("ab1,;\"\n x").ofMaxLength(6);
    return cell.list().ofMinSize(2).ofMaxSize(5).list().ofMinSize(1).ofMaxSize(4);
  }

  @Property(tries = 200)
  void quotedTablesReadAsAnotherParserReadsThem(@ForAll("tables") List<List<String>> table)
      throws IOException {
    StringBuilder text = new StringBuilder();
    for (List<String> row : table) {
      List<String> cells = new ArrayList<>();
      for (String cell : row) {
        boolean plain = cell.matches("[ab1; x]*") && !cell.isEmpty();
        cells.add(plain ? cell : '"' + cell.replace("\"", "\"\"") + '"');
      }
      text.append(String.join(",", cells)).append('\n');
    }
    List<List<String>> theirs = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text.toString(), CSVFormat.RFC4180)) {
      for (CSVRecord row : parser) {
        // Rows without anything in them are passed over here.
        if (row.stream().anyMatch(cell -> !cell.isBlank())) {
          theirs.add(row.toList());
        }
      }
    }
    SourceFile file = new SourceFile("sizes.csv", text.toString());
    List<List<String>> ours = new ArrayList<>();
    for (List<SourceText> row : CsvCells.read(file, ',', 100)) {
      ours.add(row.stream().map(SourceText::text).toList());
      for (SourceText cell : row) {
        for (int i = 0; i < cell.text().length(); i++) {
          assertEquals(cell.text().charAt(i), text.charAt(cell.offset(i)));
        }
      }
    }
    assertEquals(theirs, ours);
  }
}
