package org.lapmark.document.section;

/**
 * A section of the instructions: when a document has it, and what templates get of it. Its heading
 * is the word {@code <id>.title}, its template {@code document/sections/<id>.ftlh}. {@link
 * Sections#ALL} lists them.
 */
interface Section {
  /** Gives templates nothing. */
  Record NOTHING = new Nothing();

  /** Without values. */
  record Nothing() {}

  /** What links, bookmarks and templates call it. */
  String id();

  /** Whether texts may lead to it by its id, as in {@code [](page:steps)}. */
  default boolean isReferable() {
    return true;
  }

  /** Whether a document with such content has it. */
  boolean isIn(Content content);

  /**
   * What templates get: each component is a value by its name, there also where the document hasn't
   * got the section.
   */
  default Record values(Setting setting) {
    return NOTHING;
  }

  /** What templates get beside that in a document of several sizes, in the value {@code by}. */
  default Record bySize(Sizes sizes) {
    return NOTHING;
  }
}
