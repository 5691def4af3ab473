package org.lapmark.document.section;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.lapmark.document.manual.DateWords;
import org.lapmark.document.manual.Look;
import org.lapmark.document.pdf.Program;
import org.lapmark.drawing.Drawing;
import org.lapmark.figure.Figure;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.Masthead;
import org.lapmark.wording.Wording;

/**
 * What cover, contents, heads of pages and colophon say; a run of text is a list of strings and
 * {@link PrintedValue}s.
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
 * @param coverInWords its text alternative
 * @param sections the ids of the document's sections in their order
 * @param introduction the author's introduction as a fragment of XHTML
 * @param piecesInWords the pieces as one line of text, for a picture's text alternative
 * @param large whether the document is set in large print
 */
record TitlePages(
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
    Optional<Pictures.Picture> cover,
    String coverInWords,
    List<String> sections,
    Optional<String> introduction,
    String piecesInWords,
    boolean large) {
  /** The paper's id and size in millimetres. */
  record Page(String id, double width, double height) {}

  private static final double COVER_ART_HEIGHT = 88;

  static TitlePages of(Setting setting) {
    EvaluatedPattern pattern = setting.manual().pattern();
    Masthead masthead = pattern.source().masthead();
    String pieces = piecesInWords(pattern, setting.wording());
    Optional<Figure> figure = setting.manual().cover();
    String coverInWords =
        figure
            .map(Figure::alternative)
            .orElseGet(() -> setting.wording().text("cover.alternative", Map.of("pieces", pieces)));
    Optional<Drawing> cover =
        figure
            .map(Figure::drawing)
            .or(() -> CoverArt.of(pattern.pieces(), setting.textWidth(), COVER_ART_HEIGHT));
    return new TitlePages(
        masthead.language().toLanguageTag(),
        masthead.title().text(),
        masthead.studio().text(),
        Optional.ofNullable(masthead.designer()).map(SourceText::text),
        pattern.variant().size(),
        masthead.edition().text(),
        DateWords.inWords(masthead.date(), setting.wording().locale()),
        text(setting, Masthead::summary),
        text(setting, Masthead::copyright),
        text(setting, Masthead::note),
        Program.name(),
        new Page(
            setting.plan().paper().id(),
            setting.plan().paper().width(),
            setting.plan().paper().height()),
        cover.map(drawing -> setting.pictures().add("cover", drawing, coverInWords, "")),
        coverInWords,
        setting.sections(),
        setting.texts().note("introduction"),
        pieces,
        setting.manual().look() == Look.LARGE_PRINT);
  }

  private static List<Object> text(Setting setting, Function<Masthead, TemplateText> text) {
    Function<EvaluatedPattern, List<Object>> printed =
        pattern ->
            Setting.printed(text.apply(pattern.source().masthead()), pattern, setting.wording());
    return setting
        .sizes()
        .map(sizes -> sizes.runs(printed))
        .orElseGet(() -> printed.apply(setting.manual().pattern()));
  }

  static String piecesInWords(EvaluatedPattern pattern, Wording wording) {
    return String.join(
        wording.text("list.between"),
        pattern.pieces().stream()
            .map(
                piece ->
                    wording.text(
                        "piece.in-words", Map.of("number", piece.number(), "name", piece.name())))
            .toList());
  }
}
