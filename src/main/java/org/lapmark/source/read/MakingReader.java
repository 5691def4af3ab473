package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.MakingSource;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Section;
import org.lapmark.source.yaml.YamlNode;

/** Reads what a maker should know: {@code making}, {@code tools} and {@code use}. */
final class MakingReader {
  private final Reading reading;

  MakingReader(Reading reading) {
    this.reading = reading;
  }

  MakingSource read(Map<String, YamlNode> pattern) {
    Map<String, TemplateText> texts = new LinkedHashMap<>();
    Map<String, Formula> stitches = new LinkedHashMap<>();
    for (Map.Entry<String, YamlNode> entry :
        section(pattern, "making", Section.MAKING).entrySet()) {
      if (entry.getKey().equals("stitches")) {
        reading.named(
            entry.getValue(),
            "stitches",
            false,
            (name, value) -> {
              Formula length = reading.formula(value, name.text());
              if (length != null) {
                stitches.put(name.text(), length);
              }
            });
      } else {
        TemplateText text = reading.template(entry.getValue(), entry.getKey());
        if (text != null) {
          texts.put(entry.getKey(), text);
        }
      }
    }
    List<MakingSource.ToolSource> tools = new ArrayList<>();
    if (pattern.containsKey("tools")) {
      reading.named(pattern.get("tools"), "tools", false, (id, value) -> tool(id, value, tools));
    }
    Map<String, YamlNode> use = section(pattern, "use", Section.USE);
    return new MakingSource(texts, stitches, tools, new CareReader(reading).use(use));
  }

  private void tool(SourceText id, YamlNode node, List<MakingSource.ToolSource> tools) {
    Map<String, YamlNode> values = reading.section(node, Section.TOOL, id.position(), id.text());
    reading.condition(values, id.position());
    TemplateText name =
        values != null && values.containsKey("name")
            ? reading.template(values.get("name"), "name")
            : null;
    if (name != null) {
      tools.add(new MakingSource.ToolSource(id, name, new CareReader(reading).read(values)));
    }
  }

  private Map<String, YamlNode> section(
      Map<String, YamlNode> pattern, String key, Section section) {
    YamlNode node = pattern.get(key);
    if (node == null) {
      return Map.of();
    }
    Position owner = MastheadReader.firstKey(node);
    Map<String, YamlNode> values = reading.section(node, section, owner, key);
    return values == null ? Map.of() : values;
  }
}
