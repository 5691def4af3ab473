package org.lapmark.document.manual;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.figure.Figure;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.lay.ClothPlan;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.text.Block;
import org.lapmark.text.Inline;
import org.lapmark.text.Manuscript;
import org.lapmark.text.Printing;
import org.lapmark.text.Steps;

/**
 * What the instructions of a pattern say in one variant, whatever the paper: parsed texts, printed
 * values, figures and cutting layouts. Immutable, so that it is made once for all papers.
 *
 * @param pattern the pattern in the variant that pictures show
 * @param sizes the pattern in every size that the texts speak of; that one alone, as a rule
 * @param look the sizes of type that figures were lettered for
 * @param form how values are printed
 * @param steps the steps
 * @param notes the files of the notes folder, by name
 * @param printing what the placeholders of steps and notes come to
 * @param cloths how each material is laid out
 * @param figures figures by their block
 * @param finished the finished article with its measurements, if a figure shows it
 * @param cover the finished article alone, if a figure shows it
 * @param key the key of sides and materials, if there are figures
 * @param art pictures from outside by their block
 * @param walked whether the walk of every seam is appended
 */
public record Manual(
    EvaluatedPattern pattern,
    List<EvaluatedPattern> sizes,
    Look look,
    PrintForm form,
    Steps steps,
    Map<String, Manuscript> notes,
    Printing printing,
    List<ClothPlan> cloths,
    Map<Block.Figure, Figure> figures,
    Optional<Figure> finished,
    Optional<Figure> cover,
    Optional<Drawing> key,
    Map<Block.Art, Drawing> art,
    boolean walked) {
  /** Copies the collections, keeping their order. */
  public Manual {
    sizes = List.copyOf(sizes);
    notes = Collections.unmodifiableMap(new LinkedHashMap<>(notes));
    cloths = List.copyOf(cloths);
    figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    art = Collections.unmodifiableMap(new LinkedHashMap<>(art));
  }

  /**
   * What the instructions say in one variant.
   *
   * @param pattern the pattern in one variant
   * @param look the sizes of type that figures were lettered for
   * @param form how values are printed
   * @param steps the steps
   * @param notes the files of the notes folder, by name
   * @param printing what the placeholders of steps and notes come to
   * @param cloths how each material is laid out
   * @param figures figures by their block
   * @param finished the finished article with its measurements, if a figure shows it
   * @param cover the finished article alone, if a figure shows it
   * @param key the key of sides and materials, if there are figures
   * @param art pictures from outside by their block
   */
  public Manual(
      EvaluatedPattern pattern,
      Look look,
      PrintForm form,
      Steps steps,
      Map<String, Manuscript> notes,
      Printing printing,
      List<ClothPlan> cloths,
      Map<Block.Figure, Figure> figures,
      Optional<Figure> finished,
      Optional<Figure> cover,
      Optional<Drawing> key,
      Map<Block.Art, Drawing> art) {
    this(
        pattern,
        List.of(pattern),
        look,
        form,
        steps,
        notes,
        printing,
        cloths,
        figures,
        finished,
        cover,
        key,
        art,
        false);
  }

  /**
   * The same with the walk of every seam appended.
   *
   * @return the manual
   */
  public Manual withWalk() {
    return new Manual(
        pattern, sizes, look, form, steps, notes, printing, cloths, figures, finished, cover, key,
        art, true);
  }

  /** Whether the texts speak of more sizes than one. */
  public boolean isOfSizes() {
    return sizes.size() > 1;
  }

  /**
   * The same with texts that speak of more sizes; pictures stay.
   *
   * @param all the pattern in each size
   * @param findings where problems of values go
   */
  public Manual ofSizes(List<EvaluatedPattern> all, Findings findings) {
    List<Inline.Value> values = new ArrayList<>(steps.values());
    notes.values().forEach(note -> values.addAll(note.values()));
    return new Manual(
        pattern,
        all,
        look,
        form,
        steps,
        notes,
        Printing.of(values, all, form, findings),
        cloths,
        figures,
        finished,
        cover,
        key,
        art,
        walked);
  }
}
