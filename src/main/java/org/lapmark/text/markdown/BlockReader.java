package org.lapmark.text.markdown;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.footnotes.FootnoteDefinition;
import org.commonmark.ext.footnotes.FootnotesExtension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.CustomBlock;
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
import org.lapmark.measure.print.TemplateText;
import org.lapmark.text.Block;
import org.lapmark.text.Inline;
import org.lapmark.text.Manuscript;
import org.lapmark.text.PlainText;
import org.lapmark.text.TextCode;

/** Turns one parse of Markdown into blocks. */
final class BlockReader {
  private static final Pattern TASK = Pattern.compile("^(\\[[ xX]\\])\\s");

  private static final Pattern DASHES = Pattern.compile("\\|?( *:?-+:? *\\|)* *:?-+:? *\\|?");

  private final ManuscriptReader manuscript;
  private final PreparedText text;
  private final Addresses addresses;
  private final Notes notes;

  /** The level of the heading before; 0 before the first. */
  private int lastHeading;

  /** By how many levels headings stand higher than stated. */
  private int raisedBy;

  private final boolean boxed;
  private final Node document;

  BlockReader(ManuscriptReader manuscript, PreparedText text, boolean boxed) {
    this.manuscript = manuscript;
    this.text = text;
    this.addresses = new Addresses(text, manuscript.targets());
    this.notes = new Notes(manuscript, text);
    this.boxed = boxed;
    this.document = parser().parse(text.masked());
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
        .customInlineContentParserFactory(new ValueNode.Factory(text.text(), text.findings()))
        .customInlineContentParserFactory(new AngleBrackets(text.text(), text.findings()))
        .linkProcessor(new StrayNotes(text, notes::stray))
        .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
        .build();
  }

  List<Block> blocks(int depth) {
    for (Node node = document; node != null; node = next(node)) {
      if (node instanceof FootnoteDefinition definition) {
        notes.define(definition);
      }
    }
    notes.reportStrays();
    List<Block> blocks = blocks(document, depth);
    notes.reportUnused();
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

  private List<Block> blocks(Node parent, int depth) {
    if (depth > Manuscript.MAX_DEPTH) {
      text.reportDepth(text.position(parent));
      return List.of(new Block.Verbatim(text.written(parent)));
    }
    Level level = new Level(depth);
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      node.accept(level);
    }
    return level.blocks;
  }

  private List<Inline> inlines(Node node, int depth) {
    return new InlineReader(this, text, addresses).inlines(node, depth + 1);
  }

  /** The number of a footnote, which is read at its first mark; 0 where there can't be one. */
  int note(String label, Node mark, int depth) {
    if (notes.refused(mark)) {
      return 0;
    }
    FootnoteDefinition unread = notes.unread(label);
    return unread == null
        ? notes.number(label)
        : notes.read(label, () -> blocks(unread, depth + 1));
  }

  /** The number of a footnote that is written at its mark; 0 where there can't be one. */
  int noteHere(Node mark, int depth) {
    return notes.refused(mark)
        ? 0
        : notes.read(() -> List.of(new Block.Paragraph(inlines(mark, depth))));
  }

  /** Reads the blocks beside each other, each as what it is. */
  private final class Level extends AbstractVisitor {
    private final int depth;
    private final List<Block> blocks = new ArrayList<>();

    Level(int depth) {
      this.depth = depth;
    }

    @Override
    public void visit(Paragraph paragraph) {
      if (isGallery(paragraph)) {
        for (Node node = paragraph.getFirstChild(); node != null; node = node.getNext()) {
          if (node instanceof Image image) {
            addresses.art(image).ifPresent(path -> art(image, path));
          }
        }
        return;
      }
      barred(paragraph);
      List<Inline> content = inlines(paragraph, depth);
      if (!content.isEmpty()) {
        blocks.add(new Block.Paragraph(content));
      }
    }

    private void art(Image image, String path) {
      List<Inline> words = inlines(image, depth);
      if (PlainText.isBlank(words)) {
        text.findings().add(TextCode.ART_WITHOUT_WORDS, text.position(image));
      }
      List<Inline> caption =
          addresses
              .caption(image)
              .map(written -> Manuscript.line(TemplateText.parse(written, text.findings())))
              .orElse(List.of());
      blocks.add(
          new Block.Art(path, words, caption, addresses.place(image.getDestination(), image)));
    }

    @Override
    public void visit(Heading heading) {
      int level = heading.getLevel();
      if (level > Manuscript.MAX_HEADING) {
        text.findings()
            .add(
                TextCode.HEADING_TOO_DEEP,
                text.position(heading),
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
      blocks.add(new Block.Heading(lastHeading, inlines(heading, depth)));
    }

    @Override
    public void visit(BulletList list) {
      blocks.add(new Block.ItemList(false, 1, list.isTight(), items(list)));
    }

    @Override
    public void visit(OrderedList list) {
      Integer start = list.getMarkerStartNumber();
      blocks.add(new Block.ItemList(true, start == null ? 1 : start, list.isTight(), items(list)));
    }

    private List<List<Block>> items(ListBlock list) {
      List<List<Block>> items = new ArrayList<>();
      for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
        if (item.getFirstChild() instanceof Paragraph first) {
          Matcher task = TASK.matcher(text.written(first));
          if (task.find()) {
            text.reportUnread("task", text.start(first), text.start(first) + task.end(1));
          }
        }
        items.add(BlockReader.this.blocks(item, depth + 1));
      }
      return items;
    }

    @Override
    public void visit(BlockQuote quote) {
      blocks.add(new Block.Quote(BlockReader.this.blocks(quote, depth + 1)));
    }

    @Override
    public void visit(ThematicBreak line) {
      blocks.add(new Block.Rule());
    }

    @Override
    public void visit(LinkReferenceDefinition definition) {
      // Links that use it say where they lead.
    }

    @Override
    public void visit(CustomBlock block) {
      if (block instanceof FencedBlock fenced) {
        manuscript.fenced(fenced, text.text(), depth + 1, boxed).ifPresent(blocks::add);
      } else if (block instanceof TableBlock table) {
        blocks.add(table(table, depth));
      }
    }
  }

  /**
   * Reports what was meant as a table: two lines that begin with a bar and have another one, or a
   * line of dashes between bars.
   */
  private void barred(Node paragraph) {
    int from = -1;
    int end = -1;
    int lines = 0;
    boolean dashes = false;
    for (SourceSpan span : paragraph.getSourceSpans()) {
      int last = span.getInputIndex() + span.getLength();
      String line = text.masked().substring(span.getInputIndex(), last).strip();
      boolean barred = line.startsWith("|") && line.indexOf('|', 1) > 0;
      dashes |= line.indexOf('|') >= 0 && DASHES.matcher(line).matches();
      if (barred || line.indexOf('|') >= 0 && DASHES.matcher(line).matches()) {
        from = from < 0 ? span.getInputIndex() : from;
        end = end < 0 ? last : end;
        lines++;
      }
    }
    if (lines > 1 || dashes) {
      text.reportUnread("table", from, end);
    }
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
    return new Block.Table(columns, head, rows, text.position(table.getFirstChild()));
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
    String line = text.masked().substring(text.start(row), text.end(row)).strip();
    int from = line.startsWith("|") ? 1 : 0;
    int to = line.endsWith("|") && line.length() > 1 ? line.length() - 1 : line.length();
    int cells = 1 + (int) line.substring(from, to).chars().filter(c -> c == '|').count();
    if (cells > columns) {
      text.findings()
          .add(TextCode.TABLE_ROW_LONG, text.position(row), "cells", cells, "columns", columns);
    }
  }
}
