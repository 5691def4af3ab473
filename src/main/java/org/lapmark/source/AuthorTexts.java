package org.lapmark.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;

/**
 * The texts of {@code pattern.yaml} that readers see: the one place that knows where they all are,
 * so that none is forgotten when texts are checked or exchanged for another language's.
 */
public final class AuthorTexts {
  private AuthorTexts() {}

  /**
   * All texts.
   *
   * @param source the pattern as read
   * @return the texts in the order of the source
   */
  public static List<TemplateText> of(PatternSource source) {
    List<TemplateText> texts = new ArrayList<>();
    replaced(
        source,
        text -> {
          texts.add(text);
          return text;
        });
    return List.copyOf(texts);
  }

  /**
   * The pattern in one of the languages it was translated into: what has a translation is
   * exchanged, all else stays in the original.
   *
   * @param source the pattern as read
   * @param translation the texts in the other language
   * @return the same pattern in that language
   */
  public static PatternSource translated(PatternSource source, Translation translation) {
    Map<String, TemplateText> texts = new LinkedHashMap<>();
    translation.texts().forEach(text -> texts.put(text.from().text(), text.to()));
    Map<String, StepSource> steps = new LinkedHashMap<>();
    translation.steps().forEach(step -> steps.put(step.step().id().text(), step.step()));
    Map<String, NoteSource> notes = new LinkedHashMap<>();
    translation.notes().forEach(note -> notes.put(note.note().name(), note.note()));
    PatternSource replaced =
        replaced(source, text -> texts.getOrDefault(text.source().text(), text));
    return new PatternSource(
        source.folder(),
        replaced.masthead().in(translation.locale()),
        source.sizes(),
        replaced.materials(),
        replaced.hardware(),
        source.measures(),
        replaced.finished(),
        source.panels(),
        replaced.pieces(),
        source.seams(),
        source.fastenings(),
        replaced.units(),
        replaced.making(),
        source.steps().stream().map(step -> translated(step, steps)).toList(),
        source.notes().stream().map(note -> notes.getOrDefault(note.name(), note)).toList(),
        source.translations(),
        replaced.options(),
        replaced.outside());
  }

  /** Tools and the like that a step uses are stated in the original alone. */
  private static StepSource translated(StepSource original, Map<String, StepSource> steps) {
    StepSource step = steps.get(original.id().text());
    return step == null
        ? original
        : new StepSource(original.id(), step.title(), step.stage(), original.uses(), step.body());
  }

  private static PatternSource replaced(
      PatternSource source, UnaryOperator<TemplateText> exchange) {
    UnaryOperator<TemplateText> exchangeAny = text -> text == null ? null : exchange.apply(text);
    Masthead masthead = source.masthead();
    SourceText title = plain(masthead.title(), exchange);
    Masthead exchanged =
        new Masthead(
            title,
            masthead.studio(),
            masthead.designer(),
            masthead.language(),
            exchangeAny.apply(masthead.summary()),
            exchangeAny.apply(masthead.copyright()),
            masthead.form(),
            masthead.edition(),
            masthead.date(),
            exchangeAny.apply(masthead.note()),
            masthead.joins(),
            masthead.languagePlace(),
            masthead.datePlace());
    MakingSource making = source.making();
    return new PatternSource(
        source.folder(),
        exchanged,
        source.sizes(),
        things(source.materials(), exchange),
        things(source.hardware(), exchange),
        source.measures(),
        source.finished().stream()
            .map(
                row ->
                    new FinishedSource(
                        exchange.apply(row.label()), exchange.apply(row.value()), row.when()))
            .toList(),
        source.panels(),
        source.pieces().stream().map(piece -> piece(piece, exchange)).toList(),
        source.seams(),
        source.fastenings(),
        source.units().stream()
            .map(unit -> new UnitSource(unit.name(), exchangeAny.apply(unit.label()), unit.view()))
            .toList(),
        new MakingSource(
            values(making.texts(), exchange),
            making.stitches(),
            making.tools().stream()
                .map(
                    tool ->
                        new MakingSource.ToolSource(
                            tool.id(), exchange.apply(tool.name()), tool.care()))
                .toList(),
            making.use().limiting(exchangeAny.apply(making.use().loadLimit()))),
        source.steps(),
        source.notes(),
        source.translations(),
        options(source.options(), exchange),
        source.outside().with(exchange));
  }

  private static OptionsSource options(
      OptionsSource options, UnaryOperator<TemplateText> exchange) {
    List<OptionsSource.OptionSource> exchanged = new ArrayList<>();
    for (OptionsSource.OptionSource option : options.options()) {
      SourceText label = plain(option.label(), exchange);
      List<OptionsSource.ChoiceSource> choices =
          option.choices().stream()
              .map(
                  choice ->
                      new OptionsSource.ChoiceSource(choice.id(), plain(choice.label(), exchange)))
              .toList();
      exchanged.add(
          new OptionsSource.OptionSource(
              option.name(),
              label,
              choices,
              option.standard(),
              option.standardWhen(),
              option.text() == null ? null : exchange.apply(option.text())));
    }
    List<OptionsSource.ForbiddenSource> forbidden =
        options.forbidden().stream()
            .map(one -> new OptionsSource.ForbiddenSource(one.when(), exchange.apply(one.reason())))
            .toList();
    return new OptionsSource(exchanged, forbidden, options.conditions(), options.unread());
  }

  /** A text without placeholders. */
  private static SourceText plain(SourceText text, UnaryOperator<TemplateText> exchange) {
    return exchange
        .apply(new TemplateText(text, List.of(new TemplateText.Literal(text.text()))))
        .source();
  }

  private static PieceSource piece(PieceSource piece, UnaryOperator<TemplateText> exchange) {
    return new PieceSource(
        piece.number(),
        piece.position(),
        exchange.apply(piece.name()),
        piece.panel(),
        piece.allowance(),
        piece.edgeAllowances(),
        piece.corners(),
        piece.cuts(),
        piece.fold(),
        piece.printed());
  }

  private static List<ThingSource> things(
      List<ThingSource> things, UnaryOperator<TemplateText> exchange) {
    List<ThingSource> exchanged = new ArrayList<>();
    for (ThingSource thing : things) {
      exchanged.add(
          new ThingSource(
              thing.id(),
              exchange.apply(thing.name()),
              thing.properties(),
              values(thing.texts(), exchange),
              thing.texture(),
              thing.form(),
              thing.care(),
              thing.passes()));
    }
    return exchanged;
  }

  private static Map<String, TemplateText> values(
      Map<String, TemplateText> texts, UnaryOperator<TemplateText> exchange) {
    Map<String, TemplateText> exchanged = new LinkedHashMap<>();
    texts.forEach((key, text) -> exchanged.put(key, exchange.apply(text)));
    return exchanged;
  }

  /**
   * The languages a pattern can be published in.
   *
   * @param source the pattern as read
   * @return the original's first
   */
  public static Set<Locale> languages(PatternSource source) {
    Set<Locale> languages = new LinkedHashSet<>();
    languages.add(source.masthead().language());
    source.translations().forEach(translation -> languages.add(translation.locale()));
    return languages;
  }
}
