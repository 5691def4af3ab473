package org.lapmark.document.section;

import java.util.List;
import java.util.Optional;
import org.lapmark.grade.Cut;
import org.lapmark.measure.PrintedValue;

/**
 * What the text pages of a document say; a run of text is a list of strings and {@link
 * PrintedValue}s.
 *
 * @param language a BCP 47 tag
 * @param title the pattern's title
 * @param studio who publishes it
 * @param designer who designed it
 * @param size the size's name
 * @param edition the edition's name
 * @param date the edition's date in words
 * @param summary what the pattern makes
 * @param copyright terms of use
 * @param note what the edition is
 * @param program name and version of the program
 * @param page the paper
 * @param cover the picture on the cover
 * @param finished finished measurements
 * @param pieces the cutting table
 * @param totals sums over the cutting table
 * @param map the page map; absent when no piece needs paper
 */
public record TextPages(
    String language,
    String title,
    String studio,
    Optional<String> designer,
    String size,
    String edition,
    String date,
    List<Object> summary,
    List<Object> copyright,
    List<Object> note,
    String program,
    Page page,
    Optional<Figure> cover,
    List<Finished> finished,
    List<CutPiece> pieces,
    Totals totals,
    Optional<PageMap> map) {
  public TextPages {
    summary = List.copyOf(summary);
    copyright = List.copyOf(copyright);
    note = List.copyOf(note);
    finished = List.copyOf(finished);
    pieces = List.copyOf(pieces);
  }

  /** The paper's id and size in millimetres. */
  public record Page(String id, double width, double height) {}

  /** A drawing by name, with its size in millimetres. */
  public record Figure(String name, double width, double height) {}

  /** A row of the finished measurements. */
  public record Finished(List<Object> label, List<Object> value) {}

  /**
   * A piece of the cutting table; a folded one is printed as a half. Of one that is ruled, marks
   * says line by line what is marked on it where.
   */
  public record CutPiece(
      int number,
      String name,
      List<MaterialCut> cuts,
      Optional<CutSize> cutSize,
      List<List<Object>> marks,
      boolean folded) {}

  /** How many of a piece are cut from one material. */
  public record MaterialCut(String material, int count, int reversed, Cut.Mirroring mirrored) {}

  /** The cut size of a piece that is ruled onto the cloth. */
  public record CutSize(PrintedValue across, PrintedValue along, boolean bias) {}

  /**
   * Sums over the cutting table, and of the ruled pieces: whether anything is marked on them, also
   * on mirrored ones, and whether any has a grain.
   */
  public record Totals(
      int pieces,
      int cuts,
      int reversed,
      int materials,
      int ruled,
      boolean marked,
      boolean markedMirrored,
      boolean ruledGrain) {}

  /**
   * Where the tiles are, apart when that is in a file of their own, how many are saved, which show
   * no line, and how many of those were left out.
   */
  public record PageMap(
      Figure drawing,
      boolean apart,
      int firstPage,
      int lastPage,
      int tiles,
      int joins,
      int saved,
      int blank,
      String blankPages,
      int leftOut,
      List<PiecePages> pieces) {}

  /** On which tiles and pages a printed piece is. */
  public record PiecePages(int number, String name, String tiles, String pages) {}
}
