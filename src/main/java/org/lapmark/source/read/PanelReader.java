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
import org.lapmark.source.PanelSource;
import org.lapmark.source.ShapeSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.StatedForm;
import org.lapmark.source.derived.DerivedKind;
import org.lapmark.source.derived.DerivedKinds;
import org.lapmark.source.derived.DerivedSource;
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
import org.lapmark.source.mark.MarkKind;
import org.lapmark.source.mark.MarkKinds;
import org.lapmark.source.mark.MarkSource;
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
      Stream.concat(STATED_SHAPES.stream(), DerivedKinds.ALL.stream().map(DerivedKind::key))
          .<Key<?>>map(key -> key)
          .toList();

  private static final Key<SourceText> STACK_ON = Key.of("stack_on", Forms.CORNER);
  private static final Key<Boolean> ANY_ORDER = Key.of("any_order", Forms.TRUTH).unless("no");
  private static final Table TABLE =
      Table.of("panel", DRAWING, DRAWINGS, SCALE)
          .with(SHAPES.subList(2, SHAPES.size()))
          .with(
              List.of(
                  EdgeReader.STYLE_LINES,
                  EdgeReader.EDGES,
                  EdgeReader.CHAINS,
                  NotchReader.NOTCHES,
                  NotchReader.NOTCH_CUT))
          .with(MarkKinds.ALL.stream().map(MarkKind::key).toList())
          .with(List.of(SlashReader.SLASHES, STACK_ON, ANY_ORDER, Stated.WHEN))
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
    EdgeReader lines = new EdgeReader(reading);
    return new PanelSource(
        name,
        shape(name, in),
        lines.edges(panel, in),
        EdgeReader.chains(in),
        new NotchReader(reading).read(panel, in),
        in.isTrue(ANY_ORDER),
        new SlashReader(reading).read(panel, in),
        in.get(STACK_ON),
        lines.styleLines(in),
        marks(panel, in));
  }

  private List<MarkSource> marks(Ref panel, Stated in) {
    List<MarkSource> marks = new ArrayList<>();
    for (MarkKind kind : MarkKinds.ALL) {
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

  private ShapeSource shape(SourceText name, Stated in) {
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
          ? new ShapeSource.Rectangle(parts.get(WIDTH), parts.get(HEIGHT))
          : null;
    }
    if (first == STRIP) {
      Stated parts = in.get(STRIP);
      return parts != null && parts.isSound(LENGTH, WIDTH, BIAS)
          ? new ShapeSource.Strip(parts.get(LENGTH), parts.get(WIDTH), parts.isTrue(BIAS))
          : null;
    }
    for (StatedForm form : StatedForm.values()) {
      if (first == form.key()) {
        return stated(form, name, in.node(first));
      }
    }
    for (DerivedKind kind : DerivedKinds.ALL) {
      if (first == kind.key()) {
        Stated parts = in.get(kind.key());
        DerivedSource how = parts == null ? null : kind.reader().read(parts, reading);
        return how == null ? null : new ShapeSource.Derived(how);
      }
    }
    throw new IllegalArgumentException(first.name());
  }

  private ShapeSource drawn(Stated in) {
    SourceText name = in.get(DRAWING);
    PanelDrawing drawing = name == null ? null : drawings.named(name);
    if (!in.has(SCALE)) {
      return drawing == null ? null : new ShapeSource.Drawn(drawing);
    }
    Stated scale = in.or(SCALE, Stated.nothing(reading, SCALE_TABLE));
    if (drawing != null && drawing.isComputed()) {
      reading
          .findings()
          .add(SourceCode.SCALE_MISPLACED, in.position(SCALE), "kind", "computed drawing");
    }
    ShapeSource.EdgeLength until = until(scale);
    Boolean stretch = stretch(scale);
    Formula width = scale.get(SCALED_WIDTH);
    Formula height = scale.get(SCALED_HEIGHT);
    return drawing == null ? null : new ShapeSource.Drawn(drawing, width, height, until, stretch);
  }

  /** Whether to stretch in one direction only; null where nothing is said. */
  private Boolean stretch(Stated scale) {
    if (scale.has(STRETCH) && scale.has(SCALED_WIDTH) == scale.has(SCALED_HEIGHT)) {
      reading.findings().add(SourceCode.STRETCH_MISPLACED, scale.position(STRETCH));
      return null;
    }
    return scale.get(STRETCH);
  }

  private ShapeSource.EdgeLength until(Stated scale) {
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
        ? new ShapeSource.EdgeLength(scale.get(SCALED_EDGE), scale.get(SCALED_LENGTH))
        : null;
  }

  private ShapeSource drawnBySize(Stated in) {
    Map<String, ShapeSource.SizeDrawing> bySize = new LinkedHashMap<>();
    boolean whole = in.get(DRAWINGS) != null;
    for (Named<SourceText> each : in.all(DRAWINGS)) {
      PanelDrawing drawing = each.value() == null ? null : drawings.named(each.value());
      whole &= drawing != null;
      if (drawing != null) {
        SourceText size = each.name();
        bySize.put(size.text(), new ShapeSource.SizeDrawing(size, each.value(), drawing));
      }
    }
    return whole ? new ShapeSource.DrawnBySize(bySize) : null;
  }

  private ShapeSource stated(StatedForm form, SourceText name, YamlNode node) {
    // What is missing in an empty map is reported at the name of the panel.
    boolean empty = node instanceof YamlNode.Entries map && map.entries().isEmpty();
    Position owner = node instanceof YamlNode.Entries && !empty ? node.firstKey() : name.position();
    Table table = form.key().form().tables().get(0);
    Stated in = Stated.of(reading, node, table, owner, form.key().name());
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
        ? new ShapeSource.Stated(form, name, formulas)
        : null;
  }

  /** Panels by name, the first of each name. */
  static Map<String, PanelSource> byName(List<PanelSource> panels) {
    Map<String, PanelSource> byName = new LinkedHashMap<>();
    panels.forEach(panel -> byName.putIfAbsent(panel.name().text(), panel));
    return byName;
  }
}
