package org.lapmark.source;

import java.time.LocalDate;
import java.util.Locale;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;

/**
 * Who publishes what, in which words and units. Of what is required and couldn't be read, texts are
 * empty, the language is English and the date 1 January 1970; all that was reported.
 *
 * @param title the pattern's title
 * @param studio who publishes it
 * @param designer who designed it, or null
 * @param language the language of the author's texts
 * @param summary one paragraph for the cover, or null
 * @param copyright the terms of use, or null
 * @param form how values are printed
 * @param edition the edition's name
 * @param date the edition's date, which is the document's
 * @param note what this edition is or changed, or null
 * @param joins how pages are joined
 * @param languagePlace where the language is stated
 * @param datePlace where the date is stated
 */
public record Masthead(
    SourceText title,
    SourceText studio,
    SourceText designer,
    Locale language,
    TemplateText summary,
    TemplateText copyright,
    PrintForm form,
    SourceText edition,
    LocalDate date,
    TemplateText note,
    JoinStyle joins,
    Position languagePlace,
    Position datePlace) {
  /**
   * A masthead of a pattern whose pages overlap.
   *
   * @param title the pattern's title
   * @param studio who publishes it
   * @param designer who designed it, or null
   * @param language the language of the author's texts
   * @param summary one paragraph for the cover, or null
   * @param copyright the terms of use, or null
   * @param form how values are printed
   * @param edition the edition's name
   * @param date the edition's date, which is the document's
   * @param note what this edition is or changed, or null
   */
  public Masthead(
      SourceText title,
      SourceText studio,
      SourceText designer,
      Locale language,
      TemplateText summary,
      TemplateText copyright,
      PrintForm form,
      SourceText edition,
      LocalDate date,
      TemplateText note) {
    this(
        title,
        studio,
        designer,
        language,
        summary,
        copyright,
        form,
        edition,
        date,
        note,
        JoinStyle.OVERLAP);
  }

  /**
   * A masthead of a pattern whose pages overlap.
   *
   * @param title the pattern's title
   * @param studio who publishes it
   * @param designer who designed it, or null
   * @param language the language of the author's texts
   * @param summary one paragraph for the cover, or null
   * @param copyright the terms of use, or null
   * @param form how values are printed
   * @param edition the edition's name
   * @param date the edition's date, which is the document's
   * @param note what this edition is or changed, or null
   * @param joins how tiles are joined
   */
  public Masthead(
      SourceText title,
      SourceText studio,
      SourceText designer,
      Locale language,
      TemplateText summary,
      TemplateText copyright,
      PrintForm form,
      SourceText edition,
      LocalDate date,
      TemplateText note,
      JoinStyle joins) {
    this(
        title,
        studio,
        designer,
        language,
        summary,
        copyright,
        form,
        edition,
        date,
        note,
        joins,
        title.position(),
        title.position());
  }

  /**
   * The same masthead in another language.
   *
   * @param other the language of the words around the author's texts
   * @return the masthead
   */
  public Masthead in(Locale other) {
    return new Masthead(
        title,
        studio,
        designer,
        other,
        summary,
        copyright,
        form,
        edition,
        date,
        note,
        joins,
        languagePlace,
        datePlace);
  }

  /**
   * The same masthead with values printed in another form.
   *
   * @param other how values are printed
   * @return the masthead
   */
  public Masthead printing(PrintForm other) {
    return new Masthead(
        title,
        studio,
        designer,
        language,
        summary,
        copyright,
        other,
        edition,
        date,
        note,
        joins,
        languagePlace,
        datePlace);
  }
}
