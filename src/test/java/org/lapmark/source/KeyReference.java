package org.lapmark.source;

import java.util.List;
import java.util.stream.Collectors;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyWords;
import org.lapmark.source.key.Table;

/** The reference of a file of the source, as its tables of keys make it: Markdown. */
final class KeyReference {
  private final KeyWords words;

  KeyReference(KeyWords words) {
    this.words = words;
  }

  /** What stands below a page's introduction: a section for each table, outer ones first. */
  String of(List<Table> roots) {
    return Table.reachable(roots).values().stream()
        .map(this::section)
        .collect(Collectors.joining());
  }

  private String section(Table table) {
    StringBuilder text = new StringBuilder();
    text.append("\n## ").append(table.id()).append("\n\n");
    words.meaning(table).ifPresent(meaning -> text.append(plain(meaning)).append("\n\n"));
    for (Choice choice : table.choices()) {
      text.append("Ways: ").append(ways(choice)).append(".\n\n");
    }
    text.append("| key | means | is written as | unless written | for example | printed |\n");
    text.append("| --- | --- | --- | --- | --- | --- |\n");
    for (Key<?> key : table.keys()) {
      text.append("| `").append(key.name()).append('`');
      text.append(key.required() ? ", needed" : "");
      text.append(" | ").append(words.meaning(table, key).map(KeyReference::plain).orElse(""));
      text.append(" | ").append(form(key));
      text.append(" | ").append(key.standard() == null ? "" : "`" + key.standard() + "`");
      text.append(" | ").append(words.example(table, key).map(KeyReference::code).orElse(""));
      text.append(" | ").append(words.printed(table, key).orElse("")).append(" |\n");
    }
    return text.toString();
  }

  private static String ways(Choice choice) {
    String ways =
        choice.ways().stream()
            .filter(way -> !way.isEmpty())
            .map(way -> way.stream().map(KeyReference::code).collect(Collectors.joining(" with ")))
            .collect(Collectors.joining("; "));
    return choice.ways().stream().anyMatch(List::isEmpty) ? "none, or " + ways : ways;
  }

  private static String form(Key<?> key) {
    String tables =
        key.form().tables().stream()
            .distinct()
            .map(table -> "[" + table.id() + "](#" + table.id() + ")")
            .collect(Collectors.joining(", "));
    return tables.isEmpty() ? key.form().shown() : key.form().shown() + ": " + tables;
  }

  private static String code(String example) {
    return "`" + example + "`";
  }

  /** Underscores and braces of keys in running text are no marks of Markdown. */
  private static String plain(String text) {
    return text.replaceAll("\\{[^}]*\\}", "`$0`").replace("<", "&lt;").replace("|", "\\|");
  }
}
