package org.lapmark.source.fastening;

import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Ref;

/**
 * A piece or a thing that is attached to a panel at a place.
 *
 * @param name its name
 * @param thing the hardware or the material, or null for a piece
 * @param piece the piece's number, or null for a thing
 * @param end the edge of the piece's panel that lies at the place, or null for the top of the piece
 * @param where the place
 * @param wrongSide whether it lies on the wrong side
 * @param turn by which angle it is turned clockwise from where it would point, or null
 * @param width how wide it is where it begins, or null for what the piece or the thing says
 * @param length how far it reaches from there, or null likewise
 */
public record AttachmentSource(
    SourceText name,
    SourceText thing,
    SourceText piece,
    SourceText end,
    Where where,
    boolean wrongSide,
    Formula turn,
    Formula width,
    Formula length) {
  /** Its identity. */
  public Ref ref() {
    return Ref.of(Ref.Kind.ATTACHMENT, name.text());
  }

  /** Where its piece or thing is named. */
  public SourceText what() {
    return thing == null ? piece : thing;
  }

  /** Where something is attached. */
  public sealed interface Where permits AtEdge, AtMark, AtCorner, HeldBy {
    /**
     * Lets somebody else say what follows from how the place is stated.
     *
     * @param reader what knows all ways
     * @param <R> what follows
     * @return what the reader says
     */
    <R> R read(Reader<R> reader);
  }

  /**
   * What follows from how a place is stated.
   *
   * @param <R> what follows
   */
  public interface Reader<R> {
    /** What follows from a place along an edge. */
    R atEdge(AtEdge place);

    /** What follows from a mark. */
    R atMark(AtMark place);

    /** What follows from a corner. */
    R atCorner(AtCorner place);

    /** What follows from another attachment that holds it. */
    R heldBy(HeldBy place);
  }

  /**
   * At an edge or a chain.
   *
   * @param panel the panel
   * @param edge the edge or chain
   * @param at where along it the middle lies, or null for the middle
   * @param inset how far inside the stitching line, or null for what is caught at the raw edge
   */
  public record AtEdge(SourceText panel, SourceText edge, Formula at, Formula inset)
      implements Where {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.atEdge(this);
    }
  }

  /**
   * At a placement line, a fold line, a drill point or a match point.
   *
   * @param panel the panel
   * @param mark the mark's name
   * @param at where along a line the middle lies, or null for the middle
   */
  public record AtMark(SourceText panel, SourceText mark, Formula at) implements Where {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.atMark(this);
    }
  }

  /**
   * At a corner.
   *
   * @param panel the panel
   * @param corner the corner
   */
  public record AtCorner(SourceText panel, SourceText corner) implements Where {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.atCorner(this);
    }
  }

  /**
   * Where another attachment ends: a ring on a tab, a slide on webbing.
   *
   * @param holder the other attachment
   */
  public record HeldBy(SourceText holder) implements Where {
    @Override
    public <R> R read(Reader<R> reader) {
      return reader.heldBy(this);
    }
  }
}
