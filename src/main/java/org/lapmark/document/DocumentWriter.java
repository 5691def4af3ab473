package org.lapmark.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.lapmark.document.grading.GradePages;
import org.lapmark.document.manual.Chosen;
import org.lapmark.document.manual.Enlarged;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.manual.ManualMaker;
import org.lapmark.document.pdf.FontFiles;
import org.lapmark.document.pdf.FontLettering;
import org.lapmark.document.pdf.Glyphs;
import org.lapmark.document.pdf.Imprint;
import org.lapmark.document.pdf.PdfBook;
import org.lapmark.document.pdf.Program;
import org.lapmark.document.section.CoverArt;
import org.lapmark.document.section.ManualPages;
import org.lapmark.document.section.ManualPagesBuilder;
import org.lapmark.document.section.Pictures;
import org.lapmark.document.section.Plates;
import org.lapmark.document.section.SizePagesBuilder;
import org.lapmark.document.section.TextPages;
import org.lapmark.document.section.TextPagesBuilder;
import org.lapmark.document.setting.PageSetting;
import org.lapmark.document.setting.RecordModel;
import org.lapmark.document.template.Styles;
import org.lapmark.document.template.TemplateEngine;
import org.lapmark.document.template.Templates;
import org.lapmark.document.template.Words;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.Figure;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradeReport;
import org.lapmark.grade.GradedPattern;
import org.lapmark.lay.ClothPlan;
import org.lapmark.print.NestedPlan;
import org.lapmark.print.Paper;
import org.lapmark.print.SheetPlan;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.Tile;
import org.lapmark.source.Masthead;
import org.lapmark.wording.Wording;

/**
 * Writes the documents of one pattern. An instance is used by one thread at a time; making one
 * reads the fonts, so keep it for all documents of a run.
 */
public final class DocumentWriter {
  private static final String TEMPLATE = "document/pages.ftlh";
  private static final String GRADE_REPORT = "document/grade-report.ftlh";

  /** A first guess at how many pages lie before the tiles; a wrong one costs a second setting. */
  private static final int USUAL_FRONT_PAGES = 20;

  /** After so many settings the number of pages before the tiles is not going to settle. */
  private static final int MOST_SETTINGS = 4;

  private static final double COVER_ART_HEIGHT = 88;

  /** Left and right of the text, as the style sheet has it. */
  private static final double TEXT_MARGIN = 20;

  private static final double MAP_HEIGHT_SHARE = 0.42;
  private static final double PAGE_NUMBER_BELOW = 4;

  /** How far all ink keeps from the edge of the paper, in millimetres. */
  private static final double INK_INSIDE = 6;

  private static final double LAYOUT_HEIGHT = 56;
  private static final double LARGE_LAYOUT_HEIGHT = 74;

  /** The smallest lettering of figures in large print, in points. */
  private static final double LARGE_LETTERING = 14;

  private final Templates templates;
  private final FontFiles fonts;
  private final Glyphs glyphs;
  private final PageSetting setting;

  /** How many pages lay before the tiles last time: the best guess for the next document. */
  private int lastFrontPages = USUAL_FRONT_PAGES;

  /**
   * A writer with its templates.
   *
   * @param templates the templates
   */
  public DocumentWriter(Templates templates) {
    this.templates = templates;
    this.fonts = FontFiles.load();
    this.glyphs = new Glyphs(fonts);
    this.setting = new PageSetting(new TemplateEngine(templates), templates);
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
    return Words.of(templates, locale);
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
   * Measures lettering in the fonts that documents embed.
   *
   * @return the measure, for use by one thread
   */
  public LetteringMeasure lettering() {
    return new FontLettering(fonts, glyphs);
  }

  /**
   * The characters of a text that documents can’t print; an empty box stands in their place. Safe
   * for use by several threads.
   *
   * @param text the text
   * @return each missing character once, in code point order; empty when all can be printed
   */
  public List<String> missingGlyphs(String text) {
    return glyphs.missing(text).stream().map(Character::toString).toList();
  }

  /**
   * Makes what the instructions say in one variant; the same for all papers.
   *
   * @param pattern the pattern in one variant
   * @param look the sizes of type
   * @param findings where problems of texts, figures and cutting layouts go
   * @return the manual
   */
  public Manual manual(GradedPattern pattern, Look look, Findings findings) {
    return manual(pattern, look, ManualMaker.cloths(pattern, findings), findings);
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
      GradedPattern pattern, Look look, List<ClothPlan> cloths, Findings findings) {
    Wording wording = wording(pattern.source().masthead().language());
    return new ManualMaker(pattern, wording, styles(look), lettering(), findings)
        .make(look, cloths);
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
   * The complete document: cover, printing page, instructions, tiles.
   *
   * @param pattern the pattern in one variant
   * @param plan its tiles
   * @param planner draws page map and printing page
   * @return a PDF/A-3a and PDF/UA-1 file
   */
  public byte[] complete(GradedPattern pattern, SheetPlan plan, SheetPlanner planner) {
    return complete(manual(pattern, Look.STANDARD, new Findings()), plan, planner);
  }

  /**
   * The complete document: cover, printing page, instructions, tiles.
   *
   * @param manual what the instructions say
   * @param plan the tiles
   * @param planner draws page map and printing page
   * @return a PDF/A-3a and PDF/UA-1 file
   */
  public byte[] complete(Manual manual, SheetPlan plan, SheetPlanner planner) {
    return complete(manual, plan, Plates.of(planner), planner.wording(), planner.styles());
  }

  byte[] complete(
      Manual manual, SheetPlan plan, Plates plates, Wording wording, StyleSheet styles) {
    int before = lastFrontPages;
    for (int setting = 0; setting < MOST_SETTINGS; setting++) {
      try (PdfBook book =
          book(manual.pattern(), wording, styles, "document.title", "document.subject")) {
        front(book, manual, plan, plates, wording, styles, before);
        if (book.pageCount() != before && !plan.tiles().isEmpty()) {
          before = book.pageCount();
          continue;
        }
        lastFrontPages = before;
        int textPages = book.pageCount();
        appendTiles(book, plan, wording);
        number(book, plan.paper(), wording, styles, index -> index < textPages && index != 1);
        return book.save();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    throw new IllegalStateException("the number of pages before the tiles doesn't settle");
  }

  /**
   * The same as the complete document without its tiles. The page map speaks of the file that has
   * the tiles alone.
   *
   * @param manual what the instructions say
   * @param plan the tiles
   * @param planner draws page map and printing page
   * @return a PDF/A-3a and PDF/UA-1 file
   */
  public byte[] instructions(Manual manual, SheetPlan plan, SheetPlanner planner) {
    return instructions(manual, plan, Plates.of(planner), planner.wording(), planner.styles());
  }

  byte[] instructions(
      Manual manual, SheetPlan plan, Plates plates, Wording wording, StyleSheet styles) {
    try (PdfBook book =
        book(
            manual.pattern(),
            wording,
            styles,
            "document.instructions-title",
            "document.instructions-subject")) {
      front(book, manual, plan, plates, wording, styles, 0);
      // A complete document has as many pages before its tiles, as a rule.
      lastFrontPages = book.pageCount();
      number(book, plan.paper(), wording, styles, index -> index != 1);
      return book.save();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The instructions of all sizes in one document: what differs by size in a column a size or
   * listed by size, pictures in a size of the middle. Cutting layouts, page maps and labels are
   * left to the documents of one size.
   *
   * @param manuals the manual of each size in the order of the size table, in standard type
   * @param paper the paper
   * @param styles the look of drawings
   * @param findings where problems of values go
   * @return a PDF/A-3a and PDF/UA-1 file
   * @throws IllegalArgumentException when there are fewer than two sizes
   */
  public byte[] allSizes(List<Manual> manuals, Paper paper, StyleSheet styles, Findings findings) {
    if (manuals.size() < 2) {
      throw new IllegalArgumentException("fewer than two sizes");
    }
    Manual typical = manuals.get((manuals.size() - 1) / 2);
    Wording wording = wording(typical.pattern().source().masthead().language());
    Manual manual = typical.ofSizes(manuals.stream().map(Manual::pattern).toList(), findings);
    SheetPlan plan = new SheetPlan(paper, 0, 0, List.of(), List.of());
    List<TextPages> texts =
        manuals.stream()
            .map(
                one ->
                    new TextPagesBuilder(one.pattern(), plan, wording)
                        .build(Optional.empty(), Optional.empty(), 1, true))
            .toList();
    SizePagesBuilder sizes = new SizePagesBuilder(manuals, texts, wording);
    RecordModel records = new RecordModel(glyphs);
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("begin", records.map(sizes.begin()));
    Map<String, Object> title =
        records.map(
            new Title(
                sizes.runs(TextPages::summary),
                sizes.runs(TextPages::copyright),
                sizes.runs(TextPages::note)));
    model.putAll(title);
    model.put("by", records.map(sizes.build(typical.pattern().variant().size())));
    String names =
        manuals.stream()
            .map(one -> one.pattern().variant().size())
            .collect(Collectors.joining(wording.text("list.between")));
    boolean every = manuals.size() == typical.pattern().source().sizes().sizes().size();
    model.put("every", every);
    try (PdfBook book =
        book(
            typical.pattern(),
            names,
            wording,
            styles,
            every ? "document.sizes-title" : "document.some-title",
            every ? "document.sizes-subject" : "document.some-subject")) {
      setTextPages(book, manual, plan, null, wording, styles, 0, 0, model);
      number(book, paper, wording, styles, index -> true);
      return book.save();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is chosen in a document with options. */
  private record Choices(List<Chosen.Line> choices) {}

  /**
   * The grade report, for designer and editor: every edge by size with its increments, and the nest
   * of sizes of every panel.
   *
   * @param patterns the pattern in each size, in the order of the size table, with the same choices
   * @param paper the paper
   * @param styles the look of drawings
   * @return a PDF/A-3a and PDF/UA-1 file
   * @throws IllegalArgumentException when there is no pattern
   */
  public byte[] gradeReport(List<GradedPattern> patterns, Paper paper, StyleSheet styles) {
    GradeReport report = GradeReport.of(patterns);
    Masthead masthead = patterns.get(0).source().masthead();
    Wording wording = wording(masthead.language());
    Pictures pictures = new Pictures();
    GradePages pages =
        GradePages.of(
            report, wording, styles, lettering(), pictures, paper.width() - 2 * TEXT_MARGIN);
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("grade", new RecordModel(glyphs).map(pages));
    model.put("language", masthead.language().toLanguageTag());
    model.put("title", glyphs.printable(masthead.title().text()));
    model.put("studio", glyphs.printable(masthead.studio().text()));
    model.put("edition", glyphs.printable(masthead.edition().text()));
    model.put("page", new RecordModel(glyphs).map(new PageSize(paper.width(), paper.height())));
    try (PdfBook book =
        book(patterns.get(0), wording, styles, "grade.document-title", "grade.document-subject")) {
      setting.set(book, GRADE_REPORT, model, wording, pictures.drawings(), 0);
      number(book, paper, wording, styles, index -> true);
      return book.save();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** In millimetres. */
  private record PageSize(double width, double height) {}

  /** Texts of the title pages that are printed for all sizes. */
  private record Title(List<Object> summary, List<Object> copyright, List<Object> note) {}

  /** Sets all pages before the tiles; none stand before tiles that have a file of their own. */
  private void front(
      PdfBook book,
      Manual manual,
      SheetPlan plan,
      Plates plates,
      Wording wording,
      StyleSheet styles,
      int before)
      throws IOException {
    setTextPages(book, manual, plan, plates, wording, styles, before, 1, Map.of());
    book.insertBehindCover(plates.printingPage(plan.paper()), wording.text("printing.alternative"));
    book.outline()
        .getFirstChild()
        .insertSiblingAfter(book.outlineItem(wording.text("printing.title"), 1));
  }

  /**
   * The tiles alone, the test squares on their first page.
   *
   * @param pattern the pattern in one variant
   * @param plan its tiles
   * @param planner draws page map and printing page
   * @return a PDF/A-3a and PDF/UA-1 file
   * @throws IllegalArgumentException when the plan has no tiles
   */
  public byte[] tiles(GradedPattern pattern, SheetPlan plan, SheetPlanner planner) {
    return tiles(pattern, plan, planner.wording(), planner.styles());
  }

  byte[] tiles(GradedPattern pattern, SheetPlan plan, Wording wording, StyleSheet styles) {
    if (plan.tiles().isEmpty()) {
      throw new IllegalArgumentException("a plan without tiles");
    }
    try (PdfBook book =
        book(pattern, wording, styles, "document.tiles-title", "document.tiles-subject")) {
      appendTiles(book, plan, wording);
      number(book, plan.paper(), wording, styles, index -> false);
      return book.save();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The tiles of all sizes stacked, each size a layer: all sizes on at first, what the plan hides
   * off.
   *
   * @param pattern the pattern in any of the sizes
   * @param plan the tiles and layers
   * @param planner drew them
   * @return a PDF/A-3a and PDF/UA-1 file
   * @throws IllegalArgumentException when the plan has no tiles
   */
  public byte[] nested(GradedPattern pattern, NestedPlan plan, SheetPlanner planner) {
    if (plan.sheet().tiles().isEmpty()) {
      throw new IllegalArgumentException("a plan without tiles");
    }
    Wording wording = planner.wording();
    try (PdfBook book =
        book(
            pattern,
            plan.sizes(),
            wording,
            planner.styles(),
            "document.nested-title",
            "document.nested-subject")) {
      book.layers(plan.layers(), plan.hidden());
      appendTiles(book, plan.sheet(), wording);
      number(book, plan.sheet().paper(), wording, planner.styles(), index -> false);
      return book.save();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private PdfBook book(
      GradedPattern pattern, Wording wording, StyleSheet styles, String titleKey, String subjectKey)
      throws IOException {
    return book(pattern, pattern.variant().size(), wording, styles, titleKey, subjectKey);
  }

  private PdfBook book(
      GradedPattern pattern,
      String size,
      Wording wording,
      StyleSheet styles,
      String titleKey,
      String subjectKey)
      throws IOException {
    Masthead masthead = pattern.source().masthead();
    Map<String, String> names = Map.of("title", masthead.title().text(), "size", size);
    Imprint imprint =
        new Imprint(
            glyphs.printable(wording.text(titleKey, names)),
            glyphs.printable(masthead.studio().text()),
            glyphs.printable(wording.text(subjectKey, names)),
            masthead.language().toLanguageTag(),
            masthead.date(),
            Program.name());
    return new PdfBook(imprint, styles, fonts, glyphs);
  }

  /**
   * Sets text pages.
   *
   * @param inserted how many pages are going to be put behind the first
   * @param ofSizes what takes the place of values of the model in a document of all sizes
   */
  private void setTextPages(
      PdfBook book,
      Manual manual,
      SheetPlan plan,
      Plates plates,
      Wording wording,
      StyleSheet styles,
      int before,
      int inserted,
      Map<String, Object> ofSizes)
      throws IOException {
    GradedPattern pattern = manual.pattern();
    double textWidth = plan.paper().width() - 2 * TEXT_MARGIN;
    TextPagesBuilder builder = new TextPagesBuilder(pattern, plan, wording);
    Optional<Drawing> cover =
        manual
            .cover()
            .map(Figure::drawing)
            .or(() -> CoverArt.of(pattern.pieces(), textWidth, COVER_ART_HEIGHT));
    Optional<Drawing> map =
        plan.tiles().isEmpty()
            ? Optional.empty()
            : Optional.of(
                plates.pageMap(
                    plan,
                    builder.tilePages(before + 1),
                    textWidth,
                    plan.paper().height() * MAP_HEIGHT_SHARE));
    Pictures pictures = new Pictures();
    ManualPages pages =
        new ManualPagesBuilder(manual, wording, pictures)
            .build(
                builder::cutSize,
                builder::marks,
                styles,
                lettering(),
                textWidth,
                manual.look() == Look.STANDARD ? LAYOUT_HEIGHT : LARGE_LAYOUT_HEIGHT,
                map.isPresent());
    Map<String, Drawing> drawings = new LinkedHashMap<>(pictures.drawings());
    cover.ifPresent(drawing -> drawings.put("cover", drawing));
    map.ifPresent(drawing -> drawings.put("map", drawing));
    RecordModel records = new RecordModel(glyphs);
    Map<String, Object> model = records.map(builder.build(cover, map, before + 1, before == 0));
    model.putAll(records.map(pages));
    model.putAll(
        records.map(
            new Choices(
                Chosen.in(manual.sizes(), wording).stream()
                    .map(one -> one.printed(manual.sizes(), wording, manual.form()))
                    .toList())));
    model.putAll(ofSizes);
    model.put("large", manual.look() == Look.LARGE_PRINT);
    String pieces = builder.piecesInWords();
    model.put("piecesInWords", glyphs.printable(pieces));
    model.put(
        "coverInWords",
        glyphs.printable(
            manual
                .cover()
                .map(Figure::alternative)
                .orElse(wording.text("cover.alternative", Map.of("pieces", pieces)))));
    setting.set(book, TEMPLATE, model, wording, drawings, inserted);
  }

  private void appendTiles(PdfBook book, SheetPlan plan, Wording wording) throws IOException {
    List<PDOutlineItem> items = new ArrayList<>();
    for (Tile tile : plan.tiles()) {
      book.append(tile.page(), tile.alternative());
      items.add(
          book.outlineItem(
              wording.text("map.tile-bookmark", Map.of("code", tile.code())),
              book.pageCount() - 1));
    }
    if (!items.isEmpty()) {
      PDOutlineItem tiles =
          book.outlineItem(wording.text("map.tiles-bookmark"), book.pageCount() - items.size());
      items.forEach(tiles::addLast);
      book.outline().addLast(tiles);
    }
  }

  /** Stamps page numbers at one height on every page, in line with text or with a tile's window. */
  private void number(
      PdfBook book, Paper paper, Wording wording, StyleSheet styles, IntPredicate isText)
      throws IOException {
    int pages = book.pageCount();
    Box window = paper.window();
    double descent = lettering().descent(styles.style("page-number"));
    for (int i = 0; i < pages; i++) {
      // Below what tiles draw in, where most printers still reach; nothing depends on it there, as
      // a tile has its code inside.
      double height = book.pageHeight(i);
      double below = paper.height() - window.maxY();
      double baseline = height - Math.max(below - PAGE_NUMBER_BELOW, INK_INSIDE + descent);
      String text = wording.text("page.number", Map.of("page", i + 1, "pages", pages));
      double right = isText.test(i) ? paper.width() - TEXT_MARGIN : window.maxX();
      Item number =
          new Item.Lettering(
              text, new Point(right, baseline), Item.Alignment.END, 0, "page-number");
      book.stamp(i, new Drawing(paper.width(), height, List.of(number)));
    }
  }
}
