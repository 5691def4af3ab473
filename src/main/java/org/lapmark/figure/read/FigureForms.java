package org.lapmark.figure.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/**
 * The forms in which values of figures are written. What can't be read is thrown as a finding, and
 * names the key with its table before a slash.
 */
public final class FigureForms {
  /** The most entries of a list. */
  public static final int MOST = 40;

  /** The most characters of a label. */
  private static final int MAX_LABEL = 90;

  /** The name of something that is stated elsewhere. */
  public static final Form<SourceText> NAME = value("name", Forms.NAME, Values::text);

  /** Any text, which isn't looked at. */
  public static final Form<SourceText> ANY = value("text", Forms.TRUTH, Values::text);

  /** A piece's number. */
  public static final Form<SourceText> NUMBER = value("number", Forms.COUNT, Values::text);

  /** The name of an edge or chain. */
  public static final Form<SourceText> EDGE =
      value("name of an edge or chain", Forms.LINE, Values::text);

  /** The name of a corner. */
  public static final Form<SourceText> CORNER =
      value("name of a corner", Forms.CORNER, Values::text);

  /** The name of an edge, a chain or a corner. */
  public static final Form<SourceText> EDGE_OR_CORNER =
      value("name of an edge, a chain or a corner", Forms.LINE, Values::text);

  /** Edges or chains: one, several, or all. */
  public static final Form<Entries<SourceText>> EDGES = each(EDGE);

  /** What stitching follows: edges, chains or a placement line. */
  public static final Form<Entries<SourceText>> SEWN =
      each(value("name of an edge, a chain or a placement line", Forms.LINE, Values::text));

  /** A length. */
  public static final Form<Formula> LENGTH = value("length", Forms.LENGTH, Values::formula);

  /** A share of something. */
  public static final Form<Formula> SHARE = value("share", Forms.SHARE, Values::formula);

  /** A place along something. */
  public static final Form<Formula> PLACE = value("length or share", Forms.PLACE, Values::formula);

  /** A plain number. */
  public static final Form<Formula> PLAIN = value("number", Forms.SHARE, Values::formula);

  /** A text with placeholders. */
  public static final Form<TemplateText> TEMPLATE =
      new Form<>("text", Forms.TEMPLATE.schema(), List.of(), FigureForms::template);

  /** A short text with placeholders. */
  public static final Form<TemplateText> LABEL =
      new Form<>(
          "text of at most " + MAX_LABEL + " letters",
          Forms.TEMPLATE.schema(),
          List.of(),
          FigureForms::label);

  /** Yes or no. */
  public static final Form<Boolean> YES =
      value(
          "yes or no",
          Forms.TRUTH,
          (node, what) -> Values.word(node, what, List.of("yes", "no")).equals("yes"));

  /** A multiple of a quarter turn in degrees. */
  public static final Form<Integer> TURN =
      Forms.special(
          "0, 90, 180, 270",
          Forms.schema("enum", List.of(0, 90, 180, 270)),
          (reading, node, what) ->
              Integer.valueOf(Values.word(node, what, List.of("0", "90", "180", "270"))));

  /** Degrees clockwise. */
  public static final Form<Double> DEGREES =
      Forms.special(
          "degrees from -360 to 360",
          Forms.schema("type", "number", "minimum", -360, "maximum", 360),
          (reading, node, what) -> Values.degrees(node, what));

  /** Two lengths in brackets. */
  public static final Form<Entries<Formula>> PAIR =
      Forms.special(
          "two lengths in brackets",
          Forms.schema("type", "array", "items", LENGTH.schema(), "minItems", 2, "maxItems", 2),
          (reading, node, what) -> Values.pair(node, what));

  /** A number from 0 to 1. */
  public static final Form<Double> SIMPLE_SHARE =
      Forms.special(
          "number from 0 to 1",
          Forms.schema("type", "number", "minimum", 0, "maximum", 1),
          (reading, node, what) -> Values.share(node, what));

  private FigureForms() {}

  /** Reads a value. */
  public interface Reader<T> {
    /** What a value comes to, whose key is named with its table before a slash. */
    T read(YamlNode node, String what);
  }

  private static <T> Form<T> value(String shown, Form<?> like, Reader<T> reader) {
    return Forms.special(shown, like.schema(), (reading, node, what) -> reader.read(node, what));
  }

  private static TemplateText template(Reading reading, YamlNode node, String what) {
    return TemplateText.parse(Values.text(node, what), reading.findings());
  }

  private static TemplateText label(Reading reading, YamlNode node, String what) {
    TemplateText text = template(reading, node, what);
    int count = text.source().text().length();
    if (count > MAX_LABEL) {
      reading
          .findings()
          .add(
              FigureCode.FIGURE_LABEL_TOO_LONG,
              node.position(),
              "count",
              count,
              "limit",
              MAX_LABEL);
    }
    return text;
  }

  /** One of some words. */
  public static Form<String> words(String... words) {
    List<String> known = List.of(words);
    return Forms.special(
        String.join(", ", known),
        Forms.schema("enum", known),
        (reading, node, what) -> Values.word(node, what, known));
  }

  /** One of some words, as written. */
  public static Form<SourceText> oneOf(List<String> known) {
    return Forms.special(
        String.join(", ", known),
        Forms.schema("enum", known),
        (reading, node, what) -> {
          Values.word(node, what, known);
          return Values.text(node, what);
        });
  }

  /** One of the words that are constants. */
  public static <E extends Enum<E>> Form<E> constant(Class<E> type) {
    List<String> known = known(type);
    return Forms.special(
        String.join(", ", known),
        Forms.schema("enum", known),
        (reading, node, what) ->
            Enum.valueOf(type, Values.word(node, what, known).toUpperCase(Locale.ROOT)));
  }

  private static <E extends Enum<E>> List<String> known(Class<E> type) {
    return Arrays.stream(type.getEnumConstants())
        .map(constant -> constant.name().toLowerCase(Locale.ROOT))
        .toList();
  }

  /** Some of the constants of a type, in their order. */
  public static <E extends Enum<E>> Set<E> ordered(List<E> some, Class<E> type) {
    Set<E> all = EnumSet.noneOf(type);
    all.addAll(some);
    return Collections.unmodifiableSet(all);
  }

  /** A whole number from 1 on. */
  public static Form<Integer> count(int most) {
    return Forms.special(
        "whole number from 1 to " + most,
        Forms.schema("type", "integer", "minimum", 1, "maximum", most),
        (reading, node, what) -> Values.count(node, what, most));
  }

  /** One value, or a list of some. */
  public static <T> Form<Entries<T>> each(Form<T> item) {
    Object list =
        Forms.schema("type", "array", "minItems", 1, "maxItems", MOST, "items", item.schema());
    return new Form<>(
        item.shown() + ", or a list",
        Forms.schema("anyOf", List.of(item.schema(), list)),
        item.tables(),
        (reading, node, what) ->
            entries(
                node.list().isPresent() ? bounded(node, what) : List.of(node),
                one -> item.reader().read(reading, one, what),
                reading.findings()));
  }

  /** A list of maps of one kind. */
  public static <T> Form<Entries<T>> list(Table table, Function<Keys, T> reader) {
    return new Form<>(
        "list of maps",
        Forms.schema(
            "type", "array", "minItems", 1, "maxItems", MOST, "items", Forms.defined(table.id())),
        List.of(table),
        (reading, node, what) ->
            entries(
                bounded(node, what),
                item -> reader.apply(Keys.of(item, what, table, reading)),
                reading.findings()));
  }

  /** The entries of a list that has some, and not too many. */
  private static List<YamlNode> bounded(YamlNode list, String what) {
    List<YamlNode> items = Values.entries(list, what);
    if (items.size() > MOST) {
      String key = what.substring(what.indexOf('/') + 1);
      throw Faults.of(list.position(), FigureCode.FIGURE_TOO_MANY, "limit", MOST, "what", key);
    }
    return items;
  }

  /** A map of one kind. */
  public static <T> Form<T> map(Table table, Function<Keys, T> reader) {
    return new Form<>(
        "map",
        Forms.defined(table.id()),
        List.of(table),
        (reading, node, what) -> reader.apply(Keys.of(node, what, table, reading)));
  }

  /** What a reader makes of some values; what can't be read is reported and left out. */
  public static <A, T> Entries<T> entries(List<A> items, Function<A, T> reader, Findings findings) {
    List<T> read = new ArrayList<>();
    for (A item : items) {
      try {
        T one = reader.apply(item);
        if (one != null) {
          read.add(one);
        }
      } catch (FindingException e) {
        findings.add(e.finding());
      }
    }
    return new Entries<>(read, read.size() == items.size());
  }
}
