package org.lapmark.source;

import java.util.List;
import java.util.Locale;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;

/**
 * The author's own text in another language, beside the original.
 *
 * @param locale the language
 * @param position where the language is stated, for findings that concern the whole
 * @param texts the texts of {@code pattern.yaml}
 * @param steps the steps
 * @param notes the notes, each with the mark of the original it translates
 */
public record Translation(
    Locale locale,
    Position position,
    List<TranslatedText> texts,
    List<TranslatedStep> steps,
    List<TranslatedNote> notes) {
  /** Copies the lists. */
  public Translation {
    texts = List.copyOf(texts);
    steps = List.copyOf(steps);
    notes = List.copyOf(notes);
  }

  /**
   * A text of {@code pattern.yaml} with what it becomes.
   *
   * @param from the original, letter by letter
   * @param to the translation
   */
  public record TranslatedText(SourceText from, TemplateText to) {}

  /**
   * A step with what it becomes.
   *
   * @param mark the mark of the original that was translated
   * @param step the translation; its id is the original's
   */
  public record TranslatedStep(SourceText mark, StepSource step) {}

  /**
   * A note with what it becomes.
   *
   * @param mark the mark of the original that was translated
   * @param note the translation
   */
  public record TranslatedNote(SourceText mark, NoteSource note) {}
}
