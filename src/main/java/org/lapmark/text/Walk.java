package org.lapmark.text;

import java.util.ArrayList;
import java.util.List;

/** Goes through a text once, in reading order, and gathers its parts. */
final class Walk {
  private final List<Inline.Value> values = new ArrayList<>();
  private final List<Block.Figure> figures = new ArrayList<>();
  private final List<Block.Art> art = new ArrayList<>();
  private final List<Block.Table> tables = new ArrayList<>();

  private Walk() {}

  static Walk of(Manuscript manuscript) {
    Walk walk = new Walk();
    walk.blocks(manuscript.blocks());
    manuscript.footnotes().forEach(note -> walk.blocks(note.content()));
    return walk;
  }

  static Walk of(List<Inline> line) {
    Walk walk = new Walk();
    walk.inlines(line);
    return walk;
  }

  List<Inline.Value> values() {
    return values;
  }

  List<Block.Figure> figures() {
    return figures;
  }

  List<Block.Art> art() {
    return art;
  }

  List<Block.Table> tables() {
    return tables;
  }

  private void blocks(List<Block> blocks) {
    for (Block block : blocks) {
      if (block instanceof Block.Paragraph paragraph) {
        inlines(paragraph.content());
      } else if (block instanceof Block.Heading heading) {
        inlines(heading.content());
      } else if (block instanceof Block.ItemList list) {
        list.items().forEach(this::blocks);
      } else if (block instanceof Block.Quote quote) {
        blocks(quote.content());
      } else if (block instanceof Block.Box box) {
        blocks(box.content());
      } else if (block instanceof Block.Figure figure) {
        figures.add(figure);
      } else if (block instanceof Block.Art picture) {
        art.add(picture);
        inlines(picture.alternative());
      } else if (block instanceof Block.Table table) {
        tables.add(table);
        table.head().forEach(this::inlines);
        table.rows().forEach(row -> row.forEach(this::inlines));
      }
    }
  }

  private void inlines(List<Inline> content) {
    for (Inline inline : content) {
      if (inline instanceof Inline.Value value) {
        values.add(value);
      } else if (inline instanceof Inline.Reference reference) {
        inlines(reference.words());
      } else if (inline instanceof Inline.Emphasis emphasis) {
        inlines(emphasis.content());
      } else if (inline instanceof Inline.Strong strong) {
        inlines(strong.content());
      } else if (inline instanceof Inline.WebLink link) {
        inlines(link.words());
      }
    }
  }
}
