package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.Ages;
import org.lapmark.source.CareSource;
import org.lapmark.source.Kind;
import org.lapmark.source.SourceCode;
import org.lapmark.source.UseSource;
import org.lapmark.source.key.Reading;
import org.lapmark.source.yaml.YamlNode;

/** Reads what things and the article's use say of the care that they need. */
final class CareReader {
  /** The keys of a thing that are read here. */
  static final List<String> KEYS = List.of("kind", "hazards", "because");

  /** Where a cord or a tie may lie. */
  private static final List<String> PLACES =
      List.of(
          "neck", "hood", "head", "chest", "waist", "hip", "hem", "arm", "leg", "hand", "inside");

  private final Reading reading;

  CareReader(Reading reading) {
    this.reading = reading;
  }

  /** What a thing says. */
  CareSource read(Map<String, YamlNode> values) {
    List<SourceText> hazards = hazards(values);
    return new CareSource(kinds(values.get("kind")), hazards, because(values, hazards));
  }

  private List<Kind> kinds(YamlNode node) {
    List<Kind> kinds = new ArrayList<>();
    for (SourceText text : oneOrMore(node, "kind")) {
      Optional<Kind> kind = Kind.of(text.text());
      if (kind.isEmpty()) {
        reading.unknown(SourceCode.KIND_UNKNOWN, text.position(), text.text(), Kind.ids());
      } else if (!kinds.contains(kind.get())) {
        kinds.add(kind.get());
      }
    }
    return kinds;
  }

  private List<SourceText> oneOrMore(YamlNode node, String key) {
    if (node == null) {
      return List.of();
    }
    if (node instanceof YamlNode.Items) {
      return reading.texts(node, key);
    }
    SourceText text = reading.text(node, key);
    return text == null ? List.of() : List.of(text);
  }

  private List<SourceText> hazards(Map<String, YamlNode> values) {
    YamlNode node = values.get("hazards");
    if (node == null) {
      return List.of();
    }
    if (node instanceof YamlNode.Items items && items.items().isEmpty()) {
      if (!values.containsKey("because")) {
        reading.findings().add(SourceCode.HAZARDS_UNREASONED, node.position());
      }
      return List.of();
    }
    return reading.texts(node, "hazards");
  }

  /** A reason is one for no hazards; beside some it would say nothing. */
  private SourceText because(Map<String, YamlNode> values, List<SourceText> hazards) {
    YamlNode node = values.get("because");
    SourceText reason = node == null ? null : reading.label(node, "because");
    boolean none = values.get("hazards") instanceof YamlNode.Items items && items.items().isEmpty();
    if (reason != null && !none) {
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
  UseSource use(Map<String, YamlNode> values) {
    TemplateText load =
        values.containsKey("load_limit")
            ? reading.template(values.get("load_limit"), "load_limit")
            : null;
    List<SourceText> hazards = hazards(values);
    Map<SourceText, Ages> bySize = new LinkedHashMap<>();
    Ages forAll = null;
    if (values.get("ages") instanceof YamlNode.Entries map) {
      Map<String, YamlNode.Text> seen = new LinkedHashMap<>();
      for (YamlNode.Entry entry : reading.bounded(map, "ages")) {
        if (!reading.repeated(entry.key(), seen)) {
          ages(entry.value()).ifPresent(ages -> bySize.put(entry.key().text(), ages));
        }
      }
    } else if (values.containsKey("ages")) {
      forAll = ages(values.get("ages")).orElse(null);
    }
    return new UseSource(
        load, hazards, because(values, hazards), bySize, forAll, wornAt(values.get("worn_at")));
  }

  private Optional<Ages> ages(YamlNode node) {
    SourceText text = reading.text(node, "ages");
    if (text == null) {
      return Optional.empty();
    }
    Optional<Ages> ages = Ages.of(text.text());
    if (ages.isEmpty()) {
      reading.findings().add(SourceCode.AGES_WRONG, text.position(), "text", text.text());
    }
    return ages;
  }

  private Map<SourceText, SourceText> wornAt(YamlNode node) {
    Map<SourceText, SourceText> places = new LinkedHashMap<>();
    YamlNode.Entries map = node == null ? null : reading.map(node, "worn_at");
    if (map == null) {
      return places;
    }
    Map<String, YamlNode.Text> seen = new LinkedHashMap<>();
    for (YamlNode.Entry entry : reading.bounded(map, "worn_at")) {
      SourceText place = reading.text(entry.value(), "worn_at");
      if (reading.repeated(entry.key(), seen) || place == null) {
        continue;
      }
      if (PLACES.contains(place.text())) {
        places.put(entry.key().text(), place);
      } else {
        reading.unknown(SourceCode.PLACE_UNKNOWN, place.position(), place.text(), PLACES);
      }
    }
    return places;
  }
}
