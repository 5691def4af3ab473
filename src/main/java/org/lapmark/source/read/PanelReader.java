package org.lapmark.source.read;

import static org.lapmark.source.key.Choice.way;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.lapmark.finding.Known;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.DerivedSource;
import org.lapmark.source.MarkKind;
import org.lapmark.source.MarkSource;
import org.lapmark.source.PanelSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.StatedForm;
import org.lapmark.source.drawing.Drawings;
import org.lapmark.source.drawing.PanelDrawing;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads the panels and the drawings that they name. */
final class PanelReader {
  private static final Form<SourceText> FILE = Forms.TEXT.shown("file in panels");
  private static final Key<SourceText> DRAWING = Key.of("drawing", FILE);
  private static final Key<List<Named<SourceText>>> DRAWINGS =
      Key.of("drawings", Forms.byText("sizes", FILE));

  private static final Key<Formula> SCALED_WIDTH = Key.of("width", Forms.LENGTH);
  private static final Key<Formula> SCALED_HEIGHT = Key.of("height", Forms.LENGTH);
  private static final Key<Boolean> STRETCH = Key.of("stretch", Forms.TRUTH).unless("no");
  private static final Key<SourceText> SCALED_EDGE = Key.of("edge", Forms.NAME);
  private static final Key<Formula> SCALED_LENGTH = Key.of("length", Forms.LENGTH);
  private static final Table SCALE_TABLE =
      Table.of("scale", SCALED_WIDTH, SCALED_HEIGHT, STRETCH, SCALED_EDGE, SCALED_LENGTH)
          .oneOf(
              Choice.of(
                  way(SCALED_WIDTH),
                  way(SCALED_HEIGHT),
                  way(SCALED_WIDTH, STRETCH),
                  way(SCALED_HEIGHT, STRETCH),
                  way(SCALED_WIDTH, SCALED_HEIGHT),
                  way(SCALED_EDGE, SCALED_LENGTH)));
  private static final Key<Stated> SCALE = Key.of("scale", Forms.map(SCALE_TABLE));

  private static final Key<Formula> WIDTH = Key.required("width", Forms.LENGTH);
  private static final Key<Formula> HEIGHT = Key.required("height", Forms.LENGTH);
  private static final Key<Stated> RECTANGLE =
      Key.of("rectangle", Forms.map(Table.of("rectangle", WIDTH, HEIGHT)));
  private static final Key<Formula> LENGTH = Key.required("length", Forms.LENGTH);
  private static final Key<Boolean> BIAS = Key.of("bias", Forms.TRUTH).unless("no");
  private static final Key<Stated> STRIP =
      Key.of("strip", Forms.map(Table.of("strip", LENGTH, WIDTH, BIAS)));

  private static final List<Key<?>> STATED_SHAPES =
      Stream.concat(
              Stream.of(DRAWING, DRAWINGS, RECTANGLE, STRIP),
              Arrays.stream(StatedForm.values()).map(StatedForm::key))
          .<Key<?>>map(key -> key)
          .toList();
  private static final List<Key<?>> SHAPES =
      Stream.concat(
              STATED_SHAPES.stream(), DerivedSource.KINDS.stream().map(DerivedSource.Kind::key))
          .<Key<?>>map(key -> key)
          .toList();

  private static final Key<SourceText> LINE_EDGE = Key.required("edge", Forms.NAME);
  private static final Key<Formula> LINE_AT = Key.required("at", Forms.PLACE);
  private static final Table LINE_PLACE = Table.of("line_place", LINE_EDGE, LINE_AT);
  private static final Form<YamlNode> PLACE =
      Forms.either(Forms.NAME.shown("name of a corner, edge or chain"), Forms.map(LINE_PLACE));
  private static final Key<YamlNode> FROM = Key.required("from", PLACE);
  private static final Key<YamlNode> TO = Key.required("to", PLACE);
  private static final Key<Formula> BOW = Key.of("bow", Forms.LENGTH).unless("0 mm");
  private static final Key<List<Named<Stated>>> STYLE_LINES =
      Key.of("style_lines", Forms.named(Forms.map(Table.of("style_line", FROM, TO, BOW)), false));

  private static final Form<List<SourceText>> CORNER_PAIR =
      new Form<>(
          "list of two corners",
          Forms.list(Forms.CORNER).with("minItems", 2, "maxItems", 2).schema(),
          List.of(),
          (reading, node, key) -> node instanceof YamlNode.Items ? reading.texts(node, key) : null);
  private static final Key<YamlNode> CORNERS = Key.required("corners", CORNER_PAIR.unread());
  private static final Table EDGE = Table.of("edge", CORNERS, Stated.WHEN);

  /** The edges of a panel. */
  static final Key<List<Named<YamlNode>>> EDGES =
      Key.of("edges", Forms.named(Forms.either(CORNER_PAIR, Forms.map(EDGE)), false));

  /** Runs of edges under one name. */
  static final Key<List<Named<List<SourceText>>>> CHAINS =
      Key.of("chains", Forms.named(Forms.NAMES, false));

  private static final Key<SourceText> STACK_ON = Key.of("stack_on", Forms.CORNER);
  private static final Key<Boolean> ANY_ORDER = Key.of("any_order", Forms.TRUTH).unless("no");
  private static final Table TABLE =
      Table.of("panel", DRAWING, DRAWINGS, SCALE)
          .with(SHAPES.subList(2, SHAPES.size()))
          .with(
              List.of(
                  STYLE_LINES,
                  EDGES,
                  CHAINS,
                  NotchReader.NOTCHES,
                  NotchReader.NOTCH_CUT,
                  MarkKind.DART.key(),
                  MarkKind.PLEAT.key(),
                  MarkKind.BUTTONHOLE.key(),
                  MarkKind.DRILL.key(),
                  MarkKind.PLACEMENT.key(),
                  MarkKind.FOLD.key(),
                  MarkKind.MATCH.key(),
                  SlashReader.SLASHES,
                  STACK_ON,
                  ANY_ORDER,
                  Stated.WHEN))
          .oneOf(Choice.among(SHAPES));

  /** The panels of a pattern. */
  static final Key<List<Named<Stated>>> PANELS = Key.required("panels", Forms.named(TABLE, true));

  private final Reading reading;
  private final Drawings drawings;

  PanelReader(Reading reading, Drawings drawings) {
    this.reading = reading;
    this.drawings = drawings;
  }

  List<PanelSource> read(Stated pattern) {
    List<PanelSource> panels = new ArrayList<>();
    for (Named<Stated> panel : pattern.all(PANELS)) {
      if (panel.value() != null) {
        panels.add(panel(panel.name(), panel.value()));
      }
    }
    return panels;
  }

  private PanelSource panel(SourceText name, Stated in) {
    Ref panel = Ref.of(Ref.Kind.PANEL, name.text());
    in.condition(panel);
    return new PanelSource(
        name,
        shape(name, in),
        edges(panel, in),
        chains(in),
        new NotchReader(reading).read(panel, in),
        in.isTrue(ANY_ORDER),
        new SlashReader(reading).read(panel, in),
        in.get(STACK_ON),
        styleLines(in),
        marks(panel, in));
  }

  private List<MarkSource> marks(Ref panel, Stated in) {
    List<MarkSource> marks = new ArrayList<>();
    for (MarkKind kind : MarkKind.values()) {
      for (Named<Stated> one : in.all(kind.key())) {
        MarkSource mark =
            one.value() == null
                ? null
                : MarkSource.read(kind, one.name(), panel, one.value(), reading);
        if (mark != null) {
          marks.add(mark);
        }
      }
    }
    return marks;
  }

  private PanelSource.ShapeSource shape(SourceText name, Stated in) {
    List<Key<?>> stated = new ArrayList<>(SHAPES);
    stated.removeIf(key -> !in.has(key));
    if (stated.isEmpty()) {
      reading
          .findings()
          .add(
              SourceCode.PANEL_WITHOUT_SHAPE,
              name.position(),
              "name",
              name.text(),
              "known",
              Known.listed(SHAPES.stream().<String>map(Key::name).toList()));
      return null;
    }
    Key<?> first = stated.get(0);
    for (Key<?> second : stated.subList(1, stated.size())) {
      reading
          .findings()
          .add(
              SourceCode.PANEL_SHAPE_TWICE,
              in.position(second),
              "name",
              name.text(),
              "first",
              first.name(),
              "second",
              second.name());
    }
    if (in.has(SCALE) && first != DRAWING) {
      reading
          .findings()
          .add(
              SourceCode.SCALE_MISPLACED,
              in.position(SCALE),
              "kind",
              first == DRAWINGS ? "drawing for each size" : first.name().replace('_', ' '));
    }
    if (first == DRAWING) {
      return drawn(in);
    }
    if (first == DRAWINGS) {
      return drawnBySize(in);
    }
    if (first == RECTANGLE) {
      Stated parts = in.get(RECTANGLE);
      return parts != null && parts.isSound(WIDTH, HEIGHT)
          ? new PanelSource.Rectangle(parts.get(WIDTH), parts.get(HEIGHT))
          : null;
    }
    if (first == STRIP) {
      Stated parts = in.get(STRIP);
      return parts != null && parts.isSound(LENGTH, WIDTH, BIAS)
          ? new PanelSource.Strip(parts.get(LENGTH), parts.get(WIDTH), parts.isTrue(BIAS))
          : null;
    }
    for (StatedForm form : StatedForm.values()) {
      if (first == form.key()) {
        return stated(form, name, in.node(first));
      }
    }
    for (DerivedSource.Kind kind : DerivedSource.KINDS) {
      if (first == kind.key()) {
        Stated parts = in.get(kind.key());
        DerivedSource how = parts == null ? null : kind.reader().read(parts, reading);
        return how == null ? null : new PanelSource.Derived(how);
      }
    }
    throw new IllegalArgumentException(first.name());
  }

  private PanelSource.ShapeSource drawn(Stated in) {
    SourceText name = in.get(DRAWING);
    PanelDrawing drawing = name == null ? null : drawings.named(name);
    if (!in.has(SCALE)) {
      return drawing == null ? null : new PanelSource.Drawn(drawing);
    }
    Stated scale = in.or(SCALE, Stated.nothing(reading, SCALE_TABLE));
    if (drawing != null && drawing.isComputed()) {
      reading
          .findings()
          .add(SourceCode.SCALE_MISPLACED, in.position(SCALE), "kind", "computed drawing");
    }
    PanelSource.EdgeLength until = until(scale);
    Boolean stretch = stretch(scale);
    Formula width = scale.get(SCALED_WIDTH);
    Formula height = scale.get(SCALED_HEIGHT);
    return drawing == null ? null : new PanelSource.Drawn(drawing, width, height, until, stretch);
  }

  /** Whether to stretch in one direction only; null where nothing is said. */
  private Boolean stretch(Stated scale) {
    if (scale.has(STRETCH) && scale.has(SCALED_WIDTH) == scale.has(SCALED_HEIGHT)) {
      reading.findings().add(SourceCode.STRETCH_MISPLACED, scale.position(STRETCH));
      return null;
    }
    return scale.get(STRETCH);
  }

  private PanelSource.EdgeLength until(Stated scale) {
    if (!scale.has(SCALED_EDGE) && !scale.has(SCALED_LENGTH)) {
      return null;
    }
    for (Key<?> key : List.of(SCALED_EDGE, SCALED_LENGTH)) {
      if (!scale.has(key)) {
        reading.findings().add(KeyCode.KEY_MISSING, scale.owner(), "key", key.name());
        return null;
      }
    }
    for (Key<?> key : List.of(SCALED_WIDTH, SCALED_HEIGHT)) {
      if (scale.has(key)) {
        reading.findings().add(SourceCode.SCALE_TWO_WAYS, scale.position(key), "key", key.name());
        return null;
      }
    }
    return scale.isSound(SCALED_EDGE, SCALED_LENGTH)
        ? new PanelSource.EdgeLength(scale.get(SCALED_EDGE), scale.get(SCALED_LENGTH))
        : null;
  }

  private PanelSource.ShapeSource drawnBySize(Stated in) {
    Map<String, PanelSource.SizeDrawing> bySize = new LinkedHashMap<>();
    boolean whole = in.get(DRAWINGS) != null;
    for (Named<SourceText> each : in.all(DRAWINGS)) {
      PanelDrawing drawing = each.value() == null ? null : drawings.named(each.value());
      whole &= drawing != null;
      if (drawing != null) {
        SourceText size = each.name();
        bySize.put(size.text(), new PanelSource.SizeDrawing(size, each.value(), drawing));
      }
    }
    return whole ? new PanelSource.DrawnBySize(bySize) : null;
  }

  private PanelSource.ShapeSource stated(StatedForm form, SourceText name, YamlNode node) {
    // What is missing in an empty map is reported at the name of the panel.
    boolean empty = node instanceof YamlNode.Entries map && map.entries().isEmpty();
    Position owner =
        node instanceof YamlNode.Entries && !empty ? Reading.firstKey(node) : name.position();
    Table table = form.key().form().tables().get(0);
    Stated in = reading.stated(node, table, owner, form.key().name());
    if (in == null) {
      return null;
    }
    boolean whole = in.isComplete();
    for (Choice choice : table.choices()) {
      if (!choice.isMet(in)) {
        whole = false;
        reading
            .findings()
            .add(
                SourceCode.SHAPE_STATEMENT,
                owner,
                "kind",
                form.key().name(),
                "ways",
                choice.shown());
      }
    }
    Map<String, Formula> formulas = in.each(form.keys());
    return whole && !formulas.containsValue(null)
        ? new PanelSource.Stated(form, name, formulas)
        : null;
  }

  private List<PanelSource.EdgeSource> edges(Ref panel, Stated stated) {
    List<PanelSource.EdgeSource> edges = new ArrayList<>();
    for (Named<YamlNode> edge : stated.all(EDGES)) {
      SourceText name = edge.name();
      YamlNode ends = edge.value();
      if (ends instanceof YamlNode.Entries) {
        Stated in = reading.stated(ends, EDGE, name.position(), name.text());
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
    return node instanceof YamlNode.Items items && items.items().isEmpty();
  }

  private static List<PanelSource.ChainSource> chains(Stated panel) {
    List<PanelSource.ChainSource> chains = new ArrayList<>();
    for (Named<List<SourceText>> chain : panel.all(CHAINS)) {
      if (!chain.value().isEmpty()) {
        chains.add(new PanelSource.ChainSource(chain.name(), chain.value()));
      }
    }
    return chains;
  }

  /** The lines along which a panel may be split. */
  private List<PanelSource.StyleLineSource> styleLines(Stated panel) {
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
    Stated in = reading.stated(node, LINE_PLACE, Reading.firstKey(node), key.name());
    return in.isSound(LINE_EDGE, LINE_AT)
        ? new PanelSource.LinePlace(in.get(LINE_EDGE), in.get(LINE_AT))
        : null;
  }

  /** The edges of a panel that can be named without its geometry. */
  static List<String> stockEdges() {
    return List.of("top", "right", "bottom", "left");
  }

  /** Panels by name, the first of each name. */
  static Map<String, PanelSource> byName(List<PanelSource> panels) {
    Map<String, PanelSource> byName = new LinkedHashMap<>();
    panels.forEach(panel -> byName.putIfAbsent(panel.name().text(), panel));
    return byName;
  }
}
