package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.MakingSource;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;

/** Reads what a maker should know: {@code making}, {@code tools} and {@code use}. */
final class MakingReader {
  private static final List<Key<TemplateText>> TEXTS =
      Stream.of("skill", "time", "machine", "needle", "thread")
          .map(name -> Key.of(name, Forms.TEMPLATE))
          .toList();
  private static final Key<List<Named<Formula>>> STITCHES =
      Key.of("stitches", Forms.named(Forms.LENGTH, false));
  private static final Table MAKING_TABLE = Table.of("making").with(TEXTS).with(List.of(STITCHES));

  private static final Key<TemplateText> NAME = Key.required("name", Forms.TEMPLATE);
  private static final Table TOOL =
      Table.of("tool", NAME).with(CareReader.KEYS).with(List.of(Stated.WHEN));

  /** What a maker should know before she begins. */
  static final Key<Stated> MAKING = Key.of("making", Forms.map(MAKING_TABLE));

  /** The tools. */
  static final Key<List<Named<Stated>>> TOOLS = Key.of("tools", Forms.named(TOOL, false));

  private final Reading reading;

  MakingReader(Reading reading) {
    this.reading = reading;
  }

  MakingSource read(Stated pattern) {
    Stated in = pattern.or(MAKING, Stated.nothing(reading, MAKING_TABLE));
    Map<String, TemplateText> texts = in.each(TEXTS);
    texts.values().removeIf(Objects::isNull);
    Map<String, Formula> stitches = new LinkedHashMap<>();
    for (Named<Formula> stitch : in.all(STITCHES)) {
      if (stitch.value() != null) {
        stitches.put(stitch.name().text(), stitch.value());
      }
    }
    List<MakingSource.ToolSource> tools = new ArrayList<>();
    for (Named<Stated> tool : pattern.all(TOOLS)) {
      if (tool.value() != null) {
        tool(tool.name(), tool.value(), tools);
      }
    }
    return new MakingSource(texts, stitches, tools, new CareReader(reading).use(pattern));
  }

  private void tool(SourceText id, Stated in, List<MakingSource.ToolSource> tools) {
    in.condition(Ref.of(Ref.Kind.THING, id.text()));
    TemplateText name = in.get(NAME);
    if (name != null) {
      tools.add(new MakingSource.ToolSource(id, name, new CareReader(reading).read(in)));
    }
  }
}
