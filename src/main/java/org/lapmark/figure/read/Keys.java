package org.lapmark.figure.read;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlCode;
import org.lapmark.source.yaml.YamlNode;
import org.lapmark.source.yaml.YamlParser;

/**
 * What is written in one map of a figure, held against its table of keys. What is amiss with a key
 * is reported, and it is taken as not stated, so that the others are read as well.
 */
public final class Keys {
  private static final int MAX_CHARACTERS = 10_000;

  private final Reading reading;
  private final Table table;
  private final Position position;
  private final Map<String, YamlNode> values = new LinkedHashMap<>();
  private final Map<String, Position> places = new LinkedHashMap<>();
  private final Map<String, Object> read = new LinkedHashMap<>();
  private final Set<String> amiss = new LinkedHashSet<>();

  /** Unknown and repeated keys are reported and passed over. */
  private Keys(YamlNode.Entries block, Table table, Reading reading) {
    this.reading = reading;
    this.table = table;
    this.position = block.position();
    List<String> known = table.known();
    Map<String, YamlNode> meant = new LinkedHashMap<>();
    for (YamlNode.Entry entry : block.entries()) {
      String key = entry.key().text().text();
      if (!known.contains(key)) {
        Optional<String> near = NearestWord.of(key, known);
        near.ifPresent(one -> meant.putIfAbsent(one, entry.value()));
        findings()
            .add(
                FigureCode.FIGURE_KEY_UNKNOWN,
                entry.key().position(),
                "name",
                key,
                "near",
                near.orElse("none"),
                "known",
                Known.listed(known));
      } else if (values.putIfAbsent(key, entry.value()) != null) {
        findings().add(FigureCode.FIGURE_KEY_TWICE, entry.key().position(), "name", key);
      } else {
        places.put(key, entry.key().position());
      }
    }
    // What stands under a mistyped key is read as what was meant, so that nothing else is amiss.
    meant.forEach(values::putIfAbsent);
  }

  /**
   * The keys of a whole block, as it stands in its file, from the beginning of its first line.
   *
   * @param block what stands between the fences
   * @param table the keys that it may have
   * @param findings where problems go
   * @return nothing if it is no map
   * @throws FindingException if it is too long to be read
   */
  public static Optional<Keys> of(SourceText block, Table table, Findings findings) {
    if (block.text().length() > MAX_CHARACTERS) {
      throw Faults.of(
          block.position(0, 1),
          FigureCode.FIGURE_TOO_LARGE,
          "limit",
          MAX_CHARACTERS,
          "what",
          "characters");
    }
    String content = block.file().content();
    int from = block.offset(0);
    while (from > 0 && content.charAt(from - 1) == ' ') {
      from--;
    }
    int to = block.offset(block.text().length());
    Findings faults = new Findings();
    YamlNode.Entries entries = YamlParser.read(block.file(), from, to, Limits.STANDARD, faults);
    for (Finding finding : faults.sorted()) {
      // Of a block the file's reader could only say that the file itself is no map.
      findings.add(
          finding.code() == YamlCode.ROOT_NOT_MAP
              ? Finding.of(FigureCode.FIGURE_NOT_KEYS, finding.position())
              : finding);
    }
    Reading reading = new Reading(Limits.STANDARD, findings);
    return Optional.ofNullable(entries).map(one -> new Keys(one, table, reading));
  }

  /**
   * The keys of a map within a block.
   *
   * @param what the key under which it stands, with that key's table before a slash
   */
  static Keys of(YamlNode node, String what, Table table, Reading reading) {
    if (node instanceof YamlNode.Entries entries) {
      return new Keys(entries, table, reading);
    }
    throw Faults.kind(node.position(), what, "keys with values");
  }

  /**
   * The keys of a map that stands elsewhere than in a block.
   *
   * @param what the key under which it stands, with that key's table before a slash
   */
  public static Keys of(YamlNode node, String what, Table table, Findings findings) {
    return of(node, what, table, new Reading(Limits.STANDARD, findings));
  }

  private Findings findings() {
    return reading.findings();
  }

  /** Where the map stands. */
  public Position position() {
    return position;
  }

  /** Whether a key is written. */
  public boolean has(Key<?> key) {
    return values.containsKey(key.name());
  }

  /** What is written under a key, or null. */
  public YamlNode node(Key<?> key) {
    return values.get(key.name());
  }

  /** What a key says; null if it isn't written or can't be read, which is then reported. */
  public <T> T get(Key<T> key) {
    return get(key, key.form());
  }

  /** What a key says that has to be written in a narrower form here. */
  @SuppressWarnings("unchecked") // What is kept under a key was read by a form of its type.
  public <T> T get(Key<T> key, Form<T> form) {
    if (!table.keys().contains(key)) {
      throw new IllegalArgumentException(table.id() + " has no key " + key.name());
    }
    if (has(key) && !read.containsKey(key.name())) {
      T value = null;
      try {
        value = form.reader().read(reading, node(key), table.id() + "/" + key.name());
      } catch (FindingException e) {
        findings().add(e.finding());
      }
      if (value == null || value instanceof Entries<?> entries && !entries.isWhole()) {
        amiss.add(key.name());
      }
      read.put(key.name(), value);
    }
    return (T) read.get(key.name());
  }

  /** What a key says, or something else where it isn't written or can't be read. */
  public <T> T or(Key<T> key, T otherwise) {
    T value = get(key);
    return value == null ? otherwise : value;
  }

  /** Those entries of a list that can be read. */
  public <T> List<T> all(Key<Entries<T>> key) {
    Entries<T> entries = get(key);
    return entries == null ? List.of() : entries.entries();
  }

  /** Reports each of some keys that isn't written. */
  public void need(Key<?>... keys) {
    for (Key<?> key : keys) {
      if (!has(key) && !amiss.contains(key.name())) {
        report(Faults.of(position, FigureCode.FIGURE_KEY_MISSING, "name", key.name()), key);
      }
    }
  }

  /** Whether something was reported of one of these keys, or one that has to be there isn't. */
  public boolean amiss(Key<?>... keys) {
    table.keys().stream().filter(Key::required).forEach(key -> need(key));
    return Arrays.stream(keys).anyMatch(key -> amiss.contains(key.name()));
  }

  /** Reports what is wrong with a key. */
  public void report(FindingException fault, Key<?> key) {
    findings().add(fault.finding());
    amiss.add(key.name());
  }

  /** Says something without taking a key as amiss. */
  public void warn(FigureCode code, Position place) {
    findings().add(code, place);
  }

  /** An entry of which everything could be read, or else null. */
  public <T> T whole(T entry) {
    amiss();
    return amiss.isEmpty() ? entry : null;
  }

  /** The keys of a map that stands under one of these. */
  public Keys inner(YamlNode node, Key<?> key, Table inner) {
    return of(node, table.id() + "/" + key.name(), inner, reading);
  }

  /** What a reader makes of some values; what can't be read is reported and left out. */
  public <A, T> List<T> each(List<A> nodes, Function<A, T> reader) {
    return FigureForms.entries(nodes, reader, findings()).entries();
  }

  /** Warns of keys that are written and aren’t looked at, as another one is there. */
  public void idle(Key<?> with, List<Key<?>> keys, List<Key<?>> known) {
    for (Key<?> key : keys) {
      idle(with, key, Known.listed(known.stream().<String>map(Key::name).toList()));
    }
  }

  /** Warns of a key that is written and isn’t looked at, as another one is there. */
  public void idle(Key<?> with, Key<?> key, String known) {
    if (places.containsKey(key.name())) {
      findings()
          .add(
              FigureCode.FIGURE_KEY_IDLE,
              places.get(key.name()),
              "name",
              key.name(),
              "with",
              with.name(),
              "known",
              known);
    }
  }

  /** Reports two keys of which one excludes the other. */
  public void together(Key<?> one, Key<?> other) {
    String names = listed(List.of(one.name(), other.name()), " and ");
    Position place = places.getOrDefault(other.name(), position);
    report(Faults.of(place, FigureCode.FIGURE_KEYS_TOGETHER, "names", names), other);
  }

  /** The one of the table's choice of keys that is written. */
  public String one() {
    List<String> choice = List.copyOf(table.choices().get(0).keys());
    List<String> there = choice.stream().filter(values::containsKey).toList();
    if (there.isEmpty()) {
      throw Faults.of(position, FigureCode.FIGURE_KEY_MISSING, "name", listed(choice, " or "));
    }
    if (there.size() > 1 && !table.choices().get(0).isMet(there)) {
      throw Faults.of(
          places.getOrDefault(there.get(1), position),
          FigureCode.FIGURE_KEYS_TOGETHER,
          "names",
          listed(there, " and "));
    }
    return there.get(0);
  }

  /** Keys for a message, which sets the outermost quotes. */
  private static String listed(List<String> keys, String last) {
    int most = keys.size() - 1;
    return most == 0
        ? keys.get(0)
        : String.join("’, ‘", keys.subList(0, most)) + "’" + last + "‘" + keys.get(most);
  }
}
