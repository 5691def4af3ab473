package org.lapmark.source.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.Ages;
import org.lapmark.source.CareSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.ThingKind;
import org.lapmark.source.UseSource;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads what things and the article's use say of the care that they need. */
final class CareReader {
  private static final Key<List<ThingKind>> KIND =
      Key.of("kind", Forms.oneOrMore(Forms.words(SourceCode.KIND_UNKNOWN, kinds())));
  private static final Key<List<SourceText>> HAZARDS = Key.of("hazards", Forms.list(Forms.NAME));
  private static final Key<SourceText> BECAUSE = Key.of("because", Forms.LABEL);

  /** The keys of a thing that are read here. */
  static final List<Key<?>> KEYS = List.of(KIND, HAZARDS, BECAUSE);

  private static final Form<Ages> AGES_OF_ONE =
      Forms.special("ages", Forms.schema("type", List.of("string", "number")), CareReader::ages);
  private static final Form<List<Named<Ages>>> AGES_BY_SIZE = Forms.byText("sizes", AGES_OF_ONE);
  private static final Key<YamlNode> AGES = Key.of("ages", Forms.either(AGES_OF_ONE, AGES_BY_SIZE));
  private static final Key<TemplateText> LOAD_LIMIT = Key.of("load_limit", Forms.TEMPLATE);
  private static final Key<List<Named<SourceText>>> WORN_AT =
      Key.of(
          "worn_at",
          Forms.byText(
              "things and numbers of pieces",
              Forms.words(
                  SourceCode.PLACE_UNKNOWN,
                  List.of(
                      "neck", "hood", "head", "chest", "waist", "hip", "hem", "arm", "leg", "hand",
                      "inside"))));
  private static final Table USE_TABLE =
      Table.of("use", AGES, LOAD_LIMIT, HAZARDS, BECAUSE, WORN_AT);

  /** How the article is used. */
  static final Key<Stated> USE = Key.of("use", Forms.map(USE_TABLE));

  private final Reading reading;

  CareReader(Reading reading) {
    this.reading = reading;
  }

  private static Map<String, ThingKind> kinds() {
    Map<String, ThingKind> kinds = new LinkedHashMap<>();
    ThingKind.ids().forEach(id -> kinds.put(id, ThingKind.of(id).orElseThrow()));
    return kinds;
  }

  /** What a thing says. */
  CareSource read(Stated in) {
    List<SourceText> hazards = hazards(in);
    return new CareSource(in.all(KIND).stream().distinct().toList(), hazards, because(in, hazards));
  }

  private List<SourceText> hazards(Stated in) {
    if (isNone(in) && !in.has(BECAUSE)) {
      reading.findings().add(SourceCode.HAZARDS_UNREASONED, in.position(HAZARDS));
    }
    return in.all(HAZARDS);
  }

  private static boolean isNone(Stated in) {
    YamlNode hazards = in.node(HAZARDS);
    return hazards != null && hazards.list().filter(List::isEmpty).isPresent();
  }

  /** A reason is one for no hazards; beside some it would say nothing. */
  private SourceText because(Stated in, List<SourceText> hazards) {
    SourceText reason = in.get(BECAUSE);
    if (reason != null && !isNone(in)) {
      reading
          .findings()
          .add(
              SourceCode.REASON_IDLE,
              reason.position(),
              "hazards",
              hazards.isEmpty() ? "no" : "yes");
      return null;
    }
    return reason;
  }

  /** How the article is used. */
  UseSource use(Stated pattern) {
    Stated in = pattern.or(USE, Stated.nothing(reading, USE_TABLE));
    List<SourceText> hazards = hazards(in);
    Map<SourceText, Ages> bySize = new LinkedHashMap<>();
    Ages forAll = null;
    if (in.node(AGES) instanceof YamlNode.Entries map) {
      bySize.putAll(present(AGES_BY_SIZE.reader().read(reading, map, AGES.name())));
    } else if (in.has(AGES)) {
      forAll = ages(reading, in.get(AGES), AGES.name());
    }
    return new UseSource(
        in.get(LOAD_LIMIT),
        hazards,
        because(in, hazards),
        bySize,
        forAll,
        present(in.all(WORN_AT)));
  }

  private static <T> Map<SourceText, T> present(List<Named<T>> all) {
    Map<SourceText, T> present = new LinkedHashMap<>();
    for (Named<T> one : all) {
      if (one.value() != null) {
        present.put(one.name(), one.value());
      }
    }
    return present;
  }

  private static Ages ages(Reading reading, YamlNode node, String key) {
    SourceText text = reading.text(node, key);
    Optional<Ages> ages = text == null ? Optional.empty() : Ages.of(text.text());
    if (text != null && ages.isEmpty()) {
      reading.findings().add(SourceCode.AGES_WRONG, text.position(), "text", text.text());
    }
    return ages.orElse(null);
  }
}
