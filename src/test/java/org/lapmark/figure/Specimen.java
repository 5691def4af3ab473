package org.lapmark.figure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.read.PatternReader;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * A figure on the specimen sheet, which shows everything that a figure can: the folders made for
 * it, and of the demo patterns and the shelf what these don't show.
 *
 * @param heading what it is a specimen of
 * @param name a file’s name for it
 * @param block what an author writes
 * @param figure what is drawn of it, in a middle size
 */
public record Specimen(String heading, String name, String block, Figure figure) {
  private static final Path SPECIMENS = Path.of("src/test/resources/org/lapmark/specimens");
  private static final Path SHELF = Path.of("src/test/resources/org/lapmark/shelf");
  private static final Path DEMOS = Path.of("content");
  private static final Pattern FENCE = Pattern.compile("(?ms)^```figure\\n(.*?)^```$");

  /** The whole sheet. */
  public static List<Specimen> sheet() {
    List<Specimen> sheet = new ArrayList<>();
    folders(SPECIMENS).forEach(folder -> sheet.addAll(of(folder, List.of())));
    for (Path patterns : List.of(DEMOS, SHELF)) {
      folders(patterns).forEach(folder -> sheet.addAll(of(folder, List.copyOf(sheet))));
    }
    return sheet;
  }

  /** The keys that a block has, each with the table it stands in: {@code line.sew}. */
  public Set<String> keys() {
    return keys(block);
  }

  /** All keys that there are, alike, but those of single operations. */
  public static Set<String> possible() {
    Set<String> possible = new TreeSet<>();
    Set<String> operations =
        FigureSource.TABLE.keys().stream()
            .filter(key -> key.name().equals("operation"))
            .flatMap(key -> Table.reachable(key.form().tables()).keySet().stream())
            .collect(Collectors.toSet());
    for (Table table : Table.reachable(List.of(FigureSource.TABLE)).values()) {
      if (!operations.contains(table.id())) {
        table.known().forEach(key -> possible.add(key(table, key)));
      }
    }
    return possible;
  }

  /** A picture alone in its figure and one of several are stated alike. */
  private static String key(Table table, String key) {
    boolean alone = table != FigureSource.TABLE && FigureSource.TABLE.known().contains(key);
    return (alone && table.id().equals("picture") ? FigureSource.TABLE.id() : table.id())
        + "."
        + key;
  }

  private static List<Path> folders(Path patterns) {
    try (Stream<Path> folders = Files.list(patterns)) {
      return folders
          .filter(folder -> Files.exists(folder.resolve("pattern.yaml")))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The figures of a folder; where others are there already, those that show a key that they don’t.
   */
  private static List<Specimen> of(Path folder, List<Specimen> others) {
    PatternSource source = read(folder);
    List<String> sizes = source.sizes().sizes();
    EvaluatedPattern pattern = DemoFigures.pattern(source, sizes.get(sizes.size() / 2));
    Set<String> shown = new HashSet<>();
    others.forEach(other -> shown.addAll(other.keys()));
    List<Specimen> specimens = new ArrayList<>();
    for (StepSource step : source.steps()) {
      Matcher block = FENCE.matcher(step.body().text());
      for (int number = 1; block.find(); number++) {
        if (shown.addAll(keys(block.group(1))) || others.isEmpty()) {
          specimens.add(
              new Specimen(
                  others.isEmpty() ? step.title().text() : source.masthead().title().text(),
                  folder.getFileName() + "-" + step.id().text() + "-" + number,
                  block.group(1),
                  drawn(step.body().part(block.start(1), block.end(1)), pattern)));
        }
      }
    }
    return specimens;
  }

  private static PatternSource read(Path folder) {
    Findings findings = new Findings();
    try {
      PatternSource source = PatternReader.read(folder, findings);
      if (findings.hasErrors()) {
        throw new IllegalStateException(DemoFigures.said(findings));
      }
      return source;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Figure drawn(SourceText block, EvaluatedPattern pattern) {
    Findings findings = new Findings();
    return FigureSource.parse(block, findings)
        .flatMap(
            figure ->
                DemoFigures.drawer()
                    .draw(figure, pattern, pattern.source().masthead().form(), findings))
        .orElseThrow(() -> new IllegalStateException(block.text() + DemoFigures.said(findings)));
  }

  private static Set<String> keys(String block) {
    Set<String> keys = new TreeSet<>();
    Object value = new Load(LoadSettings.builder().build()).loadFromString(block);
    collect(value, List.of(FigureSource.TABLE), keys);
    return keys;
  }

  private static void collect(Object value, List<Table> tables, Set<String> keys) {
    if (value instanceof List<?> list) {
      list.forEach(inner -> collect(inner, tables, keys));
    } else if (value instanceof Map<?, ?> map) {
      for (Table table : tables) {
        if (table.known().containsAll(map.keySet())) {
          for (Key<?> key : table.keys()) {
            if (map.containsKey(key.name())) {
              keys.add(key(table, key.name()));
              collect(map.get(key.name()), key.form().tables(), keys);
            }
          }
          return;
        }
      }
    }
  }
}
