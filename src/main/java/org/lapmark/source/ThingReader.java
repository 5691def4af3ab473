package org.lapmark.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;

/** Reads materials and hardware. */
final class ThingReader {
  private static final List<String> TEXTS = List.of("substitute", "buying");
  private static final List<String> TEXTURES =
      List.of("main", "lining", "interfacing", "backing", "binding", "webbing");

  private final Reading reading;

  ThingReader(Reading reading) {
    this.reading = reading;
  }

  List<ThingSource> read(YamlNode node, Section section, String what) {
    List<ThingSource> things = new ArrayList<>();
    reading.named(node, what, true, (id, value) -> things.add(thing(id, value, section)));
    return things;
  }

  private ThingSource thing(SourceText id, YamlNode node, Section section) {
    Map<String, YamlNode> values = reading.section(node, section, id.position(), id.text());
    Map<String, Formula> properties = new LinkedHashMap<>();
    Map<String, TemplateText> texts = new LinkedHashMap<>();
    CareSource care = values == null ? CareSource.NONE : new CareReader(reading).read(values);
    List<ThingSource.Passing> passes = List.of();
    SourceText texture = null;
    TemplateText name = null;
    if (values != null) {
      for (Map.Entry<String, YamlNode> entry : values.entrySet()) {
        if (entry.getKey().equals("name")) {
          name = reading.nameTemplate(entry.getValue(), "name");
        } else if (TEXTS.contains(entry.getKey())) {
          TemplateText text = reading.template(entry.getValue(), entry.getKey());
          if (text != null) {
            texts.put(entry.getKey(), text);
          }
        } else if (entry.getKey().equals("texture")) {
          texture = texture(reading.text(entry.getValue(), "texture"));
        } else if (entry.getKey().equals("when")) {
          reading.condition(values, id.position());
        } else if (entry.getKey().equals("passes")) {
          passes = passes(entry.getValue());
        } else if (!CareReader.KEYS.contains(entry.getKey())) {
          properties.put(entry.getKey(), property(entry.getKey(), entry.getValue()));
        }
      }
    }
    if (name == null) {
      name = new TemplateText(id, List.of(new TemplateText.Literal(id.text())));
    }
    return new ThingSource(id, name, properties, texts, texture, care, passes);
  }

  /** One thing, or a list of several. */
  private List<ThingSource.Passing> passes(YamlNode node) {
    List<SourceText> texts = new ArrayList<>();
    if (node instanceof YamlNode.Items) {
      texts.addAll(reading.texts(node, "passes"));
    } else {
      SourceText text = reading.text(node, "passes");
      if (text != null) {
        texts.add(text);
      }
    }
    List<ThingSource.Passing> passes = new ArrayList<>();
    for (SourceText text : texts) {
      Formula formula = reading.formula(text);
      if (formula != null) {
        passes.add(new ThingSource.Passing(text, formula));
      }
    }
    return passes;
  }

  private SourceText texture(SourceText word) {
    if (word == null || TEXTURES.contains(word.text())) {
      return word;
    }
    reading.unknown(SourceCode.TEXTURE_UNKNOWN, word.position(), word.text(), TEXTURES);
    return null;
  }

  private Formula property(String key, YamlNode node) {
    if (key.equals("stock_lengths") && node instanceof YamlNode.Items) {
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
