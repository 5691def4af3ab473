package org.lapmark.source.mark;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Findings;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.source.drawing.DrawnMark;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/**
 * A kind of mark that can be drawn, and stated beside a panel's shape. Places are measured on the
 * line as drawn.
 */
public abstract class MarkKind {
  /** When marks are made; within a stage they are made kind by kind. */
  public enum Stage {
    /** With the panel's shape: lengths and derived shapes may depend on them. */
    SHAPE,
    /** Last, so that their places may follow from lengths of their own panel. */
    GUIDE,
    /** After these, since they may stand on them. */
    ON_GUIDES
  }

  private final String word;
  private final Stage stage;
  private final Role role;
  private final Table table;
  private final Key<List<Named<Stated>>> key;

  /**
   * A kind.
   *
   * @param word what it is called in messages, and what its marks on a panel are called
   * @param key the panel's key under which its marks are stated by name
   * @param stage when its marks are made
   * @param role what stands for it in drawings
   * @param table its keys, whose first choice is the ways to state a place, or none
   */
  MarkKind(String word, String key, Stage stage, Role role, Table table) {
    this.word = word;
    this.stage = stage;
    this.role = role;
    this.table = table;
    this.key = Key.of(key, Forms.named(table, false));
  }

  /** The panel's key under which marks of this kind are stated by name. */
  public final Key<List<Named<Stated>>> key() {
    return key;
  }

  /** What stands for it in drawings. */
  public final Role role() {
    return role;
  }

  /** When its marks are made. */
  public final Stage stage() {
    return stage;
  }

  /** Whether lengths and derived shapes may depend on such a mark. */
  public final boolean isGeometry() {
    return stage == Stage.SHAPE;
  }

  /** The ways in which its place can be stated. */
  final Choice places() {
    return table.choices().get(0);
  }

  /** What it is called in messages. */
  public final String word() {
    return word;
  }

  /**
   * Warns of keys of a statement that change nothing.
   *
   * @param in what is stated
   * @param findings where they go
   */
  void idle(Stated in, Findings findings) {
    // Most keys of most kinds always change something.
  }

  /** What is wrong with a drawn mark of which nothing is stated; nothing where it needs nothing. */
  public Optional<FindingCode> unstated() {
    return Optional.empty();
  }

  /**
   * The marks of a statement with a place.
   *
   * @param mark what is stated
   * @param panel the panel with the marks that are made before
   * @param values what its formulas come to
   * @return one or a row
   * @throws org.lapmark.finding.FindingException where a part of the statement is to blame
   * @throws org.lapmark.panel.PanelException where the mark doesn't suit the panel
   */
  public abstract List<Mark> stated(MarkSource mark, Panel panel, VariantValues values);

  /**
   * The marks of a drawing.
   *
   * @param drawn those of this kind, at their places on the panel, in file order
   * @param stated what is said of them
   * @param panel the panel without marks
   * @param values what formulas come to
   * @return the marks
   */
  public List<Mark> drawn(
      Collection<DrawnMark> drawn, List<MarkSource> stated, Panel panel, VariantValues values) {
    List<Mark> marks = new ArrayList<>();
    for (DrawnMark one : drawn) {
      Optional<MarkSource> more =
          stated.stream().filter(mark -> mark.name().text().equals(one.name())).findFirst();
      marks.add(drawn(one, more, panel, values));
    }
    return marks;
  }

  /** One mark of a drawing, of which more may be stated. */
  abstract Mark drawn(
      DrawnMark drawn, Optional<MarkSource> stated, Panel panel, VariantValues values);
}
