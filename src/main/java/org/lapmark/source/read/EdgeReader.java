package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.PanelSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads what a panel names of its outline: edges, runs of them, and lines to split it along. */
final class EdgeReader {
  private static final Key<SourceText> LINE_EDGE = Key.required("edge", Forms.NAME);
  private static final Key<Formula> LINE_AT = Key.required("at", Forms.PLACE);
  private static final Table LINE_PLACE = Table.of("line_place", LINE_EDGE, LINE_AT);
  private static final Form<YamlNode> PLACE =
      Forms.either(Forms.NAME.shown("name of a corner, edge or chain"), Forms.map(LINE_PLACE));
  private static final Key<YamlNode> FROM = Key.required("from", PLACE);
  private static final Key<YamlNode> TO = Key.required("to", PLACE);
  private static final Key<Formula> BOW = Key.of("bow", Forms.LENGTH).unless("0 mm");

  /** The lines along which a panel may be split. */
  static final Key<List<Named<Stated>>> STYLE_LINES =
      Key.of("style_lines", Forms.named(Forms.map(Table.of("style_line", FROM, TO, BOW)), false));

  private static final Form<List<SourceText>> CORNER_PAIR =
      new Form<>(
          "list of two corners",
          Forms.list(Forms.CORNER).with("minItems", 2, "maxItems", 2).schema(),
          List.of(),
          (reading, node, key) -> node.list().isPresent() ? reading.texts(node, key) : null);
  private static final Key<YamlNode> CORNERS = Key.required("corners", CORNER_PAIR.unread());
  private static final Table EDGE = Table.of("edge", CORNERS, Stated.WHEN);

  /** The edges of a panel. */
  static final Key<List<Named<YamlNode>>> EDGES =
      Key.of("edges", Forms.named(Forms.either(CORNER_PAIR, Forms.map(EDGE)), false));

  /** Runs of edges under one name. */
  static final Key<List<Named<List<SourceText>>>> CHAINS =
      Key.of("chains", Forms.named(Forms.NAMES, false));

  private final Reading reading;

  EdgeReader(Reading reading) {
    this.reading = reading;
  }

  /** Edges between corners. */
  List<PanelSource.EdgeSource> edges(Ref panel, Stated stated) {
    List<PanelSource.EdgeSource> edges = new ArrayList<>();
    for (Named<YamlNode> edge : stated.all(EDGES)) {
      SourceText name = edge.name();
      YamlNode ends = edge.value();
      if (ends instanceof YamlNode.Entries) {
        Stated in = Stated.of(reading, ends, EDGE, name.position(), name.text());
        if (!in.isComplete()) {
          continue;
        }
        in.condition(panel.inside(Ref.Kind.EDGE, name.text()));
        ends = in.node(CORNERS);
      }
      List<SourceText> corners = CORNER_PAIR.reader().read(reading, ends, name.text());
      if (corners != null && corners.size() == 2) {
        edges.add(
            new PanelSource.EdgeSource(
                name, Reading.corner(corners.get(0)), Reading.corner(corners.get(1))));
      } else if (!isEmptyList(ends)) {
        reading.findings().add(SourceCode.EDGE_CORNERS, ends.position(), "name", name.text());
      }
    }
    return edges;
  }

  private static boolean isEmptyList(YamlNode node) {
    return node != null && node.list().filter(List::isEmpty).isPresent();
  }

  /** Edges in a row under one name. */
  static List<PanelSource.ChainSource> chains(Stated panel) {
    List<PanelSource.ChainSource> chains = new ArrayList<>();
    for (Named<List<SourceText>> chain : panel.all(CHAINS)) {
      if (!chain.value().isEmpty()) {
        chains.add(new PanelSource.ChainSource(chain.name(), chain.value()));
      }
    }
    return chains;
  }

  /** The lines along which a panel may be split. */
  List<PanelSource.StyleLineSource> styleLines(Stated panel) {
    List<PanelSource.StyleLineSource> lines = new ArrayList<>();
    for (Named<Stated> line : panel.all(STYLE_LINES)) {
      Stated in = line.value();
      if (in != null) {
        PanelSource.LinePlace from = place(in, FROM);
        PanelSource.LinePlace to = place(in, TO);
        if (in.isSound(BOW) && from != null && to != null) {
          lines.add(new PanelSource.StyleLineSource(line.name(), from, to, in.get(BOW)));
        }
      }
    }
    return lines;
  }

  private PanelSource.LinePlace place(Stated line, Key<YamlNode> key) {
    YamlNode node = line.get(key);
    if (node == null) {
      return null;
    }
    if (!(node instanceof YamlNode.Entries)) {
      SourceText name = reading.text(node, key.name());
      return name == null ? null : new PanelSource.LinePlace(name, null);
    }
    Stated in = Stated.of(reading, node, LINE_PLACE, node.firstKey(), key.name());
    return in.isSound(LINE_EDGE, LINE_AT)
        ? new PanelSource.LinePlace(in.get(LINE_EDGE), in.get(LINE_AT))
        : null;
  }
}
