package org.lapmark.source.read;

import static org.lapmark.source.key.Choice.way;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.CornerSources;
import org.lapmark.source.CornerSources.CornerKind;
import org.lapmark.source.CornerSources.CornerSource;
import org.lapmark.source.CornerSources.Way;
import org.lapmark.source.PieceSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads a piece's allowances edge by edge, and how its corners are cut. */
final class AllowanceReader {
  private static final String FOLD = "fold";

  private static final Form<SourceText> EVEN =
      Forms.special("length, or fold", Forms.LENGTH.schema(), Reading::text);
  private static final Key<SourceText> ALLOWANCE = Key.of("allowance", EVEN);
  private static final Key<Formula> START = Key.of("start", Forms.LENGTH);
  private static final Key<Formula> END = Key.of("end", Forms.LENGTH);
  private static final Table EDGE =
      Table.of("edge_allowance", ALLOWANCE, START, END, Stated.WHEN)
          .oneOf(Choice.of(way(ALLOWANCE), way(START, END)));
  private static final Key<List<Named<YamlNode>>> EDGES =
      Key.of("edge_allowances", Forms.named(Forms.either(EVEN, Forms.map(EDGE)), false));

  private static final Key<Formula> MITRED = Key.of("mitred", Forms.formula("number from 1 to 10"));
  private static final Key<SourceText> SQUARE_TO = Key.of("square_to", Forms.NAME);
  private static final Key<SourceText> TURNED_BACK = Key.of("turned_back", Forms.NAME);
  private static final Key<Integer> FOLDS = Key.of("folds", Forms.number(1, 2)).unless("1");
  private static final Table KIND =
      Table.of("corner_kind", MITRED, SQUARE_TO, TURNED_BACK, FOLDS)
          .oneOf(Choice.of(way(MITRED), way(SQUARE_TO), way(TURNED_BACK), way(TURNED_BACK, FOLDS)));
  private static final Form<YamlNode> WAY =
      Forms.either(
          Forms.special(
              "mitred, blunt",
              Forms.schema("enum", List.of("mitred", "blunt")),
              (reading, node, key) -> node),
          Forms.map(KIND));
  private static final Key<YamlNode> CORNER = Key.of("corner", WAY).unless("mitred");
  private static final Key<List<Named<YamlNode>>> CORNERS =
      Key.of("corners", Forms.byText("corners", WAY));

  /** The keys of a piece that are read here. */
  static final List<Key<?>> KEYS = List.of(EDGES, CORNER, CORNERS);

  private final Reading reading;

  AllowanceReader(Reading reading) {
    this.reading = reading;
  }

  /** By edge a length, a start and an end, or a fold. */
  List<PieceSource.EdgeAllowance> edges(Ref piece, Stated stated) {
    List<PieceSource.EdgeAllowance> edges = new ArrayList<>();
    for (Named<YamlNode> edge : stated.all(EDGES)) {
      PieceSource.EdgeAllowance allowance = edge(piece, edge.name(), edge.value());
      if (allowance != null) {
        edges.add(allowance);
      }
    }
    return edges;
  }

  private PieceSource.EdgeAllowance edge(Ref piece, SourceText edge, YamlNode value) {
    // Braces around one word are a placeholder without quotes, which is reported as such.
    if (!(value instanceof YamlNode.Entries map) || Reading.looksLikePlaceholder(map)) {
      return even(edge, reading.text(value, edge.text()));
    }
    Stated in = Stated.of(reading, value, EDGE, edge.position(), edge.text());
    in.condition(piece.inside(Ref.Kind.ALLOWANCE, edge.text()));
    if (!EDGE.choices().get(0).isMet(in.names())) {
      reading.findings().add(SourceCode.EDGE_ALLOWANCE, edge.position(), "edge", edge.text());
      return null;
    }
    if (in.has(ALLOWANCE)) {
      return even(edge, in.get(ALLOWANCE));
    }
    return in.isSound(START, END)
        ? new PieceSource.EdgeAllowance(edge, in.get(START), in.get(END))
        : null;
  }

  private PieceSource.EdgeAllowance even(SourceText edge, SourceText text) {
    if (text == null) {
      return null;
    }
    if (text.text().equals(FOLD)) {
      return new PieceSource.EdgeAllowance(edge, null, null);
    }
    Formula formula = reading.formula(text);
    return formula == null ? null : new PieceSource.EdgeAllowance(edge, formula, formula);
  }

  /** How every corner is cut, and single ones. */
  CornerSources corners(Stated piece) {
    CornerKind general = piece.has(CORNER) ? kind(piece.get(CORNER), true) : null;
    List<CornerSource> single = new ArrayList<>();
    for (Named<YamlNode> corner : piece.all(CORNERS)) {
      CornerKind kind = kind(corner.value(), false);
      if (kind != null) {
        single.add(new CornerSource(Reading.corner(corner.name()), kind));
      }
    }
    return new CornerSources(general, single);
  }

  private CornerKind kind(YamlNode node, boolean general) {
    if (node instanceof YamlNode.Text text && !text.isNothing()) {
      switch (text.text().text()) {
        case "mitred":
          return new CornerKind(Way.MITRED, null, null, 1);
        case "blunt":
          return new CornerKind(Way.BLUNT, null, null, 1);
        default:
          return wrong(node.position(), general);
      }
    }
    Stated in = Stated.of(reading, node, KIND, node.firstKey(), CORNERS.name());
    if (in == null) {
      return null;
    }
    if (!KIND.choices().get(0).isMet(in.names()) || general && !in.has(MITRED)) {
      return wrong(in.owner(), general);
    }
    if (in.has(MITRED)) {
      Formula limit = in.get(MITRED);
      return limit == null ? null : new CornerKind(Way.MITRED, limit, null, 1);
    }
    boolean square = in.has(SQUARE_TO);
    SourceText edge = in.get(square ? SQUARE_TO : TURNED_BACK);
    Integer folds = in.get(FOLDS, 1);
    return edge == null || folds == null
        ? null
        : new CornerKind(square ? Way.SQUARE_TO : Way.TURNED_BACK, null, edge, folds);
  }

  private CornerKind wrong(Position position, boolean general) {
    reading.findings().add(SourceCode.CORNER_KIND, position, "where", general ? "every" : "single");
    return null;
  }
}
