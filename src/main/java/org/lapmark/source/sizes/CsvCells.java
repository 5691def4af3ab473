package org.lapmark.source.sizes;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.source.key.KeyCode;

/**
 * Takes a table of comma-separated values apart (RFC 4180, with other separators), keeping the
 * place of every character.
 */
final class CsvCells {
  /** Spreadsheets write empty cells up to their last column. */
  private static final int MOST_CELLS = 1024;

  private final SourceFile file;
  private final String text;
  private final char separator;
  private int at;

  private CsvCells(SourceFile file, char separator) {
    this.file = file;
    this.text = file.content();
    this.separator = separator;
  }

  /**
   * The separator that a table uses: the one of semicolon, tab and comma that takes its first line
   * apart into a cell {@code measure} and the most others; the comma if none does.
   */
  static char separator(SourceFile file) {
    String line =
        file.content()
            .lines()
            .filter(each -> each.chars().anyMatch(Character::isLetter))
            .findFirst()
            .orElse("");
    SourceFile head = new SourceFile(file.name(), line);
    char best = ',';
    int most = 1;
    for (char candidate : new char[] {',', ';', '\t'}) {
      List<SourceText> cells;
      try {
        cells = new CsvCells(head, candidate).row();
      } catch (FindingException e) {
        continue;
      }
      boolean heads =
          cells.stream().anyMatch(cell -> cell.text().strip().equalsIgnoreCase("measure"));
      int score = heads ? 1000 + cells.size() : cells.size();
      if (score > most) {
        most = score;
        best = candidate;
      }
    }
    return best;
  }

  /**
   * The rows that aren't empty.
   *
   * @param limit how many are read
   * @throws FindingException where a quoted cell isn't closed or goes on behind its quotes, or a
   *     row has more than 1,024 cells
   */
  static List<List<SourceText>> read(SourceFile file, char separator, int limit) {
    CsvCells cells = new CsvCells(file, separator);
    List<List<SourceText>> rows = new ArrayList<>();
    while (cells.at < cells.text.length() && rows.size() < limit) {
      List<SourceText> row = cells.row();
      if (row.stream().anyMatch(cell -> !cell.text().isBlank())) {
        rows.add(row);
      }
    }
    return rows;
  }

  private List<SourceText> row() {
    List<SourceText> cells = new ArrayList<>();
    while (true) {
      cells.add(cell());
      if (cells.size() > MOST_CELLS) {
        throw new FindingException(
            Finding.of(
                KeyCode.TOO_MANY_ENTRIES,
                cells.get(MOST_CELLS).position(),
                "what",
                "columns",
                "limit",
                Integer.toString(MOST_CELLS)));
      }
      if (at >= text.length()) {
        return cells;
      }
      char c = text.charAt(at++);
      if (c == '\n') {
        return cells;
      }
    }
  }

  private SourceText cell() {
    int start = at;
    if (start < text.length() && text.charAt(start) == '"') {
      return quoted(start);
    }
    while (at < text.length() && text.charAt(at) != separator && text.charAt(at) != '\n') {
      at++;
    }
    return SourceText.verbatim(file, start, at);
  }

  private SourceText quoted(int start) {
    StringBuilder value = new StringBuilder();
    List<Integer> places = new ArrayList<>();
    at++;
    while (true) {
      int quote = text.indexOf('"', at);
      if (quote < 0) {
        throw new FindingException(
            Finding.of(
                SizesCode.CSV_SYNTAX, file.position(start, text.length()), "problem", "open"));
      }
      for (; at < quote; at++) {
        value.append(text.charAt(at));
        places.add(at);
      }
      at++;
      if (at < text.length() && text.charAt(at) == '"') {
        value.append('"');
        places.add(at++);
        continue;
      }
      places.add(quote);
      if (at < text.length() && text.charAt(at) != separator && text.charAt(at) != '\n') {
        throw new FindingException(
            Finding.of(SizesCode.CSV_SYNTAX, file.position(at, at + 1), "problem", "behind"));
      }
      int[] offsets = places.stream().mapToInt(Integer::intValue).toArray();
      return SourceText.mapped(file, value.toString(), offsets);
    }
  }
}
