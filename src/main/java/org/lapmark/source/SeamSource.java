package org.lapmark.source;

import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Ref;

/**
 * A seam as stated.
 *
 * @param name its name
 * @param sides two or more sides that are sewn to each other
 * @param ease how much longer the first side is meant to be, or null
 * @param tolerance the greatest difference allowed, or null for the default of 0.5 mm
 * @param closed whether it is a ring, whose end meets its start
 * @param matchNotches whether every notch must have a partner
 */
public record SeamSource(
    SourceText name,
    List<Side> sides,
    Formula ease,
    Formula tolerance,
    boolean closed,
    boolean matchNotches) {
  /** Its identity. */
  public Ref ref() {
    return Ref.of(Ref.Kind.SEAM, name.text());
  }

  /** Copies the list. */
  public SeamSource {
    sides = List.copyOf(sides);
  }

  /**
   * Edges, and lengths that aren't panels, end to end.
   *
   * @param members in the order of sewing
   * @param tabs what is caught in the seam on this side
   * @param name what the side is called, or null
   * @param ease how much longer than the seam it is meant to be, or null
   * @param reversed whether its edges are travelled the other way than is usual for the side
   * @param start how far from the first member's beginning a ring starts, or null
   * @param basted further layers that lie on this side and act with it as one
   */
  public record Side(
      List<Member> members,
      List<Tab> tabs,
      SourceText name,
      Formula ease,
      boolean reversed,
      Formula start,
      List<Side> basted) {
    /** Copies the lists. */
    public Side {
      members = List.copyOf(members);
      tabs = List.copyOf(tabs);
      basted = List.copyOf(basted);
    }
  }

  /**
   * One part of a side: an edge or chain if the text names one, a trim if it names one, else a
   * length.
   *
   * @param text as written
   * @param formula the same as a formula
   * @param from where on the edge it begins, clockwise, as a length or a fraction; null for its
   *     beginning
   * @param to where on the edge it ends; null for its end
   * @param reversed whether it is travelled otherwise than the rest of its side
   * @param notch how many notches a partner has where this part begins: 1 or 2
   */
  public record Member(
      SourceText text, Formula formula, Formula from, Formula to, boolean reversed, int notch) {}

  /**
   * Something caught in the seam.
   *
   * @param width its edge, its width, or the attachment that it is
   * @param at where its middle lies, from the side's start, as a length or a fraction; null where
   *     the attachment says so
   */
  public record Tab(Member width, Formula at) {}
}
