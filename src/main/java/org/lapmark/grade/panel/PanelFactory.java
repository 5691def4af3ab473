package org.lapmark.grade.panel;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.ValuesInScope;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;
import org.lapmark.panel.PanelBuilder.CornerPair;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.derivation.Naming;
import org.lapmark.source.PanelSource;
import org.lapmark.source.ShapeSource;
import org.lapmark.source.ShapeSource.Derived;
import org.lapmark.source.ShapeSource.Drawn;
import org.lapmark.source.ShapeSource.DrawnBySize;
import org.lapmark.source.ShapeSource.Rectangle;
import org.lapmark.source.ShapeSource.Stated;
import org.lapmark.source.ShapeSource.Strip;
import org.lapmark.source.drawing.DrawnPanel;
import org.lapmark.source.drawing.PanelDrawing;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.mark.MarkKinds;
import org.lapmark.source.mark.MarkSource;

/** Builds the panels of one variant. */
public final class PanelFactory {
  private final PatternScope scope;
  private final Variant variant;
  private final Findings findings;
  private final MarkFactory marks;
  private final SlashFactory slashes;

  public PanelFactory(PatternScope scope, Variant variant, Findings findings) {
    this.scope = scope;
    this.variant = variant;
    this.findings = findings;
    this.marks = new MarkFactory(scope, this);
    this.slashes = new SlashFactory(scope, variant, this, findings);
  }

  /**
   * Builds a panel as far as its drawing goes.
   *
   * @param source the panel as stated
   * @param originals the panels that others are derived from, by where they are named
   * @param notices told what should be known about marks that follow
   * @return the panel with the marks of its drawing, without the notches and other marks stated
   *     beside it on which no geometry depends
   * @throws FindingException when it can't be built
   */
  Panel build(
      PanelSource source,
      Function<SourceText, Panel> originals,
      Consumer<DerivedPanels.Notice> notices) {
    try {
      Panel panel = shape(source, originals, notices);
      if (source.derivation().isEmpty()) {
        longWay(panel, source);
      }
      if (source.shape().drawings().isEmpty()) {
        panel = slashes.opened(panel, source, Map.of());
      }
      if (source.stackOn() != null) {
        PatternScope.corner(panel, source.stackOn());
      }
      return marks.stated(new StyleLines(scope, variant).on(panel, source.styleLines()), source);
    } catch (PanelException e) {
      throw inVariant(e, place(e, source));
    }
  }

  /**
   * Adds the stated marks on which no geometry depends.
   *
   * @param panel the panel as far as its geometry goes
   * @param source the panel as stated
   * @return the panel with buttonholes, drill points, placement lines and match points
   * @throws FindingException when one can't be placed
   */
  Panel placed(Panel panel, PanelSource source) {
    try {
      return marks.placed(panel, source);
    } catch (PanelException e) {
      throw inVariant(e, place(e, source));
    }
  }

  /** Reports an edge that goes over all others, which have names of their own, and back. */
  private void longWay(Panel panel, PanelSource source) {
    List<String> stated = source.edges().stream().map(edge -> edge.name().text()).toList();
    for (PanelSource.EdgeSource edge : source.edges()) {
      List<String> over = panel.chains().get(edge.name().text());
      if (over != null
          && over.size() > 1
          && over.size() == panel.edges().size() - 1
          && stated.containsAll(over)) {
        findings.add(
            GradeCode.EDGE_LONG_WAY,
            edge.from().position(),
            "edge",
            edge.name().text(),
            "panel",
            panel.name(),
            "from",
            edge.from().text(),
            "to",
            edge.to().text());
      }
    }
  }

  /** The name that is amiss, if the problem is one of names; or else the panel's. */
  private Position place(PanelException problem, PanelSource source) {
    Object corner = problem.arguments().get("corner");
    Object edge = problem.arguments().get("edge");
    Object chain = problem.arguments().get("chain");
    return switch ((PanelCode) problem.code()) {
      case EDGE_CORNER_UNKNOWN ->
          source.edges().stream()
              .flatMap(one -> Stream.of(one.from(), one.to()))
              .filter(name -> name.text().equals(corner))
              .findFirst()
              .map(SourceText::position)
              .orElse(source.name().position());
      case PANEL_EDGE_UNKNOWN ->
          source.chains().stream()
              .flatMap(one -> one.edges().stream())
              .filter(name -> name.text().equals(edge))
              .findFirst()
              .map(SourceText::position)
              .orElse(source.name().position());
      case EDGE_NAME_TAKEN -> ofName(edge, source);
      case EDGE_STATED_TWICE -> ofName(problem.arguments().get("second"), source);
      case EDGE_CORNERS_SWAPPED ->
          source.edges().stream()
              .filter(one -> one.name().text().equals(edge))
              .findFirst()
              .map(one -> one.from().position())
              .orElse(source.name().position());
      case CHAIN_BROKEN ->
          source.chains().stream()
              .filter(one -> one.name().text().equals(chain))
              .findFirst()
              .map(one -> one.name().position())
              .orElse(source.name().position());
      case OUTLINE_OPEN, OUTLINE_CROSSES_ITSELF, OUTLINE_WITHOUT_AREA ->
          DrawnPlaces.of(source, variant.size(), "outline").orElse(source.name().position());
      case CORNER_OFF_OUTLINE ->
          DrawnPlaces.of(source, variant.size(), "corner." + corner)
              .orElse(source.name().position());
      case CORNERS_TOGETHER ->
          DrawnPlaces.of(source, variant.size(), "corner." + problem.arguments().get("second"))
              .orElse(source.name().position());
      case INTAKES_OVERLAP, DARTS_CROSS -> ofMark(problem.arguments().get("second"), source);
      default ->
          problem.arguments().containsKey("mark")
              ? ofMark(problem.arguments().get("mark"), source)
              : source.name().position();
    };
  }

  /** Where a line's name is stated last: chains are made of edges. */
  private static Position ofName(Object name, PanelSource source) {
    return Stream.concat(
            source.chains().stream().map(PanelSource.ChainSource::name),
            source.edges().stream().map(PanelSource.EdgeSource::name))
        .filter(stated -> stated.text().equals(name))
        .findFirst()
        .orElse(source.name())
        .position();
  }

  /** Where a dart or pleat is drawn or, if its place isn't, stated. */
  Position ofMark(Object name, PanelSource source) {
    Optional<MarkSource> stated =
        source.marks().stream().filter(mark -> mark.name().text().equals(name)).findFirst();
    Optional<Position> drawn =
        stated.isPresent() && !stated.get().isDrawn()
            ? Optional.empty()
            : DrawnPlaces.of(
                source, variant.size(), MarkKinds.ids(String.valueOf(name)).toArray(String[]::new));
    return drawn.orElse(stated.map(MarkSource::name).orElse(source.name()).position());
  }

  /** Gives a panel's problem its place in the source and the size in which it shows. */
  public FindingException inVariant(PanelException problem, SourceText place) {
    return inVariant(problem, place.position());
  }

  /** Gives a panel's problem its place in the source and the size in which it shows. */
  public FindingException inVariant(PanelException problem, Position place) {
    Map<String, Object> arguments = new LinkedHashMap<>(problem.arguments());
    arguments.putIfAbsent("size", variant.size());
    return new FindingException(new Finding(problem.code(), place, arguments));
  }

  private Panel shape(
      PanelSource source,
      Function<SourceText, Panel> originals,
      Consumer<DerivedPanels.Notice> notices) {
    if (source.shape() == null) {
      throw new DemandGraph.Unavailable();
    }
    return source.shape().read(new Shaping(source.name().text(), source, originals, notices));
  }

  /** What a panel becomes by how its shape is stated, before it is slashed. */
  private final class Shaping implements ShapeSource.Reader<Panel> {
    private final String name;
    private final PanelSource source;
    private final Function<SourceText, Panel> originals;
    private final Consumer<DerivedPanels.Notice> notices;

    Shaping(
        String name,
        PanelSource source,
        Function<SourceText, Panel> originals,
        Consumer<DerivedPanels.Notice> notices) {
      this.name = name;
      this.source = source;
      this.originals = originals;
      this.notices = notices;
    }

    @Override
    public Panel drawn(Drawn drawn) {
      return PanelFactory.this.drawn(name, source, drawn);
    }

    @Override
    public Panel drawnBySize(DrawnBySize bySize) {
      PanelDrawing drawing =
          bySize
              .drawing(variant.size())
              .filter(one -> !one.isComputed())
              .orElseThrow(DemandGraph.Unavailable::new);
      return drawn(new Drawn(drawing));
    }

    @Override
    public Panel stated(Stated stated) {
      return new StatedPanels(scope, variant)
          .shape(stated)
          .panel(name, edges(source), chains(source));
    }

    @Override
    public Panel rectangle(Rectangle rectangle) {
      return rectangle(rectangle.width(), rectangle.height(), false);
    }

    @Override
    public Panel strip(Strip strip) {
      return rectangle(strip.width(), strip.length(), strip.bias());
    }

    private Panel rectangle(Formula width, Formula height, boolean bias) {
      Panel panel =
          PanelBuilder.rectangle(
              name, scope.positiveLength(width), scope.positiveLength(height), bias);
      return Naming.named(panel, Map.of(), chains(source));
    }

    @Override
    public Panel derived(Derived derived) {
      Panel panel =
          new DerivedPanels(new ValuesInScope(scope), originals, notices)
              .build(source.name(), derived.how());
      return Naming.named(panel, edges(source), chains(source));
    }
  }

  private static Map<String, CornerPair> edges(PanelSource source) {
    Map<String, CornerPair> edges = new LinkedHashMap<>();
    source
        .edges()
        .forEach(
            edge ->
                edges.put(
                    edge.name().text(), new CornerPair(edge.from().text(), edge.to().text())));
    return edges;
  }

  private static Map<String, List<String>> chains(PanelSource source) {
    Map<String, List<String>> chains = new LinkedHashMap<>();
    source
        .chains()
        .forEach(
            chain ->
                chains.put(
                    chain.name().text(), chain.edges().stream().map(SourceText::text).toList()));
    return chains;
  }

  private Panel drawn(String name, PanelSource source, Drawn drawn) {
    DrawnPanel shapes = drawn.drawing().resolve(this::number, findings);
    if (shapes == null) {
      throw new DemandGraph.Unavailable();
    }
    Affine scaling = scaling(drawn, shapes.outline().bounds());
    if (drawn.until() != null) {
      // Scaled alike in both directions, every length grows by the same factor.
      Panel unscaled = cut(name, source, shapes, Affine.IDENTITY);
      double length = PatternScope.edge(unscaled, drawn.until().edge()).length();
      double factor = scope.positiveLength(drawn.until().length()) / length;
      scaling = Affine.scaling(factor, factor);
    }
    Map<String, Path> lines = new LinkedHashMap<>();
    for (Map.Entry<String, Path> line : shapes.lines(Role.SLASH).entrySet()) {
      lines.put(line.getKey(), line.getValue().transformed(scaling));
    }
    return slashes.opened(
        marks.drawn(cut(name, source, shapes, scaling), source, shapes, scaling), source, lines);
  }

  private static Panel cut(String name, PanelSource source, DrawnPanel shapes, Affine scaling) {
    Map<String, Point> corners = new LinkedHashMap<>();
    shapes.points(Role.CORNER).forEach((corner, at) -> corners.put(corner, scaling.apply(at)));
    return PanelBuilder.fromOutline(
        name,
        shapes.outline().transformed(scaling),
        corners,
        edges(source),
        chains(source),
        List.of());
  }

  private double number(Formula formula) {
    Value value = formula.evaluate(scope);
    return value
        .quantity()
        .filter(quantity -> quantity.dimension() != Dimension.AREA)
        .map(Value.Quantity::amount)
        .orElseThrow(
            () ->
                new FindingException(
                    Finding.of(
                        GradeCode.NOT_A_NUMBER,
                        formula.text().position(),
                        "kind",
                        PatternScope.kind(value))));
  }

  private Affine scaling(Drawn drawn, Box bounds) {
    double x = drawn.width() == null ? 1 : scope.positiveLength(drawn.width()) / bounds.width();
    double y = drawn.height() == null ? 1 : scope.positiveLength(drawn.height()) / bounds.height();
    if (drawn.isScaledByOne() && !Boolean.TRUE.equals(drawn.stretch())) {
      boolean across = drawn.width() != null;
      double factor = across ? x : y;
      if (drawn.stretch() == null && factor != 1) {
        findings.add(
            GradeCode.SCALED_IN_PROPORTION,
            (across ? drawn.width() : drawn.height()).text().position(),
            "key",
            across ? "width" : "height",
            "from",
            Rounded.hundredth(across ? bounds.height() : bounds.width()),
            "to",
            Rounded.hundredth(factor * (across ? bounds.height() : bounds.width())),
            "size",
            variant.size());
      }
      return factor == 1 ? Affine.IDENTITY : Affine.scaling(factor, factor);
    }
    return x == 1 && y == 1 ? Affine.IDENTITY : Affine.scaling(x, y);
  }
}
