package org.lapmark.grade;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.Nearest;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.MeasureCode;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.panel.ClosedLine;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.OptionsSource.OptionSource;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PanelSource.NotchSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.SeamSource;
import org.lapmark.source.ShapeSource;
import org.lapmark.source.SizeTable;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.Fastenings;
import org.lapmark.source.fastening.TrimSource;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.key.Ref;

/** The names of a pattern in one variant; values and panels are computed on demand in one graph. */
final class PatternScope implements Scope {
  private static final String SIZE = "size";

  /**
   * A notch that is stated so near, in millimetres, to where one is left out takes its place:
   * beside a corner it can stand a few millimetres on.
   */
  private static final double PUT_BACK = 10;

  /** In millimetres, as in drawings: what is longer costs work and memory without end. */
  static final double LONGEST = Limits.STANDARD.largest();

  private final Variant variant;
  private final DemandGraph graph;
  private final Map<String, SizeTable.Row> rows = new LinkedHashMap<>();
  private final Map<String, MeasureSource> measures = new LinkedHashMap<>();
  private final Map<String, ThingSource> things = new LinkedHashMap<>();
  private final Map<String, PanelSource> panels = new LinkedHashMap<>();
  private final Map<String, SeamSource> seams = new LinkedHashMap<>();
  private final Map<String, OptionSource> options = new LinkedHashMap<>();
  private final Fastenings fastenings;
  private final List<PieceSource> pieces;
  private final List<String> sizeNames;
  private final Map<String, Value> tried;
  private final Presence presence;
  private final Findings findings;
  private final PanelFactory factory;
  private final NotchFactory notches;

  PatternScope(PatternSource source, Variant variant, Findings findings) {
    this.variant = variant;
    this.graph = new DemandGraph(findings);
    this.findings = findings;
    this.tried = new LinkedHashMap<>();
    this.presence = new Presence(this, source.options().conditions(), graph);
    this.sizeNames = source.sizes() == null ? List.of() : source.sizes().sizes();
    source.options().options().forEach(option -> options.put(option.name().text(), option));
    SizeTable sizes = source.sizes();
    if (sizes != null) {
      sizes.rows().forEach(row -> rows.put(row.name(), row));
    }
    source.measures().forEach(measure -> measures.put(measure.name().text(), measure));
    source.materials().forEach(thing -> things.put(thing.id().text(), thing));
    source.hardware().forEach(thing -> things.put(thing.id().text(), thing));
    source.panels().forEach(panel -> panels.put(panel.name().text(), panel));
    source.seams().forEach(seam -> seams.putIfAbsent(seam.name().text(), seam));
    this.fastenings = source.fastenings();
    this.pieces = source.pieces();
    this.factory = new PanelFactory(this, variant, findings);
    this.notches = new NotchFactory(this, variant, findings);
  }

  /** The scope of a trial. */
  private PatternScope(
      PatternScope above, Map<String, Value> tried, Findings sink, Map<String, Object> kept) {
    this.variant = above.variant;
    this.graph = above.graph.trial(sink, kept);
    this.findings = sink;
    this.tried = tried;
    this.presence = above.presence.in(this, graph);
    this.sizeNames = above.sizeNames;
    this.options.putAll(above.options);
    this.rows.putAll(above.rows);
    this.measures.putAll(above.measures);
    this.things.putAll(above.things);
    this.panels.putAll(above.panels);
    this.seams.putAll(above.seams);
    this.fastenings = above.fastenings;
    this.pieces = above.pieces;
    this.factory = new PanelFactory(this, variant, sink);
    this.notches = new NotchFactory(this, variant, sink);
  }

  /**
   * The same names with a value tried for one of them.
   *
   * @param name the measure
   * @param value the value
   * @param sink where problems go
   * @param kept what doesn't depend on the value, from one trial to the next
   * @return the scope of the trial
   */
  PatternScope trial(String name, Value value, Findings sink, Map<String, Object> kept) {
    Map<String, Value> all = new LinkedHashMap<>(tried);
    all.put(name, value);
    return new PatternScope(this, all, sink, kept);
  }

  Presence presence() {
    return presence;
  }

  String size() {
    return variant.size();
  }

  @Override
  public Value value(SourceText name) {
    String text = name.text();
    int dot = text.indexOf('.');
    if (dot >= 0) {
      return property(name, dot);
    }
    if (tried.containsKey(text)) {
      return tried(name);
    }
    OptionSource option = options.get(text);
    if (option != null) {
      return chosen(option, name);
    }
    SizeTable.Row row = rows.get(text);
    if (row != null) {
      Value.Quantity value = row.values().get(variant.size());
      if (value == null) {
        throw new DemandGraph.Unavailable();
      }
      return value;
    }
    MeasureSource measure = measures.get(text);
    if (measure == null && text.equals(SIZE) && sizeNames.contains(variant.size())) {
      return new Value.Choice(variant.size(), variant.size(), sizeNames, true);
    }
    if (measure == null) {
      Set<String> known = new LinkedHashSet<>(measures.keySet());
      known.addAll(rows.keySet());
      known.addAll(options.keySet());
      throw fault(GradeCode.NAME_UNKNOWN, name.position(), text, known, "name", text);
    }
    requirePresence(measure.ref(), name);
    if (measure.solving() != null) {
      return (Value)
          graph.demand(text, name.position(), () -> new Solving(this, findings, measure).solve());
    }
    return compute(text, name.position(), measure.formula());
  }

  /** The value on trial; one that another trial is waiting for depends on itself. */
  private Value tried(SourceText name) {
    List<String> names = new ArrayList<>(tried.keySet());
    int at = names.indexOf(name.text());
    if (at < names.size() - 1) {
      names.add(name.text());
      throw new DemandGraph.Entangled(
          Finding.of(
              GradeCode.VALUE_CYCLE,
              name.position(),
              "cycle",
              String.join(" → ", names.subList(at, names.size()))));
    }
    graph.touch();
    return tried.get(name.text());
  }

  private Value chosen(OptionSource option, SourceText name) {
    String choice = variant.choices().get(option.name().text());
    if (choice == null) {
      throw new FindingException(
          Finding.of(GradeCode.OPTION_UNDECIDED, name.position(), "name", name.text()));
    }
    if (option.isYesOrNo()) {
      return new Value.Truth(choice.equals(OptionsSource.YES));
    }
    String label =
        option.choices().stream()
            .filter(one -> one.id().text().equals(choice))
            .findFirst()
            .map(one -> one.label().text())
            .orElse(choice);
    return new Value.Choice(choice, label, option.ids(), false);
  }

  /** Whatever a variant doesn't have can't be asked for there. */
  void requirePresence(Ref what, SourceText name) {
    if (!presence.holds(what)) {
      throw new FindingException(
          Finding.of(
              GradeCode.NAME_ABSENT, name.position(), "name", name.text(), "size", variant.size()));
    }
  }

  private Value property(SourceText name, int dot) {
    String thing = name.text().substring(0, dot);
    String property = name.text().substring(dot + 1);
    ThingSource source = things.get(thing);
    if (source == null) {
      Position at = name.position(0, dot);
      throw fault(GradeCode.NAME_UNKNOWN, at, thing, things.keySet(), "name", thing);
    }
    requirePresence(source.ref(), name.part(0, dot));
    if (!source.properties().containsKey(property)) {
      throw fault(
          GradeCode.PROPERTY_UNKNOWN,
          name.position(dot + 1, name.text().length()),
          property,
          source.properties().keySet(),
          "thing",
          thing,
          "property",
          property);
    }
    return compute(name.text(), name.position(), source.properties().get(property));
  }

  /** A property of a material or of hardware. */
  Value property(ThingSource thing, String property) {
    Formula formula = thing.properties().get(property);
    if (formula == null) {
      throw new DemandGraph.Unavailable();
    }
    return compute(thing.id().text() + "." + property, formula.text().position(), formula);
  }

  private Value compute(String node, Position asked, Formula formula) {
    if (formula == null) {
      throw new DemandGraph.Unavailable();
    }
    return (Value) graph.demand(node, asked, () -> formula.evaluate(this));
  }

  /**
   * A panel by its name, with all its marks.
   *
   * @param name where it is named
   * @return the panel
   * @throws FindingException when no panel has the name
   * @throws DemandGraph.Unavailable when it can't be drawn
   */
  Panel panel(SourceText name) {
    return marked(name, true);
  }

  private Panel marked(SourceText name, boolean fromSeams) {
    Panel shape = shape(name);
    String text = name.text();
    return (Panel)
        graph.demand(
            "the marks of panel " + text + (fromSeams ? "" : " without those from seams"),
            name.position(),
            () -> {
              PanelSource source = presence.of(panels.get(text));
              Taken taken = taken(shape, fromSeams);
              Panel sofar = new Panel(text, shape.edges(), shape.chains(), taken.marks());
              List<Mark> marks = new ArrayList<>(factory.placed(sofar, source).marks());
              for (NotchSource notch : source.notches()) {
                if (fromSeams || !NotchFactory.isFromSeam(notch)) {
                  marks.addAll(stated(shape, notch));
                }
              }
              Panel panel = new Panel(text, shape.edges(), shape.chains(), marks);
              if (fromSeams) {
                tell(panel, taken);
                new MarksApart(size(), findings).check(panel, source);
              }
              return panel;
            });
  }

  /** Marks that are taken over, and what is to be said of those that aren't. */
  private record Taken(List<Mark> marks, List<DerivedPanels.Notice> notices) {
    Taken {
      marks = List.copyOf(marks);
      notices = List.copyOf(notices);
    }
  }

  /** What the panel's own statements put back isn't left out. */
  private void tell(Panel panel, Taken taken) {
    List<Mark> own = panel.marks().stream().filter(mark -> !taken.marks().contains(mark)).toList();
    for (DerivedPanels.Notice notice : taken.notices()) {
      if (own.stream().noneMatch(mark -> isPutBack(panel, mark, notice))) {
        findings.add(notice.finding());
      }
    }
  }

  private static boolean isPutBack(Panel panel, Mark mark, DerivedPanels.Notice notice) {
    if (notice.finding().code() != PanelCode.MARK_LEFT_OUT) {
      return false;
    }
    if (mark instanceof Mark.Notch notch) {
      Point foot = panel.line(notch.edge()).atLength(notch.at());
      return notice.place().isPresent() && foot.distance(notice.place().get()) <= PUT_BACK;
    }
    return !(mark instanceof Mark.OnEdge)
        && notice.place().isEmpty()
        && mark.name().equals(notice.finding().arguments().get("name"));
  }

  /** The marks of a panel's drawing, or those that it takes from the panels it is derived from. */
  private Taken taken(Panel shape, boolean fromSeams) {
    PanelSource source = panels.get(shape.name());
    if (!(source.shape() instanceof ShapeSource.Derived)) {
      return new Taken(shape.marks(), List.of());
    }
    return (Taken)
        graph.demand(
            "the marks that panel "
                + shape.name()
                + " takes over"
                + (fromSeams ? "" : " without those from seams"),
            source.name().position(),
            () -> {
              List<DerivedPanels.Notice> notices = new ArrayList<>();
              Panel built =
                  factory.build(
                      presence.of(source), panel -> marked(panel, fromSeams), notices::add);
              return new Taken(built.marks(), notices);
            });
  }

  /**
   * A panel by its name, without the notches, buttonholes and the like that are stated beside its
   * drawing: all that geometry depends on.
   *
   * @param name where it is named
   * @return the panel
   * @throws FindingException when no panel has the name
   * @throws DemandGraph.Unavailable when it can't be drawn
   */
  Panel shape(SourceText name) {
    String text = name.text();
    PanelSource source = panels.get(text);
    if (source == null) {
      throw fault(
          GradeCode.REFERENCE_PANEL_UNKNOWN, name.position(), text, panels.keySet(), "panel", text);
    }
    requirePresence(source.ref(), name);
    return (Panel)
        graph.demand("panel " + text, name.position(), () -> factory.build(presence.of(source)));
  }

  /** The notches on some edges of a panel, those drawn and those stated. */
  List<Mark.Notch> notches(Panel shape, List<String> edges) {
    return notches(shape, edges, true);
  }

  /** The same without those that are taken from a seam's partners. */
  List<Mark.Notch> plainNotches(Panel shape, List<String> edges) {
    return notches(shape, edges, false);
  }

  private List<Mark.Notch> notches(Panel shape, List<String> edges, boolean fromSeams) {
    List<Mark.Notch> found = new ArrayList<>();
    for (Mark mark : taken(shape, fromSeams).marks()) {
      if (mark instanceof Mark.Notch notch) {
        found.add(notch);
      }
    }
    for (NotchSource notch : presence.of(panels.get(shape.name())).notches()) {
      if ((fromSeams || !NotchFactory.isFromSeam(notch))
          && NotchFactory.concerns(shape, notch, edges)) {
        found.addAll(stated(shape, notch));
      }
    }
    found.removeIf(notch -> !edges.contains(notch.edge()));
    return found;
  }

  @SuppressWarnings("unchecked")
  private List<Mark.Notch> stated(Panel shape, NotchSource notch) {
    String edge = shape.name() + "." + notch.edge().text();
    // Counted as stated, whatever the variant has of them.
    int index = panels.get(shape.name()).notches().indexOf(notch);
    return (List<Mark.Notch>)
        graph.demand(
            "notches " + (index + 1) + " on " + edge,
            notch.edge().position(),
            () -> notches.notches(shape, notch));
  }

  /**
   * Where a notch of a panel is stated.
   *
   * @param name the panel's name
   * @param edge the edge's name
   * @param at millimetres from its start, on the stitching line as drawn
   * @return the place of its statement; nothing where it is drawn, or taken from another panel
   */
  Optional<Position> notchPlace(String name, String edge, double at) {
    PanelSource source = panels.get(name);
    Panel shape = shape(source.name());
    for (NotchSource notch : presence.of(source).notches()) {
      if (NotchFactory.concerns(shape, notch, List.of(edge))
          && stated(shape, notch).stream()
              .anyMatch(
                  one ->
                      one.edge().equals(edge) && Math.abs(one.at() - at) <= Path.JOIN_TOLERANCE)) {
        return Optional.of(NotchFactory.place(notch));
      }
    }
    return Optional.empty();
  }

  /** A seam by its name, or null. */
  SeamSource seam(String name) {
    return seams.get(name);
  }

  /** All that is fastened, also what the variant doesn't have. */
  Fastenings fastenings() {
    return fastenings;
  }

  /** A piece by its number, also one that the variant doesn't have. */
  Optional<PieceSource> piece(String number) {
    return pieces.stream()
        .filter(piece -> Integer.toString(piece.number()).equals(number))
        .findFirst();
  }

  boolean hasPanel(String name) {
    return panels.containsKey(name);
  }

  /** A material or a piece of hardware, or null. */
  ThingSource thing(String id) {
    return things.get(id);
  }

  PanelSource panelSource(String name) {
    return panels.get(name);
  }

  /** The line that a reference {@code panel.edge} names, its darts and pleats closed. */
  private ClosedLine closed(SourceText reference) {
    int dot = reference.text().indexOf('.');
    Panel panel = shape(reference.part(0, dot));
    return MarkFactory.closed(panel, reference.part(dot + 1, reference.text().length()));
  }

  /** Refuses a name that isn't an edge's or a chain's of a panel. */
  static void requireEdge(Panel panel, SourceText name) {
    boolean known =
        panel.chains().containsKey(name.text())
            || panel.edges().stream().anyMatch(edge -> edge.name().equals(name.text()));
    if (!known) {
      edge(panel, name);
    }
  }

  /** The one line that a name stands for. */
  static Path edge(Panel panel, SourceText name) {
    if (!panel.isOneLine(name.text())) {
      throw new FindingException(
          new Finding(
              PanelCode.EDGE_IN_PARTS, name.position(), panel.inParts(name.text()).arguments()));
    }
    Path line = panel.line(name.text());
    if (line == null) {
      Set<String> known = new LinkedHashSet<>(panel.chains().keySet());
      panel.edges().forEach(edge -> known.add(edge.name()));
      throw fault(
          GradeCode.REFERENCE_EDGE_UNKNOWN,
          name.position(),
          name.text(),
          known,
          "panel",
          panel.name(),
          "edge",
          name.text());
    }
    return line;
  }

  @Override
  public Value geometry(SourceText function, List<SourceText> references) {
    SourceText first = references.get(0);
    int dot = first.text().indexOf('.');
    return switch (function.text()) {
      case "length" -> {
        require(dot >= 0, function, first, "edge");
        yield Value.Quantity.length(closed(first).length());
      }
      case "distance" -> {
        Point from = corner(function, first);
        yield Value.Quantity.length(from.distance(corner(function, references.get(1))));
      }
      default -> {
        require(dot < 0, function, first, "panel");
        Optional<TrimSource> trim = fastenings.trim(first.text());
        if (trim.isPresent() && function.text().equals("width")) {
          Formula width = TrimFactory.visibleWidth(this, trim.get(), first);
          yield compute("width(" + first.text() + ")", first.position(), width);
        }
        yield ofPanel(function.text(), shape(first));
      }
    };
  }

  private static Value ofPanel(String function, Panel panel) {
    Path outline = panel.outline();
    Box bounds = outline.bounds();
    return switch (function) {
      case "width" -> Value.Quantity.length(bounds.width());
      case "height" -> Value.Quantity.length(bounds.height());
      case "perimeter" -> Value.Quantity.length(outline.length());
      case "area" -> new Value.Quantity(Math.abs(outline.signedArea()), Dimension.AREA);
      default -> throw new IllegalArgumentException("no geometry function " + function);
    };
  }

  private Point corner(SourceText function, SourceText reference) {
    int dot = reference.text().indexOf('.');
    require(dot >= 0, function, reference, "corner");
    return corner(
        shape(reference.part(0, dot)), reference.part(dot + 1, reference.text().length()));
  }

  /** The point of a panel's corner. */
  static Point corner(Panel panel, SourceText name) {
    Set<String> known = new LinkedHashSet<>();
    for (Edge edge : panel.edges()) {
      known.add(edge.from());
      if (edge.from().equals(name.text())) {
        return edge.path().start();
      }
    }
    throw fault(
        GradeCode.REFERENCE_CORNER_UNKNOWN,
        name.position(),
        name.text(),
        known,
        "panel",
        panel.name(),
        "corner",
        name.text());
  }

  private static void require(
      boolean holds, SourceText function, SourceText reference, String needs) {
    if (!holds) {
      throw new FindingException(
          Finding.of(
              GradeCode.REFERENCE_KIND,
              reference.position(),
              "function",
              function.text(),
              "reference",
              reference.text(),
              "needs",
              needs));
    }
  }

  static FindingException fault(
      GradeCode code, Position position, String word, Set<String> known, Object... arguments) {
    List<Object> all = new ArrayList<>(List.of(arguments));
    all.addAll(List.of("nearest", Nearest.of(word, known).orElse("none")));
    all.addAll(List.of("known", Known.listed(known)));
    return new FindingException(Finding.of(code, position, all.toArray()));
  }

  /** Something amiss in this variant with what has a name. */
  FindingException fault(GradeCode code, Position position, String name, Object... arguments) {
    List<Object> all = new ArrayList<>(List.of(arguments));
    all.addAll(List.of("name", name, "size", variant.size()));
    return new FindingException(Finding.of(code, position, all.toArray()));
  }

  /**
   * A length.
   *
   * @param formula the formula
   * @return millimetres
   * @throws FindingException when it isn't a length, or longer than anything is drawn
   */
  double length(Formula formula) {
    double length = anyLength(formula);
    checkReach(formula, length, LONGEST);
    return length;
  }

  /**
   * Refuses a length beyond a limit.
   *
   * @throws FindingException when it is
   */
  void checkReach(Formula formula, double length, double limit) {
    if (!(Math.abs(length) <= limit)) {
      throw new FindingException(
          Finding.of(
              GradeCode.LENGTH_TOO_LARGE,
              formula.text().position(),
              "value",
              Rounded.metres(length),
              "limit",
              Rounded.metres(limit),
              "size",
              variant.size()));
    }
  }

  /** The same, for whoever states a limit of its own. */
  double anyLength(Formula formula) {
    Value value = formula.evaluate(this);
    if (value instanceof Value.NominalPair pair) {
      return pair.metric();
    }
    if (value instanceof Value.Quantity quantity && quantity.dimension() == Dimension.LENGTH) {
      return quantity.amount();
    }
    throw notA(Dimension.LENGTH, formula, value)
        .orElseGet(
            () ->
                new FindingException(
                    Finding.of(
                        GradeCode.NOT_A_LENGTH, formula.text().position(), "kind", kind(value))));
  }

  /**
   * A length above zero.
   *
   * @param formula the formula
   * @return millimetres
   * @throws FindingException when it isn't one
   */
  double positiveLength(Formula formula) {
    double length = length(formula);
    if (!(length > 0)) {
      throw new FindingException(
          Finding.of(
              GradeCode.LENGTH_NOT_POSITIVE,
              formula.text().position(),
              "value",
              Rounded.hundredth(length),
              "cause",
              cause(formula),
              "size",
              variant.size()));
    }
    return length;
  }

  /** Where what a formula names is stated, or the formula where it is more than a name. */
  Position stated(Formula formula) {
    Formula at = formula;
    Set<String> seen = new LinkedHashSet<>();
    while (at.soleName().isPresent() && seen.add(at.soleName().get().text())) {
      String name = at.soleName().get().text();
      MeasureSource measure = measures.get(name);
      if (rows.containsKey(name)) {
        return rows.get(name).position();
      } else if (measure == null || measure.formula() == null || measure.solving() != null) {
        return at.text().position();
      }
      at = measure.formula();
    }
    return at.text().position();
  }

  /**
   * What is at fault where a formula comes to too little: the same wherever it asks for the same
   * names, and a place of its own where it is but a number.
   */
  static String cause(Formula formula) {
    Position place = formula.text().position();
    return formula.names().isEmpty()
        ? place.file() + ':' + place.line() + ':' + place.column()
        : formula.text().text();
  }

  /**
   * Why a formula comes to a plain number where something with a unit is needed, if the reason
   * isn't the formula as it stands: a name in it that is stated without a unit, or a decimal comma
   * that parted it from its unit.
   */
  Optional<FindingException> notA(Dimension needed, Formula formula, Value value) {
    if (!(value instanceof Value.Quantity quantity && quantity.dimension() == Dimension.PLAIN)) {
      return Optional.empty();
    }
    SourceText text = formula.text();
    int end = text.offset(text.text().length());
    String content = text.file().content();
    if (formula.isPlainNumber()
        && end + 1 < content.length()
        && content.charAt(end) == ','
        && Character.isDigit(content.charAt(end + 1))) {
      return Optional.of(
          new FindingException(
              Finding.of(MeasureCode.FORMULA_DECIMAL_COMMA, text.file().position(end, end + 1))));
    }
    return formula.withoutUnit(this, needed);
  }

  @Override
  public Optional<Position> withoutUnit(SourceText name) {
    String text = name.text();
    Set<String> seen = new LinkedHashSet<>();
    while (seen.add(text)) {
      SizeTable.Row row = rows.get(text);
      if (row != null) {
        return row.isWithoutUnit() ? Optional.of(row.position()) : Optional.empty();
      }
      MeasureSource measure = measures.get(text);
      if (measure == null || measure.formula() == null || measure.solving() != null) {
        return Optional.empty();
      }
      if (measure.formula().isPlainNumber()) {
        return Optional.of(measure.formula().text().position());
      }
      text = measure.formula().soleName().map(SourceText::text).orElse(text);
    }
    return Optional.empty();
  }

  static String kind(Value value) {
    if (value instanceof Value.Quantity quantity) {
      return switch (quantity.dimension()) {
        case LENGTH -> "a length";
        case AREA -> "an area";
        case ANGLE -> "an angle";
        case COUNT -> "a count";
        case PLAIN -> "a plain number";
      };
    }
    if (value instanceof Value.NominalPair) {
      return "a stock size";
    }
    if (value instanceof Value.Choice) {
      return "a choice";
    }
    return value instanceof Value.Truth ? "a yes or no" : "a list of stock sizes";
  }
}
