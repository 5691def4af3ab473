package org.lapmark.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.lapmark.document.manual.Enlarged;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.manual.ManualMaker;
import org.lapmark.document.pdf.FontFiles;
import org.lapmark.document.pdf.FontLettering;
import org.lapmark.document.pdf.Glyphs;
import org.lapmark.document.section.Sections;
import org.lapmark.document.setting.PageSetting;
import org.lapmark.document.template.Styles;
import org.lapmark.document.template.TemplateEngine;
import org.lapmark.document.template.Templates;
import org.lapmark.document.template.Words;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.lay.ClothPlan;
import org.lapmark.lay.LayPlanner;
import org.lapmark.memory.Memory;
import org.lapmark.packing.Effort;
import org.lapmark.wording.Wording;

/**
 * Writes the documents of one pattern. An instance is used by one thread at a time; making one
 * reads the fonts, so keep it for all documents of a run, and make those of other threads from it.
 */
public final class DocumentWriter {
  /** A first guess at how many pages lie before the tiles; a wrong one costs a second setting. */
  private static final int USUAL_FRONT_PAGES = 20;

  /** The smallest lettering of figures in large print, in points. */
  private static final double LARGE_LETTERING = 14;

  private final Templates templates;
  private final Memory memory;
  private final Effort effort;
  private final Common common;
  private final FontFiles fonts;
  private final PageSetting setting;
  private LetteringMeasure lettering;

  private int frontPages = USUAL_FRONT_PAGES;

  /** What follows from templates and fonts alone, and any thread may use. */
  private record Common(
      FontFiles fonts, Glyphs glyphs, TemplateEngine engine, Map<Locale, Wording> wordings) {
    static Common of(Templates templates) {
      FontFiles fonts = FontFiles.load();
      return new Common(
          fonts, new Glyphs(fonts), new TemplateEngine(templates), new ConcurrentHashMap<>());
    }
  }

  /**
   * A writer with its templates.
   *
   * @param templates the templates
   */
  public DocumentWriter(Templates templates) {
    this(templates, Memory.none(), Effort.FULL);
  }

  /**
   * A writer with its templates.
   *
   * @param templates the templates
   * @param memory what remembers results; it may be shared by all writers with these templates
   * @param effort how hard layouts are searched for; with the least, no file is written out
   */
  public DocumentWriter(Templates templates, Memory memory, Effort effort) {
    this(templates, Common.of(templates), memory, effort);
  }

  private DocumentWriter(Templates templates, Common common, Memory memory, Effort effort) {
    this.effort = effort;
    this.templates = templates;
    this.common = common;
    this.memory = memory;
    this.fonts = common.fonts.ofOneThread();
    this.setting = new PageSetting(common.engine, templates);
  }

  /**
   * A writer with the same templates and fonts, for another thread. Safe for use by several
   * threads.
   *
   * @param memory what remembers results; it may be shared by all writers with these templates
   * @param effort how hard layouts are searched for
   * @return the writer
   */
  public DocumentWriter another(Memory memory, Effort effort) {
    return new DocumentWriter(templates, common, memory, effort);
  }

  /**
   * The templates.
   *
   * @return the templates
   */
  public Templates templates() {
    return templates;
  }

  /**
   * The words of a language: below {@code words/}, in its subfolders too, every {@code
   * en.properties}, over it that of the language, over that that of the language and region.
   *
   * @param locale the language
   * @return the words
   */
  public Wording wording(Locale locale) {
    return common.wordings.computeIfAbsent(locale, unused -> Words.of(templates, locale));
  }

  /**
   * The words that documents in a language print in English, since the templates lack them. Safe
   * for use by several threads.
   *
   * @param locale the language
   * @return their names, sorted; none of English itself
   */
  public List<String> lackingWords(Locale locale) {
    return Words.lacking(templates, locale);
  }

  /**
   * The look of drawings, from every {@code styles.properties} among the templates.
   *
   * @return the style sheet
   * @throws IllegalArgumentException when a line can't be understood
   */
  public StyleSheet styles() {
    return Styles.of(templates);
  }

  /**
   * What remembers results.
   *
   * @return the memory, for functions of what the templates say, too
   */
  public Memory memory() {
    return memory;
  }

  /**
   * Measures lettering in the fonts that documents embed.
   *
   * @return the measure, for use by one thread
   */
  public LetteringMeasure lettering() {
    if (lettering == null) {
      lettering = new FontLettering(fonts, common.glyphs);
    }
    return lettering;
  }

  /**
   * The characters of a text that documents can’t print; an empty box stands in their place. Safe
   * for use by several threads.
   *
   * @param text the text
   * @return each missing character once, in code point order; empty when all can be printed
   */
  public List<String> missingGlyphs(String text) {
    return common.glyphs.missing(text).stream().map(Character::toString).toList();
  }

  /**
   * Makes what the instructions say in one variant; the same for all papers.
   *
   * @param pattern the pattern in one variant
   * @param look the sizes of type
   * @param findings where problems of texts, figures and cutting layouts go
   * @return the manual
   */
  public Manual manual(EvaluatedPattern pattern, Look look, Findings findings) {
    return manual(pattern, look, cloths(pattern, findings), findings);
  }

  /**
   * The cutting layouts of a variant.
   *
   * @param pattern the pattern in one variant
   * @param findings where problems go
   * @return the materials in the order stated
   */
  public List<ClothPlan> cloths(EvaluatedPattern pattern, Findings findings) {
    return LayPlanner.plan(pattern, findings, effort, memory);
  }

  /**
   * The same manual in another size of type.
   *
   * @param manual the manual
   * @param look the sizes of type
   * @param findings where problems go
   * @return the manual
   */
  public Manual manual(Manual manual, Look look, Findings findings) {
    return manual(manual.pattern(), look, manual.cloths(), findings);
  }

  private Manual manual(
      EvaluatedPattern pattern, Look look, List<ClothPlan> cloths, Findings findings) {
    Wording wording = wording(pattern.source().masthead().language());
    return new ManualMaker(pattern, wording, styles(look), lettering(), memory, effort, findings)
        .make(look, cloths, Sections.pages());
  }

  /**
   * The hazards that there are cautions for. Safe for use by several threads.
   *
   * @param language the document's language
   * @return their names, sorted
   */
  public List<String> hazards(Locale language) {
    return Hazards.known(wording(language));
  }

  /**
   * The words by which names of materials say that they are fusible. Safe for use by several
   * threads.
   *
   * @param language the language of the names
   * @return words in lower case
   */
  public List<String> fusibleWords(Locale language) {
    return list(language, "material-names.fusible");
  }

  /**
   * The words by which names of materials say that they aren't fusible. Safe for use by several
   * threads.
   *
   * @param language the language of the names
   * @return words in lower case
   */
  public List<String> unfusibleWords(Locale language) {
    return list(language, "material-names.not-fusible");
  }

  private List<String> list(Locale language, String key) {
    return Stream.of(wording(language).messages().getOrDefault(key, "").split(","))
        .map(String::strip)
        .filter(word -> !word.isEmpty())
        .toList();
  }

  /**
   * The look of drawings in a size of type.
   *
   * @param look the sizes of type
   * @return the style sheet
   */
  public StyleSheet styles(Look look) {
    return look == Look.STANDARD ? styles() : Enlarged.of(styles(), LARGE_LETTERING);
  }

  /**
   * Writes a document.
   *
   * @param document what it is made of
   * @param findings where problems of texts, values and figures go
   * @return the file's bytes
   */
  public byte[] write(Document document, Findings findings) {
    try {
      return document.write(this, findings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Sets pages of templates. */
  public PageSetting setting() {
    return setting;
  }

  /** Fills templates. */
  public TemplateEngine engine() {
    return common.engine;
  }

  /** The fonts that documents embed. */
  public FontFiles fonts() {
    return fonts;
  }

  /** What those fonts can print. */
  public Glyphs glyphs() {
    return common.glyphs;
  }

  /** Whether files are kept, or only made to see whether they can be. */
  public boolean isKept() {
    return effort == Effort.FULL;
  }

  /** How many pages lay before the tiles last time: the best guess for the next document. */
  public int frontPages() {
    return frontPages;
  }

  /** Remembers how many pages lie before the tiles. */
  public void frontPages(int count) {
    frontPages = count;
  }
}
