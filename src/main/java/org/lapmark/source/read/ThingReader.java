package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.SourceCode;
import org.lapmark.source.ThingSource;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads materials and hardware. */
final class ThingReader {
  private static final Form<Formula> STOCK =
      new Form<>(
          "length, or a list of lengths",
          Forms.schema(
              "type", List.of("array", "string"), "minItems", 1, "items", Forms.LENGTH.schema()),
          List.of(),
          ThingReader::stock);

  private static final List<Key<Formula>> CLOTH =
      List.of(
          Key.of("usable_width", Forms.LENGTH),
          Key.of("other_width", Forms.LENGTH),
          Key.of("selvedge_margin", Forms.LENGTH).unless("0 mm"),
          Key.of("margin", Forms.SHARE).unless("0"),
          Key.of("thickness", Forms.LENGTH),
          Key.of("shrinkage", Forms.SHARE).unless("0"),
          Key.of("repeat", Forms.LENGTH),
          Key.of("nap", Forms.FLAG).unless("no"),
          Key.of("no_grain", Forms.FLAG).unless("no"),
          Key.of("no_fray", Forms.FLAG).unless("no"),
          Key.of("no_iron", Forms.FLAG).unless("no"),
          Key.of("both_sides_alike", Forms.FLAG).unless("no"),
          Key.of("fusible", Forms.FLAG).unless("no"));
  private static final List<Key<Formula>> OF_HARDWARE =
      List.of(
          Key.of("visible_width", Forms.LENGTH),
          Key.of("tape_width", Forms.LENGTH),
          Key.of("stock_lengths", STOCK),
          Key.of("inner_width", Forms.LENGTH),
          Key.of("inner_height", Forms.LENGTH),
          Key.of("bar", Forms.LENGTH),
          Key.of("diameter", Forms.LENGTH),
          Key.of("width", Forms.LENGTH),
          Key.of("length", Forms.LENGTH),
          Key.of("thickness", Forms.LENGTH),
          Key.of("quantity", Forms.formula("count or length")));
  private static final Key<Formula> SEWN_INTO = Key.of("sewn_into", Forms.LENGTH);
  private static final List<Key<Formula>> PROPERTIES =
      Stream.of(CLOTH, OF_HARDWARE, List.of(SEWN_INTO)).flatMap(List::stream).toList();

  private static final Key<TemplateText> NAME = Key.required("name", Forms.NAME_TEMPLATE);
  private static final Key<SourceText> TEXTURE =
      Key.of(
          "texture",
          Forms.words(
              SourceCode.TEXTURE_UNKNOWN,
              List.of("main", "lining", "interfacing", "backing", "binding", "webbing")));
  private static final Key<SourceText> FORM =
      Key.of("form", Forms.words(SourceCode.FORM_UNKNOWN, ThingSource.FORMS));
  private static final Key<List<Formula>> PASSES =
      Key.of("passes", Forms.oneOrMore(Forms.formula("name or length")));
  private static final List<Key<TemplateText>> TEXTS =
      List.of(Key.of("substitute", Forms.TEMPLATE), Key.of("buying", Forms.TEMPLATE));

  private static final Table MATERIAL =
      Table.of("material", NAME)
          .with(CLOTH)
          .with(List.of(TEXTURE))
          .with(TEXTS)
          .with(CareReader.KEYS)
          .with(List.of(Stated.WHEN));
  private static final Table HARDWARE_TABLE =
      Table.of("hardware", NAME, FORM)
          .with(OF_HARDWARE)
          .with(List.of(PASSES, SEWN_INTO))
          .with(TEXTS)
          .with(CareReader.KEYS)
          .with(List.of(Stated.WHEN));

  /** The materials of a pattern. */
  static final Key<List<Named<Stated>>> MATERIALS =
      Key.required("materials", Forms.named(MATERIAL, true));

  /** The hardware of a pattern. */
  static final Key<List<Named<Stated>>> HARDWARE =
      Key.of("hardware", Forms.named(HARDWARE_TABLE, true));

  private final Reading reading;

  ThingReader(Reading reading) {
    this.reading = reading;
  }

  List<ThingSource> read(List<Named<Stated>> written) {
    List<ThingSource> things = new ArrayList<>();
    for (Named<Stated> thing : written) {
      things.add(thing(thing.name(), thing.value()));
    }
    return things;
  }

  /** Of what isn't a map, which is reported, nothing is known but its name. */
  private ThingSource thing(SourceText id, Stated in) {
    TemplateText called = new TemplateText(id, List.of(new TemplateText.Literal(id.text())));
    if (in == null) {
      return new ThingSource(id, called, Collections.emptyMap());
    }
    in.condition(Ref.of(Ref.Kind.THING, id.text()));
    Map<String, TemplateText> texts = in.each(TEXTS);
    texts.values().removeIf(Objects::isNull);
    return new ThingSource(
        id,
        in.or(NAME, called),
        in.each(PROPERTIES),
        texts,
        in.table() == MATERIAL ? in.get(TEXTURE) : null,
        in.table() == MATERIAL ? null : in.get(FORM),
        new CareReader(reading).read(in),
        in.table() == MATERIAL
            ? List.of()
            : in.all(PASSES).stream()
                .map(formula -> new ThingSource.Passing(formula.text(), formula))
                .toList());
  }

  private static Formula stock(Reading reading, YamlNode node, String key) {
    if (node.list().isPresent()) {
      List<SourceText> texts = reading.texts(node, key);
      return texts.isEmpty() ? null : reading.formula(joined(texts));
    }
    return reading.formula(node, key);
  }

  /** Several stock sizes as the formula of a list, each character with its place. */
  private static SourceText joined(List<SourceText> texts) {
    StringBuilder text = new StringBuilder("[");
    List<Integer> offsets = new ArrayList<>();
    SourceFile file = texts.get(0).file();
    int last = texts.get(0).offset(0);
    offsets.add(last);
    for (SourceText part : texts) {
      if (text.length() > 1) {
        text.append(", ");
        offsets.add(last);
        offsets.add(last);
      }
      text.append(part.text());
      for (int i = 0; i < part.text().length(); i++) {
        offsets.add(part.offset(i));
      }
      last = part.offset(part.text().length());
    }
    text.append(']');
    offsets.add(last);
    offsets.add(last);
    return SourceText.mapped(
        file, text.toString(), offsets.stream().mapToInt(Integer::intValue).toArray());
  }
}
