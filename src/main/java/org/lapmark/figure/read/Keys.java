package org.lapmark.figure.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.Nearest;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.yaml.YamlCode;
import org.lapmark.source.yaml.YamlNode;
import org.lapmark.source.yaml.YamlParser;

/**
 * The values of a map by key. What is amiss with one is reported, and it is taken as not stated, so
 * that the others are read as well.
 */
public final class Keys {
  /** The most entries of a list. */
  public static final int MAX_THINGS = 40;

  private static final int MAX_LABEL = 90;
  private static final int MAX_CHARACTERS = 10_000;

  private final Findings findings;
  private final Position position;
  private final String where;
  private final Map<String, YamlNode> values = new LinkedHashMap<>();
  private final Map<String, Position> places = new LinkedHashMap<>();
  private final Set<String> amiss = new LinkedHashSet<>();

  /** Unknown and repeated keys are reported and passed over. */
  private Keys(YamlNode.Entries block, KeyTable table, Findings findings) {
    this.findings = findings;
    this.position = block.position();
    this.where = table.name();
    Map<String, YamlNode> meant = new LinkedHashMap<>();
    for (YamlNode.Entry entry : block.entries()) {
      String key = entry.key().text().text();
      if (!table.keys().contains(key)) {
        Optional<String> near = Nearest.of(key, table.keys());
        near.ifPresent(one -> meant.putIfAbsent(one, entry.value()));
        findings.add(
            FigureCode.FIGURE_KEY_UNKNOWN,
            entry.key().position(),
            "name",
            key,
            "near",
            near.orElse("none"),
            "known",
            Known.listed(table.keys()));
      } else if (values.putIfAbsent(key, entry.value()) != null) {
        findings.add(FigureCode.FIGURE_KEY_TWICE, entry.key().position(), "name", key);
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
  public static Optional<Keys> of(SourceText block, KeyTable table, Findings findings) {
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
    Findings read = new Findings();
    YamlNode.Entries entries = YamlParser.read(block.file(), from, to, Limits.STANDARD, read);
    for (Finding finding : read.sorted()) {
      // Of a block the file's reader could only say that the file itself is no map.
      findings.add(
          finding.code() == YamlCode.ROOT_NOT_MAP
              ? Finding.of(FigureCode.FIGURE_NOT_KEYS, finding.position())
              : finding);
    }
    return Optional.ofNullable(entries).map(one -> new Keys(one, table, findings));
  }

  /** The keys of a map that stands under a key. */
  public Keys inner(YamlNode block, String key, KeyTable table) {
    if (block instanceof YamlNode.Entries entries) {
      return new Keys(entries, table, findings);
    }
    throw Faults.kind(block.position(), what(key), "keys with values");
  }

  /** Where the map stands. */
  public Position position() {
    return position;
  }

  /** Whether a key is there. */
  public boolean has(String key) {
    return values.containsKey(key);
  }

  /** The value of a key that is there, or null. */
  public YamlNode get(String key) {
    return values.get(key);
  }

  /** Reports each key that isn't there. */
  public void need(String... keys) {
    for (String key : keys) {
      if (!has(key)) {
        report(Faults.of(position, FigureCode.FIGURE_KEY_MISSING, "name", key), key);
      }
    }
  }

  /** Whether something was reported of one of these. */
  public boolean amiss(String... keys) {
    return Arrays.stream(keys).anyMatch(amiss::contains);
  }

  /** Reports what is wrong with a key. */
  public void report(FindingException fault, String key) {
    findings.add(fault.finding());
    amiss.add(key);
  }

  /** Says something without taking the key as amiss. */
  public void warn(FigureCode code, Position place) {
    findings.add(code, place);
  }

  /** An entry of which everything could be read, or else null. */
  public <T> T whole(T entry) {
    return amiss.isEmpty() ? entry : null;
  }

  /** Warns of keys that are there and aren’t looked at, as another one is there. */
  public void idle(String with, List<String> keys, List<String> known) {
    for (String key : keys) {
      if (places.containsKey(key)) {
        findings.add(
            FigureCode.FIGURE_KEY_IDLE,
            places.get(key),
            "name",
            key,
            "with",
            with,
            "known",
            Known.listed(known));
      }
    }
  }

  /** The one of several keys that is there. */
  public String one(String... keys) {
    List<String> there = Arrays.stream(keys).filter(this::has).toList();
    if (there.isEmpty()) {
      throw Faults.of(
          position, FigureCode.FIGURE_KEY_MISSING, "name", listed(Arrays.asList(keys), " or "));
    }
    if (there.size() > 1) {
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

  private String what(String key) {
    return where + "/" + key;
  }

  /**
   * What a reader makes of a key's value.
   *
   * @param key the key
   * @param otherwise what it comes to if it isn't stated or can't be read
   * @param reader takes the value and the key with what it belongs to
   */
  public <T> T read(String key, T otherwise, Reader<T> reader) {
    if (!has(key)) {
      return otherwise;
    }
    try {
      return reader.read(get(key), what(key));
    } catch (FindingException e) {
      report(e, key);
      return otherwise;
    }
  }

  /** Reads a value; what can't be read is thrown as a finding. */
  public interface Reader<T> {
    /** Reads the value of a key, which is named with what it belongs to. */
    T read(YamlNode value, String what);
  }

  /** A text, or null. */
  public SourceText text(String key) {
    return read(key, null, Values::text);
  }

  /** A formula, or null. */
  public Formula formula(String key) {
    return read(key, null, Values::formula);
  }

  /** A text with placeholders, or null. */
  public TemplateText template(String key) {
    return read(key, null, (node, what) -> TemplateText.parse(Values.text(node, what), findings));
  }

  /** A short text with placeholders, or null. */
  public TemplateText label(String key) {
    TemplateText text = template(key);
    if (text != null && text.source().text().length() > MAX_LABEL) {
      findings.add(
          FigureCode.FIGURE_LABEL_TOO_LONG,
          get(key).position(),
          "count",
          text.source().text().length(),
          "limit",
          MAX_LABEL);
    }
    return text;
  }

  /** Yes or no. */
  public boolean yes(String key, boolean otherwise) {
    return word(key, List.of("yes", "no"), otherwise ? "yes" : "no").equals("yes");
  }

  /** A multiple of a quarter turn in degrees; none unless stated. */
  public int turn() {
    return Integer.parseInt(word("turn", List.of("0", "90", "180", "270"), "0"));
  }

  /** One of some words. */
  public String word(String key, List<String> known, String otherwise) {
    return read(key, otherwise, (node, what) -> Values.word(node, what, known));
  }

  /** One of the words that are constants. */
  public <E extends Enum<E>> E constant(String key, Class<E> type, E otherwise) {
    return read(key, otherwise, (node, what) -> Values.constant(node, what, type));
  }

  /** One or several of the words that are constants, in their order. */
  public <E extends Enum<E>> Set<E> constants(String key, Class<E> type) {
    Set<E> all = EnumSet.noneOf(type);
    all.addAll(each(key, (item, what) -> Values.constant(item, what, type)));
    return Collections.unmodifiableSet(all);
  }

  /** A whole number from 1 on. */
  public int count(String key, int most) {
    return read(
        key,
        1,
        (node, what) -> {
          String text = Values.text(node, what).text();
          if (!text.matches("[1-9]\\d?") || Integer.parseInt(text) > most) {
            throw Faults.kind(node.position(), what, "a number from 1 to " + most);
          }
          return Integer.parseInt(text);
        });
  }

  /** A number from 0 to 1; 0 unless stated. */
  public double share(String key) {
    return read(
        key,
        0.0,
        (node, what) -> {
          String text = Values.text(node, what).text();
          if (!text.matches("0(\\.\\d+)?|1(\\.0+)?")) {
            throw Faults.kind(node.position(), what, "a number from 0 to 1");
          }
          return Double.parseDouble(text);
        });
  }

  /** What stands in a map of its own, or null. */
  public <T> T child(String key, KeyTable table, Function<Keys, T> reader) {
    return read(key, null, (node, what) -> reader.apply(inner(node, key, table)));
  }

  /** Those of a list, or of a single value as a list of one, that can be read. */
  public <T> List<T> each(String key, Reader<T> reader) {
    if (!has(key)) {
      return List.of();
    }
    return each(
        key,
        get(key) instanceof YamlNode.Items items ? items.items() : List.of(get(key)),
        item -> reader.read(item, what(key)));
  }

  /** Those of some values that can be read; the key is amiss if one can’t. */
  public <T> List<T> each(String key, List<YamlNode> items, Function<YamlNode, T> reader) {
    List<T> read = new ArrayList<>();
    for (YamlNode item : items) {
      Optional<T> one = attempt(() -> reader.apply(item));
      if (one.isEmpty()) {
        amiss.add(key);
      }
      one.ifPresent(read::add);
    }
    return read;
  }

  /** What a reader makes of something; nothing if that can’t be used, which is then reported. */
  public <T> Optional<T> attempt(Supplier<T> reader) {
    try {
      return Optional.ofNullable(reader.get());
    } catch (FindingException e) {
      findings.add(e.finding());
      return Optional.empty();
    }
  }

  /** Texts, of which a single one needs no list. */
  public List<SourceText> texts(String key) {
    return each(key, Values::text);
  }

  /** Formulas, of which a single one needs no list. */
  public List<Formula> formulas(String key) {
    return each(key, Values::formula);
  }

  /** Those maps of a list that can be read; the key is amiss if one can’t. */
  public <T> List<T> all(String key, KeyTable table, Function<Keys, T> reader) {
    return read(
        key,
        List.of(),
        (node, what) -> {
          List<YamlNode> items = Values.entries(node, what);
          if (items.size() > MAX_THINGS) {
            throw Faults.of(
                node.position(), FigureCode.FIGURE_TOO_MANY, "limit", MAX_THINGS, "what", key);
          }
          return each(key, items, item -> reader.apply(inner(item, key, table)));
        });
  }
}
