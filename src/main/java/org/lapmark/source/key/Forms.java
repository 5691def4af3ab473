package org.lapmark.source.key;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.yaml.YamlNode;

/** The forms in which values are written. */
public final class Forms {
  /** A list without a limit of its own has that of the folder. */
  private static final int NO_LIMIT = Integer.MAX_VALUE;

  /** A text as it stands. */
  public static final Form<SourceText> TEXT =
      new Form<>("text", schema("type", "string"), Reading::text);

  /** A short text that is printed, without placeholders. */
  public static final Form<SourceText> LABEL =
      new Form<>("text without placeholders", schema("type", "string"), Reading::label);

  /** What something is called in figures, tables and lists, without placeholders. */
  public static final Form<SourceText> PRINTED_NAME =
      new Form<>("text without placeholders", schema("type", "string"), Reading::name);

  /** What something is called in figures, tables and lists. */
  public static final Form<TemplateText> NAME_TEMPLATE =
      new Form<>("text", defined("text"), Reading::nameTemplate);

  /** A short text with placeholders. */
  public static final Form<TemplateText> LABEL_TEMPLATE =
      new Form<>("text", defined("text"), Reading::labelTemplate);

  /** A text with placeholders. */
  public static final Form<TemplateText> TEMPLATE =
      new Form<>("text", defined("text"), Reading::template);

  /** A name that stands for something stated elsewhere, or that is given here. */
  public static final Form<SourceText> NAME = new Form<>("name", defined("name"), Reading::text);

  /** The name of something that is made here, in the form that formulas can read. */
  public static final Form<SourceText> NEW_NAME =
      new Form<>(
          "new name",
          defined("name"),
          (reading, node, key) -> {
            SourceText name = reading.text(node, key);
            return name != null && reading.checkName(name) ? name : null;
          });

  /** The name of an edge or chain. */
  public static final Form<SourceText> LINE =
      new Form<>("name of an edge or chain", defined("name"), Reading::corner);

  /** A corner's name. */
  public static final Form<SourceText> CORNER =
      new Form<>("name of a corner", defined("name"), Reading::corner);

  /** Where a fold ends. */
  public static final Form<SourceText> FOLD_END =
      new Form<>("name of an edge, chain or corner", defined("name"), Reading::corner);

  /** One name or several. */
  public static final Form<List<SourceText>> NAMES =
      new Form<>("list of names", defined("names"), Reading::texts);

  /** A condition on variants. */
  public static final Form<Formula> CONDITION =
      new Form<>("condition", defined("condition"), Reading::formula);

  /** A length. */
  public static final Form<Formula> LENGTH = formula("length");

  /** A share of something, such as 1/2. */
  public static final Form<Formula> SHARE = formula("share");

  /** A place on an edge. */
  public static final Form<Formula> PLACE = formula("length or share");

  /** A whole number. */
  public static final Form<Formula> COUNT = formula("count");

  /** An angle. */
  public static final Form<Formula> ANGLE = formula("angle");

  /** A matter of yes or no that may depend on the size or on a choice. */
  public static final Form<Formula> FLAG = formula("yes or no, or a condition");

  /** Yes or no. */
  public static final Form<Boolean> TRUTH =
      new Form<>("yes or no", schema("enum", List.of(true, false, "yes", "no")), Reading::truth);

  private Forms() {}

  /** A formula for a quantity of some kind. */
  public static Form<Formula> formula(String shown) {
    return new Form<>(shown, defined("formula"), Reading::formula);
  }

  /** A whole number in a range, both ends included. */
  public static Form<Integer> number(int lowest, int highest) {
    return new Form<>(
        "whole number from " + lowest + " to " + highest,
        schema("type", "integer", "minimum", lowest, "maximum", highest),
        (reading, node, key) -> reading.number(node, key, lowest, highest));
  }

  /**
   * One of some words.
   *
   * @param code what is reported of others
   * @param words what each stands for, in the order in which hints list them
   */
  public static <T> Form<T> words(FindingCode code, Map<String, T> words) {
    List<String> known = List.copyOf(words.keySet());
    return new Form<>(
        String.join(", ", known),
        schema("enum", known),
        (reading, node, key) -> {
          SourceText word = reading.text(node, key);
          if (word != null && !words.containsKey(word.text())) {
            reading.unknown(code, word.position(), word.text(), known);
            return null;
          }
          return word == null ? null : words.get(word.text());
        });
  }

  /** One of some words, as written. */
  public static Form<SourceText> words(FindingCode code, List<String> words) {
    Map<String, String> each = new LinkedHashMap<>();
    words.forEach(word -> each.put(word, word));
    Form<String> known = words(code, each);
    return new Form<>(
        known.shown(),
        known.schema(),
        (reading, node, key) ->
            known.reader().read(reading, node, key) == null ? null : ((YamlNode.Text) node).text());
  }

  /** One of an enumeration's words, in small letters. */
  public static <T extends Enum<T>> Form<T> words(FindingCode code, Class<T> type) {
    Map<String, T> words = new LinkedHashMap<>();
    for (T value : type.getEnumConstants()) {
      words.put(value.name().toLowerCase(Locale.ROOT), value);
    }
    return words(code, words);
  }

  /** A map with the keys of a table; what is missing in it is reported at its first key. */
  public static Form<Stated> map(Table table) {
    return new Form<>(
        "map",
        defined(table.id()),
        List.of(table),
        (reading, node, key) -> Stated.of(reading, node, table, node.firstKey(), key));
  }

  /** What has several forms; the reader looks for itself which it is. */
  public static Form<YamlNode> either(Form<?>... forms) {
    List<Object> schemas = new ArrayList<>();
    List<Table> tables = new ArrayList<>();
    for (Form<?> form : forms) {
      schemas.add(form.schema());
      tables.addAll(form.tables());
    }
    return new Form<>(
        Arrays.stream(forms).<String>map(Form::shown).collect(Collectors.joining(", or ")),
        schema("anyOf", schemas),
        tables,
        (reading, node, key) -> node);
  }

  /** A list. What can't be read is left out. */
  public static <T> Form<List<T>> list(Form<T> item) {
    return list(item, 0, NO_LIMIT);
  }

  /**
   * A list. What can't be read is left out.
   *
   * @param fewest 1 if an empty list is to be reported
   * @param most how many values are read
   */
  public static <T> Form<List<T>> list(Form<T> item, int fewest, int most) {
    Form<List<T>> list = list(item, fewest, limits -> Math.min(most, limits.entries()));
    return most < NO_LIMIT ? list.with("maxItems", most) : list;
  }

  /**
   * A list. What can't be read is left out.
   *
   * @param fewest 1 if an empty list is to be reported
   * @param most how many values are read
   */
  public static <T> Form<List<T>> list(Form<T> item, int fewest, ToIntFunction<Limits> most) {
    Map<String, Object> schema = new LinkedHashMap<>(schema("type", "array"));
    if (fewest > 0) {
      schema.put("minItems", fewest);
    }
    schema.put("items", item.schema());
    return new Form<>(
        "list of " + item.shown() + (item.shown().matches("[a-z]+") ? "s" : ""),
        Collections.unmodifiableMap(schema),
        item.tables(),
        (reading, node, key) -> {
          List<T> all = new ArrayList<>();
          for (YamlNode each :
              reading.items(node, key, fewest > 0, most.applyAsInt(reading.limits()))) {
            T value = item.reader().read(reading, each, key);
            if (value != null) {
              all.add(value);
            }
          }
          return Collections.unmodifiableList(all);
        });
  }

  /**
   * A map from names of the author's own.
   *
   * @param free whether formulas use the names by themselves
   */
  public static <T> Form<List<Named<T>>> named(Form<T> item, boolean free) {
    return named(
        item,
        "map from names to " + item.shown() + (item.shown().matches("[a-z]+") ? "s" : ""),
        free,
        (reading, name, node) -> item.reader().read(reading, node, name.text()));
  }

  /**
   * A map from names of the author's own to maps with the keys of a table; what is missing in one
   * is reported at its name.
   *
   * @param free whether formulas use the names by themselves
   */
  public static Form<List<Named<Stated>>> named(Table table, boolean free) {
    return named(
        map(table),
        "map from names to maps",
        free,
        (reading, name, node) -> Stated.of(reading, node, table, name.position(), name.text()));
  }

  private interface NamedReader<T> {
    T read(Reading reading, SourceText name, YamlNode node);
  }

  private static <T> Form<List<Named<T>>> named(
      Form<?> item, String shown, boolean free, NamedReader<T> reader) {
    return new Form<>(
        shown,
        schema(
            "type",
            "object",
            "propertyNames",
            defined("name"),
            "additionalProperties",
            item.schema()),
        item.tables(),
        (reading, node, key) -> {
          List<Named<T>> all = new ArrayList<>();
          reading.named(
              node,
              key,
              free,
              (name, value) -> all.add(new Named<>(name, reader.read(reading, name, value))));
          return Collections.unmodifiableList(all);
        });
  }

  /** A map from texts that needn't be names, such as sizes. */
  public static <T> Form<List<Named<T>>> byText(String texts, Form<T> item) {
    return new Form<>(
        "map from " + texts + " to " + item.shown(),
        schema("type", "object", "additionalProperties", item.schema()),
        item.tables(),
        (reading, node, key) -> {
          YamlNode.Entries map = reading.map(node, key);
          if (map == null) {
            return null;
          }
          List<Named<T>> all = new ArrayList<>();
          Map<String, YamlNode.Text> seen = new LinkedHashMap<>();
          for (YamlNode.Entry entry : reading.bounded(map, key)) {
            if (!reading.repeated(entry.key(), seen)) {
              T value = item.reader().read(reading, entry.value(), key);
              all.add(new Named<>(entry.key().text(), value));
            }
          }
          return Collections.unmodifiableList(all);
        });
  }

  /** One value, or a list of several. */
  public static <T> Form<List<T>> oneOrMore(Form<T> item) {
    Form<List<T>> several = list(item, 1, NO_LIMIT);
    return new Form<>(
        item.shown() + ", or a list",
        schema("anyOf", List.of(item.schema(), several.schema())),
        item.tables(),
        (reading, node, key) -> {
          if (node.list().isPresent()) {
            return several.reader().read(reading, node, key);
          }
          T value = item.reader().read(reading, node, key);
          return value == null ? List.of() : List.of(value);
        });
  }

  /** What is read by hand. */
  public static <T> Form<T> special(
      String shown, Map<String, Object> schema, Form.Reader<T> reader) {
    return new Form<>(shown, schema, reader);
  }

  /** A schema that is defined by its name. */
  public static Map<String, Object> defined(String name) {
    return schema("$ref", "#/$defs/" + name);
  }

  /** A schema of keys and values in turn. */
  public static Map<String, Object> schema(Object... pairs) {
    return Form.schema(pairs);
  }
}
