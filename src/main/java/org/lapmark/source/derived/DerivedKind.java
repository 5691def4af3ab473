package org.lapmark.source.derived;

import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;

/**
 * A key of a panel by which one is derived.
 *
 * @param key the key
 * @param reader reads what stands under it
 */
public record DerivedKind(Key<Stated> key, Reader reader) {
  DerivedKind(Table table, Reader reader) {
    this(Key.of(table.id(), Forms.map(table)), reader);
  }

  /** Reads a derivation. */
  @FunctionalInterface
  public interface Reader {
    /**
     * Reads a derivation.
     *
     * @return what is stated, or null if it can't be read, which is then reported
     */
    DerivedSource read(Stated in, Reading reading);
  }
}
