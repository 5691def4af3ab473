package org.lapmark.panel.cutting;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.panel.Darts;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;

/**
 * What is drawn of a piece, in the panel's own coordinates.
 *
 * @param panel the panel on its stitching line
 * @param allowances millimetres by edge name, one entry an edge: the larger where it changes
 * @param cuttingLine the cutting line; equal to the stitching line where allowances are 0
 * @param notches the notches as drawn: short lines from the cutting line inwards, wedges from the
 *     cutting line to their tip and back
 * @param stated the allowances as stated, with folds and corners
 */
public record PieceShape(
    Panel panel,
    Map<String, Double> allowances,
    CuttingLine cuttingLine,
    List<Path> notches,
    Allowances stated) {
  /** Copies the collections, keeping their order. */
  public PieceShape {
    allowances = Collections.unmodifiableMap(new LinkedHashMap<>(allowances));
    notches = List.copyOf(notches);
  }

  /**
   * A shape whose edges have one allowance each.
   *
   * @param panel the panel on its stitching line
   * @param allowances millimetres by edge name, one entry an edge
   * @param cuttingLine the cutting line
   * @param notches the notches as drawn
   */
  public PieceShape(
      Panel panel, Map<String, Double> allowances, CuttingLine cuttingLine, List<Path> notches) {
    this(panel, allowances, cuttingLine, notches, Allowances.of(allowances));
  }

  /**
   * Builds a piece's shape from one allowance an edge; see {@link #of(Panel, Allowances)}.
   *
   * @param panel the panel
   * @param allowances millimetres, 0 or more, by edge name; every edge has one
   * @return the shape
   * @throws IllegalArgumentException when an edge has no allowance
   * @throws PanelException when an allowance can't be drawn or a notch doesn't fit
   */
  public static PieceShape of(Panel panel, Map<String, Double> allowances) {
    return of(panel, Allowances.of(allowances));
  }

  /**
   * Builds a piece's shape. Corners of the cutting line are mitred up to 2.5 times the allowance
   * and cut square beyond it, or as stated; where allowances change on a straight or smooth run the
   * line steps, but a fold goes on straight until it meets its neighbour's cutting line.
   *
   * <p>A notch runs from the cutting line inwards, along the normal of the stitching line at its
   * place, for 5 mm or half the allowance, whichever is less; a double notch is two such lines side
   * by side, their feet 5 mm apart along the stitching line, a set several at its own gaps. A wedge
   * is open at the cutting line by four fifths of its depth. On an edge without allowance a notch
   * is a mark of 3 mm from the stitching line inwards.
   *
   * <p>The legs of darts and the lines of pleats have slits of their own, in their own direction.
   * The cutting line over a dart that is pressed to a side is shaped so that the allowance of the
   * folded dart lies exactly on what is cut beside it.
   *
   * @param panel the panel
   * @param allowances one for every edge
   * @return the shape
   * @throws IllegalArgumentException when an edge has no allowance
   * @throws PanelException when an allowance or a corner can't be drawn or a notch doesn't fit
   */
  public static PieceShape of(Panel panel, Allowances allowances) {
    Darts.check(panel);
    CuttingLine plain = Contour.cuttingLine(panel, allowances);
    return new PieceShape(
        panel,
        allowances.widest(),
        DartCap.shaped(panel, plain),
        Notches.drawn(panel, allowances.edges(), plain),
        allowances);
  }

  /**
   * Whether an edge lies on a fold.
   *
   * @param edge its name
   * @return true if it was stated to
   */
  public boolean isFold(String edge) {
    Allowance allowance = stated.edges().get(edge);
    return allowance != null && allowance.fold();
  }

  /**
   * Where the cloth is cut when it lies flat: the cutting line, opened out at edges that are stated
   * to lie on a fold.
   *
   * @return a closed path in panel coordinates
   */
  public Path opened() {
    return Opening.of(this, cuttingLine.spans());
  }

  /**
   * The stitching line of the piece when it lies flat, opened out as {@link #opened()} is.
   *
   * @return a closed path in panel coordinates
   */
  public Path openedStitching() {
    return Opening.of(
        this,
        panel.edges().stream()
            .map(edge -> new CuttingLine.Span(edge.name(), edge.path()))
            .toList());
  }

  /**
   * How what lies on the piece lies on the rest of the cloth when it is opened out: everything is
   * mirrored by the first map, and then everything, images too, by the second.
   *
   * @return a map for each fold
   */
  public List<Affine> mirrors() {
    return Opening.mirrors(this);
  }

  /**
   * The edges that are stated to lie on a fold.
   *
   * @return their parts of the cutting line, in panel coordinates
   */
  public List<Path> folds() {
    return cuttingLine.spans().stream()
        .filter(span -> isFold(span.edge()))
        .map(CuttingLine.Span::path)
        .toList();
  }

  /**
   * The box around the cutting line.
   *
   * @return the box in panel coordinates
   */
  public Box bounds() {
    return cuttingLine.path().bounds();
  }
}
