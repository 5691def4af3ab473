package org.lapmark.source;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.NotchSet;
import org.lapmark.panel.spreading.Slash;
import org.lapmark.source.derived.DerivedSource;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Ref;
import org.lapmark.source.mark.MarkSource;

/**
 * A panel as stated.
 *
 * @param name its name
 * @param shape where its outline comes from; null if that couldn't be read, which was reported
 * @param edges edges between named corners
 * @param chains runs of edges under one name
 * @param notches notches on edges, chains excluded
 * @param anyOrder whether lengths may rise and fall from size to size
 * @param slashes lines along which the panel is cut and opened
 * @param stackOn the corner on which the sizes' outlines are stacked, or null
 * @param styleLines lines along which the panel may be split, besides those of its drawing
 * @param marks darts, pleats and other marks that are stated, or drawn and described
 */
public record PanelSource(
    SourceText name,
    ShapeSource shape,
    List<EdgeSource> edges,
    List<ChainSource> chains,
    List<NotchSource> notches,
    boolean anyOrder,
    List<SlashSource> slashes,
    SourceText stackOn,
    List<StyleLineSource> styleLines,
    List<MarkSource> marks) {
  /** Its identity. */
  public Ref ref() {
    return Ref.of(Ref.Kind.PANEL, name.text());
  }

  /** How it is derived from others; nothing where it isn't, or its shape couldn't be read. */
  public Optional<DerivedSource> derivation() {
    return Optional.ofNullable(shape).flatMap(ShapeSource::derivation);
  }

  /** Copies the lists. */
  public PanelSource {
    marks = List.copyOf(marks);
    slashes = List.copyOf(slashes);
    styleLines = List.copyOf(styleLines);
    edges = List.copyOf(edges);
    chains = List.copyOf(chains);
    notches = List.copyOf(notches);
  }

  /**
   * The panel with some of what is stated of it. A drawn mark goes with what is said of it.
   *
   * @param kept the edges
   * @param keptNotches the notches
   * @param keptSlashes the slashes
   * @param keptMarks the other marks
   * @return the panel without the rest
   */
  public PanelSource with(
      List<EdgeSource> kept,
      List<NotchSource> keptNotches,
      List<SlashSource> keptSlashes,
      List<MarkSource> keptMarks) {
    Set<String> gone = new TreeSet<>();
    for (MarkSource mark : marks) {
      if (mark.isDrawn() && !keptMarks.contains(mark)) {
        gone.add(mark.kind().role().id(mark.name().text()));
      }
    }
    for (NotchSource notch : notches) {
      if (!keptNotches.contains(notch)) {
        notch.place().drawn().ifPresent(name -> gone.add(Role.NOTCH.id(name.text())));
      }
    }
    return new PanelSource(
        name,
        shape == null ? null : shape.without(gone),
        kept,
        chains,
        keptNotches,
        anyOrder,
        keptSlashes,
        stackOn,
        styleLines,
        keptMarks);
  }

  /**
   * A line along which a panel may be split: straight, or an arc of a circle.
   *
   * @param name its name
   * @param from where it begins
   * @param to where it ends
   * @param bow how far its middle lies to the left of the straight line as one goes along, negative
   *     to the right; null for straight
   */
  public record StyleLineSource(SourceText name, LinePlace from, LinePlace to, Formula bow) {}

  /**
   * A place on an outline.
   *
   * @param name a corner; or an edge or chain
   * @param at a length from the edge's start, or a plain number from 0 to 1: a fraction of it; null
   *     for a corner, or for an edge's middle
   */
  public record LinePlace(SourceText name, Formula at) {}

  /**
   * A line along which a panel is cut and opened or overlapped.
   *
   * @param name its name; the drawing's line of that name unless its ends are stated
   * @param from where it begins, or null
   * @param to where it ends, or null
   * @param open how far it is opened; below 0 it is overlapped
   * @param hinge what stays together
   */
  public record SlashSource(
      SourceText name, SlashEnd from, SlashEnd to, Formula open, Slash.Hinge hinge) {
    /** Its identity on a panel. */
    public Ref ref(Ref panel) {
      return panel.inside(Ref.Kind.SLASH, name.text());
    }

    /**
     * Its stated ends.
     *
     * @return none or two
     */
    public List<SlashEnd> stated() {
      return from == null || to == null ? List.of() : List.of(from, to);
    }
  }

  /** Where on the outline a slash line ends. */
  public sealed interface SlashEnd {
    /**
     * On an edge or a chain.
     *
     * @param edge its name
     * @param at a length from its start, or a plain number from 0 to 1: a fraction of it
     */
    record OnEdge(SourceText edge, Formula at) implements SlashEnd {}

    /**
     * At a corner.
     *
     * @param corner its name
     */
    record AtCorner(SourceText corner) implements SlashEnd {}
  }

  /**
   * An edge between two corners, clockwise.
   *
   * @param name its name
   * @param from the corner where it begins
   * @param to the corner where it ends
   */
  public record EdgeSource(SourceText name, SourceText from, SourceText to) {
    /** Its identity on a panel. */
    public Ref ref(Ref panel) {
      return panel.inside(Ref.Kind.EDGE, name.text());
    }
  }

  /**
   * Edges in a row under one name.
   *
   * @param name the name
   * @param edges the edges' names, clockwise
   */
  public record ChainSource(SourceText name, List<SourceText> edges) {
    /** Copies the list. */
    public ChainSource {
      edges = List.copyOf(edges);
    }
  }

  /**
   * A notch, or several stated together.
   *
   * @param ref its identity
   * @param edge the edge's name; of a drawn notch, its own
   * @param place where on it
   * @param count how many beside each other: 1, 2 or 3
   * @param gaps from one to the next, in order along the edge; empty for equal ones
   * @param cut how they are cut
   */
  public record NotchSource(
      Ref ref, SourceText edge, NotchPlace place, int count, List<Formula> gaps, NotchSet.Cut cut) {
    /** Copies the list. */
    public NotchSource {
      gaps = List.copyOf(gaps);
    }
  }

  /** How the place of a notch is stated. */
  public sealed interface NotchPlace {
    /**
     * Says how it is stated to somebody who treats each way on its own.
     *
     * @param reader who asks
     * @param <R> what the reader makes of it
     * @return what was made
     */
    <R> R read(NotchReader<R> reader);

    /** What is stated of it beside its edge, to be pointed at; nothing where it is drawn. */
    Optional<SourceText> stated();

    /** The seam that it comes from, if it comes from one. */
    default Optional<SourceText> seam() {
      return Optional.empty();
    }

    /** Its name in the panel's drawing, if it is drawn. */
    default Optional<SourceText> drawn() {
      return Optional.empty();
    }

    /**
     * At one place.
     *
     * @param at a length from the edge's start, or a plain number from 0 to 1: a fraction of it
     */
    record At(Formula at) implements NotchPlace {
      @Override
      public <R> R read(NotchReader<R> reader) {
        return reader.at(this);
      }

      @Override
      public Optional<SourceText> stated() {
        return Optional.of(at.text());
      }
    }

    /**
     * Every so often.
     *
     * @param spacing the distance from one to the next along the stitching line
     * @param centred whether one stands at the edge's middle and the others on both sides of it;
     *     otherwise the first stands one spacing from the edge's start
     */
    record Every(Formula spacing, boolean centred) implements NotchPlace {
      @Override
      public <R> R read(NotchReader<R> reader) {
        return reader.every(this);
      }

      @Override
      public Optional<SourceText> stated() {
        return Optional.of(spacing.text());
      }
    }

    /**
     * Where the edge's partners in a seam have notches, ends of their parts, or something caught.
     *
     * @param from the seam's name
     */
    record FromSeam(SourceText from) implements NotchPlace {
      @Override
      public <R> R read(NotchReader<R> reader) {
        return reader.fromSeam(this);
      }

      @Override
      public Optional<SourceText> stated() {
        return seam();
      }

      @Override
      public Optional<SourceText> seam() {
        return Optional.of(from);
      }
    }

    /**
     * Where a notch of this name is drawn.
     *
     * @param name its name
     */
    record Drawn(SourceText name) implements NotchPlace {
      @Override
      public <R> R read(NotchReader<R> reader) {
        return reader.drawn(this);
      }

      @Override
      public Optional<SourceText> stated() {
        return Optional.empty();
      }

      @Override
      public Optional<SourceText> drawn() {
        return Optional.of(name);
      }
    }

    /**
     * At the place of the edge that is nearest to a corner of the same panel.
     *
     * @param corner the corner's name
     */
    record NearCorner(SourceText corner) implements NotchPlace {
      @Override
      public <R> R read(NotchReader<R> reader) {
        return reader.nearCorner(this);
      }

      @Override
      public Optional<SourceText> stated() {
        return Optional.of(corner);
      }
    }
  }

  /**
   * What is made of each way to state a notch's place.
   *
   * @param <R> what is made
   */
  public interface NotchReader<R> {
    /** Takes one place. */
    R at(NotchPlace.At place);

    /** Takes places every so often. */
    R every(NotchPlace.Every place);

    /** Takes what a seam's partners have. */
    R fromSeam(NotchPlace.FromSeam place);

    /** Takes a notch of the drawing. */
    R drawn(NotchPlace.Drawn place);

    /** Takes the place nearest to a corner. */
    R nearCorner(NotchPlace.NearCorner place);
  }
}
