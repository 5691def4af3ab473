package org.lapmark.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.footnotes.FootnoteDefinition;
import org.commonmark.ext.footnotes.FootnotesExtension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.lapmark.finding.Nearest;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.finding.Unseen;
import org.lapmark.source.folder.UnseenCharacters;

/** Turns one parse of Markdown into blocks. */
final class BlockReader {
  private static final Pattern TASK = Pattern.compile("^(\\[[ xX]\\])\\s");

  private final ManuscriptReader manuscript;
  private final SourceText text;
  private final String masked;

  /** The level of the heading before; 0 before the first. */
  private int lastHeading;

  /** By how many levels headings stand higher than stated. */
  private int raisedBy;

  private final boolean boxed;
  private final Node document;
  private final Map<String, FootnoteDefinition> definitions = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final List<Stray> strays = new ArrayList<>();
  private boolean inNote;

  /** The mark of a footnote that doesn't exist. */
  private record Stray(String label, Position position) {}

  BlockReader(ManuscriptReader manuscript, Prepared prepared, boolean boxed) {
    this.manuscript = manuscript;
    this.text = prepared.text();
    this.masked = prepared.masked();
    this.boxed = boxed;
    this.document = parser().parse(masked);
  }

  private Parser parser() {
    return Parser.builder()
        .extensions(
            List.of(
                TablesExtension.create(),
                FootnotesExtension.builder().inlineFootnotes(true).build()))
        // HTML and indented code aren't among them: both are text here. The parser tries them in
        // this order, and a rule made of list markers must come before the list.
        .enabledBlockTypes(
            new LinkedHashSet<>(
                List.of(BlockQuote.class, Heading.class, ThematicBreak.class, ListBlock.class)))
        .customBlockParserFactory(new FencedBlock.Factory())
        .customInlineContentParserFactory(new ValueNode.Factory(text, manuscript.findings()))
        .customInlineContentParserFactory(new AngleBrackets(text, manuscript.findings()))
        .linkProcessor(new StrayNotes(this))
        .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
        .build();
  }

  List<Block> blocks(int depth) {
    List<FootnoteDefinition> all = new ArrayList<>();
    for (Node node = document; node != null; node = next(node)) {
      if (node instanceof FootnoteDefinition definition) {
        all.add(definition);
        definitions.putIfAbsent(key(definition.getLabel()), definition);
      }
    }
    reportStrays(all);
    List<Block> blocks = blocks(document, depth);
    for (FootnoteDefinition definition : all) {
      String label = key(definition.getLabel());
      if (!numbers.containsKey(label) || definitions.get(label) != definition) {
        String shown = Letters.shown(definition.getLabel());
        manuscript.findings().add(TextCode.FOOTNOTE_UNUSED, position(definition), "label", shown);
      }
    }
    return blocks;
  }

  /** The node behind another in document order; not recursive, for depths are still unknown. */
  private static Node next(Node node) {
    if (node.getFirstChild() != null) {
      return node.getFirstChild();
    }
    Node at = node;
    while (at != null && at.getNext() == null) {
      at = at.getParent();
    }
    return at == null ? null : at.getNext();
  }

  ManuscriptReader manuscript() {
    return manuscript;
  }

  SourceText text() {
    return text;
  }

  /** What the parser was given; as long as the text. */
  String masked() {
    return masked;
  }

  /** Where a node begins in the text. */
  int start(Node node) {
    List<SourceSpan> spans = node.getSourceSpans();
    return spans.isEmpty() ? 0 : spans.get(0).getInputIndex();
  }

  /** Where a node ends in the text. */
  int end(Node node) {
    List<SourceSpan> spans = node.getSourceSpans();
    if (spans.isEmpty()) {
      return 0;
    }
    SourceSpan last = spans.get(spans.size() - 1);
    return last.getInputIndex() + last.getLength();
  }

  Position position(Node node) {
    return text.position(start(node), end(node));
  }

  /** Reports signs that other kinds of Markdown read. */
  void unread(String kind, int from, int to) {
    manuscript
        .findings()
        .add(
            TextCode.MARKUP_UNREAD,
            text.position(from, to),
            "kind",
            kind,
            "written",
            InlineReader.brief(text.text().substring(from, to).replace('\n', ' ')));
  }

  /** A node as it was written, for what can't be understood any further. */
  String written(Node node) {
    return text.text().substring(start(node), Math.max(start(node), end(node)));
  }

  /**
   * Reports a character that nobody sees and that stands here as a reference, such as &amp;#8203;.
   */
  void checkReferences(Node node, String meant) {
    String written = written(node);
    meant
        .codePoints()
        .filter(point -> Unseen.of(point).isPresent() && written.indexOf(point) < 0)
        .findFirst()
        .ifPresent(
            point -> manuscript.findings().add(UnseenCharacters.finding(point, position(node), 0)));
  }

  private List<Block> blocks(Node parent, int depth) {
    if (depth > Manuscript.MAX_DEPTH) {
      manuscript.reportDepth(position(parent));
      return List.of(new Block.Verbatim(written(parent)));
    }
    List<Block> blocks = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof FootnoteDefinition || node instanceof LinkReferenceDefinition) {
        continue;
      }
      if (node instanceof Paragraph && isGallery(node)) {
        gallery(node, depth, blocks);
      } else {
        Block block = block(node, depth);
        if (!(block instanceof Block.Paragraph paragraph) || !paragraph.content().isEmpty()) {
          blocks.add(block);
        }
      }
    }
    return blocks;
  }

  private Block block(Node node, int depth) {
    if (node instanceof Heading heading) {
      return heading(heading, depth);
    } else if (node instanceof ListBlock list) {
      return list(list, depth);
    } else if (node instanceof BlockQuote) {
      return new Block.Quote(blocks(node, depth + 1));
    } else if (node instanceof ThematicBreak) {
      return new Block.Rule();
    } else if (node instanceof FencedBlock fenced) {
      return manuscript.fenced(fenced, text, depth + 1, boxed);
    } else if (node instanceof TableBlock table) {
      return table(table, depth);
    }
    return new Block.Paragraph(inlines(node, depth));
  }

  private List<Inline> inlines(Node node, int depth) {
    return new InlineReader(this).inlines(node, depth + 1);
  }

  private Block heading(Heading heading, int depth) {
    int level = heading.getLevel();
    if (level > Manuscript.MAX_HEADING) {
      manuscript
          .findings()
          .add(
              TextCode.HEADING_TOO_DEEP,
              position(heading),
              "level",
              level,
              "limit",
              Manuscript.MAX_HEADING);
    }
    // No level is left out on the way down, as those who hear a page find their way by levels.
    int stated = Math.min(level, Manuscript.MAX_HEADING);
    if (stated - raisedBy < 1) {
      raisedBy = 0;
    }
    raisedBy = Math.max(raisedBy, stated - lastHeading - 1);
    lastHeading = stated - raisedBy;
    return new Block.Heading(lastHeading, inlines(heading, depth));
  }

  private Block list(ListBlock list, int depth) {
    boolean ordered = list instanceof OrderedList;
    Integer start = ordered ? ((OrderedList) list).getMarkerStartNumber() : null;
    List<List<Block>> items = new ArrayList<>();
    for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
      if (item.getFirstChild() instanceof Paragraph first) {
        Matcher task = TASK.matcher(written(first));
        if (task.find()) {
          unread("task", start(first), start(first) + task.end(1));
        }
      }
      items.add(blocks(item, depth + 1));
    }
    return new Block.ItemList(ordered, start == null ? 1 : start, list.isTight(), items);
  }

  /** Whether a paragraph is made of pictures alone. */
  private static boolean isGallery(Node paragraph) {
    boolean any = false;
    for (Node node = paragraph.getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Image) {
        any = true;
      } else if (!(node instanceof SoftLineBreak)) {
        return false;
      }
    }
    return any;
  }

  private void gallery(Node paragraph, int depth, List<Block> blocks) {
    for (Node node = paragraph.getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Image image) {
        Addresses.art(image.getDestination(), this, image)
            .ifPresent(
                path -> {
                  List<Inline> words = inlines(image, depth);
                  Position at = Addresses.place(image.getDestination(), this, image);
                  if (PlainText.isBlank(words)) {
                    manuscript.findings().add(TextCode.ART_WITHOUT_WORDS, position(image));
                  }
                  blocks.add(new Block.Art(path, words, at));
                });
      }
    }
  }

  private Block table(TableBlock table, int depth) {
    List<Block.Table.Alignment> columns = new ArrayList<>();
    List<List<Inline>> head = new ArrayList<>();
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
      for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
        List<List<Inline>> cells = new ArrayList<>();
        for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
          cells.add(inlines(cell, depth));
          if (part instanceof TableHead) {
            columns.add(alignment((TableCell) cell));
          }
        }
        if (part instanceof TableHead) {
          head = cells;
        } else {
          rows.add(cells);
          checkLength(row, columns.size());
        }
      }
    }
    return new Block.Table(columns, head, rows, position(table.getFirstChild()));
  }

  private static Block.Table.Alignment alignment(TableCell cell) {
    if (cell.getAlignment() == null) {
      return Block.Table.Alignment.NONE;
    }
    return switch (cell.getAlignment()) {
      case LEFT -> Block.Table.Alignment.LEFT;
      case CENTER -> Block.Table.Alignment.CENTER;
      case RIGHT -> Block.Table.Alignment.RIGHT;
    };
  }

  /** The parser drops cells beyond the last column without a word. */
  private void checkLength(Node row, int columns) {
    String line = masked.substring(start(row), end(row)).strip();
    int from = line.startsWith("|") ? 1 : 0;
    int to = line.endsWith("|") && line.length() > 1 ? line.length() - 1 : line.length();
    int cells = 1 + (int) line.substring(from, to).chars().filter(c -> c == '|').count();
    if (cells > columns) {
      manuscript
          .findings()
          .add(TextCode.TABLE_ROW_LONG, position(row), "cells", cells, "columns", columns);
    }
  }

  /** The number of a footnote, which is read at its first mark; 0 where there can't be one. */
  int note(String label, Node mark, int depth) {
    if (refusedInNote(mark)) {
      return 0;
    }
    String key = key(label);
    Integer known = numbers.get(key);
    FootnoteDefinition definition = definitions.get(key);
    if (known != null || definition == null) {
      return known == null ? 0 : known;
    }
    int number = manuscript.numberNote();
    numbers.put(key, number);
    inNote = true;
    manuscript.add(new Footnote(number, blocks(definition, depth + 1)));
    inNote = false;
    return number;
  }

  /** The number of a footnote that is written at its mark; 0 where there can't be one. */
  int noteHere(Node mark, int depth) {
    if (refusedInNote(mark)) {
      return 0;
    }
    int number = manuscript.numberNote();
    inNote = true;
    List<Inline> content = inlines(mark, depth);
    manuscript.add(new Footnote(number, List.of(new Block.Paragraph(content))));
    inNote = false;
    return number;
  }

  private boolean refusedInNote(Node mark) {
    if (inNote) {
      manuscript.findings().add(TextCode.FOOTNOTE_IN_FOOTNOTE, position(mark));
    }
    return inNote;
  }

  /** Keeps the mark of a footnote that doesn't exist, found while the text is being parsed. */
  void strayNote(String label, Position position) {
    strays.add(new Stray(label, position));
  }

  private void reportStrays(List<FootnoteDefinition> all) {
    List<String> known = all.stream().map(FootnoteDefinition::getLabel).toList();
    for (Stray stray : strays) {
      String nearest = Nearest.of(stray.label(), known).orElse("");
      manuscript
          .findings()
          .add(
              TextCode.FOOTNOTE_UNKNOWN,
              stray.position(),
              "label",
              Letters.shown(stray.label()),
              "nearest",
              nearest,
              "hasNearest",
              nearest.isEmpty() ? "no" : "yes");
    }
  }

  private static String key(String label) {
    return label.strip().replaceAll("\\s+", " ").toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }
}
