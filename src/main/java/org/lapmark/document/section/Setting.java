package org.lapmark.document.section;

import java.util.List;
import java.util.Optional;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.manual.Manual;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.print.NumberWords;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.memory.Memory;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.wording.Wording;

/**
 * What the sections of a printed document are set from.
 *
 * @param manual what the instructions say
 * @param sizes the sizes of a document of several
 * @param plan the tiles
 * @param map the page map, if there is one
 * @param firstTilePage the page number of the first tile
 * @param apart whether the tiles have a file of their own
 * @param wording the words
 * @param styles the look of drawings
 * @param lettering how wide their words come out
 * @param memory what remembers drawings
 * @param textWidth how wide text is set, in millimetres
 * @param sections the ids of the sections that the document has
 * @param hazards the hazards
 * @param pictures takes the drawings in
 * @param isTriedOut whether nobody will see the document
 */
public record Setting(
    Manual manual,
    Optional<Sizes> sizes,
    SheetPlan plan,
    Optional<Drawing> map,
    int firstTilePage,
    boolean apart,
    Wording wording,
    StyleSheet styles,
    LetteringMeasure lettering,
    Memory memory,
    double textWidth,
    List<String> sections,
    Hazards hazards,
    Pictures pictures,
    boolean isTriedOut) {
  /** Writes the author's texts. */
  StepPages texts() {
    return new StepPages(manual, wording, pictures, sections);
  }

  /** An author's short text with its values. */
  static List<Object> printed(TemplateText text, EvaluatedPattern pattern, Wording wording) {
    return text == null
        ? List.of()
        : text.print(pattern.scope(), pattern.variant(), form(pattern, wording));
  }

  static PrintForm form(EvaluatedPattern pattern, Wording wording) {
    return pattern.source().masthead().form().with(NumberWords.of(wording));
  }
}
