package org.lapmark.text;

import java.util.List;
import java.util.Optional;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.key.Ref;

/**
 * What cross-references can lead to.
 *
 * @param steps the steps' ids
 * @param pieces the pieces' numbers
 * @param pages the names of the document's pages
 * @param stated what the pattern states beside these: when they are there, and what couldn't be
 *     read
 */
public record Targets(
    List<String> steps, List<String> pieces, List<String> pages, OptionsSource stated) {
  /** Nothing. */
  public static final Targets NONE = new Targets(List.of(), List.of(), List.of());

  /** Copies the lists. */
  public Targets {
    steps = List.copyOf(steps);
    pieces = List.copyOf(pieces);
    pages = List.copyOf(pages);
  }

  /** All that there is. */
  public Targets(List<String> steps, List<String> pieces, List<String> pages) {
    this(steps, pieces, pages, OptionsSource.NONE);
  }

  /**
   * The pieces of a pattern, and the pages.
   *
   * @param source the pattern
   * @param pages the names of the pages that texts may lead to
   * @return what its texts can refer to, steps left out
   */
  public static Targets of(PatternSource source, List<String> pages) {
    List<String> pieces =
        source.pieces().stream().map(piece -> String.valueOf(piece.number())).toList();
    return new Targets(List.of(), pieces, pages);
  }

  /**
   * The same with other steps.
   *
   * @param ids the steps' ids
   * @return the targets
   */
  public Targets withSteps(List<String> ids) {
    return new Targets(ids, pieces, pages, stated);
  }

  /** The condition of something that is stated and isn't among these. */
  public Optional<String> condition(Inline.Reference.Kind kind, String name) {
    return ref(kind, name)
        .map(what -> stated.conditions().get(what))
        .map(when -> when.text().text());
  }

  /** Whether a reference may lead to something that is stated and couldn't be read. */
  public boolean mayBeUnread(Inline.Reference.Kind kind, String name) {
    return ref(kind, name).map(stated::isUnread).orElse(false)
        || kind == Inline.Reference.Kind.STEP && stated.isUnread(StepSource.UNNAMED);
  }

  private static Optional<Ref> ref(Inline.Reference.Kind kind, String name) {
    return switch (kind) {
      case STEP -> Optional.of(Ref.of(Ref.Kind.STEP, name));
      case PIECE -> Optional.of(Ref.of(Ref.Kind.PIECE, name));
      case PAGE -> Optional.empty();
    };
  }

  /**
   * What a kind of reference can lead to.
   *
   * @param kind the kind
   * @return ids, numbers or names
   */
  public List<String> of(Inline.Reference.Kind kind) {
    return switch (kind) {
      case STEP -> steps;
      case PIECE -> pieces;
      case PAGE -> pages;
    };
  }
}
