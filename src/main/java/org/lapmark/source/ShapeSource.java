package org.lapmark.source;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.PanelSource.EdgeSource;
import org.lapmark.source.derived.DerivedSource;
import org.lapmark.source.drawing.PanelDrawing;

/** Where a panel's outline comes from. */
public sealed interface ShapeSource {
  /** The drawings that it comes from; none if it isn't drawn. */
  List<PanelDrawing> drawings();

  /** The same shape without some marks of its drawings, by their ids. */
  ShapeSource without(Set<String> gone);

  /** Its corners' names; none where they show only when it is made. */
  Collection<String> corners();

  /** The corners between which edges may be stated; empty where that shows only later. */
  default Optional<Collection<String>> ends() {
    return Optional.empty();
  }

  /**
   * Its edges' names, as far as they are known without those that it is derived from.
   *
   * @param stated the edges that the panel states, which may go by other names
   */
  default Set<String> edges(List<EdgeSource> stated) {
    return new TreeSet<>();
  }

  /** Its chains' names, as far as they are known without those that it is derived from. */
  default Set<String> chains() {
    return new TreeSet<>();
  }

  /** How it is derived from another panel, if it is. */
  default Optional<DerivedSource> derivation() {
    return Optional.empty();
  }

  /** The drawing that it has in a size; nothing where it is stated or derived. */
  default Optional<PanelDrawing> drawing(String size) {
    return Optional.empty();
  }

  /** Whether it is a rectangle, which can be ruled onto cloth. */
  default boolean isRectangle() {
    return false;
  }

  /** Whether it is cut at 45 degrees to the grain. */
  default boolean isOnBias() {
    return false;
  }

  /**
   * Says which kind it is to somebody who treats each in a way of its own.
   *
   * @param reader who asks
   * @param <R> what the reader makes of it
   * @return what was made
   */
  <R> R read(Reader<R> reader);

  /**
   * What is made of each kind of shape.
   *
   * @param <R> what is made
   */
  interface Reader<R> {
    /** Takes a drawing. */
    R drawn(Drawn drawn);

    /** Takes a drawing for each size. */
    R drawnBySize(DrawnBySize drawn);

    /** Takes what is stated by numbers. */
    R stated(Stated stated);

    /** Takes a rectangle. */
    R rectangle(Rectangle rectangle);

    /** Takes a strip. */
    R strip(Strip strip);

    /** Takes what is derived from another panel. */
    R derived(Derived derived);
  }

  /** A shape without a drawing of its own. */
  sealed interface Undrawn extends ShapeSource {
    @Override
    default List<PanelDrawing> drawings() {
      return List.of();
    }

    @Override
    default ShapeSource without(Set<String> gone) {
      return this;
    }
  }

  /**
   * Drawn in an SVG file; computed where its attributes have placeholders, else fixed, and scaled
   * where measures are stated.
   *
   * @param drawing the file's content
   * @param width the width to which the outline is scaled, or null
   * @param height the height to which the outline is scaled, or null
   * @param until what an edge's length is scaled to, alike in both directions; or null
   * @param stretch whether a width or a height that is stated alone stretches the outline in that
   *     direction only, instead of scaling it in proportion; null where nothing is said
   */
  record Drawn(
      PanelDrawing drawing, Formula width, Formula height, EdgeLength until, Boolean stretch)
      implements ShapeSource {
    /**
     * A drawing that isn't scaled.
     *
     * @param drawing the file's content
     */
    public Drawn(PanelDrawing drawing) {
      this(drawing, null, null, null, null);
    }

    /**
     * Whether only one of width and height is stated.
     *
     * @return true if the other follows
     */
    public boolean isScaledByOne() {
      return (width == null) != (height == null);
    }

    @Override
    public List<PanelDrawing> drawings() {
      return List.of(drawing);
    }

    @Override
    public Optional<PanelDrawing> drawing(String size) {
      return Optional.of(drawing);
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.drawn(this);
    }

    @Override
    public ShapeSource without(Set<String> gone) {
      return new Drawn(drawing.without(gone), width, height, until, stretch);
    }

    @Override
    public Collection<String> corners() {
      return drawing.cornerNames();
    }

    @Override
    public Optional<Collection<String>> ends() {
      return Optional.of(corners());
    }
  }

  /**
   * A length that an edge is to have.
   *
   * @param edge the edge's or chain's name
   * @param length its length
   */
  record EdgeLength(SourceText edge, Formula length) {}

  /**
   * Drawn once for each size; the drawings have the same corners in the same order, by which their
   * edges are matched.
   *
   * @param bySize the drawings by size, in the order stated
   */
  record DrawnBySize(Map<String, SizeDrawing> bySize) implements ShapeSource {
    /** Copies the map, keeping its order. */
    public DrawnBySize {
      bySize = Collections.unmodifiableMap(new LinkedHashMap<>(bySize));
    }

    @Override
    public List<PanelDrawing> drawings() {
      return bySize.values().stream().map(SizeDrawing::drawing).toList();
    }

    @Override
    public Optional<PanelDrawing> drawing(String size) {
      return Optional.ofNullable(bySize.get(size)).map(SizeDrawing::drawing);
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.drawnBySize(this);
    }

    @Override
    public ShapeSource without(Set<String> gone) {
      Map<String, SizeDrawing> others = new LinkedHashMap<>();
      bySize.forEach(
          (size, one) ->
              others.put(
                  size, new SizeDrawing(one.size(), one.name(), one.drawing().without(gone))));
      return new DrawnBySize(others);
    }

    @Override
    public Collection<String> corners() {
      return drawings().stream()
          .flatMap(one -> one.cornerNames().stream())
          .collect(Collectors.toCollection(TreeSet::new));
    }

    @Override
    public Optional<Collection<String>> ends() {
      return drawings().stream().findFirst().map(PanelDrawing::cornerNames);
    }
  }

  /**
   * One size's drawing.
   *
   * @param size where the size is named
   * @param name where the file is named
   * @param drawing the file's content
   */
  record SizeDrawing(SourceText size, SourceText name, PanelDrawing drawing) {}

  /**
   * Stated by numbers.
   *
   * @param form how
   * @param key where it is stated
   * @param values formulas by key
   */
  record Stated(StatedForm form, SourceText key, Map<String, Formula> values) implements Undrawn {
    /** Copies the map, keeping its order. */
    public Stated {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    @Override
    public Collection<String> corners() {
      return form.kind().corners();
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.stated(this);
    }

    @Override
    public Optional<Collection<String>> ends() {
      return Optional.of(corners());
    }

    @Override
    public Set<String> edges(List<EdgeSource> stated) {
      Set<String> edges = new TreeSet<>(form.kind().edges());
      for (EdgeSource edge : stated) {
        edges.remove(form.kind().edge(edge.from().text(), edge.to().text()));
        edges.add(edge.name().text());
      }
      return edges;
    }

    @Override
    public Set<String> chains() {
      return new TreeSet<>(form.kind().chains());
    }
  }

  /**
   * A stated rectangle.
   *
   * @param width along x
   * @param height along y, the grain's direction
   */
  record Rectangle(Formula width, Formula height) implements Undrawn {
    private static final List<String> CORNERS =
        List.of("top_left", "top_right", "bottom_right", "bottom_left");
    private static final List<String> EDGES = List.of("top", "right", "bottom", "left");

    @Override
    public Collection<String> corners() {
      return CORNERS;
    }

    @Override
    public boolean isRectangle() {
      return true;
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.rectangle(this);
    }

    @Override
    public Set<String> edges(List<EdgeSource> stated) {
      return new TreeSet<>(EDGES);
    }
  }

  /**
   * A stated strip.
   *
   * @param length along its grain, or along its own length if on the bias
   * @param width across
   * @param bias whether it is cut at 45 degrees to the grain
   */
  record Strip(Formula length, Formula width, boolean bias) implements Undrawn {
    @Override
    public Collection<String> corners() {
      return Rectangle.CORNERS;
    }

    @Override
    public boolean isRectangle() {
      return true;
    }

    @Override
    public boolean isOnBias() {
      return bias;
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.strip(this);
    }

    @Override
    public Set<String> edges(List<EdgeSource> stated) {
      return new TreeSet<>(Rectangle.EDGES);
    }
  }

  /**
   * Derived from another panel.
   *
   * @param how how
   */
  record Derived(DerivedSource how) implements Undrawn {
    @Override
    public Collection<String> corners() {
      return List.of();
    }

    @Override
    public Optional<DerivedSource> derivation() {
      return Optional.of(how);
    }

    @Override
    public <R> R read(Reader<R> reader) {
      return reader.derived(this);
    }
  }
}
