package org.lapmark.source;

import java.util.List;
import org.lapmark.source.fastening.Fastenings;
import org.lapmark.source.outside.Outside;

/**
 * A pattern folder as read. Lists keep the order of the source. What couldn't be read is missing
 * here and reported as a finding.
 *
 * @param folder the folder's name, which names the pattern in paths and file names
 * @param masthead who publishes what
 * @param sizes the size table; null if it couldn't be read, which was reported
 * @param materials cloths and the like
 * @param hardware zips, cords, rings and the like
 * @param measures named formulas
 * @param finished the finished measurements to print
 * @param panels panel shapes
 * @param pieces what is printed and cut
 * @param seams what is sewn together
 * @param fastenings what is fastened to panels and isn't a seam of edges
 * @param units what is assembled, which figures show
 * @param making what a maker should know
 * @param steps the steps, by file name in code point order
 * @param notes the introduction, the author's own cautions and the like
 * @param translations the author's texts in other languages
 * @param options what can be chosen, and what depends on it
 * @param outside pictures and a film from outside
 */
public record PatternSource(
    String folder,
    Masthead masthead,
    SizeTable sizes,
    List<ThingSource> materials,
    List<ThingSource> hardware,
    List<MeasureSource> measures,
    List<FinishedSource> finished,
    List<PanelSource> panels,
    List<PieceSource> pieces,
    List<SeamSource> seams,
    Fastenings fastenings,
    List<UnitSource> units,
    MakingSource making,
    List<StepSource> steps,
    List<NoteSource> notes,
    List<Translation> translations,
    OptionsSource options,
    Outside outside) {
  /** Copies the lists. */
  public PatternSource {
    materials = List.copyOf(materials);
    hardware = List.copyOf(hardware);
    measures = List.copyOf(measures);
    finished = List.copyOf(finished);
    panels = List.copyOf(panels);
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
    units = List.copyOf(units);
    steps = List.copyOf(steps);
    notes = List.copyOf(notes);
    translations = List.copyOf(translations);
  }

  /**
   * A pattern without anything about its making.
   *
   * @param folder the folder's name
   * @param masthead who publishes what
   * @param sizes the size table
   * @param materials cloths and the like
   * @param hardware zips, cords, rings and the like
   * @param measures named formulas
   * @param finished the finished measurements to print
   * @param panels panel shapes
   * @param pieces what is printed and cut
   * @param seams what is sewn together
   * @param steps the steps
   */
  public PatternSource(
      String folder,
      Masthead masthead,
      SizeTable sizes,
      List<ThingSource> materials,
      List<ThingSource> hardware,
      List<MeasureSource> measures,
      List<FinishedSource> finished,
      List<PanelSource> panels,
      List<PieceSource> pieces,
      List<SeamSource> seams,
      List<StepSource> steps) {
    this(
        folder,
        masthead,
        sizes,
        materials,
        hardware,
        measures,
        finished,
        panels,
        pieces,
        seams,
        Fastenings.NONE,
        List.of(),
        MakingSource.NONE,
        steps,
        List.of(),
        List.of(),
        OptionsSource.NONE,
        Outside.NONE);
  }

  /**
   * The same pattern with other pieces.
   *
   * @param others the pieces
   * @return the pattern
   */
  public PatternSource withPieces(List<PieceSource> others) {
    return new PatternSource(
        folder,
        masthead,
        sizes,
        materials,
        hardware,
        measures,
        finished,
        panels,
        others,
        seams,
        fastenings,
        units,
        making,
        steps,
        notes,
        translations,
        options,
        outside);
  }

  /**
   * The same pattern under another masthead.
   *
   * @param other the masthead
   * @return the pattern
   */
  public PatternSource under(Masthead other) {
    return new PatternSource(
        folder,
        other,
        sizes,
        materials,
        hardware,
        measures,
        finished,
        panels,
        pieces,
        seams,
        fastenings,
        units,
        making,
        steps,
        notes,
        translations,
        options,
        outside);
  }
}
