package org.lapmark.source.mark;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.lapmark.finding.SourceText;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;

/**
 * A mark, or a row of marks, as stated for a panel.
 *
 * @param kind what it is
 * @param name its name, which drawn marks of the same kind may have
 * @param values what is stated, by key
 */
public record MarkSource(MarkKind kind, SourceText name, Map<String, Object> values) {
  /** Copies the map, keeping its order. */
  public MarkSource {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** Its identity on a panel. */
  public Ref ref(Ref panel) {
    return ref(kind, name, panel);
  }

  private static Ref ref(MarkKind kind, SourceText name, Ref panel) {
    return panel.inside(Ref.Kind.MARK, kind.word() + "." + name.text());
  }

  /**
   * Reads a mark.
   *
   * @return the mark, or null if it is misstated, which is then reported
   */
  public static MarkSource read(
      MarkKind kind, SourceText name, Ref panel, Stated in, Reading reading) {
    in.condition(ref(kind, name, panel));
    boolean whole = in.isComplete();
    if (!kind.places().isMet(in.names())) {
      reading
          .findings()
          .add(
              MarkCode.MARK_STATEMENT,
              name.position(),
              "name",
              name.text(),
              "kind",
              kind.word(),
              "ways",
              kind.places().shown());
      whole = false;
    }
    kind.idle(in, reading.findings());
    Map<String, Object> values = new LinkedHashMap<>();
    for (Key<?> key : in.keys()) {
      if (key != Stated.WHEN) {
        values.put(key.name(), in.get(key));
      }
    }
    return whole && !values.containsValue(null) ? new MarkSource(kind, name, values) : null;
  }

  /**
   * What one of its kind's keys says.
   *
   * @return null where it isn't written
   */
  @SuppressWarnings("unchecked") // What is kept under a key was read by the key's own form.
  <T> T get(Key<T> key) {
    return (T) values.get(key.name());
  }

  boolean has(Key<?> key) {
    return values.containsKey(key.name());
  }

  /**
   * Whether it says more of a mark that is drawn.
   *
   * @return true when no place is stated
   */
  public boolean isDrawn() {
    return Collections.disjoint(values.keySet(), kind.places().keys());
  }

  /** The edges and chains that it names. */
  public List<SourceText> edges() {
    return MarkKeys.EDGES.stream().map(this::get).filter(Objects::nonNull).toList();
  }
}
