package org.lapmark.source.key;

/**
 * A key that may stand in a map.
 *
 * @param <T> what its value is read as
 * @param name how it is written
 * @param form how its value is written
 * @param required whether it has to be there
 * @param standard what holds where it isn't written, as an author would write it; or null
 */
public record Key<T>(String name, Form<T> form, boolean required, String standard) {
  /** A key that may be left out. */
  public static <T> Key<T> of(String name, Form<T> form) {
    return new Key<>(name, form, false, null);
  }

  /** A key that has to be there. */
  public static <T> Key<T> required(String name, Form<T> form) {
    return new Key<>(name, form, true, null);
  }

  /** The same key with what holds where it isn't written. */
  public Key<T> unless(String other) {
    return new Key<>(name, form, required, other);
  }
}
