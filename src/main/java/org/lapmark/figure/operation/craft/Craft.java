package org.lapmark.figure.operation.craft;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** A kind of operation: its keys, and what its moments look like. */
public abstract class Craft {
  /** What lies on a material is of the same unless it is stated, and a curve is a usual one. */
  private static final List<Key<?>> USUAL = List.of(Amounts.WITH, Amounts.RADIUS);

  private final String word;
  private final Named named;
  private final List<Key<?>> given;
  private final List<Key<?>> needed;
  private final Table table;
  private final Key<Stated> key;

  /**
   * A kind of operation.
   *
   * @param word its key
   * @param named what it may be about
   * @param given what follows from that and is stated otherwise
   * @param needed what has to be stated in any case
   * @param free what may be stated
   */
  protected Craft(
      String word, Named named, List<Key<?>> given, List<Key<?>> needed, List<Key<?>> free) {
    this.word = word;
    this.named = named;
    this.given = List.copyOf(given);
    this.needed = List.copyOf(needed);
    List<Key<?>> keys = new ArrayList<>();
    given.forEach(one -> keys.add(USUAL.contains(one) ? one : required(one)));
    needed.forEach(one -> keys.add(required(one)));
    keys.addAll(free);
    this.table = Table.of(word, keys.toArray(Key<?>[]::new));
    this.key = Key.of(word, named == Named.NOTHING ? map() : nameOrMap());
  }

  private static <T> Key<T> required(Key<T> key) {
    return new Key<>(key.name(), key.form(), true, null);
  }

  private Form<Stated> map() {
    return FigureForms.map(table, keys -> keys.whole(Stated.of(keys, table.keys())));
  }

  private Form<Stated> nameOrMap() {
    return new Form<>(
        "name, or a map",
        Forms.schema("anyOf", List.of(FigureForms.NAME.schema(), Forms.defined(table.id()))),
        List.of(table),
        (reading, node, what) -> nameOrMap(reading, node, what));
  }

  private Stated nameOrMap(Reading reading, YamlNode node, String what) {
    if (node instanceof YamlNode.Entries) {
      return map().reader().read(reading, node, what);
    }
    if (node instanceof YamlNode.Text text && !text.text().text().isBlank()) {
      return Stated.of(text.text());
    }
    throw Faults.kind(node.position(), what, "a name, or materials and amounts in braces");
  }

  /** Its key. */
  public String word() {
    return word;
  }

  Named named() {
    return named;
  }

  /** The key under which it is stated. */
  public Key<Stated> key() {
    return key;
  }

  /** What follows from what it is about. */
  public List<Key<?>> given() {
    return given;
  }

  /** Whether it looks at a key. */
  public boolean knows(Key<?> amount) {
    return table.known().contains(amount.name());
  }

  /** The names of its keys that may stand beside a name. */
  public List<Key<?>> beside() {
    return Amounts.ALL.stream()
        .filter(one -> knows(one) && !given.contains(one))
        .<Key<?>>map(one -> one)
        .toList();
  }

  /** Reports what is missing beside a name. */
  public void need(Keys keys) {
    needed.forEach(keys::need);
  }

  /** Its moments in one variant. */
  public abstract List<Frame> frames(Bench bench);
}
