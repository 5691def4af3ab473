package org.lapmark.text;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;

/** A part of a text that begins on a line of its own. */
public sealed interface Block extends TextPart {
  /**
   * Tells a visitor of what kind it is.
   *
   * @param visitor what is done with each kind
   */
  void accept(Visitor visitor);

  /** What is done with each kind of block. */
  interface Visitor {
    /**
     * Takes one.
     *
     * @param paragraph a paragraph
     */
    void paragraph(Paragraph paragraph);

    /**
     * Takes one.
     *
     * @param heading a heading within the text
     */
    void heading(Heading heading);

    /**
     * Takes one.
     *
     * @param itemList a list
     */
    void itemList(ItemList itemList);

    /**
     * Takes one.
     *
     * @param quote a quotation
     */
    void quote(Quote quote);

    /**
     * Takes one.
     *
     * @param rule a break between two parts
     */
    void rule(Rule rule);

    /**
     * Takes one.
     *
     * @param box something set apart
     */
    void box(Box box);

    /**
     * Takes one.
     *
     * @param figure a figure's description
     */
    void figure(Figure figure);

    /**
     * Takes one.
     *
     * @param art a picture made by hand
     */
    void art(Art art);

    /**
     * Takes one.
     *
     * @param table a table
     */
    void table(Table table);

    /**
     * Takes one.
     *
     * @param verbatim lines that couldn't be understood
     */
    void verbatim(Verbatim verbatim);
  }

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

    @Override
    public List<Inline> parts() {
      return content;
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.paragraph(this);
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

    @Override
    public List<Inline> parts() {
      return content;
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.heading(this);
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

    @Override
    public List<Block> parts() {
      return items.stream().flatMap(List::stream).toList();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.itemList(this);
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

    @Override
    public List<Block> parts() {
      return content;
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.quote(this);
    }
  }

  /** A break between two parts of a text. */
  record Rule() implements Block {
    @Override
    public List<TextPart> parts() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.rule(this);
    }
  }

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

    @Override
    public List<Block> parts() {
      return content;
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.box(this);
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

      /**
       * The kind of a word.
       *
       * @param word the word
       * @return the kind, if it is one
       */
      public static Optional<Kind> of(String word) {
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
  record Figure(SourceText content, Position position) implements Block {
    @Override
    public List<TextPart> parts() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.figure(this);
    }
  }

  /**
   * A picture made by hand.
   *
   * @param path its path in the pattern folder, inside {@code art/}; whether it exists isn't known
   * @param alternative what it shows, in words
   * @param caption what is printed under it; empty for none
   * @param position where the path is written
   */
  record Art(String path, List<Inline> alternative, List<Inline> caption, Position position)
      implements Block {
    /** Copies the lists. */
    public Art {
      alternative = List.copyOf(alternative);
      caption = List.copyOf(caption);
    }

    @Override
    public List<Inline> parts() {
      return Stream.concat(alternative.stream(), caption.stream()).toList();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.art(this);
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

    @Override
    public List<Inline> parts() {
      return Stream.concat(Stream.of(head), rows.stream())
          .flatMap(List::stream)
          .flatMap(List::stream)
          .toList();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.table(this);
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
  record Verbatim(String text) implements Block {
    @Override
    public List<TextPart> parts() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.verbatim(this);
    }
  }
}
