package org.lapmark.source;

import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Ref;

/**
 * A piece as stated.
 *
 * @param number its number, never reused
 * @param position where the number stands
 * @param name what readers see
 * @param panel the panel's name
 * @param allowance the allowance of every edge not stated otherwise; null for none
 * @param edgeAllowances allowances of single edges
 * @param corners how the corners of the cutting line turn
 * @param cuts how many are cut from what
 * @param fold where its paper is folded, when it shows a half
 * @param printed whether it is to have paper, as written; null if it isn't said
 */
public record PieceSource(
    int number,
    Position position,
    TemplateText name,
    SourceText panel,
    Formula allowance,
    List<EdgeAllowance> edgeAllowances,
    CornerSources corners,
    List<CutSource> cuts,
    Optional<FoldSource> fold,
    Printed printed) {
  /** Its identity. */
  public Ref ref() {
    return Ref.of(Ref.Kind.PIECE, Integer.toString(number));
  }

  /** Copies the lists. */
  public PieceSource {
    edgeAllowances = List.copyOf(edgeAllowances);
    cuts = List.copyOf(cuts);
  }

  /**
   * A piece whose paper shows all of it and whose corners are cut as usual.
   *
   * @param number its number, never reused
   * @param position where the number stands
   * @param name what readers see
   * @param panel the panel's name
   * @param allowance the allowance of every edge not stated otherwise; null for none
   * @param edgeAllowances allowances of single edges
   * @param cuts how many are cut from what
   */
  public PieceSource(
      int number,
      Position position,
      TemplateText name,
      SourceText panel,
      Formula allowance,
      List<EdgeAllowance> edgeAllowances,
      List<CutSource> cuts) {
    this(
        number,
        position,
        name,
        panel,
        allowance,
        edgeAllowances,
        CornerSources.NONE,
        cuts,
        Optional.empty(),
        null);
  }

  /**
   * Whether the author asks for paper, also where a ruler would do.
   *
   * @return true if it is said so
   */
  public boolean isPrinted() {
    return printed != null && printed.wanted();
  }

  /**
   * Whether a piece is to have paper.
   *
   * @param wanted whether it is
   * @param position where that stands
   */
  public record Printed(boolean wanted, Position position) {}

  /**
   * Where a piece is folded: each end is an edge or chain, in its middle, or a corner.
   *
   * @param from one end
   * @param to the other end
   */
  public record FoldSource(SourceText from, SourceText to) {}

  /**
   * The allowance of one edge.
   *
   * @param edge the edge's name
   * @param start its allowance where the edge begins; null where it lies on a fold
   * @param end its allowance where the edge ends, the same formula if it doesn't change; null where
   *     it lies on a fold
   */
  public record EdgeAllowance(SourceText edge, Formula start, Formula end) {
    /** Its identity on a piece. */
    public Ref ref(Ref piece) {
      return piece.inside(Ref.Kind.ALLOWANCE, edge.text());
    }
  }

  /**
   * How many are cut from a material.
   *
   * @param ref its identity
   * @param material the material's id
   * @param count how many in all
   * @param reversed how many of them face down, or null for none
   */
  public record CutSource(Ref ref, SourceText material, Formula count, Formula reversed) {}
}
