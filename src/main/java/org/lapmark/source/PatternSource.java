package org.lapmark.source;

import java.util.List;

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
 * @param steps the steps, by file name in code point order
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
    List<StepSource> steps) {
  /** Copies the lists. */
  public PatternSource {
    materials = List.copyOf(materials);
    hardware = List.copyOf(hardware);
    measures = List.copyOf(measures);
    finished = List.copyOf(finished);
    panels = List.copyOf(panels);
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
    steps = List.copyOf(steps);
  }
}
