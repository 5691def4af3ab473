package org.lapmark.grade;

/**
 * Something that is computed on demand. A kind of it is a record, whose components are its identity
 * in the graph, and which says how messages name it.
 *
 * @param <T> what it comes to
 */
@SuppressWarnings("unused") // The compiler holds what is computed and who asks for it to one type.
interface Node<T> {
  /**
   * Its name as a reader would say it.
   *
   * @return such as {@code depth} or {@code panel front}
   */
  String named();
}
