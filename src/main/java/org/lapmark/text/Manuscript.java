package org.lapmark.text;

import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.lapmark.measure.TemplateText;

/**
 * One text of the author's, parsed once. Immutable.
 *
 * <p>It is CommonMark with tables and footnotes, and with these rules of its own:
 *
 * <ul>
 *   <li>{@code {expression}} and {@code {expression as form}} are placeholders, wherever words can
 *       stand; a backslash before a brace makes it stand for itself, and so does a code span
 *   <li>{@code [words](step:id)}, {@code [words](piece:3)}, {@code [words](page:name)} refer to
 *       other places of the document; without words the document finds them
 *   <li>links lead to {@code https:} and {@code mailto:} addresses only
 *   <li>fenced blocks are {@code tip} and {@code warning}, with Markdown inside, and {@code
 *       figure}; indented code doesn't exist
 *   <li>pictures stand on a line of their own, lie in {@code art/} and have words
 *   <li>HTML is text
 * </ul>
 *
 * @param blocks its parts, footnotes excepted
 * @param footnotes its footnotes by number
 */
public record Manuscript(List<Block> blocks, List<Footnote> footnotes) {
  /** How many UTF-16 units a text may have. */
  public static final int MAX_LENGTH = 20_000;

  /** How deep blocks and inlines may be nested in all. */
  public static final int MAX_DEPTH = 16;

  /** The deepest level of headings. */
  public static final int MAX_HEADING = 2;

  /** Copies the lists. */
  public Manuscript {
    blocks = List.copyOf(blocks);
    footnotes = List.copyOf(footnotes);
  }

  /**
   * Turns a text that isn't Markdown, such as a title, into inlines.
   *
   * @param text words and placeholders
   * @return the same as inlines
   */
  public static List<Inline> line(TemplateText text) {
    return text.made(words -> new Inline.Words(Letters.plain(words)), Inline.Value::new);
  }

  /**
   * Every placeholder, footnotes last.
   *
   * @return the placeholders in reading order
   */
  public List<Inline.Value> values() {
    return all(Inline.Value.class);
  }

  /**
   * Every placeholder of a line that belongs to no manuscript, such as a title.
   *
   * @param line the line
   * @return the placeholders in reading order
   */
  public static List<Inline.Value> values(List<Inline> line) {
    return TextPart.all(Inline.Value.class, line);
  }

  /**
   * Every figure.
   *
   * @return the figures in reading order
   */
  public List<Block.Figure> figures() {
    return all(Block.Figure.class);
  }

  /**
   * Every picture.
   *
   * @return the pictures in reading order
   */
  public List<Block.Art> art() {
    return all(Block.Art.class);
  }

  /**
   * Every table.
   *
   * @return the tables in reading order
   */
  public List<Block.Table> tables() {
    return all(Block.Table.class);
  }

  /**
   * What its placeholders say, so that a translation can be compared with the original: both must
   * print the same expressions in the same forms.
   *
   * @return the expressions, normalised
   * @see Inline.Value#expression()
   */
  public SortedSet<String> expressions() {
    SortedSet<String> expressions = new TreeSet<>();
    values().forEach(value -> expressions.add(value.expression()));
    return Collections.unmodifiableSortedSet(expressions);
  }

  private <T extends TextPart> List<T> all(Class<T> kind) {
    List<T> all = TextPart.all(kind, blocks);
    footnotes.forEach(note -> all.addAll(TextPart.all(kind, note.content())));
    return all;
  }
}
