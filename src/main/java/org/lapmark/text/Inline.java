package org.lapmark.text;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.TemplateText;

/** A part of a line of text. */
public sealed interface Inline extends TextPart {
  /**
   * Tells a visitor of what kind it is.
   *
   * @param visitor what is done with each kind
   */
  void accept(Visitor visitor);

  /** What is done with each kind of inline. */
  interface Visitor {
    /**
     * Takes one.
     *
     * @param words words that stand for themselves
     */
    void words(Words words);

    /**
     * Takes one.
     *
     * @param value a placeholder
     */
    void value(Value value);

    /**
     * Takes one.
     *
     * @param code text to be taken letter by letter
     */
    void code(Code code);

    /**
     * Takes one.
     *
     * @param emphasis stressed text
     */
    void emphasis(Emphasis emphasis);

    /**
     * Takes one.
     *
     * @param strong strongly stressed text
     */
    void strong(Strong strong);

    /**
     * Takes one.
     *
     * @param lineBreak a line break
     */
    void lineBreak(Break lineBreak);

    /**
     * Takes one.
     *
     * @param reference a reference to another place
     */
    void reference(Reference reference);

    /**
     * Takes one.
     *
     * @param webLink a link out of the document
     */
    void webLink(WebLink webLink);

    /**
     * Takes one.
     *
     * @param note the mark of a footnote
     */
    void note(Note note);
  }

  /**
   * Words that stand for themselves; a line end of the source is a space.
   *
   * @param text the words
   */
  record Words(String text) implements Inline {
    @Override
    public List<TextPart> parts() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.words(this);
    }
  }

  /**
   * A placeholder; equal to another only at the same place of the same file.
   *
   * @param placeholder the expression and its form
   */
  record Value(TemplateText.Placeholder placeholder) implements Inline {
    /**
     * The expression and its form with single spaces where they are needed, so that two texts can
     * be compared whatever their authors' habits.
     *
     * @return the expression, followed by {@code as} and the form if there is one
     */
    public String expression() {
      String expression = Expressions.normalised(placeholder.formula().text().text());
      SourceText form = placeholder.form();
      return form == null ? expression : expression + " as " + Expressions.normalised(form.text());
    }

    @Override
    public List<TextPart> parts() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.value(this);
    }
  }

  /**
   * Text to be taken letter by letter.
   *
   * @param text the text
   */
  record Code(String text) implements Inline {
    @Override
    public List<TextPart> parts() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.code(this);
    }
  }

  /**
   * Stressed text.
   *
   * @param content the text
   */
  record Emphasis(List<Inline> content) implements Inline {
    /** Copies the list. */
    public Emphasis {
      content = List.copyOf(content);
    }

    @Override
    public List<Inline> parts() {
      return content;
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.emphasis(this);
    }
  }

  /**
   * Strongly stressed text.
   *
   * @param content the text
   */
  record Strong(List<Inline> content) implements Inline {
    /** Copies the list. */
    public Strong {
      content = List.copyOf(content);
    }

    @Override
    public List<Inline> parts() {
      return content;
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.strong(this);
    }
  }

  /** A line break that the author asked for. */
  record Break() implements Inline {
    @Override
    public List<TextPart> parts() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.lineBreak(this);
    }
  }

  /**
   * A reference to another place of the document.
   *
   * @param kind what is referred to
   * @param target a step's id, a piece's number or a page's name; known to exist
   * @param words the author's words; empty when the document finds its own
   * @param position where the target is written
   */
  record Reference(Kind kind, String target, List<Inline> words, Position position)
      implements Inline {
    /** Copies the list. */
    public Reference {
      words = List.copyOf(words);
    }

    @Override
    public List<Inline> parts() {
      return words;
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.reference(this);
    }

    /** What can be referred to. */
    public enum Kind {
      /** A step, by its id. */
      STEP,
      /** A piece, by its number. */
      PIECE,
      /** A page of the document, by its name. */
      PAGE;

      /**
       * How an address of this kind begins, without the colon.
       *
       * @return the scheme
       */
      public String scheme() {
        return name().toLowerCase(Locale.ROOT);
      }

      /**
       * The kind of a scheme.
       *
       * @param scheme how an address begins
       * @return the kind, if it is one
       */
      public static Optional<Kind> of(String scheme) {
        for (Kind kind : values()) {
          if (kind.scheme().equals(scheme)) {
            return Optional.of(kind);
          }
        }
        return Optional.empty();
      }
    }
  }

  /**
   * A link out of the document, to an {@code https:} or {@code mailto:} address.
   *
   * @param address the address
   * @param words what is shown; the address itself where the author gave none
   */
  record WebLink(String address, List<Inline> words) implements Inline {
    /** Copies the list. */
    public WebLink {
      words = List.copyOf(words);
    }

    @Override
    public List<Inline> parts() {
      return words;
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.webLink(this);
    }
  }

  /**
   * The mark of a footnote.
   *
   * @param number the footnote's number within its manuscript, from 1 in the order of the marks
   */
  record Note(int number) implements Inline {
    @Override
    public List<TextPart> parts() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.note(this);
    }
  }
}
