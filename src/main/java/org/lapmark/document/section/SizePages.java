package org.lapmark.document.section;

import java.util.List;
import java.util.Optional;

/**
 * What the text pages of a document of all sizes say in a column a size. Lists that are by size are
 * in the order of {@code names}; a run of text is as in {@link TextPages}.
 *
 * @param names the sizes
 * @param drawn the size that pictures are drawn in
 * @param groups the sizes that stand beside each other in one table
 * @param finished finished measurements
 * @param sameCuts whether every size has as many cuts
 * @param ruled how many pieces are ruled onto the cloth
 * @param reversed whether any piece is cut reversed
 * @param marked whether anything is marked on ruled pieces
 * @param markedMirrored whether on mirrored ones
 * @param ruledGrain whether any ruled piece has a grain
 * @param pieces the cutting table
 * @param cutSizes the pieces whose cut size differs by size
 * @param materials what cloth to buy
 * @param parts what else to buy
 * @param thread what is said of thread
 */
record SizePages(
    List<String> names,
    String drawn,
    List<Group> groups,
    List<Measured> finished,
    boolean sameCuts,
    int ruled,
    boolean reversed,
    boolean marked,
    boolean markedMirrored,
    boolean ruledGrain,
    List<CutPiece> pieces,
    List<CutSizes> cutSizes,
    List<Material> materials,
    List<Part> parts,
    List<Object> thread) {
  SizePages {
    names = List.copyOf(names);
    groups = List.copyOf(groups);
    finished = List.copyOf(finished);
    pieces = List.copyOf(pieces);
    cutSizes = List.copyOf(cutSizes);
    materials = List.copyOf(materials);
    parts = List.copyOf(parts);
    thread = List.copyOf(thread);
  }

  /** Sizes beside each other: the index of the first and their names. */
  record Group(int first, List<String> names) {}

  /** A row of the finished measurements. */
  record Measured(List<Object> label, List<List<Object>> values) {}

  /**
   * A piece of the cutting table.
   *
   * @param number its number
   * @param name its name
   * @param cuts how many from which material
   * @param printed whether it is printed in every size
   * @param cutSize the size to rule, where it is the same in every size
   * @param marks what is marked on it where it is ruled, in every size
   * @param folded whether it is printed as a half
   */
  record CutPiece(
      int number,
      String name,
      List<MaterialCut> cuts,
      boolean printed,
      Optional<TextPages.CutSize> cutSize,
      List<List<Object>> marks,
      boolean folded) {}

  /** How many of a piece are cut from one material. */
  record MaterialCut(String material, String count, String mirrored) {}

  /** The cut size of a piece in each size; absent in one where the piece is printed. */
  record CutSizes(int number, String name, List<Optional<TextPages.CutSize>> sizes) {}

  /** A material with the amount of each width. */
  record Material(
      String name,
      List<String> details,
      List<Width> widths,
      List<Object> buying,
      List<Object> substitute) {}

  /** A width and its amount in each size. */
  record Width(String width, List<String> amounts) {}

  /** A part that is bought by the piece or by length, with its quantity in each size. */
  record Part(
      String name,
      List<String> details,
      List<String> quantities,
      List<Object> buying,
      List<Object> substitute) {}
}
