package org.lapmark.source.yaml;

import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;

/** A value of a YAML text, with its place in the file. */
public sealed interface YamlNode {
  /**
   * The file it stands in.
   *
   * @return the file
   */
  SourceFile file();

  /**
   * Where it begins.
   *
   * @return 0-based offset of its first character
   */
  int start();

  /**
   * Where it ends.
   *
   * @return offset behind its last character
   */
  int end();

  /**
   * Where it stands; of a value over several lines the first line.
   *
   * @return the position
   */
  default Position position() {
    return file().position(start(), end());
  }

  /**
   * Where what is missing in it is reported.
   *
   * @return a map's first key, or where the value stands
   */
  default Position firstKey() {
    return position();
  }

  /**
   * Whether nothing was written, or one of YAML's words for nothing.
   *
   * @return true of some scalars only
   */
  default boolean isNothing() {
    return false;
  }

  /**
   * The values of a sequence.
   *
   * @return the values; nothing if it is something else
   */
  default Optional<List<YamlNode>> list() {
    return Optional.empty();
  }

  /**
   * A scalar.
   *
   * @param start 0-based offset of its first character, quotes included
   * @param end offset behind its last character
   * @param text its characters, each with its place
   * @param plain whether it stands without quotes and block marks
   */
  record Text(int start, int end, SourceText text, boolean plain) implements YamlNode {
    @Override
    public SourceFile file() {
      return text.file();
    }

    @Override
    public boolean isNothing() {
      String value = text.text();
      return value.isBlank() || plain && (value.equals("~") || value.equals("null"));
    }

    @Override
    public Position position() {
      return text.text().isEmpty() ? file().position(start, end) : text.position();
    }
  }

  /**
   * A sequence.
   *
   * @param file the file
   * @param start 0-based offset of its first character
   * @param end offset behind its last character
   * @param items its values
   */
  record Items(SourceFile file, int start, int end, List<YamlNode> items) implements YamlNode {
    @Override
    public Optional<List<YamlNode>> list() {
      return Optional.of(items);
    }
  }

  /**
   * A mapping; duplicate keys are kept.
   *
   * @param file the file
   * @param start 0-based offset of its first character
   * @param end offset behind its last character
   * @param flow whether it is written with braces
   * @param entries its entries
   */
  record Entries(SourceFile file, int start, int end, boolean flow, List<Entry> entries)
      implements YamlNode {
    @Override
    public Position firstKey() {
      return entries.isEmpty() ? position() : entries.get(0).key().position();
    }
  }

  /**
   * A key and its value.
   *
   * @param key the key
   * @param value the value
   */
  record Entry(Text key, YamlNode value) {}
}
