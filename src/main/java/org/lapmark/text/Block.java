package org.lapmark.text;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;

/** A part of a text that begins on a line of its own. */
public sealed interface Block {
  /**
   * A paragraph.
   *
   * @param content its text
   */
  record Paragraph(List<Inline> content) implements Block {
    /** Copies the list. */
    public Paragraph {
      content = List.copyOf(content);
    }
  }

  /**
   * A heading within the text.
   *
   * @param level 1 to {@link Manuscript#MAX_HEADING}, counted below the title that the text stands
   *     under
   * @param content its text
   */
  record Heading(int level, List<Inline> content) implements Block {
    /** Copies the list. */
    public Heading {
      content = List.copyOf(content);
    }
  }

  /**
   * A list.
   *
   * @param ordered whether its items are numbered
   * @param start the first item's number
   * @param tight whether its items are lines rather than paragraphs
   * @param items the items
   */
  record ItemList(boolean ordered, int start, boolean tight, List<List<Block>> items)
      implements Block {
    /** Copies the lists. */
    public ItemList {
      items = items.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A quotation.
   *
   * @param content what is quoted
   */
  record Quote(List<Block> content) implements Block {
    /** Copies the list. */
    public Quote {
      content = List.copyOf(content);
    }
  }

  /** A break between two parts of a text. */
  record Rule() implements Block {}

  /**
   * Something set apart from the text.
   *
   * @param kind what for
   * @param content what it says
   * @param position where it begins
   */
  record Box(Kind kind, List<Block> content, Position position) implements Block {
    /** Copies the list. */
    public Box {
      content = List.copyOf(content);
    }

    /** What a box is for. */
    public enum Kind {
      /** Advice that makes the work easier. */
      TIP,
      /** What may hurt the maker or spoil the work. */
      WARNING;

      /**
       * How the kind is written in a source, and marked in a document.
       *
       * @return a lower-case word
       */
      public String word() {
        return name().toLowerCase(Locale.ROOT);
      }

      static Optional<Kind> of(String word) {
        for (Kind kind : values()) {
          if (kind.word().equals(word)) {
            return Optional.of(kind);
          }
        }
        return Optional.empty();
      }
    }
  }

  /**
   * A figure's description, in a language that isn't read here.
   *
   * @param content the lines of the block, without its fences
   * @param position where the block begins
   */
  record Figure(SourceText content, Position position) implements Block {}

  /**
   * A picture made by hand.
   *
   * @param path its path in the pattern folder, inside {@code art/}; whether it exists isn't known
   * @param alternative what it shows, in words
   * @param position where the path is written
   */
  record Art(String path, List<Inline> alternative, Position position) implements Block {
    /** Copies the list. */
    public Art {
      alternative = List.copyOf(alternative);
    }
  }

  /**
   * A table. Every row has as many cells as there are columns.
   *
   * @param columns how the columns are aligned
   * @param head the column heads
   * @param rows the rows below them
   * @param position where it begins
   */
  record Table(
      List<Alignment> columns,
      List<List<Inline>> head,
      List<List<List<Inline>>> rows,
      Position position)
      implements Block {
    /** Copies the lists. */
    public Table {
      columns = List.copyOf(columns);
      head = head.stream().map(List::copyOf).toList();
      rows = rows.stream().map(row -> row.stream().map(List::copyOf).toList()).toList();
    }

    /** How a column is aligned. */
    public enum Alignment {
      /** As the document likes. */
      NONE,
      /** On its left edge. */
      LEFT,
      /** On its middle. */
      CENTER,
      /** On its right edge. */
      RIGHT
    }
  }

  /**
   * Lines that couldn't be understood, kept as written; a finding says why.
   *
   * @param text the lines
   */
  record Verbatim(String text) implements Block {}
}
